import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { sizeBox } from '../../../kernel-helpers/src/piece/box/size-box.js';
import { boardFeet } from '../../../kernel-helpers/src/stock/boards/board-feet.js';
import { readBoards } from '../../../kernel-helpers/src/stock/boards/boards.js';
import { millingLoss } from '../../../kernel-helpers/src/stock/milling/milling-loss.js';
import { roughCut } from '../../../kernel-helpers/src/stock/milling/rough-cut.js';
import { roughParts } from '../../../kernel-helpers/src/stock/milling/rough-parts.js';

const { parts } = sizeBox({
  insideLength: '9 1/2 in',
  insideWidth: '6 1/4 in',
  insideDepth: '4 in',
  species: 'walnut-black',
});
const boards = readBoards([
  { mark: 'A', thickness: '4/4', width: '8 in', length: '6 ft', price: 14 },
  { mark: 'B', thickness: '4/4', width: '6 in', length: '4 ft', price: 14 },
]);

describe('board feet', () => {
  // The rule itself: 144 cubic inches, under an inch counts as an inch (hardwood trade, see data/lumber.json).
  it.each([
    [{ thickness: 1, width: 6, length: 96 }, 4],
    [{ thickness: 2, width: 6, length: 96 }, 8],
    [{ thickness: 1.25, width: 8, length: 120 }, 8.333],
    [{ thickness: 0.5, width: 12, length: 12 }, 1],
  ])('%j is %d', (board, feet) => {
    expect(boardFeet(board)).toBeCloseTo(feet, 3);
  });
});

describe('milling', () => {
  it('cuts each wooden part rough from the thinnest board that still gives it', () => {
    const rough = roughParts({ parts });
    expect(rough.map(({ name }) => name)).toEqual(['side', 'front', 'back', 'lid']);
    expect(rough.every(({ called }) => called === '4/4')).toBe(true);
    const front = rough.find(({ name }) => name === 'front');
    const side = rough.find(({ name }) => name === 'side');
    expect(front?.width, 'the front is jointed before it is lowered').toBe(side?.width);
  });

  it('loses something at every step and never gains', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 0, max: 48 }),
        fc.integer({ min: 0, max: 16 }),
        fc.integer({ min: 0, max: 6 }),
        (length, width, thickness) => {
          const { steps } = millingLoss({
            cut: roughCut({ parts, allowances: { length: length / 16, width: width / 16, thickness: thickness / 16 } }),
            boards,
          });
          for (const { lost } of steps.slice(1)) expect(lost).toBeGreaterThanOrEqual(-1e-12);
          const lost = steps.reduce((sum, step) => sum + step.lost, 0);
          expect(lost + (steps.at(-1)?.left ?? 0)).toBeCloseTo(steps[0]?.left ?? 0, 9);
        },
      ),
    );
  });

  it('stops where a part fits no board, and where there is too little board', () => {
    const narrow = millingLoss({
      cut: roughCut({ parts }),
      boards: readBoards([{ mark: 'A', thickness: '4/4', width: '5 in', length: '8 ft', price: 1 }]),
    });
    expect(narrow.findings[0]).toMatchObject({ rule: 'every part fits a board', verdict: 'stop' });
    const scant = millingLoss({
      cut: roughCut({ parts }),
      boards: readBoards([{ mark: 'A', thickness: '4/4', width: '8 in', length: '2 ft', price: 1 }]),
    });
    expect(scant.findings[1]).toMatchObject({ rule: 'enough board for the parts', verdict: 'stop' });
  });

  it.each([
    [
      [{ mark: 'A', thickness: '4/4', width: '0', length: '8 ft', price: 1 }],
      'no. 1, width: "0" given; possible: 1 in to 60 in',
    ],
    [
      [{ mark: 'A', thickness: '4/4', width: '8', length: '8 ft', price: -1 }],
      'no. 1, price: -1 given; possible: a number from 0',
    ],
    [[{ mark: '', thickness: '4/4', width: '8', length: '8 ft', price: 1 }], 'no. 1, mark: "" given'],
  ])('boards %j are refused in one line', (typed, message) => {
    expect(() => readBoards(typed)).toThrow(message);
  });

  it('refuses one mark on two boards', () => {
    const board = { mark: 'A', thickness: '4/4', width: '8', length: '8 ft', price: 1 };
    expect(() => readBoards([board, board])).toThrow('mark: "A" stands on two boards');
  });
});
