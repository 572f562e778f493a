import { describe, expect, it } from 'vitest';
import { boardsToBuy } from '../../../kernel-helpers/src/stock/boards/boards-to-buy.js';

const parts = [
  { name: 'side', count: 4, length: 30, width: 3 },
  { name: 'rail', count: 6, length: 18, width: 3 },
];
const order = { parts, grade: 'no-1-common', price: 8 };

describe('boards of a grade that cannot be seen', () => {
  it('are more likely enough the more there are, and the number asked for is the first that is sure enough', () => {
    const { boards, byNumber } = boardsToBuy(order);
    for (const [i, row] of byNumber.slice(1).entries())
      expect(row.odds).toBeGreaterThanOrEqual(byNumber[i]?.odds as number);
    expect(byNumber.find((row) => row.odds >= 0.9)?.boards).toBe(boards);
    expect(boardsToBuy({ ...order, odds: 0.99 }).boards).toBeGreaterThanOrEqual(boards);
  });

  it('are the same for the same seed', () => {
    expect(boardsToBuy({ ...order, seed: 7 })).toEqual(boardsToBuy({ ...order, seed: 7 }));
    expect(boardsToBuy({ ...order, seed: 7 }).byNumber).not.toEqual(boardsToBuy({ ...order, seed: 8 }).byNumber);
  });

  it('come out as worked by hand where nothing is left to chance', () => {
    // Boards 6 in by 8 ft only, FAS: clear share from 10/12 to 11/12, of which a quarter is lost: 360 to 396 square inches each.
    const sure = boardsToBuy({
      ...{ grade: 'fas', price: 10, widest: '6 in', longest: '8 ft' },
      parts: [{ name: 'slat', count: 10, length: 35, width: 2 }],
    });
    expect(sure.boards).toBe(2);
    expect(sure.byNumber).toEqual([{ boards: 2, odds: 1, boardFeet: 8, cost: 80 }]);
  });

  it('watch when the grade promises only smaller clear pieces than a part', () => {
    expect(boardsToBuy(order).findings[0]?.verdict).toBe('ok');
    const large = boardsToBuy({ ...order, parts: [{ name: 'top', count: 1, length: 40, width: 7 }] });
    expect(large.findings[0]).toMatchObject({ verdict: 'watch' });
    expect(large.findings[0]?.figures).toContain('top is 40 in (1016.0 mm) by 7 in (177.8 mm) rough');
  });

  it.each([
    [{ grade: 'no-1' }, 'possible: fas, selects, no-1-common'],
    [{ odds: 1 }, 'odds: 1 given; possible: a number from 0.5 to 0.99'],
    [{ widest: '5 in', grade: 'fas' }, 'widest: 5 in (127.0 mm) given; possible: at least 6 in (152.4 mm)'],
    [{ parts: [{ name: 'wall', count: 1, length: 300, width: 30 }] }, '200 boards of this grade are not enough'],
    [{ parts: [] }, 'parts: none given'],
  ])('with %j are refused in one line', (field, message) => {
    expect(() => boardsToBuy({ ...order, ...field })).toThrow(message);
  });
});
