import * as z from 'zod';
import { amount, known, readParameters, size } from '../../measure/parameters.js';
import { refusal, ShopError } from '../../measure/shop-error.js';
import { airTemperatureC, humidity } from '../air/air-fields.js';
import type { AirOnDay } from '../air/daily-air.js';
import { species as speciesOf } from '../species.js';
import { gravityAt12 } from '../specific-gravity.js';
import { type BoardInAir, putInAir } from './board-in-air.js';
import { finishResistance } from './finish-resistance.js';
import { moistureExcluding } from './moisture-excluding.js';

/** A board or panel whose two faces meet the same air. */
export interface DryingBoard {
  /** As text or inches. */
  thickness: number | string;
  /** Id, such as `walnut-black`. */
  species: string;
  /** Id, such as `shellac-2-coats`; left out for bare wood. */
  finish?: string;
  /** Ovendry mass over that of as much water, for a wood without a published one or a board that was weighed. */
  specificGravity?: number;
  /** What the published diffusivity is multiplied by: 0.5 to 2 is the doubt in it; 1 unless told otherwise. */
  diffusionFactor?: number;
}

/** Moisture of a board on one day, %. */
export interface MoistureOnDay {
  day: number;
  /** Over the thickness: what moves it, and what a meter's long pins read. */
  mean: number;
  /** Just under the finish. */
  surface: number;
  /** In the middle. */
  core: number;
}

const elsewhere = z.unknown().optional();

const boardFields = z.strictObject({
  thickness: size({ least: 1 / 32, most: 6, why: 'thickness of the board' }),
  species: known(speciesOf, 'the wood of the board'),
  finish: known(moistureExcluding, 'finish and coats').optional(),
  specificGravity: amount({ least: 0.1, most: 1, why: 'ovendry mass over that of as much water' }).optional(),
  diffusionFactor: amount({
    least: 0.1,
    most: 10,
    why: 'what the published diffusivity is multiplied by',
  }).default(1),
  // Read where they are used; named here so that a slip of the pen in any other name is told.
  air: elsewhere,
  startMoisture: elsewhere,
  within: elsewhere,
  temperatureC: elsewhere,
  temperatureF: elsewhere,
  relativeHumidity: elsewhere,
});

const airFields = z.object({
  air: z
    .array(
      z.object({
        day: z.number({ error: 'possible: a number of days (dailyAir makes days of months and readings)' }),
        temperatureC: airTemperatureC,
        relativeHumidity: humidity(),
      }),
      { error: 'possible: a list of days with their air, as dailyAir gives it' },
    )
    .min(2, 'possible: at least two days'),
});

/**
 * A board's input as the solver takes it.
 *
 * @throws ShopError  one line: the field, the value given, what is possible, why
 * @internal
 */
export function readBoard(board: DryingBoard): BoardInAir {
  const { thickness, species, finish, specificGravity, diffusionFactor } = readParameters(boardFields, board);
  const gravity = specificGravity ?? gravityAt12(species)?.value;
  if (gravity === undefined)
    throw new ShopError(
      `species: ${species} has no published specific gravity; give one as specificGravity (ovendry mass over that of as much water)`,
    );
  return {
    halfThickness: (thickness * 0.0254) / 2,
    // The diffusivity is known up to 1, where the cells hardly have a hollow left; the few denser woods are taken as that.
    specificGravity: Math.min(gravity, 1),
    finishResistance: finish === undefined ? 0 : finishResistance(finish, diffusionFactor),
    diffusionFactor,
  };
}

/**
 * A list of days with their air, in order.
 *
 * @throws ShopError  names the day and field at fault
 * @internal
 */
export function readDays(given: AirOnDay[]): AirOnDay[] {
  const { air } = readParameters(airFields, { air: given });
  const back = air.findIndex(({ day }, index) => index > 0 && day <= (air[index - 1] as AirOnDay).day);
  if (back > 0)
    throw refusal({
      path: ['air', back, 'day'],
      given: air[back]?.day,
      possible: `possible: more than ${air[back - 1]?.day} (days must rise)`,
    });
  return air;
}

/**
 * A moisture that a board starts from.
 *
 * @throws ShopError  below 0 or above fibre saturation
 * @internal
 */
export function readStart(startMoisture: number, species: string): number {
  const { fibreSaturation, commonName } = speciesOf(species);
  if (startMoisture >= 0 && startMoisture <= fibreSaturation) return startMoisture;
  throw new ShopError(
    `startMoisture: ${startMoisture} % given; 0 to ${fibreSaturation} % is possible (above fibre saturation ${commonName.toLowerCase()} holds free water, which dries otherwise)`,
  );
}

/** The air between the days of a list: straight from each day's to the next. @internal */
export function airBetween(air: AirOnDay[]): (day: number) => { temperatureC: number; relativeHumidity: number } {
  let index = 0;
  return (day) => {
    while (index < air.length - 2 && day > (air[index + 1] as AirOnDay).day) index++;
    while (index > 0 && day < (air[index] as AirOnDay).day) index--;
    const from = air[index] as AirOnDay;
    const to = air[index + 1] as AirOnDay;
    const part = (day - from.day) / (to.day - from.day);
    return {
      temperatureC: from.temperatureC + part * (to.temperatureC - from.temperatureC),
      relativeHumidity: from.relativeHumidity + part * (to.relativeHumidity - from.relativeHumidity),
    };
  };
}

/**
 * Moisture of a board through time: it follows its air late and less.
 *
 * One-dimensional diffusion through the thickness, both faces alike, diffusivity by moisture and temperature; at the
 * faces still air and the finish hold the vapour back. Between the days given the air changes straight from one to the
 * next. Left out: end grain and edges, the lag of sorption behind humidity (hysteresis), the heat of sorption.
 *
 * @param board.thickness  text or inches, 1/32 to 6 in
 * @param board.species  id, for its specific gravity
 * @param board.air  days in order, as many as wanted, evenly spaced or not
 * @param board.startMoisture  % throughout on the first day; up to fibre saturation
 * @param board.finish  finish and coats on both faces; bare unless told otherwise
 * @returns one entry for each day of `air`, the first as it started, %
 * @throws ShopError  one line: the field, the value given, what is possible, why
 * @see diffusivity: {@link diffusivity}, good to a factor of 2; equilibrium: {@link equilibriumMoisture}; finish:
 *   `finishResistance`
 */
export function moistureThroughTime(board: DryingBoard & { air: AirOnDay[]; startMoisture: number }): MoistureOnDay[] {
  const air = readDays(board.air);
  const inAir = readBoard(board);
  const startMoisture = readStart(board.startMoisture, board.species);
  const { day: first } = air[0] as AirOnDay;
  const slab = putInAir(inAir, startMoisture, airBetween(air), first);
  return air.map(({ day }) => {
    slab.advance(day);
    return { day, mean: slab.mean, surface: day === first ? startMoisture : slab.face, core: slab.middle };
  });
}
