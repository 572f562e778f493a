import { randomLcg, randomNormal } from 'd3-random';
import * as z from 'zod';
import { compileFormula } from '../measure/formula.js';
import { amount, known, readParameters, size } from '../measure/parameters.js';
import { boardVariation, movement, shrinkageFormula } from '../wood/movement.js';
import { species as speciesOf } from '../wood/species.js';
import type { FitMonth, SeasonalFit } from './seasonal-fit.js';

/** How often a piece planed to one width would fit, of many that might be made. Fractions of one. */
export interface FitOdds {
  /** Stays within both limits the whole year. */
  fits: number;
  /** Comes under the least play in the wettest month. */
  binds: number;
  /** Goes over the most play in the driest month. */
  rattles: number;
  /** Play in the wettest and in the driest month: one in twenty below, middle, one in twenty above; in. */
  wettest: [low: number, middle: number, high: number];
  driest: [low: number, middle: number, high: number];
  simulations: number;
  seed: number;
}

const nineInTen = 1.6449;

const fields = z.object({
  species: known(speciesOf, 'the wood of the piece'),
  ringAngle: amount({ least: 0, most: 90, unit: 'degrees', why: '0 flat-sawn, 90 quarter-sawn' }),
  width: size({ least: 0.1, most: 100, why: 'width it is planed to' }).optional(),
  meterError: amount({ least: 0, most: 5, unit: '%', why: 'nine readings in ten are this close' }).default(1),
  airDoubt: amount({
    least: 0,
    most: 5,
    unit: '%',
    why: 'nine years in ten are this close, in moisture of the wood',
  }).default(1),
  cuttingError: size({ least: 0, most: 0.25, why: 'nine cuts in ten are this close' }).default(1 / 128),
  simulations: amount({ least: 100, most: 1_000_000, why: 'how many are made' }).default(20_000),
  seed: amount({ least: 0, most: 2 ** 31, why: 'the same seed gives the same odds' }).default(1),
});

/**
 * Odds that a piece planed to a width fits the whole year: many boards, meters, years and cuts are drawn at random.
 *
 * What is drawn, each from a normal distribution: the board's movement (coefficient of variation 17.5 %), the meter's error,
 * the moisture of the wettest and of the driest month, the cut.
 *
 * @param draw.fit  see {@link SeasonalFit}: opening, limits, months
 * @param draw.width  width planed to; what the fit aims at, unless told otherwise, in
 * @param draw.meterError, draw.airDoubt, draw.cuttingError  what nine in ten stay within: 1 %, 1 %, 1/128 in unless told otherwise
 * @param draw.seed  the same seed gives the same odds
 * @returns fractions of one
 * @throws ShopError  one line: the field, the value given, what is possible, why
 * @see spread of boards, meters and years: common practice, no source; movement: {@link shrinkageFormula}
 */
export function fitOdds(draw: {
  fit: SeasonalFit;
  species: string;
  ringAngle: number;
  width?: number | string;
  meterError?: number;
  airDoubt?: number;
  cuttingError?: number | string;
  simulations?: number;
  seed?: number;
}): FitOdds {
  const { fit } = draw;
  const read = readParameters(fields, { ...draw });
  const { simulations, seed } = read;
  const width = read.width ?? fit.fittedWidth;
  const { opening, limits, fittingMoisture } = fit;
  const at = (month: number) => (fit.byMonth.find((other) => other.month === month) as FitMonth).moisture;
  const wetMoisture = at(fit.wettest);
  const dryMoisture = at(fit.driest);
  const strain = strainBetween(read.species, read.ringAngle);
  const normal = randomNormal.source(randomLcg(seed))(0, 1);

  const wet = new Float64Array(simulations);
  const dry = new Float64Array(simulations);
  let binds = 0;
  let rattles = 0;
  let fits = 0;
  for (let i = 0; i < simulations; i++) {
    // A board that hardly moves is possible, one that moves the other way is not.
    const board = Math.max(0, 1 + boardVariation * normal());
    const today = fittingMoisture + (read.meterError / nineInTen) * normal();
    const year = read.airDoubt / nineInTen;
    const planed = width + (read.cuttingError / nineInTen) * normal();
    const inWet = opening - planed * (1 + board * strain(today, wetMoisture + year * normal()));
    const inDry = opening - planed * (1 + board * strain(today, dryMoisture + year * normal()));
    const tight = Math.min(inWet, inDry) < limits.leastClearance;
    const loose = Math.max(inWet, inDry) > limits.mostClearance;
    if (tight) binds++;
    if (loose) rattles++;
    if (!tight && !loose) fits++;
    wet[i] = inWet;
    dry[i] = inDry;
  }
  return {
    fits: fits / simulations,
    binds: binds / simulations,
    rattles: rattles / simulations,
    wettest: middleNine(wet),
    driest: middleNine(dry),
    simulations,
    seed,
  };
}

const overMoistures = compileFormula(shrinkageFormula, ['Mi', 'Mf']);

/** Strain from one moisture content to another, by the handbook's long form; none past fibre saturation. */
function strainBetween(id: string, ringAngle: number): (from: number, to: number) => number {
  const { fibreSaturation: M0 } = speciesOf(id);
  // One end under 6 % asks for the long form.
  const { figure } = movement({ across: 1, species: id, ringAngle, fromMoisture: 5, toMoisture: 10 }).method;
  const strain = overMoistures({ D: 1, S: figure, M0 });
  return (from, to) => strain(from, Math.min(to, M0));
}

function middleNine(values: Float64Array): [number, number, number] {
  const sorted = values.sort();
  const at = (share: number) => sorted[Math.round(share * (sorted.length - 1))] as number;
  return [at(0.05), at(0.5), at(0.95)];
}
