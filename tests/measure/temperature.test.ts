import fc from 'fast-check';
import { expect, it } from 'vitest';
import { celsius, fahrenheit } from '../../kernel-helpers/src/measure/temperature.js';

it('knows the fixed points', () => {
  expect([celsius(32), celsius(212), celsius(-40), fahrenheit(20)]).toEqual([0, 100, -40, 68]);
});

it('goes there and back', () => {
  fc.assert(
    fc.property(fc.double({ min: -200, max: 500, noNaN: true }), (degrees) => {
      expect(fahrenheit(celsius(degrees))).toBeCloseTo(degrees, 9);
    }),
  );
});
