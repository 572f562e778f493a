import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { evaluate } from '../../../kernel-helpers/src/measure/formula.js';
import { vDepthFormula, vWidthFormula } from '../../../kernel-helpers/src/surface/lettering/v-groove.js';

describe('a V-bit', () => {
  test('of 90 degrees goes half as deep as the stroke is wide', () => {
    expect(evaluate(vDepthFormula, { w: 0.25, b: 90 })).toBeCloseTo(0.125, 12);
  });

  test('of 60 degrees goes deeper by the square root of three: half an equilateral triangle', () => {
    expect(evaluate(vDepthFormula, { w: 1, b: 60 })).toBeCloseTo(Math.sqrt(3) / 2, 12);
  });

  test('of 120 degrees stays shallower by the same', () => {
    expect(evaluate(vDepthFormula, { w: 1, b: 120 })).toBeCloseTo(Math.sqrt(3) / 6, 12);
  });

  test('leaves a groove as wide as the stroke it was sunk for', () => {
    fc.assert(
      fc.property(fc.double({ min: 0, max: 2, noNaN: true }), fc.double({ min: 20, max: 150, noNaN: true }), (w, b) => {
        expect(evaluate(vWidthFormula, { d: evaluate(vDepthFormula, { w, b }), b })).toBeCloseTo(w, 9);
      }),
    );
  });

  test('of 180 degrees is none', () => {
    expect(() => evaluate(vDepthFormula, { w: 1, b: 180 })).toThrow('possible: from 20 up to 150 deg');
  });
});
