import { randomLcg } from 'd3-random';
import fc from 'fast-check';
import { expect, it } from 'vitest';
import {
  deviationTogether,
  drawnPaces,
  pacedDeviation,
  paceOf,
  usualPace,
} from '../../kernel-helpers/src/money/pace.js';

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

it('worked by hand: what three pieces of a shop say of its pace', () => {
  // Taken at the estimate, at a fifth more and at a fifth less, on logarithms: 0 and 0.2 to either side. With four pieces' worth
  // of 18 %, whose logarithms vary by ln(1.0324): (4 x 0.031886 + 2 x 0.04) / (4 + 2) = 0.034591, and e to that less 1 is 0.035196.
  const pieces = [0, 0.2, -0.2].map((log) => ({ estimated: 12, actual: 12 * Math.exp(log) }));
  expect(paceOf(pieces)).toBeCloseTo(Math.sqrt(0.035196), 5);
  expect(paceOf(pieces.slice(0, 1))).toBe(usualPace);
});

it('many pieces are believed, whatever they have in common', () => {
  const own = drawnPaces(400, 0.35, randomLcg(3));
  const pieces = [...own].map((pace) => ({ estimated: 10, actual: 13 * pace }));
  // Five standard errors of a deviation from 400 pieces.
  expect(Math.abs(paceOf(pieces) - 0.35)).toBeLessThan((5 * 0.35) / Math.sqrt(2 * 400));
});
