import { describe, expect, it } from 'vitest';
import type { PiecePart } from '../../../kernel-helpers/src/piece/piece.js';
import { planFindings } from '../../../kernel-helpers/src/stock/cutting/plan-findings.js';
import { planSheets } from '../../../kernel-helpers/src/stock/cutting/plan-sheets.js';
import { readSheets, sheetParts } from '../../../kernel-helpers/src/stock/cutting/sheet-goods.js';
import { trimmedBoards } from '../../../kernel-helpers/src/stock/milling/trimmed-boards.js';

const panel = (length: number, width: number, count = 1): PiecePart => ({
  ...{ name: 'panel', count, length, width, thickness: 0.25 },
  ...{ material: 'plywood', grain: 'none', note: '' },
});
const sheets = (...sizes: [number, number][]) =>
  trimmedBoards({
    boards: readSheets(
      sizes.map(([length, width], i) => ({
        mark: `P${i}`,
        thickness: '1/4 in',
        length,
        width,
        price: (length * width) / 10,
      })),
    ),
  });
const plan = (parts: PiecePart[], of: ReturnType<typeof sheets>, grain = false) =>
  planSheets({ lists: sheetParts({ parts, grain }), sheets: of, kerf: 1 / 8 });

describe('a plan of plywood', () => {
  it('turns parts that fit only across the sheet', () => {
    const { boards, cost } = plan([panel(10, 20)], sheets([24, 12]));
    expect(boards[0]?.parts[0]).toMatchObject({ length: 20, width: 10 });
    expect(cost).toBe(2880);
  });

  it('turns none whose grain matters, and says why it cannot', () => {
    expect(() => plan([panel(10, 20)], sheets([24, 12]), true)).toThrow('parts: "panel" is 10 in');
  });

  it('takes the cheaper way: two of 11 by 17 out of one sheet of 24 by 18 rather than two', () => {
    // Along a sheet 24 long and 18 wide: 17 + 17 is too long and 11 + 11 too wide; turned, 11 + 11 and a kerf lie in its 24.
    const { boards } = plan([panel(17, 11, 2)], sheets([24, 18], [24, 18]));
    expect(boards).toHaveLength(1);
    expect(boards[0]?.parts).toHaveLength(2);
  });

  it('takes no sheet thicker than its parts, however cheap: the groove is cut for them', () => {
    const thick = (price: number) => ({ mark: 'T', thickness: '1/2 in', length: 24, width: 18, price });
    const both = trimmedBoards({ boards: readSheets([thick(1), { ...thick(30), mark: 'P', thickness: '1/4 in' }]) });
    expect(plan([panel(10, 10)], both).boards.map(({ board }) => board.mark)).toEqual(['P']);
    expect(() => plan([panel(10, 10)], both.slice(0, 1))).toThrow(
      'sheets: T 1/2 in (12.7 mm) thick given; possible: 1/4 in (6.4 mm), 1/64 in (0.4 mm) more or less',
    );
  });

  it('says which plans its bound speaks for', () => {
    expect(plan([panel(10, 10)], sheets([24, 12])).bounds).toContain('All parts lie the same way on the sheet');
  });
});

describe('what a plan finds of itself', () => {
  it('is in order where it is proven, else how far it may be from the best', () => {
    const plans = { bounds: 'some plans', cost: 5000 };
    expect(planFindings({ ...plans, bound: 5000, proven: true })[0]).toMatchObject({ verdict: 'ok' });
    const [open] = planFindings({ ...plans, bound: 4500, proven: false });
    expect(open).toMatchObject({ verdict: 'watch' });
    expect(open?.figures).toContain('at most 10.0 % to gain');
  });
});
