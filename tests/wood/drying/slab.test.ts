import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { type BoardInAir, putInAir } from '../../../kernel-helpers/src/wood/drying/board-in-air.js';
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
