import { randomBeta, randomLcg } from 'd3-random';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { percentiles, pertMoments, pertQuantile, type ThreePoints } from '../../kernel-helpers/src/money/pert.js';

const pointsOf = fc
  .tuple(
    fc.double({ min: 0, max: 100, noNaN: true }),
    fc.double({ min: 0, max: 1, noNaN: true }),
    fc.double({ min: 1, max: 100, noNaN: true }),
  )
  .map(([least, share, range]): ThreePoints => [least, least + share * range, least + range]);

/** Mean and deviation of what is drawn, the shares taken evenly. */
function drawnMoments(points: ThreePoints) {
  const quantile = pertQuantile(points);
  const drawn = Array.from({ length: 20_000 }, (_, i) => quantile((i + 0.5) / 20_000));
  const mean = drawn.reduce((sum, value) => sum + value, 0) / drawn.length;
  return { mean, deviation: Math.sqrt(drawn.reduce((sum, value) => sum + (value - mean) ** 2, 0) / drawn.length) };
}

describe('a three-point estimate', () => {
  it('worked by hand: 40, 60, 105 minutes', () => {
    const { mean, deviation } = pertMoments([40, 60, 105]);
    // (40 + 240 + 105)/6 = 64.1667; (24.1667 x 40.8333)/7 = 140.97, root 11.873
    expect(mean).toBeCloseTo(64.1667, 4);
    expect(deviation).toBeCloseTo(11.873, 3);
  });

  it('has the moments of the beta distribution, from its two shapes: textbook form', () => {
    fc.assert(
      fc.property(pointsOf, ([a, m, b]) => {
        const p = 1 + (4 * (m - a)) / (b - a);
        const q = 1 + (4 * (b - m)) / (b - a);
        const { mean, deviation } = pertMoments([a, m, b]);
        expect(mean).toBeCloseTo(a + ((b - a) * p) / (p + q), 8);
        expect(deviation).toBeCloseTo((b - a) * Math.sqrt((p * q) / ((p + q) ** 2 * (p + q + 1))), 6);
      }),
    );
  });

  it('is drawn with that mean and that deviation, on its range', () => {
    fc.assert(
      fc.property(pointsOf, (points) => {
        const [a, , b] = points;
        const told = pertMoments(points);
        const drawn = drawnMoments(points);
        // The table has 1,024 steps, straight between them: off by less than 1/1,000 of the range.
        expect(Math.abs(drawn.mean - told.mean)).toBeLessThan((b - a) / 1000);
        expect(Math.abs(drawn.deviation - told.deviation)).toBeLessThan((b - a) / 1000);
        expect(pertQuantile(points)(0)).toBeCloseTo(a, 9);
        expect(pertQuantile(points)(1 - 1e-12)).toBeLessThanOrEqual(b);
      }),
      { numRuns: 30 },
    );
  });

  it('with its likely value at one end is a power of the share', () => {
    // Density 5 x^4, or 5 (1 - x)^4: the share below x is x^5, or 1 - (1 - x)^5. The table is straight between its steps.
    for (let percent = 2; percent <= 98; percent += 2) {
      const share = percent / 100;
      expect(pertQuantile([0, 1, 1])(share)).toBeCloseTo(share ** 0.2, 4);
      expect(pertQuantile([0, 0, 1])(share)).toBeCloseTo(1 - (1 - share) ** 0.2, 4);
    }
    // On a step of the table Simpson's rule and a straight line within a cell are all that is between it and the truth.
    expect(Math.abs(pertQuantile([0, 1, 1])(1 / 2) - 2 ** -0.2)).toBeLessThan(1e-5);
  });

  it('is never below its least nor above its most, and rises with the share', () => {
    fc.assert(
      fc.property(
        pointsOf,
        fc.double({ min: 0, max: 0.999, noNaN: true }),
        fc.double({ min: 0, max: 0.999, noNaN: true }),
        (points, one, two) => {
          const quantile = pertQuantile(points);
          const [low, high] = [quantile(Math.min(one, two)), quantile(Math.max(one, two))];
          expect(low).toBeGreaterThanOrEqual(points[0]);
          expect(high).toBeGreaterThanOrEqual(low);
          expect(high).toBeLessThanOrEqual(points[2]);
        },
      ),
    );
  });

  it.each([[[0, 1, 10]], [[5, 5, 9]], [[5, 9, 9]], [[2, 6, 10]]] as [ThreePoints][])(
    '%j is the distribution that d3-random draws from two gammas',
    (points) => {
      const [a, m, b] = points;
      const beta = randomBeta.source(randomLcg(7))(1 + (4 * (m - a)) / (b - a), 1 + (4 * (b - m)) / (b - a));
      const quantile = pertQuantile(points);
      const shares = [0.05, 0.2, 0.5, 0.8, 0.95];
      const drawn = percentiles(
        Float64Array.from({ length: 100_000 }, () => a + (b - a) * beta()),
        shares,
      );
      // Of 100,000 draws the share below a quantile is known to 0.0016 (one deviation) at most; four of them, over the density.
      for (const [i, share] of shares.entries()) {
        const slope = (quantile(share + 0.01) - quantile(share - 0.01)) / 0.02;
        expect(Math.abs((drawn[i] as number) - quantile(share))).toBeLessThan(4 * 0.0016 * slope + (b - a) / 1000);
      }
    },
  );

  it('that is no estimate but a certainty is drawn as that', () => {
    expect(pertQuantile([3, 3, 3])(0.7)).toBe(3);
    expect(pertMoments([3, 3, 3])).toEqual({ mean: 3, deviation: 0 });
  });
});

describe('percentiles', () => {
  it('are the values at or below which the share lies', () => {
    expect(percentiles(Float64Array.of(5, 1, 4, 2, 3), [0.2, 0.5, 0.8, 1])).toEqual([1, 3, 4, 5]);
  });
});
