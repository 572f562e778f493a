import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { sizeBox } from '../../../kernel-helpers/src/piece/box/size-box.js';
import { gritOrder, mostGritStep } from '../../../kernel-helpers/src/surface/finish/grit-order.js';
import { allGrits, grit } from '../../../kernel-helpers/src/surface/finish/grits.js';
import { planSanding } from '../../../kernel-helpers/src/surface/finish/sanding.js';
import { surfaceAreas } from '../../../kernel-helpers/src/surface/finish/surface-areas.js';
import { chest } from '../lettering/shapes.js';

const kept = ['P80', 'P100', 'P120', 'P150', 'P180', 'P220', 'P240', 'P320'];
const plan = (more: Partial<Parameters<typeof planSanding>[0]> = {}) =>
  planSanding({ box: chest, kept, from: 'P120', to: 'P220', ...more });
const rule = (sanding: ReturnType<typeof plan>, name: string) => sanding.findings.find((each) => each.rule === name);
const ids = (steps: { id: string }[]) => steps.map(({ id }) => id);

describe('the order of grades', () => {
  test('takes the fewest that keep each step at about 1.6', () => {
    expect(ids(gritOrder({ kept, from: 'P80', to: 'P220' }))).toEqual(['P80', 'P120', 'P180', 'P220']);
    expect(ids(gritOrder({ kept, from: 'P120', to: 'P120' }))).toEqual(['P120']);
  });

  test('holds the step wherever the shop keeps a grade for it', () => {
    const grades = allGrits().filter(({ system }) => system === 'FEPA P');
    fc.assert(
      fc.property(
        fc.integer({ min: 0, max: grades.length - 1 }),
        fc.integer({ min: 0, max: grades.length - 1 }),
        (a, b) => {
          const [from, to] = [grades[Math.min(a, b)], grades[Math.max(a, b)]];
          const steps = gritOrder({ kept: grades.map(({ id }) => id), from: from?.id as string, to: to?.id as string });
          expect([steps[0]?.id, steps.at(-1)?.id]).toEqual([from?.id, to?.id]);
          expect(steps.every(({ ratio = 1 }) => ratio < mostGritStep)).toBe(true);
        },
      ),
    );
  });

  test('shows a gap as a watch, naming what to keep', () => {
    const gap = plan({ kept: ['P80', 'P220'], from: 'P80' });
    expect(rule(gap, 'steps between grades')).toMatchObject({ verdict: 'watch', change: 'keep a grade before P220' });
  });

  test('refuses what is not kept, not known, or the wrong way round', () => {
    expect(() => plan({ from: 'P60' })).toThrow('from: "P60" given; possible: P80, P100');
    expect(() => plan({ kept: ['P121'] })).toThrow('grit: "P121" is not in the list; nearest: ');
    expect(() => plan({ from: 'P220', to: 'P120' })).toThrow('possible: P220 or finer');
    expect(() => plan({ kept: [] })).toThrow('kept: [] given; possible: at least one grade');
  });
});

describe('what sanding takes', () => {
  test('marks of the planer and half the grain of every grade but the last', () => {
    const { removed } = plan({ marks: '0.003 in' });
    expect(removed).toBeCloseTo(0.003 + (0.5 * (125 + 82)) / 25400, 12);
  });

  test('makes a proud joint prouder by the face and less by its ends', () => {
    const { proudAfter, removed } = plan({ endsRemoved: '1/64 in' });
    expect(proudAfter).toBeCloseTo(1 / 8 + removed - 1 / 64, 12);
    expect(rule(plan({ endsRemoved: '3/32 in' }), 'joint stays proud')?.verdict).toBe('watch');
  });

  test('says nothing of proud ends on a flush joint', () => {
    const flush = sizeBox({ insideLength: 9, insideWidth: 6, insideDepth: 4, species: 'walnut-black' });
    expect(plan({ box: flush }).proudAfter).toBe(0);
    expect(rule(plan({ box: flush }), 'joint stays proud')).toBeUndefined();
  });

  test('inside faces get least, and coarse grades there are a watch', () => {
    expect(plan().removedInside).toBeLessThan(plan().removed);
    expect(rule(plan(), 'inside faces and the fit of the joint')?.verdict).toBe('ok');
    expect(rule(plan({ from: 'P80', insideFrom: 'P80' }), 'inside faces and the fit of the joint')?.verdict).toBe(
      'watch',
    );
  });

  test('every face is counted once for each grade that goes over it', () => {
    const { sanded, areas, inside, outside } = plan();
    const { id: last = '' } = outside.at(-1) ?? {};
    expect([inside.length, outside.length]).toEqual([2, 3]);
    const squareFeet = (faces: typeof areas) => faces.reduce((sum, { area }) => sum + area, 0) / 144;
    const within = squareFeet(areas.filter((face) => face.inside));
    const loose = squareFeet(areas.filter((face) => !face.inside && face.sanded === 'before assembly'));
    expect(sanded.beforeAssembly).toBeCloseTo(2 * within + 3 * loose, 9);
    expect(sanded.afterAssembly).toBeCloseTo(3 * (squareFeet(areas) - within - loose), 9);
    // With the last grade alone it is a third of that.
    expect(plan({ from: last }).sanded.afterAssembly).toBeCloseTo(sanded.afterAssembly / 3, 9);
  });
});

describe('faces', () => {
  test('by hand: a box of 10 by 6 by 4 inside, 1/2 in stock, flush', () => {
    const box = sizeBox({
      ...{ insideLength: 10, insideWidth: 6, insideDepth: 4, species: 'walnut-black', stockThickness: '1/2 in' },
      ...{
        foot: '1/4 in',
        bottomThickness: '1/4 in',
        lidThickness: '1/2 in',
        lidGrooveDepth: '1/4 in',
        lidClearance: 0,
      },
      ...{ bottomGrooveDepth: '1/4 in' },
    });
    const areas = Object.fromEntries(surfaceAreas(box).map(({ face, area }) => [face, area]));
    // Sides 11 by 5, back 7 by 5, front 7 by 4 1/2.
    expect(areas['outside of the boards']).toBeCloseTo(2 * 55 + 35 + 31.5, 9);
    // Above the bottom: sides 10 by 4 1/2, back 6 by 4 1/2, front 6 by 4.
    expect(areas['inside of the boards']).toBeCloseTo(90 + 27 + 24, 9);
    expect(areas['bottom, inside']).toBeCloseTo(60, 9);
    // Lid 10 3/4 by 6 1/2, its top 10 1/2 by 6.
    expect(areas['lid, underside']).toBeCloseTo(10.75 * 6.5, 9);
    expect(areas['lid, top']).toBeCloseTo(63, 9);
    expect(areas['top edges']).toBeCloseTo(2 * 5.5 + 6, 9);
  });

  test('what lies inside is sanded before assembly', () => {
    const inside = surfaceAreas(chest).filter((each) => each.inside);
    expect(inside.map(({ sanded }) => sanded)).toEqual(['before assembly', 'before assembly']);
  });
});

test('a grade by its name', () => {
  expect(grit('P120')).toMatchObject({ microns: 125, system: 'FEPA P', fromMemory: false });
});
