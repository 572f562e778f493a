import fc from 'fast-check';
import { expect, it } from 'vitest';
import { diffusivity, diffusivityByMoisture } from '../../../kernel-helpers/src/wood/drying/diffusivity.js';

const between = (min: number, max: number) => fc.double({ min, max, noNaN: true });

it('is the same in a loop over the whole range, and keeps its end value past it', () => {
  fc.assert(
    fc.property(between(-5, 35), between(-40, 100), between(0.1, 1), (given, temperatureC, specificGravity) => {
      const moisture = Math.min(Math.max(given, 0), 30);
      const formula = diffusivity({ moisture, temperatureC, specificGravity });
      expect(diffusivityByMoisture(specificGravity, temperatureC)(given)).toBe(formula);
      expect(diffusivityByMoisture(specificGravity, temperatureC, 86400)(given)).toBe(86400 * formula);
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
  expect(() => diffusivity({ ...wood, moisture: 31 })).toThrow(/moisture content of the wood: 31 % given/);
  expect(() => diffusivity({ ...wood, specificGravity: 1.1 })).toThrow(/specific gravity .*: 1.1 given/);
});
