import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { numberText } from '../../../kernel-helpers/src/show/kit/number-text.js';

describe('a shown number', () => {
  it.each([
    [9.25, 4, '9.25'],
    [10 + 61 / 64, 4, '10.953125'],
    [0.1 + 0.2, 4, '0.3'],
    [10.98765432, 3, '11.0'],
    [30432.71234567, 3, '30433'],
    [-0.0483712345678, 2, '-0.048'],
    [0, 4, '0'],
    [-0, 4, '0'],
    [1234567, 4, '1234567'],
  ])('%s to %s figures is %s', (value, figures, text) => {
    expect(numberText(value, figures)).toBe(text);
  });

  it('reads back within half of its last figure, and keeps every figure before the point', () => {
    fc.assert(
      fc.property(
        fc.double({ min: -1e6, max: 1e6, noNaN: true }),
        fc.integer({ min: 1, max: 12 }),
        (value, figures) => {
          const back = Number(numberText(value, figures));
          const whole = Math.max(figures, Math.floor(Math.log10(Math.abs(value) || 1)) + 1);
          const half = 0.5 * 10 ** (Math.floor(Math.log10(Math.abs(value) || 1)) + 1 - whole);
          expect(Math.abs(back - value)).toBeLessThanOrEqual(half * 1.0000001 + 1e-11 * Math.abs(value));
        },
      ),
    );
  });
});
