import { randomLcg, randomNormal } from 'd3-random';
import fc from 'fast-check';
import { mean, probit, sampleVariance } from 'simple-statistics';
import { describe, expect, it } from 'vitest';
import { evaluate } from '../../kernel-helpers/src/measure/formula.js';
import {
  correctedOperations,
  correctionPrior,
  corrections,
  shrunkFormula,
  type TimeTaken,
} from '../../kernel-helpers/src/money/correction.js';
import { estimateHours } from '../../kernel-helpers/src/money/hours.js';
import { allOperations } from '../../kernel-helpers/src/money/operations.js';

const took = (operation: string, ratios: number[]): TimeTaken[] =>
  ratios.map((ratio) => ({ operation, name: operation, estimated: 2, actual: 2 * ratio }));
const one = (ratios: number[]) => {
  const [correction] = corrections(took('cut-joint', ratios));
  if (!correction) throw new Error('no correction');
  return correction;
};
const ratio = fc.double({ min: 0.3, max: 3, noNaN: true });

describe('the factor of an operation', () => {
  it('repeats the two physicists of Box and Tiao, Bayesian Inference in Statistical Analysis (1973), section 1.2 (from memory): with N(900, 20) before and 850 read to 40, 890 after; with N(800, 80), 840', () => {
    const updated = (before: number, doubt: number) =>
      before + evaluate(shrunkFormula, { y: 850 - before - 40 ** 2 / 2, n: 1, s: 40, t: doubt });
    expect(updated(900, 20)).toBeCloseTo(890, 9);
    expect(updated(800, 80)).toBeCloseTo(840, 9);
  });

  it('is the mean that an independent library takes over the pieces and as many imagined ones of the old figure as the prior is worth', () => {
    // A normal prior is worth scatter^2 / doubt^2 pieces; with this doubt, exactly n.
    fc.assert(
      fc.property(
        fc.array(ratio, { minLength: 1, maxLength: 9 }),
        fc.integer({ min: 1, max: 5 }),
        (ratios, imagined) => {
          const logs = ratios.map(Math.log);
          const scatter = 0.4;
          const by = evaluate(shrunkFormula, {
            y: mean(logs) - scatter ** 2 / 2,
            n: logs.length,
            s: scatter,
            t: scatter / Math.sqrt(imagined),
          });
          expect(by).toBeCloseTo(mean([...logs, ...Array<number>(imagined).fill(0)]), 10);
        },
      ),
    );
  });

  it('pools the scatter over operations as an independent library does', () => {
    const groups = [
      [1.1, 1.4, 0.9, 1.2],
      [0.8, 0.7, 1.1],
    ];
    const all = groups.flatMap((ratios, i) => took(`operation ${i}`, ratios));
    const { weight, scatter: assumed, doubt } = correctionPrior;
    const squares = groups.reduce((sum, g) => sum + (g.length - 1) * sampleVariance(g.map(Math.log)), 0);
    const scatter2 = (weight * assumed ** 2 + squares) / (weight + 3 + 2);
    const first = mean((groups[0] as number[]).map(Math.log)) + scatter2 / 2;
    const precision = 4 / scatter2 + 1 / doubt ** 2;
    const { factor = 0, low = 0, high = 0 } = corrections(all)[0] ?? {};
    expect(Math.log(factor)).toBeCloseTo(((4 / scatter2) * first) / precision, 12);
    // The middle eight in ten of a normal distribution.
    const half = probit(0.9) / Math.sqrt(precision);
    expect(Math.log(factor / low)).toBeCloseTo(half, 3);
    expect(Math.log(high / factor)).toBeCloseTo(half, 3);
  });

  it('lies between the old figure and what the pieces say, and nearer to them the more there are', () => {
    fc.assert(
      fc.property(fc.double({ min: 1.1, max: 3, noNaN: true }), fc.integer({ min: 1, max: 20 }), (slow, n) => {
        const few = one(Array(n).fill(slow)).factor;
        const more = one(Array(n + 5).fill(slow)).factor;
        expect(few).toBeGreaterThan(1);
        expect(Math.abs(more - slow)).toBeLessThan(Math.abs(few - slow) + 0.02);
      }),
    );
    expect(one([1.5]).factor).toBeLessThan(1.35);
    expect(one(Array(200).fill(1.5)).factor).toBeCloseTo(1.5, 2);
  });

  it('holds the factor in its band, and the band narrows with pieces', () => {
    fc.assert(
      fc.property(fc.array(ratio, { minLength: 1, maxLength: 12 }), (ratios) => {
        const { factor, low, high } = one(ratios);
        expect(low).toBeLessThan(factor);
        expect(high).toBeGreaterThan(factor);
      }),
    );
    const width = (n: number) => one(Array(n).fill(1.2)).high - one(Array(n).fill(1.2)).low;
    expect(width(8)).toBeLessThan(width(2));
  });

  it('holds the true factor eight times in ten, over 2,000 invented operations', () => {
    const normal = randomNormal.source(randomLcg(0.42))(0, 1);
    const { doubt, scatter } = correctionPrior;
    let inside = 0;
    for (let shop = 0; shop < 400; shop++) {
      const truths = Array.from({ length: 5 }, () => normal() * doubt);
      const times = truths.flatMap((truth, i) =>
        took(
          `operation ${i}`,
          Array.from({ length: 1 + ((shop + i) % 8) }, () => Math.exp(truth - scatter ** 2 / 2 + scatter * normal())),
        ),
      );
      corrections(times).forEach(({ low, high }, i) => {
        const truth = Math.exp(truths[i] as number);
        if (truth >= low && truth <= high) inside++;
      });
    }
    // The standard deviation of a share of 0.8 in 2,000 is 0.009.
    expect(inside / 2000).toBeGreaterThan(0.77);
    expect(inside / 2000).toBeLessThan(0.83);
  });

  it('is of the mean time: quoted at it, many pieces come out even', () => {
    const normal = randomNormal.source(randomLcg(0.7))(0, 1);
    const ratios = Array.from({ length: 4000 }, () => Math.exp(0.2 + 0.5 * normal()));
    expect(one(ratios).factor).toBeCloseTo(mean(ratios), 1);
  });

  it('looks at the last pieces only when told, and passes over what was not estimated or not timed', () => {
    const times = took('cut-joint', [3, 3, 3, 1, 1]);
    expect(corrections(times, { last: 2 })[0]).toMatchObject({
      pieces: 2,
      because: 'your last 2 pieces took 1.00 times the estimate',
    });
    expect(corrections([{ operation: 'lid', name: 'Lid', estimated: 0, actual: 2 }])).toEqual([]);
    expect(() => corrections([{ operation: 'lid', name: 'Lid', estimated: 1, actual: -2 }])).toThrow(
      /hours of zero or more/,
    );
    expect(corrections(times, { last: 1 })[0]?.pieces).toBe(1);
    expect(() => corrections([], { last: 0 })).toThrow(/possible: a number of pieces from 1/);
  });
});

describe('corrected operations', () => {
  const operations = structuredClone(allOperations());
  const counts = {
    ...{ piece: 1, part: 6, corner: 4, tail: 12, groove: 6, lid: 1, letter: 7 },
    ...{ board: 2, finger: 0, mitre: 0, key: 0, rabbet: 0, 'carving minute': 0, tenon: 0, 'edge joint': 0 },
    ...{ 'solid part': 5, coat: 3, 'square foot coated': 9 },
  };
  const factor = { operation: 'cut-joint', factor: 1.3, because: 'your last 6 pieces took 1.31 times the estimate' };

  it('move the hours of that operation by the factor, those of no other, and say why', () => {
    const before = estimateHours({ counts }).byOperation;
    const corrected = correctedOperations(operations, [factor]);
    const after = estimateHours({ counts, operations: corrected }).byOperation;
    after.forEach(({ id, mean }, i) => {
      expect(mean).toBeCloseTo((before[i]?.mean ?? 0) * (id === 'cut-joint' ? 1.3 : 1), 12);
    });
    expect(corrected.find(({ id }) => id === 'cut-joint')?.source).toBe(
      'times 1.30: your last 6 pieces took 1.31 times the estimate',
    );
    const slow = correctedOperations(operations, [{ ...factor, operation: 'finish' }]);
    const finish = (list: typeof before) => list.find(({ id }) => id === 'finish')?.mean ?? 0;
    expect(finish(estimateHours({ counts, operations: slow }).byOperation)).toBeCloseTo(1.3 * finish(before), 12);
    expect(allOperations()).toEqual(operations);
  });

  it.each([0.1, 10])('take a factor of %d', (most) => {
    const [before, after] = [operations, correctedOperations(operations, [{ ...factor, factor: most }])].map(
      (each) => each.find(({ id }) => id === 'cut-joint')?.each[1] ?? 0,
    ) as [number, number];
    expect(after).toBeCloseTo(before * most, 12);
  });

  it.each([
    [{ ...factor, operation: 'paint' }, /^corrections: "paint" given; possible: choose-boards/],
    [{ ...factor, factor: 11 }, /^corrections no\. 1, factor: 11 given; possible: a number from 0.1 to 10/],
    [{ ...factor, factor: '2' as unknown as number }, /^corrections no\. 1, factor: "2" given; possible: a number/],
    [{ ...factor, factor: 0 }, /^corrections no\. 1, factor: 0 given; possible: a number from 0.1 to 10/],
    [{ ...factor, because: ' ' }, /^corrections no\. 1, because: " " given/],
  ])('refuse %o', (wrong, message) => {
    expect(() => correctedOperations(operations, [wrong])).toThrow(message);
  });
});
