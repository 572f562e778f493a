import { describe, expect, it } from 'vitest';
import { estimateHours } from '../../kernel-helpers/src/money/hours.js';
import { countWork } from '../../kernel-helpers/src/money/operations.js';
import { pertMoments } from '../../kernel-helpers/src/money/pert.js';
import { roughCut } from '../../kernel-helpers/src/stock/milling/rough-cut.js';
import type { Choices } from '../../kernel-helpers/src/surface/cautions.js';
import { benchSteps } from '../../kernel-helpers/src/time/bench-steps.js';
import { criticalPath } from '../../kernel-helpers/src/time/critical-path.js';
import { box, dovetails, fingers, keyedMitre, rabbet } from '../money/a-box.js';

const waits = { settle: [8, 16, 32] as [number, number, number], rest: 1, glue: 1, recoat: 0.5, cure: 7 };
const work = { piece: box, boards: 2, letters: 7, coats: 3 };
const counts = countWork({ ...work, joint: dovetails });
const steps = benchSteps({ counts, waits });
const of = (id: string) => steps.find((step) => step.id === id);

describe('steps at the bench', () => {
  it('take the hours of the estimate, coat by coat', () => {
    const minutes = steps.reduce((sum, step) => sum + pertMoments(step.minutes).mean, 0);
    expect(minutes / 60).toBeCloseTo(estimateHours({ counts }).mean, 9);
    expect(steps.filter(({ id }) => id.startsWith('finish-')).map(({ name }) => name.slice(-13))).toEqual(
      ['coat 1 of 3', 'coat 2 of 3', 'coat 3 of 3'].map((end) => `, ${end}`),
    );
  });

  it('wait for boards to settle, for glue, between coats, and for the last to cure', () => {
    expect(of('choose-boards')?.wait?.days).toEqual([8, 16, 32]);
    expect(of('glue-up')?.wait).toEqual({ what: 'glue cures', days: [1, 1, 1] });
    expect(of('finish-1')?.wait?.days[1]).toBe(0.5);
    expect(of('finish-3')?.wait?.days[1]).toBe(7);
    expect(of('hand-over')?.after).toEqual(['finish-3']);
    expect(of('cut-joint')?.wait).toBeUndefined();
  });

  it('let the glue of panels cure before they are flattened, and only then cut anything to size', () => {
    const { panels } = roughCut({ parts: box.parts, widestBoard: '3 in' });
    const glued = benchSteps({
      counts: countWork({ ...work, joint: dovetails, panels }),
      waits: { ...waits, panel: 2 },
    });
    const step = (id: string) => glued.find((each) => each.id === id);
    expect(step('edge-joints')?.wait?.days).toEqual([2, 2, 2]);
    expect(step('flatten-panels')?.after).toEqual(['edge-joints']);
    expect(step('final-size')?.after).toContain('flatten-panels');
    expect(of('edge-joints'), 'nothing is glued up where no part is wide').toBeUndefined();
    expect(of('final-size')?.after).toEqual(['flatten-and-thickness']);
  });

  it('say what is counted, in words', () => {
    expect(of('cut-joint')?.count).toBe('12 tails');
    expect(of('sanding')?.count).toMatch(/^\d+\.\d square feet, all grades added$/);
    expect(of('hand-over')?.count).toBe('');
    expect(benchSteps({ counts: countWork({ ...work, boards: 1, joint: dovetails }), waits })[0]?.count).toBe(
      '1 board',
    );
  });

  it('carry the cautions of the finish that was chosen, and of every kind where none was', () => {
    const cautionsOf = (finish?: string) =>
      benchSteps({ counts, waits, choices: { finish } }).find(({ id }) => id === 'finish-1')?.cautions;
    expect(cautionsOf('shellac')).toEqual(['film-finish']);
    expect(cautionsOf('paste-wax')).toEqual(['oil-finish']);
    expect(cautionsOf()).toEqual(['oil-finish', 'film-finish']);
  });

  it('carry the cautions of the router that was chosen, and of the round bit where there is a handle', () => {
    const counts = countWork({ ...work, joint: dovetails, letters: 3 });
    const cautionsOf = (step: string, choices: Choices) =>
      benchSteps({ counts, waits, choices }).find(({ id }) => id === step)?.cautions;
    expect(cautionsOf('grooves', {})).toContain('router-table');
    expect(cautionsOf('grooves', { router: 'hand router' })).toEqual(expect.arrayContaining(['hand-router']));
    expect(cautionsOf('grooves', { router: 'hand router' })).not.toContain('router-table');
    expect(cautionsOf('grooves', { router: 'carving machine' })).toContain('carving-machine');
    expect(cautionsOf('lettering', { handle: 'scoop' })).toEqual(expect.arrayContaining(['hand-router', 'round-bit']));
    expect(cautionsOf('lettering', { handle: 'none' })).not.toContain('round-bit');
  });

  it.each([
    ['dovetails', dovetails],
    ['fingers', fingers],
    ['keyed mitres', keyedMitre],
    ['rabbets', rabbet],
  ])('with %s, bare and without letters, make one whole: every step leads to the hand-over', (_, joint) => {
    const plain = benchSteps({ counts: countWork({ ...work, joint, letters: 0, coats: 0 }), waits });
    const needed = new Set(['hand-over']);
    for (const { id, after } of [...plain].reverse())
      if (needed.has(id)) for (const before of after) needed.add(before);
    expect(plain.filter(({ id }) => !needed.has(id))).toEqual([]);
    expect(() => criticalPath(plain.map(({ id, after }) => ({ id, after, duration: 1 })))).not.toThrow();
  });

  it('let keys be glued in before the clean-up', () => {
    const keyed = benchSteps({ counts: countWork({ ...work, joint: keyedMitre }), waits });
    expect(keyed.find(({ id }) => id === 'clean-up')?.after).toEqual(['glue-up', 'keys']);
    expect(of('clean-up')?.after).toEqual(['glue-up']);
  });

  it.each([
    [{ glue: -1 }, 'waits.glue'],
    [{ cure: [3, 2, 4] as [number, number, number] }, 'waits.cure'],
    [{ rest: Number.NaN }, 'waits.rest'],
  ])('refuse a wait of %j in one line', (bad, field) => {
    expect(() => benchSteps({ counts, waits: { ...waits, ...bad } })).toThrow(field.replace('waits.', ''));
  });
});
