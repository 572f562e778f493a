import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { readBoards } from '../../../kernel-helpers/src/stock/boards/boards.js';
import { planCuts } from '../../../kernel-helpers/src/stock/cut-plan/plan-cuts.js';
import { boardLayouts } from '../../../kernel-helpers/src/stock/cutting/board-layouts.js';
import { setUps } from '../../../kernel-helpers/src/stock/cutting/set-ups.js';
import { blanksOf } from '../../../kernel-helpers/src/stock/milling/blanks.js';
import { trimmedBoards } from '../../../kernel-helpers/src/stock/milling/trimmed-boards.js';
import { kerf } from '../hand-made-plan.js';

const piece = (name: string, count: number, length: number, width: number) => ({
  ...{ name, count, length, width, thickness: 1, called: '4/4' },
  finished: { length: length - 0.75, width: width - 0.25, thickness: 0.625 },
});

function planned(rough: ReturnType<typeof piece>[], firstCut: 'crosscut' | 'rip', knot: number) {
  const toCut = blanksOf({ rough, leastLength: 12, kerf });
  const boards = trimmedBoards({
    boards: readBoards([
      ...['A', 'B', 'C'].map((mark) => ({
        ...{ mark, thickness: 1, width: 9, length: 72, price: 10 },
        defects: [{ kind: 'knot', fromEnd: knot, fromEdge: 3, length: 2, width: 1.5 }],
      })),
    ]),
    blanks: toCut.blanks,
    ends: 0.5,
  });
  const plan = planCuts({ parts: toCut.parts, boards: boards.map(({ cut }) => cut), kerf, firstCut, effort: 0.2 });
  return { toCut, layouts: boardLayouts({ plan, boards, blanks: toCut.blanks, kerf }) };
}

describe('blanks that are planed before they are cut apart', () => {
  it('are cut off whole and ripped once: front and back, 8 1/2 in each, from a strip that is wider', () => {
    const { layouts } = planned([piece('front', 1, 8.5, 5), piece('back', 1, 8.5, 5)], 'crosscut', 50);
    const waiting = layouts.flatMap(({ cuts }) => cuts.filter(({ afterPlaning }) => afterPlaning));
    expect(waiting.map(({ kind, to, from }) => [kind, to - from])).toEqual([['crosscut', 5]]);
    const rips = layouts.flatMap(({ cuts }) => cuts.filter(({ kind }) => kind === 'rip'));
    expect(rips.map(({ from, to }) => to - from)).toEqual([17.125]);
  });

  it('can be sawn as the list says, each part comes out free, and none is parted before the planer', () => {
    const parts = fc.array(
      fc.record({
        count: fc.integer({ min: 1, max: 4 }),
        length: fc.integer({ min: 8, max: 60 }).map((n) => n / 2),
        width: fc.constantFrom(1.5, 2, 3.5),
      }),
      { minLength: 1, maxLength: 4 },
    );
    fc.assert(
      fc.property(
        parts,
        fc.constantFrom('crosscut' as const, 'rip' as const),
        fc.integer({ min: 0, max: 65 }),
        (sizes, firstCut, knot) => {
          const rough = sizes.map(({ count, length, width }, i) => piece(`p${i}`, count, length, width));
          const { toCut, layouts } = planned(rough, firstCut, knot);
          // Every cut goes right across a piece, or this throws.
          const list = setUps({ layouts, kerf });
          const cuts = layouts.reduce((sum, layout) => sum + layout.cuts.filter(({ trims }) => !trims).length, 0);
          expect(list.flatMap(({ pieces }) => pieces)).toHaveLength(cuts);
          for (const { parts: names, because } of toCut.blanks.filter((blank) => blank.because === 'short')) {
            const layout = layouts.find((each) => each.parts.some(({ name }) => names.includes(name)));
            const own = layout?.parts.filter(({ name }) => names.includes(name)) ?? [];
            expect(own, because).toHaveLength(names.length);
            const low = Math.min(...own.map(({ fromEnd }) => fromEnd));
            const high = Math.max(...own.map(({ fromEnd, length }) => fromEnd + length));
            const edge = own[0]?.fromEdge as number;
            const through = layout?.cuts.filter(
              ({ kind, at, from, to }) =>
                kind === 'crosscut' && at > low + 0.01 && at < high - 0.01 && from < edge + 0.01 && to > edge + 0.01,
            );
            expect(through?.every(({ afterPlaning }) => afterPlaning)).toBe(true);
            expect(through).toHaveLength(names.length - 1);
          }
        },
      ),
      { numRuns: 60 },
    );
  });
});
