import * as z from 'zod';
import { evaluate, type Formula } from '../measure/formula.js';
import { amount, readParameters, words } from '../measure/parameters.js';
import { ShopError } from '../measure/shop-error.js';
import type { Operation } from './operations.js';
import type { ThreePoints } from './pert.js';

/** What past pieces say of one operation's estimate. */
export interface Correction {
  /** The operation's id. */
  operation: string;
  name: string;
  /** Pieces whose time for it was taken. */
  pieces: number;
  /** Sums over those pieces, h. */
  estimated: number;
  actual: number;
  /** What to multiply the estimated time by; drawn toward 1 when the pieces are few. */
  factor: number;
  /** Eight times in ten the true factor lies between these. */
  low: number;
  high: number;
  /** The same in words: "your last 6 pieces took 1.30 times the estimate". */
  because: string;
}

/** One piece's time for one operation, h. */
export interface TimeTaken {
  operation: string;
  name: string;
  estimated: number;
  actual: number;
}

/** Mean of a factor's logarithm, once the pieces are weighed against the old figure. */
export const shrunkFormula: Formula<'y' | 'n' | 's' | 't'> = {
  name: 'Factor drawn toward the old figure',
  result: { tex: '\\hat\\theta', meaning: 'logarithm of the factor, after the pieces', unit: '' },
  expression: '(n / s^2) / (n / s^2 + 1 / t^2) * (y + s^2 / 2)',
  symbols: {
    y: { meaning: 'mean logarithm of taken over estimated', unit: '' },
    n: { meaning: 'pieces', unit: '', min: 0 },
    s: { meaning: 'scatter from piece to piece', unit: '', min: 1e-6 },
    t: { meaning: 'how far off an untried estimate usually is', unit: '', min: 1e-6 },
  },
  source:
    'normal mean with known variance and a normal prior: Gelman et al., Bayesian Data Analysis, 3rd ed. 2013, section 2.5, eq. 2.11 and 2.12 (from memory)',
};

/** Scatter and doubt before any piece is timed; logarithms, so 0.3 is about 30 %. Our assumption: no source. @internal */
export const correctionPrior = {
  /** An untried estimate is off by a factor of exp(0.3) or less, two times in three. */
  doubt: 0.3,
  /** From piece to piece the same operation scatters this much. */
  scatter: 0.25,
  /** The scatter assumed counts as much as this many pieces beyond the first. */
  weight: 4,
};

const eightInTen = 1.2816;

/**
 * Factors that correct each operation's estimate by what past pieces took.
 *
 * On logarithms of taken over estimated, a normal mean with a normal prior at "the old figure is right". The scatter from piece
 * to piece is pooled over all operations, together with a scatter assumed beforehand (scaled inverse chi-square, its mean
 * taken as known). A factor corrects the *mean* time: half the scatter's square is added to the mean logarithm, since the
 * mean of a lognormal lies above its middle. Pieces are taken as independent of each other.
 *
 * @param times  every operation of every piece, oldest first; rows with no estimate or no time are passed over
 * @param last  only the last so many pieces of each operation; all unless told otherwise
 * @returns one correction for each operation, in the order of their first appearance
 * @throws ShopError  a time below zero; `last` below one
 * @see {@link shrunkFormula}; scatter: Gelman et al. 2013, sections 2.6 and 3.2 (from memory)
 */
export function corrections(times: readonly TimeTaken[], { last = Number.POSITIVE_INFINITY } = {}): Correction[] {
  if (!(last >= 1)) throw new ShopError(`last: ${last} given; possible: a number of pieces from 1`);
  const byOperation = new Map<string, TimeTaken[]>();
  for (const time of times) {
    if (!(time.estimated >= 0 && time.actual >= 0))
      throw new ShopError(
        `${time.operation}: ${time.estimated} h estimated and ${time.actual} h taken given; possible: hours of zero or more`,
      );
    if (time.estimated === 0 || time.actual === 0) continue;
    const known = byOperation.get(time.operation);
    if (known) known.push(time);
    else byOperation.set(time.operation, [time]);
  }
  const groups = [...byOperation.values()].map((all) => all.slice(-last));
  const scatter = pooledScatter(groups.map((group) => group.map(logRatio)));
  return groups.map((group) => correctionOf(group, scatter));
}

function correctionOf(group: TimeTaken[], scatter: number): Correction {
  const { operation, name } = group.at(-1) as TimeTaken;
  const pieces = group.length;
  const sum = (of: (time: TimeTaken) => number) => group.reduce((total, time) => total + of(time), 0);
  const { doubt } = correctionPrior;
  const y = sum(logRatio) / pieces;
  const center = evaluate(shrunkFormula, { y, n: pieces, s: scatter, t: doubt });
  const spread = 1 / Math.sqrt(pieces / scatter ** 2 + 1 / doubt ** 2);
  const [estimated, actual] = [sum((time) => time.estimated), sum((time) => time.actual)];
  const factor = Math.exp(center);
  return {
    operation,
    name,
    pieces,
    estimated,
    actual,
    factor,
    low: Math.exp(center - eightInTen * spread),
    high: Math.exp(center + eightInTen * spread),
    because: `your last ${pieces === 1 ? 'piece' : `${pieces} pieces`} took ${(actual / estimated).toFixed(2)} times the estimate`,
  };
}

function logRatio({ estimated, actual }: TimeTaken): number {
  return Math.log(actual / estimated);
}

function pooledScatter(groups: number[][]): number {
  const { scatter, weight } = correctionPrior;
  let squares = weight * scatter ** 2;
  let freedom = weight;
  for (const group of groups) {
    const mean = group.reduce((a, b) => a + b, 0) / group.length;
    squares += group.reduce((sum, y) => sum + (y - mean) ** 2, 0);
    freedom += group.length - 1;
  }
  return Math.sqrt(squares / freedom);
}

const correctionFields = z.object({
  corrections: z.array(
    z.object({
      operation: words('the id of an operation'),
      factor: amount({ least: 0.1, most: 10, why: 'what to multiply its estimated time by' }),
      because: words('why it is corrected'),
    }),
  ),
});

/**
 * Operations with their times corrected; one without a correction stays as it is. The reason stands in `source`.
 *
 * @param operations  the shop's figures, see {@link allOperations}
 * @param factors  as {@link corrections} gives them, or as copied from the shop book into a sheet's parameters
 * @throws ShopError  an operation that is not there, a factor out of range, a reason missing
 */
export function correctedOperations(
  operations: readonly Operation[],
  factors: readonly Pick<Correction, 'operation' | 'factor' | 'because'>[],
): Operation[] {
  const { corrections: read } = readParameters(correctionFields, { corrections: factors });
  for (const { operation } of read)
    if (!operations.some(({ id }) => id === operation))
      throw new ShopError(
        `corrections: "${operation}" given; possible: ${operations.map(({ id }) => id).join(', ')} (the operations)`,
      );
  return operations.map((operation) => {
    const correction = read.find((each) => each.operation === operation.id);
    if (!correction) return operation;
    const { factor, because } = correction;
    const times = (points: ThreePoints) => points.map((minutes) => minutes * factor) as ThreePoints;
    return {
      ...operation,
      setUp: times(operation.setUp),
      each: times(operation.each),
      ...(operation.besides ? { besides: { ...operation.besides, each: times(operation.besides.each) } } : {}),
      source: `times ${factor.toFixed(2)}: ${because}`,
    };
  });
}
