import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { PiecePart } from '../../../kernel-helpers/src/piece/piece.js';
import { readBoards } from '../../../kernel-helpers/src/stock/boards/boards.js';
import { planCuts } from '../../../kernel-helpers/src/stock/cut-plan/plan-cuts.js';
import { boardLayouts } from '../../../kernel-helpers/src/stock/cutting/board-layouts.js';
import { setUps } from '../../../kernel-helpers/src/stock/cutting/set-ups.js';
import { millingLoss } from '../../../kernel-helpers/src/stock/milling/milling-loss.js';
import { type RoughCutInput, roughCut } from '../../../kernel-helpers/src/stock/milling/rough-cut.js';
import { trimmedBoards } from '../../../kernel-helpers/src/stock/milling/trimmed-boards.js';

const part = (name: string, length: number, width: number, thickness: number, count = 1): PiecePart => ({
  ...{ name, count, length, width, thickness },
  ...{ material: 'wood', grain: 'side to side', note: '' },
});
// A small box: ends of 8 1/2 in, a thin divider, a lid wider than most jointers.
const parts = [
  part('side', 11.5, 4.5, 5 / 8, 2),
  part('end', 8.5, 4.5, 5 / 8, 2),
  part('divider', 6, 3, 3 / 16),
  part('lid', 10, 7, 1 / 2),
];
const boards = readBoards([
  { mark: 'A', thickness: '4/4', width: '10 in', length: '6 ft', price: 10 },
  { mark: 'B', thickness: '4/4', width: '10 in', length: '6 ft', price: 10 },
]);
const found = (over: Partial<RoughCutInput> = {}) => {
  const { findings } = millingLoss({ cut: roughCut({ parts, ...over }), boards });
  return (rule: string) => findings.find((finding) => finding.rule === rule);
};
const worked = (over: Partial<RoughCutInput> = {}) => {
  const cut = roughCut({ parts, ...over });
  const ready = trimmedBoards({ boards, blanks: cut.toCut.blanks });
  const plan = planCuts({
    parts: cut.toCut.parts,
    boards: ready.map((each) => each.cut),
    kerf: cut.kerf,
    firstCut: 'crosscut',
  });
  const layouts = boardLayouts({ plan, boards: ready, blanks: cut.toCut.blanks, kerf: cut.kerf });
  const { milled } = millingLoss({ cut, boards, plan });
  return { cut, list: setUps({ layouts, cut, milled, kerf: cut.kerf }) };
};

describe('short parts', () => {
  it('are planed and ripped in the blank, and cut apart after that', () => {
    const { cut, list } = worked();
    expect([...new Set(list.map(({ stage }) => stage))]).toEqual([
      ...['rough', 'resawing', 'planing', 'ripping', 'parting', 'final'],
    ]);
    const ends = cut.toCut.blanks.find(({ parts: inIt }) => inIt.includes('end 1'));
    expect(ends?.length).toBeGreaterThanOrEqual(12);
    expect(list.filter(({ stage, machine }) => stage === 'final' && machine === 'rip fence')).toEqual([]);
    const ripped = list.filter(({ stage }) => stage === 'ripping').flatMap(({ pieces }) => pieces);
    expect(ripped).toHaveLength(cut.toCut.blanks.length);
    expect(found()('pieces long enough for the machines')).toMatchObject({ verdict: 'ok' });
    expect(found()('pieces long enough for the machines')?.figures).toMatch(/end .*planed and ripped as blank/);
  });

  it('are as long as the machine that asks for most', () => {
    for (const over of [
      { planer: { leastLength: 20 } },
      { jointer: { leastLength: 20 } },
      { tableSaw: { leastLength: 20 } },
    ])
      for (const { length } of roughCut({ parts, ...over }).toCut.blanks) expect(length).toBeGreaterThanOrEqual(20);
  });

  it('stay as long when their figure runs on in a row that is too short', () => {
    const { toCut } = roughCut({ parts, sequences: [['divider']] });
    expect(toCut.blanks.find(({ because }) => because === 'figure')?.length).toBe(12);
  });

  it('stop where one must come narrower than its row: the saw would take it alone', () => {
    const unlike = [part('front', 8.5, 4.5, 5 / 8), part('rail', 8.5, 4, 5 / 8)];
    const rule = 'short parts ripped in the blank';
    const row = { parts: unlike, sequences: [['front', 'rail']] };
    expect(found(row)(rule)).toMatchObject({ verdict: 'stop' });
    expect(found(row)(rule)?.figures).toContain('rail');
    expect(found({ parts: unlike })(rule)).toMatchObject({ verdict: 'ok' });
  });

  it('or narrow ones never reach a machine by themselves, whatever the parts and the machines', () => {
    const some = fc.record({
      length: fc.integer({ min: 2, max: 30 }),
      width: fc.integer({ min: 1, max: 40 }).map((eighths) => eighths / 8),
      count: fc.integer({ min: 1, max: 3 }),
    });
    const least = fc.record({ length: fc.integer({ min: 2, max: 24 }), width: fc.integer({ min: 1, max: 3 }) });
    fc.assert(
      fc.property(fc.array(some, { minLength: 1, maxLength: 4 }), least, (list, { length, width }) => {
        const cut = roughCut({
          parts: list.map((each, i) => part(`p${i}`, each.length, each.width, 0.5, each.count)),
          planer: { leastLength: length, leastWidth: width },
          tableSaw: { leastWidth: width, leastLength: length },
          jointer: { leastLength: length },
        });
        for (const blank of cut.toCut.blanks) {
          expect(blank.length).toBeGreaterThanOrEqual(length - 1e-9);
          expect(blank.width).toBeGreaterThanOrEqual(width - 1e-9);
          // A strip comes off a piece that the saw may be fed.
          const strips = cut.rough.filter(
            ({ name, strip }) => strip && blank.parts.some((p) => cut.toCut.partOf[p] === name),
          );
          for (const { finished } of strips)
            expect(blank.width - cut.kerf - finished.width).toBeGreaterThanOrEqual(width - 1e-9);
        }
      }),
    );
  });
});

describe('what a machine does not take', () => {
  it('under the least width of the saw is ripped off a wider blank, as the strip that falls away', () => {
    const { cut, list } = worked({ parts: [...parts, part('cleat', 20, 0.75, 0.5)] });
    // 3/4 and 1/4 over, a kerf of 1/8, and the inch that the saw asks for beside it.
    expect(cut.rough.find(({ name }) => name === 'cleat')?.width).toBe(0.75 + 0.25 + 0.125 + 1);
    const strip = list.find(({ stage, setting }) => stage === 'ripping' && setting === 0.75);
    expect(strip?.pieces.join()).toContain('falls away from the fence');
  });

  it('under the least thickness of the planer goes on a carrier board, and is said', () => {
    expect(found()('thick enough for the planer')).toMatchObject({ verdict: 'watch' });
    expect(found()('thick enough for the planer')?.change).toContain('carrier board');
    const planing = worked().list.filter(({ stage }) => stage === 'planing');
    for (const { setting, pieces } of planing)
      for (const piece of pieces) expect(piece.includes('carrier board')).toBe(setting < 1 / 4);
    expect(found({ planer: { leastThickness: 1 / 8 } })('thick enough for the planer')).toMatchObject({
      verdict: 'ok',
    });
  });

  it('wider than the jointer is flattened another way', () => {
    expect(found()('narrow enough for the jointer')).toMatchObject({ verdict: 'ok' });
    const six = found({ jointer: { widest: 6 } })('narrow enough for the jointer');
    expect(six).toMatchObject({ verdict: 'watch' });
    expect(six?.figures).toMatch(/lid 7 1\/4 in .*takes 6 in/);
  });
});

describe('more than half of a board in passes', () => {
  const rule = 'no more than half the thickness planed away';

  it('is resawn, left to settle and planed then: a 3/16 divider from 4/4', () => {
    const finding = found()(rule);
    expect(finding).toMatchObject({ verdict: 'watch' });
    // 3/16 and 3/16 for planing; of 13/16 flat, two of 3/8 and a kerf of 1/8 would take 7/8: one piece.
    expect(finding?.figures).toMatch(/divider.* 1 in .*down to 3\/16 in .*resawn to 3\/8 in .*once/);
    expect(finding?.change).toContain('settled');
    const sawn = worked().list.filter(({ stage }) => stage === 'resawing');
    expect(sawn.map(({ machine, setting, pieces }) => [machine, setting, ...pieces])).toEqual([
      ['band saw fence', 3 / 8, 'divider'],
    ]);
  });

  it('is planed from what was resawn, so that its passes take only what was left on', () => {
    const { milled } = millingLoss({ cut: roughCut({ parts }), boards });
    const divider = milled.find(({ blank }) => blank.name === 'divider');
    expect(divider?.passes.reduce((sum, { depth }) => sum + depth, 0)).toBeCloseTo(3 / 16, 9);
  });

  it('begins past the half: 1/2 in from an inch is planed', () => {
    const of = (thickness: number) => found({ parts: [part('lid', 14, 6, thickness)] })(rule)?.verdict;
    expect([of(1 / 2), of(31 / 64)]).toEqual(['ok', 'watch']);
  });

  it('is said also where the board is too thin for the saw', () => {
    const thin = readBoards([{ mark: 'T', thickness: '1/2 in', width: '8 in', length: '3 ft', price: 10 }]);
    const { milled, findings } = millingLoss({
      cut: roughCut({ parts: [part('slat', 14, 5, 15 / 64)] }),
      boards: thin,
    });
    expect(milled[0]).not.toHaveProperty('resawn');
    expect(findings.find((finding) => finding.rule === rule)).toMatchObject({ verdict: 'watch' });
  });
});
