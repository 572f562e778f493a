import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { evaluate } from '../../../kernel-helpers/src/measure/formula.js';
import { bowFormula, flattened } from '../../../kernel-helpers/src/stock/milling/flattening.js';
import { planerPasses } from '../../../kernel-helpers/src/stock/milling/planer.js';
import { snipeRemedies } from '../../../kernel-helpers/src/stock/milling/snipe.js';

/** Height of a circular arc over its chord, r - sqrt(r^2 - (chord / 2)^2), written so that nothing cancels. Geometry. */
const arcHeight = (radius: number, chord: number) =>
  (chord / 2) ** 2 / (radius + Math.sqrt(radius ** 2 - (chord / 2) ** 2));
const radiusOf = (chord: number, height: number) => chord ** 2 / (8 * height) + height / 2;

const board = (over: object) => ({ mark: 'A', thickness: 1, width: 8, length: 96, price: 1, ...over });
const flat = (bent: object, piece: { length: number; width: number }) =>
  flattened({ board: board(bent), piece, allowance: 3 / 16, cleanFaces: 0 });

describe('what a piece keeps of the bend of its board', () => {
  it('falls with the square of its length, as the height of a circular arc does', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 24, max: 192, noNaN: true }),
        fc.double({ min: 0.01, max: 1.5, noNaN: true }),
        fc.double({ min: 0.05, max: 1, noNaN: true }),
        (length, bow, share) => {
          const exact = arcHeight(radiusOf(length, bow), share * length);
          const given = evaluate(bowFormula, { B: bow, l: share * length, L: length });
          // Next term of the arc's series: the square law is too high by at most 4 B^3 / L^2, for B in L.
          expect(given).toBeGreaterThanOrEqual(exact - 1e-12);
          expect(given - exact).toBeLessThanOrEqual((4 * bow ** 3) / length ** 2 + 1e-12);
        },
      ),
    );
  });

  it('a quarter of a bowed board keeps a sixteenth of the bow, half of a cupped one a quarter of the cup', () => {
    expect(flat({ bow: 0.5 }, { length: 24, width: 8 }).bow).toBeCloseTo(0.5 / 16, 12);
    expect(flat({ cup: 0.25 }, { length: 96, width: 4 }).cup).toBeCloseTo(0.25 / 4, 12);
    expect(flat({ twist: 0.5 }, { length: 24, width: 4 }).twist).toBeCloseTo(0.5 / 8, 12);
  });

  it('leaves a flat slab that fits inside the piece, and none that is much thicker would', () => {
    fc.assert(
      fc.property(
        fc.record({
          bow: fc.double({ min: 0, max: 1, noNaN: true }),
          cup: fc.double({ min: 0, max: 0.3, noNaN: true }),
          twist: fc.double({ min: 0, max: 0.5, noNaN: true }),
        }),
        fc.integer({ min: 8, max: 96 }),
        fc.integer({ min: 2, max: 8 }),
        fc.constantFrom(1, -1),
        (bent, length, width, hollow) => {
          const { reach } = flat(bent, { length, width });
          // The underside of the piece, laid so that two corners share the twist; its top is one inch over it everywhere.
          const along = bent.bow > 0.001 ? radiusOf(96, bent.bow) : Number.POSITIVE_INFINITY;
          const across = bent.cup > 0.001 ? radiusOf(8, bent.cup) : Number.POSITIVE_INFINITY;
          const height = (x: number, y: number) =>
            (Number.isFinite(along) ? arcHeight(along, 2 * x) : 0) +
            hollow * (Number.isFinite(across) ? arcHeight(across, 2 * y) : 0) +
            (bent.twist * x * y) / (96 * 8);
          let [lowest, highest] = [Number.POSITIVE_INFINITY, Number.NEGATIVE_INFINITY];
          for (let i = -10; i <= 10; i++)
            for (let j = -10; j <= 10; j++) {
              const here = height((i / 20) * length, (j / 20) * width);
              lowest = Math.min(lowest, here);
              highest = Math.max(highest, here);
            }
          const slab = 1 - (highest - lowest);
          // Bends below a thousandth are left out of the surface above.
          expect(reach).toBeLessThanOrEqual(slab + 0.002);
          // With twist the two bends need not meet at a corner: at most half of what twist takes is safety.
          expect(reach).toBeGreaterThanOrEqual(slab - bent.twist / 2 - 0.002);
        },
      ),
    );
  });

  it('takes the usual allowance where nothing was measured, and clean faces where all was', () => {
    const piece = { length: 24, width: 6 };
    const { reach, measured } = flattened({ board: board({}), piece, allowance: 3 / 16, cleanFaces: 1 / 16 });
    expect([reach, measured]).toEqual([13 / 16, false]);
    expect(flattened({ board: board({ bow: 0 }), piece, allowance: 3 / 16, cleanFaces: 1 / 16 }).reach).toBe(15 / 16);
  });
});

describe('passes through the planer', () => {
  const planer = { deepestPass: 1 / 16, lightPass: 1 / 64 };

  it('take faces in turn, none deeper than the planer bears, and end light on both', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0.3, max: 2, noNaN: true }),
        fc.double({ min: 0.001, max: 0.9, noNaN: true }),
        (from, share) => {
          const to = from * share;
          const passes = planerPasses({ from, to, planer });
          let left = from;
          for (const [i, pass] of passes.entries()) {
            left -= pass.depth;
            expect(pass.left).toBeCloseTo(left, 9);
            expect(pass.depth).toBeLessThanOrEqual(1 / 16 + 1e-9);
            if (i > 0) expect(pass.face).not.toBe(passes[i - 1]?.face);
          }
          expect(passes.at(-1)?.left).toBeCloseTo(to, 9);
          for (const pass of passes.slice(-2)) expect(pass.depth).toBeLessThanOrEqual(1 / 64 + 1e-12);
        },
      ),
    );
  });

  it('are none where nothing is to come off', () => {
    expect(planerPasses({ from: 0.75, to: 0.75, planer })).toEqual([]);
  });
});

describe('remedies for snipe', () => {
  it('cost less wood the better they are: six pieces with 3/4 in over and a dip of 2 1/2 in', () => {
    const six = { thicknesses: Array(6).fill(0.5), overLength: 0.75, planer: { snipeLength: 2.5, leastLength: 12 } };
    expect(snipeRemedies(six).map(({ costs }) => costs)).toEqual([6 * 4.25, 4.25, 0]);
  });

  it('let only pieces of one thickness follow each other, and no scrap go in that is shorter than the planer may be fed', () => {
    const two = { thicknesses: [0.625, 0.5], overLength: 0.75, planer: { snipeLength: 2.5, leastLength: 12 } };
    expect(snipeRemedies(two).map(({ remedy }) => remedy)).toEqual(['extra length', 'lead and tail pieces']);
    expect(snipeRemedies(two).at(-1)?.how).toContain('at least 12 in (304.8 mm) long');
  });
});
