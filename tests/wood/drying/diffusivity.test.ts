import fc from 'fast-check';
import { expect, it } from 'vitest';
import { diffusivity } from '../../../kernel-helpers/src/wood/drying/diffusivity.js';
import { diffusivityAt } from '../../../kernel-helpers/src/wood/drying/diffusivity-fast.js';

const between = (min: number, max: number) => fc.double({ min, max, noNaN: true });

it('the quick form for loops is the formula, over its whole range', () => {
  fc.assert(
    fc.property(between(0, 30), between(-40, 100), between(0.1, 1), (moisture, temperatureC, specificGravity) => {
      const formula = diffusivity({ moisture, temperatureC, specificGravity });
      expect(Math.abs(diffusivityAt(specificGravity, temperatureC)(moisture) / formula - 1)).toBeLessThan(1e-12);
    }),
  );
});

it('moisture spreads faster in damp, warm and light wood', () => {
  const at = (moisture: number, temperatureC: number, specificGravity: number) =>
    diffusivity({ moisture, temperatureC, specificGravity });
  fc.assert(
    fc.property(between(0, 25), between(-20, 50), between(0.2, 0.9), (moisture, temperatureC, gravity) => {
      const here = at(moisture, temperatureC, gravity);
      expect(at(moisture + 2, temperatureC, gravity)).toBeGreaterThan(here);
      expect(at(moisture, temperatureC + 5, gravity)).toBeGreaterThan(here);
      expect(at(moisture, temperatureC, gravity + 0.05)).toBeLessThan(here);
    }),
  );
});

it('refuses what lies outside the formula in one line', () => {
  const wood = { moisture: 10, temperatureC: 20, specificGravity: 0.5 };
  expect(() => diffusivity({ ...wood, moisture: 31 })).toThrow(/moisture content of the wood is 31 %/);
  expect(() => diffusivity({ ...wood, specificGravity: 1.1 })).toThrow(/specific gravity .* is 1.1/);
});
