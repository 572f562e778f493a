import { describe, expect, it } from 'vitest';
import { estimateHours } from '../../kernel-helpers/src/money/hours.js';
import { allOperations, countWork, type Operation } from '../../kernel-helpers/src/money/operations.js';
import { box, dovetails, fingers, keyedMitre, rabbet } from './a-box.js';

const counts = countWork({ piece: box, joint: dovetails, boards: 2, letters: 12, coats: 3 });

/** Normal distribution, by adding up its density. */
const steps = Array.from({ length: 1601 }, (_, i) => -8 + i / 100);
const densities = steps.map((z) => Math.exp(-(z ** 2) / 2) / Math.sqrt(2 * Math.PI) / 100);
const summed = densities.map((_, i) => densities.slice(0, i).reduce((sum, each) => sum + each, 0));
const normal = (z: number) => (z <= -8 ? 0 : z >= 8 ? 1 : (summed[Math.round((z + 8) * 100)] as number));

/** The hours below which a share of pieces lies whose hours are a normal sum times a lognormal pace of 18 %. */
function pacedQuantile(share: number, mean: number, deviation: number): number {
  const spread = Math.sqrt(Math.log(1 + 0.18 ** 2));
  const paces = steps.map((z) => Math.exp(spread * z - spread ** 2 / 2));
  const below = (hours: number) =>
    paces.reduce((sum, pace, i) => sum + (densities[i] as number) * normal((hours / pace - mean) / deviation), 0);
  let [low, high] = [0, 4 * mean];
  for (let i = 0; i < 40; i++) {
    const middle = (low + high) / 2;
    if (below(middle) < share) low = middle;
    else high = middle;
  }
  return low;
}

describe('hours', () => {
  it('worked by hand: the lid, set-up 15-20-30 and one of 25-40-75 minutes', () => {
    const lid = estimateHours({ counts }).byOperation.find(({ id }) => id === 'lid');
    expect(lid?.minutes).toEqual([40, 60, 105]);
    // (40 + 240 + 105)/6 = 64.1667 minutes; by itself root of (24.1667 x 40.8333)/7 = 11.873, and with a pace that scatters by
    // 18 %: root of (1.0324 x 11.873^2 + 0.0324 x 64.1667^2) = 16.7016
    expect(lid?.mean).toBeCloseTo(64.1667 / 60, 5);
    expect(lid?.deviation).toBeCloseTo(16.7016 / 60, 5);
  });

  it('is the sum of its operations, and leaves out what is not there', () => {
    const all = estimateHours({ counts });
    expect(all.byOperation.reduce((sum, { mean }) => sum + mean, 0)).toBeCloseTo(all.mean, 12);
    const plain = estimateHours({ counts: { ...counts, letter: 0 } });
    expect(plain.byOperation.some(({ id }) => id === 'lettering')).toBe(false);
    expect(plain.mean).toBeLessThan(all.mean);
  });

  it('simulated, has the quantiles of a sum of steps times a common pace, worked out another way', () => {
    const { mean, p50, p80, p95, low, high } = estimateHours({ counts, simulations: 100_000 });
    expect([low, p50, p80, high, p95]).toEqual([low, p50, p80, high, p95].sort((a, b) => a - b));
    // Sixteen independent steps together are close to normal, with the deviation they have when all pieces go at one pace.
    const own = estimateHours({ counts, pace: 0 });
    const error = (3 * 2.1 * 0.18 * mean) / Math.sqrt(100_000);
    for (const [quantile, share] of [
      [p50, 0.5],
      [p80, 0.8],
      [p95, 0.95],
    ] as const)
      expect(Math.abs(quantile - pacedQuantile(share, own.mean, own.deviation))).toBeLessThan(
        0.05 * own.deviation + error,
      );
  });

  it('is as sure as its pace: steps that share one leave more doubt than steps that do not', () => {
    const at = (pace: number) => estimateHours({ counts, pace });
    const [independent, shared] = [at(0), at(0.18)];
    expect(shared.mean).toBe(independent.mean);
    expect(independent.deviation).toBeCloseTo(
      Math.hypot(...independent.byOperation.map(({ deviation }) => deviation)),
      9,
    );
    const over = ({ p95, mean }: typeof shared) => p95 - mean;
    expect(over(shared)).toBeGreaterThan(3 * over(independent));
    expect(at(0.2).p95).toBeGreaterThan(at(0.15).p95);
    expect(() => at(18)).toThrow('pace: 18 given; possible: a number from 0 to 1');
  });

  it('is the same for the same seed, and another for another', () => {
    expect(estimateHours({ counts, seed: 5 })).toEqual(estimateHours({ counts, seed: 5 }));
    expect(estimateHours({ counts, seed: 5 }).p80).not.toBe(estimateHours({ counts, seed: 6 }).p80);
  });

  it('by joint: rabbets are quickest, dovetails take longest', () => {
    const of = (joint: Parameters<typeof countWork>[0]['joint']) =>
      estimateHours({ counts: countWork({ piece: box, joint, boards: 2, coats: 3 }) }).mean;
    const hours = [rabbet, fingers, keyedMitre, dovetails].map(of);
    expect(hours).toEqual([...hours].sort((a, b) => a - b));
  });

  it('refuses counts that cannot be, and a simulation of nothing', () => {
    expect(() => estimateHours({ counts: { ...counts, tail: -1 } })).toThrow(
      'counts: -1 tail given; possible: a number of zero or more',
    );
    expect(() => estimateHours({ counts: { ...counts, tail: Number.NaN } })).toThrow('counts: NaN tail given');
    expect(() => estimateHours({ counts, simulations: 0 })).toThrow('simulations: 0 given');
  });

  it('takes operations of your own', () => {
    const own = {
      ...(allOperations()[0] as Operation),
      id: 'own',
      per: 'lid' as const,
      setUp: [0, 0, 0],
      each: [60, 60, 60],
    };
    const sure = { mean: 1, low: 1, p95: 1 };
    expect(estimateHours({ counts, operations: [own as Operation], pace: 0 })).toMatchObject(sure);
  });
});
