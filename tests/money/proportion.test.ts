import fc from 'fast-check';
import { expect, test } from 'vitest';
import { proportion } from '../../kernel-helpers/src/money/proportion.js';

// Newcombe 1998, Statistics in Medicine 17:857-872, table I, method 3, at 95 % (from memory), to the four places printed.
test.each([
  [81, 263, 0.2553, 0.3662],
  [15, 148, 0.0624, 0.1605],
  [0, 20, 0, 0.1611],
  [1, 29, 0.0061, 0.1718],
])('%i of %i has the interval that Newcombe prints', (count, of, low, high) => {
  const share = proportion(count, of, 1.959964);
  expect(share?.low).toBeCloseTo(low, 4);
  expect(share?.high).toBeCloseTo(high, 4);
});

test('the band holds the share, stays within 0 and 1, and mirrors with what was lost', () => {
  fc.assert(
    fc.property(fc.nat(60), fc.nat(60), (won, lost) => {
      const share = proportion(won, won + lost);
      if (!share) {
        expect(won + lost).toBe(0);
        return;
      }
      const mirrored = proportion(lost, won + lost);
      expect(share.low).toBeLessThanOrEqual(share.share + 1e-12);
      expect(share.high).toBeGreaterThanOrEqual(share.share - 1e-12);
      expect(share.low).toBeGreaterThanOrEqual(0);
      expect(share.high).toBeLessThanOrEqual(1);
      expect(mirrored?.low).toBeCloseTo(1 - share.high, 12);
    }),
  );
});

test('counts that are no counts are refused', () => {
  for (const [count, of] of [
    [3, 2],
    [-1, 2],
    [0.5, 2],
  ] as const)
    expect(() => proportion(count, of)).toThrow(/whole numbers/);
});
