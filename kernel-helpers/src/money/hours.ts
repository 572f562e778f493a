import { randomLcg } from 'd3-random';
import * as z from 'zod';
import { amount, readParameters } from '../measure/parameters.js';
import { ShopError } from '../measure/shop-error.js';
import { allOperations, type Counts, type CountUnit, type Operation } from './operations.js';
import { deviationTogether, drawnPaces, pacedDeviation, usualPace } from './pace.js';
import { percentiles, pertMoments, pertQuantile, type ThreePoints } from './pert.js';

/** Hours of one operation, or of all. */
export interface Hours {
  mean: number;
  /** Standard deviation. */
  deviation: number;
}

/** Hours of one operation, and what they rest on. */
export interface OperationHours extends Hours {
  id: string;
  name: string;
  count: number;
  per: CountUnit;
  /** Set-up and all of the counted things, minutes. */
  minutes: ThreePoints;
}

/** Hours of a piece. */
export interface HoursEstimate extends Hours {
  /** One case in ten is below `low`, one in ten above `high`. */
  low: number;
  high: number;
  /** What is enough in half of all cases, in eight and in nineteen of twenty. */
  p50: number;
  p80: number;
  p95: number;
  /** Scatter of the pace that all operations share, a part of the estimate. */
  pace: number;
  simulations: number;
  seed: number;
  byOperation: OperationHours[];
}

/** What a simulation needs besides its subject. @internal */
export const simulationFields = {
  pace: amount({ least: 0, most: 1, why: 'how far the pace of a whole piece scatters: 18 % is 0.18' }).default(
    usualPace,
  ),
  simulations: amount({ least: 100, most: 1_000_000, why: 'how many pieces are tried' }).default(10_000),
  seed: amount({ least: 0, most: 2 ** 31, why: 'the same seed gives the same figures' }).default(1),
};

const fields = z.object(simulationFields);

/**
 * Hours of a piece from what is counted on it. An operation whose count is zero takes nothing.
 *
 * One time holds for all of a kind, set-up included: a slow day makes every tail slow. Each operation is drawn from PERT's
 * beta distribution, and all of a piece share its pace.
 *
 * @param estimate.counts  how many of each, see {@link countWork}
 * @param estimate.operations  in working order; those of a box unless told otherwise
 * @param estimate.pace  scatter of that pace, a part of the estimate; see {@link usualPace}
 * @param estimate.seed  the same seed gives the same figures; 1 unless told otherwise
 * @returns hours; mean and deviation in closed form, the rest simulated
 * @throws ShopError  a count that is below zero or no number
 * @see {@link pertMean}, {@link pertVariance}, {@link pacedVariance}
 */
export function estimateHours(estimate: {
  counts: Counts;
  operations?: Operation[];
  pace?: number;
  simulations?: number;
  seed?: number;
}): HoursEstimate {
  const { counts, operations = allOperations() } = estimate;
  const { pace, simulations, seed } = readParameters(fields, { ...estimate });
  const byOperation = operations.filter(({ per }) => countOf(counts, per) > 0).map((one) => hoursOf(one, counts, pace));
  const tried = simulate(
    byOperation.map(({ minutes }) => minutes),
    { pace, simulations, seed },
  );
  const [low, p50, p80, high, p95] = percentiles(tried, [0.1, 0.5, 0.8, 0.9, 0.95]) as [
    number,
    number,
    number,
    number,
    number,
  ];
  return {
    mean: byOperation.reduce((sum, operation) => sum + operation.mean, 0),
    deviation: deviationTogether(byOperation, pace),
    low,
    high,
    p50,
    p80,
    p95,
    pace,
    simulations,
    seed,
    byOperation,
  };
}

function countOf(counts: Counts, per: CountUnit): number {
  const { [per]: count = 0 } = counts;
  if (!(count >= 0 && count < Infinity))
    throw new ShopError(`counts: ${count} ${per} given; possible: a number of zero or more`);
  return count;
}

function hoursOf(operation: Operation, counts: Counts, pace: number): OperationHours {
  const { id, name, per, setUp, each, besides } = operation;
  const count = countOf(counts, per);
  const more = besides ? countOf(counts, besides.per) : 0;
  const minutes = setUp.map(
    (point, i) => point + count * (each[i] as number) + more * (besides?.each[i] ?? 0),
  ) as ThreePoints;
  const { mean, deviation } = pertMoments(minutes);
  return { id, name, count, per, minutes, mean: mean / 60, deviation: pacedDeviation(mean, deviation, pace) / 60 };
}

/** Hours of as many pieces as are tried. */
function simulate(operations: ThreePoints[], tried: { pace: number; simulations: number; seed: number }): Float64Array {
  const random = randomLcg(tried.seed);
  const paces = drawnPaces(tried.simulations, tried.pace, random);
  const hours = new Float64Array(tried.simulations);
  for (const quantile of operations.map(pertQuantile))
    for (let i = 0; i < hours.length; i++) hours[i] = (hours[i] as number) + quantile(random()) / 60;
  return hours.map((own, i) => own * (paces[i] as number));
}
