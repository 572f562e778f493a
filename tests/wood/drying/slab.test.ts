import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { type BoardInAir, conditionsOf, putInAir } from '../../../kernel-helpers/src/wood/drying/board-in-air.js';
import { Slab } from '../../../kernel-helpers/src/wood/drying/slab.js';
import { slabCells } from '../../../kernel-helpers/src/wood/drying/slab-cells.js';
import { Tridiagonal } from '../../../kernel-helpers/src/wood/drying/tridiagonal.js';

const between = (min: number, max: number) => fc.double({ min, max, noNaN: true });
const anyBoard: fc.Arbitrary<BoardInAir> = fc.record({
  halfThickness: between(0.0005, 0.04),
  specificGravity: between(0.25, 0.95),
  finishResistance: fc.constantFrom(0, 1e8, 5e9, 1e11),
  diffusionFactor: fc.constantFrom(0.5, 1, 2),
});
const anyAir = fc.record({
  mid: between(0.1, 0.85),
  swing: between(0, 0.1),
  temperatureC: between(-20, 40),
  period: between(2, 400),
});

describe('a board in changing air', () => {
  it('gains just what crosses its faces, to rounding', () => {
    fc.assert(
      fc.property(anyBoard, anyAir, between(1, 28), (board, { mid, swing, temperatureC, period }, start) => {
        const air = (day: number) => ({
          temperatureC,
          relativeHumidity: mid + swing * Math.sin((2 * Math.PI * day) / period),
        });
        const slab = putInAir(board, start, air, 0);
        for (const day of [0.01, 1, 2, 10, 11, 60]) {
          slab.advance(day);
          expect(Math.abs(slab.mean - start - slab.uptake / board.halfThickness)).toBeLessThan(1e-11);
        }
      }),
    );
  });

  it('gains the same from the bands of cells wherever they are cut', () => {
    fc.assert(
      fc.property(
        between(0.001, 1),
        fc.integer({ min: 3, max: 60 }),
        fc.constantFrom(1, 4, 20),
        (half, cells, grading) => {
          const { width, near, far } = slabCells(half, cells, grading);
          expect(width.reduce((sum, value) => sum + value, 0)).toBeCloseTo(half, 12);
          for (let cell = 1; cell < cells; cell++) {
            const distance = ((width[cell] as number) + (width[cell + 1] as number)) / 2;
            expect(((near[cell] as number) + (far[cell] as number)) * distance).toBeCloseTo(1, 12);
          }
        },
      ),
    );
  });
});
describe('the cells of a slab', () => {
  it('widen by the same part from each to the next, the innermost as many times wider as asked', () => {
    for (const [cells, grading] of [
      [28, 4],
      [10, 20],
      [12, 1],
    ] as const) {
      const width = [...slabCells(0.01, cells, grading).width].slice(1);
      const ratios = width.slice(1).map((wide, index) => wide / (width[index] as number));
      for (const ratio of ratios) expect(ratio).toBeCloseTo(grading ** (1 / cells), 9);
    }
  });

  it('read a diffusivity that changes straight with the depth where they meet, and halfway into the first', () => {
    const cells = 8;
    const { width, near, far } = slabCells(0.01, cells, 4);
    const diffusivity = (depth: number) => 1 + 300 * depth;
    const wide = [...width] as number[];
    const inner = wide.map((_, cell) => wide.slice(0, cell + 1).reduce((sum, value) => sum + value, 0));
    const centre = (cell: number) => (inner[cell] as number) - (wide[cell] as number) / 2;
    for (let cell = 0; cell < cells; cell++) {
      const [here, there] = [cell === 0 ? 0 : centre(cell), centre(cell + 1)];
      const flux = (near[cell] as number) * diffusivity(here) + (far[cell] as number) * diffusivity(there);
      const meet = cell === 0 ? there / 2 : (inner[cell] as number);
      expect(flux * (there - here)).toBeCloseTo(diffusivity(meet), 9);
    }
  });
});

describe('what a slab is at the start', () => {
  const open = (resistance: number) => ({
    ...{ potential: 15, resistance },
    ...{ diffusivity: () => 1, isotherm: (content: number) => content },
  });

  it('its face stands where as much comes through what covers it as goes on into the first cell', () => {
    const { width } = slabCells(1, 28, 4);
    for (const resistance of [0, 0.05, 2]) {
      const { face } = new Slab({ halfThickness: 1, content: () => 10, at: () => open(resistance) });
      // (15 - face) / resistance = (face - 10) / half a cell, the diffusivity being 1.
      const halfCell = (width[1] as number) / 2;
      expect(face).toBeCloseTo((15 * halfCell + 10 * resistance) / (halfCell + resistance), 6);
    }
  });

  it('its middle is that of the parabola that its content is, level there', () => {
    const wide = [...slabCells(2, 10, 4).width].slice(1);
    // Means over the cells of 12 - 3 x squared, x from the middle.
    const mean = (depth: number) => {
      let inner = 2;
      for (const width of wide) {
        const centre = inner - width / 2;
        if (Math.abs(2 - depth - centre) < 1e-9) return 12 - 3 * (centre ** 2 + width ** 2 / 12);
        inner -= width;
      }
      return Number.NaN;
    };
    const slab = new Slab({ halfThickness: 2, content: mean, at: () => open(0), cells: 10 });
    expect(slab.middle).toBeCloseTo(12, 9);
    expect(slab.mean).toBeCloseTo(12 - 3 * (4 / 3), 9);
  });
});

it('what air gives wood rises with its humidity, without a step past dry and past saturated air', () => {
  const board = { halfThickness: 0.006, specificGravity: 0.55, finishResistance: 0, diffusionFactor: 1 };
  fc.assert(
    fc.property(between(-20, 40), between(-0.2, 1.2), (temperatureC, humidity) => {
      const { isotherm } = conditionsOf(board, temperatureC, 0.5);
      const [before, after] = [isotherm(humidity - 1e-6), isotherm(humidity + 1e-6)];
      expect(after).toBeGreaterThan(before);
      // Nowhere does 1 % of humidity bring more than 3 % of moisture.
      expect(after - before).toBeLessThan(300 * 2e-6);
    }),
  );
});

it('a tridiagonal system is solved: put back in, the solution gives the right-hand side', () => {
  const size = 7;
  fc.assert(
    fc.property(
      fc.array(between(-1, 1), { minLength: size, maxLength: size }),
      fc.array(between(-1, 1), { minLength: size, maxLength: size }),
      fc.array(between(-9, 9), { minLength: size, maxLength: size }),
      (lower, upper, right) => {
        const system = new Tridiagonal(size);
        system.lower.set(lower);
        system.upper.set(upper);
        system.diagonal.fill(2.5);
        system.right.set(right);
        system.solve();
        for (let row = 0; row < size; row++) {
          const above = row > 0 ? (lower[row] as number) * (system.right[row - 1] as number) : 0;
          const below = row < size - 1 ? (upper[row] as number) * (system.right[row + 1] as number) : 0;
          expect(above + 2.5 * (system.right[row] as number) + below).toBeCloseTo(right[row] as number, 10);
        }
      },
    ),
  );
});
