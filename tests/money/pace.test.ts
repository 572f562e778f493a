import { randomLcg } from 'd3-random';
import fc from 'fast-check';
import { expect, it } from 'vitest';
import { deviationTogether, drawnPaces, pacedDeviation } from '../../kernel-helpers/src/money/pace.js';

it('steps at one pace scatter together as every case of it, gone through one by one, says', () => {
  const step = fc.record({
    mean: fc.double({ min: 0.1, max: 20, noNaN: true }),
    share: fc.double({ min: 0, max: 0.9, noNaN: true }),
  });
  fc.assert(
    fc.property(step, step, fc.double({ min: 0, max: 0.9, noNaN: true }), (one, two, pace) => {
      // Quick or slow, and each step short or long: eight cases alike, whose spread is known without any formula.
      const totals = [1 - pace, 1 + pace].flatMap((f) =>
        [-1, 1].flatMap((a) =>
          [-1, 1].map((b) => f * (one.mean * (1 + a * one.share) + two.mean * (1 + b * two.share))),
        ),
      );
      const mean = totals.reduce((sum, total) => sum + total, 0) / 8;
      const spread = Math.sqrt(totals.reduce((sum, total) => sum + (total - mean) ** 2, 0) / 8);
      const steps = [one, two].map(({ mean, share }) => ({
        mean,
        deviation: pacedDeviation(mean, mean * share, pace),
      }));
      expect(deviationTogether(steps, pace)).toBeCloseTo(spread, 9);
    }),
  );
});

it('paces are 1 on average, scatter by as much as asked, and none is below nothing', () => {
  const pieces = 200_000;
  const paces = drawnPaces(pieces, 0.18, randomLcg(1));
  const mean = paces.reduce((sum, pace) => sum + pace, 0) / pieces;
  const deviation = Math.sqrt(paces.reduce((sum, pace) => sum + (pace - mean) ** 2, 0) / pieces);
  // Five standard errors; that of a deviation is about deviation / root of twice the number, more in a skewed sample.
  expect(Math.abs(mean - 1)).toBeLessThan((5 * 0.18) / Math.sqrt(pieces));
  expect(Math.abs(deviation - 0.18)).toBeLessThan((5 * 0.18) / Math.sqrt(pieces));
  expect(Math.min(...paces.subarray(0, 50_000))).toBeGreaterThan(0);
});
