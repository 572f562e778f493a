import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { readBoards, type TypedBoard } from '../../../kernel-helpers/src/stock/boards/boards.js';
import type { Blank } from '../../../kernel-helpers/src/stock/milling/blanks.js';
import { flattened } from '../../../kernel-helpers/src/stock/milling/flattening.js';
import { trimmedBoards } from '../../../kernel-helpers/src/stock/milling/trimmed-boards.js';

const typed = { mark: 'A', thickness: '4/4', width: '8 in', length: '8 ft', price: 15 };
const trimmed = (over: Partial<TypedBoard> = {}, rest: object = {}) =>
  trimmedBoards({ boards: readBoards([{ ...typed, ...over }]), ...rest })[0];

describe('a board as the cut plan takes it', () => {
  it('is the whole board where nothing is to be trimmed, at its price in cents', () => {
    expect(trimmed()?.cut).toEqual({ mark: 'A', thickness: 1, width: 8, length: 96, cost: 8000, defects: [] });
  });

  it('costs nothing when it lies in the shop', () => {
    expect(trimmed({ inHand: true })?.cut.cost).toBe(0);
  });

  it('has its sapwood, its edge-long bark and its checked end off; knots are counted from the new corner', () => {
    const given = trimmed({
      sapwoodLower: '3/4 in',
      defects: [
        'bark at 0 by 7 1/2 size 96 by 1/2',
        'check at 0 by 0 size 2 by 8',
        'knot at 12 by 3 size 2 by 1',
        'knot at 1 by 1 size 2 by 1',
      ],
    });
    expect(given?.trim).toEqual({ start: 2, end: 0, lower: 0.75, upper: 0.5 });
    expect(given?.cut).toMatchObject({ length: 94, width: 6.75 });
    expect(given?.cut.defects).toEqual([
      { kind: 'knot', fromEnd: 10, fromEdge: 2.25, length: 2, width: 1 },
      { kind: 'knot', fromEnd: 0, fromEdge: 0.25, length: 1, width: 1 },
    ]);
  });

  it('loses what is asked for at its ends and edges', () => {
    expect(trimmed({}, { ends: '1 in', edges: '1/4 in' })?.cut).toMatchObject({ length: 94, width: 7.5 });
    expect(() => trimmed({ length: '6 in' }, { ends: '3 in' })).toThrow('board A: nothing is left of it');
  });

  it('loses the wider of its sapwood and what is asked for at the edge, not both', () => {
    const sapwood = { sapwoodLower: '3/4 in', sapwoodUpper: '1/8 in' };
    expect(trimmed(sapwood, { edges: '1/4 in' })?.trim).toMatchObject({ lower: 0.75, upper: 0.25 });
  });

  it('never has a defect outside it', () => {
    const sixteenth = (most: number, least = 0) => fc.integer({ min: least, max: most * 16 }).map((n) => n / 16);
    const spot = fc.record({
      fromEnd: sixteenth(90),
      fromEdge: sixteenth(6),
      length: sixteenth(96, 1),
      width: sixteenth(8, 1),
    });
    fc.assert(
      fc.property(fc.array(spot, { maxLength: 5 }), sixteenth(2), (spots, sapwood) => {
        const defects = spots.map(({ fromEnd, fromEdge, length, width }) => ({
          ...{ kind: 'knot', fromEnd, fromEdge },
          ...{ length: Math.min(length, 96 - fromEnd), width: Math.min(width, 8 - fromEdge) },
        }));
        let given: ReturnType<typeof trimmed>;
        try {
          given = trimmed({ defects, sapwoodLower: sapwood });
        } catch (error) {
          expect((error as Error).message).toContain('nothing is left of it');
          return;
        }
        const cut = (given as NonNullable<typeof given>).cut;
        for (const defect of cut.defects) {
          expect(Math.min(defect.fromEnd, defect.fromEdge)).toBeGreaterThanOrEqual(0);
          expect(defect.fromEnd + defect.length).toBeLessThanOrEqual(cut.length + 1e-9);
          expect(defect.fromEdge + defect.width).toBeLessThanOrEqual(cut.width + 1e-9);
        }
      }),
    );
  });
});

describe('the thickness that the plan may count on', () => {
  const blank = (length: number, width: number, thickness: number): Blank => ({
    ...{ name: 'x', parts: ['x'], because: 'part' },
    ...{ length, width, thickness },
  });

  it('lets no blank be cut from a board that flattening would leave too thin for it', () => {
    const blanks = fc.array(
      fc.record({
        length: fc.integer({ min: 6, max: 90 }),
        width: fc.integer({ min: 1, max: 8 }),
        thickness: fc.integer({ min: 4, max: 15 }).map((n) => n / 16),
      }),
      { minLength: 1, maxLength: 6 },
    );
    const bends = fc.record({
      bow: fc.integer({ min: 0, max: 16 }).map((n) => n / 16),
      cup: fc.integer({ min: 0, max: 8 }).map((n) => n / 32),
    });
    fc.assert(
      fc.property(blanks, bends, (sizes, bent) => {
        const all = sizes.map(({ length, width, thickness }) => blank(length, width, thickness));
        const given = trimmed(bent, { blanks: all }) as NonNullable<ReturnType<typeof trimmed>>;
        for (const each of all)
          if (each.thickness <= given.cut.thickness) {
            const { reach } = flattened({ board: given.board, piece: each, allowance: 3 / 16, cleanFaces: 1 / 16 });
            expect(reach).toBeGreaterThanOrEqual(each.thickness - 1e-6);
          }
      }),
    );
  });

  it('still lets the thin part be cut where only the thick one fails', () => {
    const given = trimmed({ bow: '1 in' }, { blanks: [blank(12, 4, 0.5), blank(80, 4, 0.75)] });
    expect(given?.cut.thickness).toBeGreaterThanOrEqual(0.5);
    expect(given?.cut.thickness).toBeLessThan(0.75);
  });
});
