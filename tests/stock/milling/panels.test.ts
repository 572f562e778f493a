import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { sizeBookcase } from '../../../kernel-helpers/src/piece/bookcase/bookcase.js';
import { fittedParts } from '../../../kernel-helpers/src/piece/box/fitted-parts.js';
import { sizeBox } from '../../../kernel-helpers/src/piece/box/size-box.js';
import type { PiecePart } from '../../../kernel-helpers/src/piece/piece.js';
import { readBoards } from '../../../kernel-helpers/src/stock/boards/boards.js';
import { panelCounts } from '../../../kernel-helpers/src/stock/milling/panels.js';
import { roughCut } from '../../../kernel-helpers/src/stock/milling/rough-cut.js';
import { yearOfAir } from '../../../kernel-helpers/src/wood/air/air.js';

/** What sheet 07 takes for the widest part cut from one board, unless told otherwise. */
const widestBoard = '7 1/2 in';
const joints = (parts: readonly PiecePart[], widest = widestBoard) =>
  panelCounts(roughCut({ parts, widestBoard: widest }).panels).edgeJoints;

const air = yearOfAir({ place: 'chicago-ohare', heating: { heatTo: 20, coolTo: 25 } });
const chest = (bottom: string, more = {}) =>
  fittedParts({
    piece: sizeBox({
      ...{
        insideLength: 18,
        insideWidth: 14,
        insideDepth: 10,
        species: 'oak-northern-red',
        proud: '1/8 in',
        bottom,
        air,
      },
      ...more,
    }),
    lid: { fittedWidth: 14.4 },
  });
const bookcase = (shelves: number) =>
  sizeBookcase({ species: 'oak-northern-red', width: 36, height: 60, depth: 11, shelves }).parts;

describe('edge joints', () => {
  it('a chest 18 by 14 by 10 in has six with a solid bottom: one in each of its four sides, one in the lid, one in the bottom', () => {
    expect(joints(chest('solid', { bottomThickness: '3/8 in' }))).toBe(6);
    expect(joints(chest('plywood')), 'plywood needs none').toBe(5);
  });

  it('the same chest with its lid sliding the short way has six without one: a lid over 18 in is three boards', () => {
    expect(
      joints(
        chest('plywood', { insideLength: 14, insideWidth: 18 }).map((part) =>
          part.name === 'lid' ? { ...part, width: 18.5 } : part,
        ),
      ),
    ).toBe(6);
  });

  it('a bookcase 36 in wide with four shelves has eight: two sides, top, bottom and each shelf from two boards', () => {
    expect(joints(bookcase(4))).toBe(8);
    expect(joints(bookcase(3)), 'a shelf less, a joint less').toBe(7);
  });

  it('a tea chest whose every part is narrower than the board has none', () => {
    const small = sizeBox({ insideLength: 9.5, insideWidth: 6.25, insideDepth: 4, species: 'walnut-black' });
    expect(roughCut({ parts: small.parts, widestBoard }).panels).toEqual([]);
  });
});

const shelf: PiecePart = {
  ...{ name: 'shelf', count: 3, length: 30, width: 11, thickness: 0.75 },
  ...{ material: 'wood', grain: 'side to side', note: '' },
};

describe('a panel', () => {
  it('is one part in the piece and as many at the saw as it has boards, each with what its own joints take', () => {
    const { panels, rough, toCut } = roughCut({ parts: [shelf], widestBoard: 6 });
    // By hand: 11 and 1/4 to trim, 1/8 for the joint, in two boards.
    expect(rough).toMatchObject([{ name: 'shelf board', count: 6, width: (11 + 1 / 4 + 1 / 8) / 2, length: 30.75 }]);
    expect(toCut.blanks).toHaveLength(6);
    expect(panels).toMatchObject([
      { part: 'shelf', boards: 2, edgeJoints: 3, glued: { width: 11.25, thickness: 0.8125, length: 30.75 } },
    ]);
    expect(toCut.blanks[0]?.thickness, 'planed thicker, to be flattened when the glue has cured').toBe(0.8125);
  });

  it('three boards of four inches make no panel of twelve: the trim asks for a fourth', () => {
    const wide = { ...shelf, width: 12 };
    expect(roughCut({ parts: [wide], widestBoard: 4 }).panels[0]?.boards).toBe(4);
    expect(roughCut({ parts: [wide], widestBoard: 4, allowances: { panelWidth: 0 } }).panels[0]?.boards).toBe(3);
  });

  it('is made from boards no wider than there are: long and thick enough, without their sapwood', () => {
    const board = { thickness: '4/4', length: '8 ft', price: 1 };
    const boards = readBoards([
      { ...board, mark: 'A', width: '6 in', sapwoodUpper: '1 1/2 in' },
      { ...board, mark: 'B', width: '14 in', length: '2 ft' },
      { ...board, mark: 'C', width: '14 in', thickness: '1/2 in' },
    ]);
    // 4 1/2 in of A, less 1/4 at the rough rip: 11 1/4 over 4 1/4 is three.
    expect(roughCut({ parts: [shelf], widestBoard, boards }).panels[0]?.boards).toBe(3);
  });

  it('of a top is made of as many boards as the top was sized with', () => {
    expect(roughCut({ parts: [{ ...shelf, boards: 5 }], widestBoard: 36 }).panels[0]?.boards).toBe(5);
  });

  it('goes through the planer where it is narrow enough as glued, else the hand plane, never past what the machine takes', () => {
    const at = (widest: number) => {
      const cut = roughCut({ parts: [shelf], widestBoard: 6, planer: { widest } });
      return cut.panels[0]?.flattened;
    };
    expect([at(11.25), at(11.2)]).toEqual(['by planer', 'by hand']);
    const { panels } = roughCut({ parts: [shelf], widestBoard: 6, planer: { widest: 10 } });
    // Three of 11 1/4 by 30 3/4, both faces.
    expect(panelCounts(panels)).toEqual({ edgeJoints: 3, byPlaner: 0, squareFeetByHand: (6 * 11.25 * 30.75) / 144 });
  });

  it('whose figure runs on round the corners runs on in each row of boards', () => {
    const { toCut } = roughCut({
      parts: chest('plywood'),
      widestBoard,
      sequences: [['side', 'front', 'side', 'back']],
    });
    const rows = toCut.blanks.filter(({ because }) => because === 'figure');
    expect(rows.map(({ parts }) => parts.map((part) => part.replace(/ \d$/, '')))).toEqual(
      Array.from({ length: 2 }, () => ['side board', 'front board', 'side board', 'back board']),
    );
    expect(() =>
      roughCut({ parts: [shelf, { ...shelf, name: 'top', width: 18 }], widestBoard: 6, sequences: [['shelf', 'top']] }),
    ).toThrow('sequences: shelf, top given, glued up from 2 and 4 boards; possible: parts of as many boards each');
  });
});

describe('a figure round the corners', () => {
  const rows = (parts: readonly PiecePart[], sequences: string | string[][] = 'round the corners') =>
    roughCut({ parts, widestBoard, sequences }).toCut.blanks.filter(({ because }) => because === 'figure');

  it('runs round four boards of one height, and round each row of them where they are glued up', () => {
    const small = sizeBox({ insideLength: 9.5, insideWidth: 6.25, insideDepth: 4, species: 'walnut-black' });
    expect(rows(small.parts).map(({ parts }) => parts)).toEqual([['side 1', 'front', 'side 2', 'back']]);
    expect(rows(chest('plywood'))).toHaveLength(2);
  });

  it('has nothing to run round in a bookcase', () => {
    expect(rows(bookcase(3))).toEqual([]);
  });

  it('is refused where it is no way of running', () => {
    expect(() => rows(bookcase(3), 'across')).toThrow("possible: 'round the corners', or lists of parts in order");
  });
});

it('the boards of a panel, jointed, are as wide as it is glued, and none is wider than a part cut from one board would be ripped', () => {
  fc.assert(
    fc.property(fc.integer({ min: 16, max: 160 }), fc.integer({ min: 32, max: 480 }), (widest, width) => {
      const cut = roughCut({ parts: [{ ...shelf, width: width / 16 }], widestBoard: widest / 16 });
      for (const { boards, board, glued } of cut.panels) {
        expect(boards * board.width).toBeCloseTo(glued.width, 9);
        expect(boards * board.roughWidth).toBeCloseTo(glued.width + (boards - 1) / 8, 9);
        expect(board.roughWidth).toBeLessThanOrEqual(widest / 16 + 1 / 4);
      }
      if (cut.panels.length === 0) expect(width).toBeLessThanOrEqual(widest);
    }),
  );
});

it('refuses a widest board that is none', () => {
  expect(() => roughCut({ parts: [shelf], widestBoard: '0 in' })).toThrow(
    'widestBoard: "0 in" given; possible: 1 in to 36 in',
  );
});
