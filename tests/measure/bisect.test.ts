import fc from 'fast-check';
import { expect, it } from 'vitest';
import { bisect } from '../../kernel-helpers/src/measure/bisect.js';

it('finds where a rising or falling line crosses zero, to the tolerance', () => {
  fc.assert(
    fc.property(
      fc.double({ min: -9, max: 9, noNaN: true }),
      fc.constantFrom(-3, 0.2, 5),
      fc.constantFrom(1e-3, 1e-9),
      (zero, slope, tolerance) => {
        expect(Math.abs(bisect((x) => slope * (x - zero), -10, 10, tolerance) - zero)).toBeLessThanOrEqual(tolerance);
      },
    ),
  );
});

it('ends even where the tolerance is finer than numbers go', () => {
  expect(bisect((x) => x - 1 / 3, 0, 1, 0)).toBeCloseTo(1 / 3, 15);
});

it('refuses ends of the same sign', () => {
  expect(() => bisect((x) => x + 1, 0, 1, 1e-6)).toThrow('the sign is the same at 0 and at 1');
});
