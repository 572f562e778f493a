import { describe, expect, it } from 'vitest';
import { estimateHours } from '../../kernel-helpers/src/money/hours.js';
import { allOperations, countWork, type Operation } from '../../kernel-helpers/src/money/operations.js';
import { box, dovetails, fingers, keyedMitre, rabbet } from './a-box.js';

const counts = countWork({ piece: box, joint: dovetails, boards: 2, letters: 12, coats: 3 });

describe('hours', () => {
  it('worked by hand: the lid, set-up 15-20-30 and one of 25-40-75 minutes', () => {
    const lid = estimateHours({ counts }).byOperation.find(({ id }) => id === 'lid');
    expect(lid?.minutes).toEqual([40, 60, 105]);
    // (40 + 240 + 105)/6 = 64.1667 minutes; root of (24.1667 x 40.8333)/7 = 11.873
    expect(lid?.mean).toBeCloseTo(64.1667 / 60, 5);
    expect(lid?.deviation).toBeCloseTo(11.873 / 60, 5);
  });

  it('is the sum of its operations, and leaves out what is not there', () => {
    const all = estimateHours({ counts });
    expect(all.byOperation.reduce((sum, { mean }) => sum + mean, 0)).toBeCloseTo(all.mean, 12);
    const plain = estimateHours({ counts: { ...counts, letter: 0 } });
    expect(plain.byOperation.some(({ id }) => id === 'lettering')).toBe(false);
    expect(plain.mean).toBeLessThan(all.mean);
  });

  it('simulated, has the mean and the deviation that are worked out', () => {
    const { mean, deviation, low, p50, p80, high, p95 } = estimateHours({ counts, simulations: 100_000 });
    expect([low, p50, p80, high, p95]).toEqual([low, p50, p80, high, p95].sort((a, b) => a - b));
    // Sixteen operations together are close to normal: 0.8416 and 1.6449 deviations; three of a quantile's own errors.
    const error = (deviation * 3 * 2.1) / Math.sqrt(100_000);
    expect(Math.abs(p95 - (mean + 1.6449 * deviation))).toBeLessThan(0.1 * deviation + error);
    expect(Math.abs(p80 - (mean + 0.8416 * deviation))).toBeLessThan(0.05 * deviation + error);
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
    expect(estimateHours({ counts, operations: [own as Operation] })).toMatchObject({ mean: 1, low: 1, p95: 1 });
  });
});
