import * as z from 'zod';
import { amount, readParameters } from '../../measure/parameters.js';
import { ShopError } from '../../measure/shop-error.js';
import { type Air, readAir } from '../air/air-fields.js';
import type { AirOnDay } from '../air/daily-air.js';
import { equilibriumMoisture } from '../emc.js';
import { type BoardInAir, putInAir } from './board-in-air.js';
import { diffusivityDoubt } from './diffusivity.js';
import { airBetween, type DryingBoard, readBoard, readDays, readStart } from './drying.js';

/** How long a stack must wait. */
export interface DaysToSettle {
  /** Whole days until the mean over the thickness is near enough. */
  days: number;
  /** The same with twice and with half the diffusivity: what is known of it. */
  low: number;
  high: number;
  /** Whole days until the middle is, too: before the board is resawn or planed much from one face. */
  coreDays: number;
  /** Moisture that it settles at, %: on the first day, where the air changes. */
  settlesAt: number;
}

/** Ten years: what has not settled by then never will in a shop. */
const mostDays = 3650;

const fields = z.object({
  within: amount({ least: 0.05, most: 10, unit: '%', why: 'points of moisture that count as near enough' }).default(1),
});

/**
 * How many days a stickered board must wait in its new air: until it is within 1 % of moisture of a board that has
 * always been there.
 *
 * @param board.startMoisture  %, throughout
 * @param board.temperatureC, board.temperatureF, board.relativeHumidity  steady air; or
 * @param board.air  days in order; the stack comes in on the first
 * @param board.within  points of moisture that count as near enough; 1 unless told otherwise
 * @throws ShopError  one line; air that ends before the stack has settled
 * @see {@link moistureThroughTime}, its doubt taken as a factor of 2 in the diffusivity
 */
export function daysToSettle(
  board: DryingBoard & { startMoisture: number; within?: number } & (Air | { air: AirOnDay[] }),
): DaysToSettle {
  const { within } = readParameters(fields, { within: board.within });
  const startMoisture = readStart(board.startMoisture, board.species);
  const air = 'air' in board ? readDays(board.air) : steady(readAir(board));
  const { diffusionFactor = 1 } = board;
  const settlesAt = equilibriumMoisture(air[0] as AirOnDay);
  const wait = (factor: number) => {
    const inAir = readBoard({ ...board, diffusionFactor: diffusionFactor * factor });
    return settled(inAir, startMoisture, settlesAt, air, within);
  };
  const { days, coreDays } = wait(1);
  return { days, low: wait(diffusivityDoubt).days, high: wait(1 / diffusivityDoubt).days, coreDays, settlesAt };
}

function steady(air: { temperatureC: number; relativeHumidity: number }): AirOnDay[] {
  return [
    { day: 0, ...air },
    { day: mostDays, ...air },
  ];
}

function settled(board: BoardInAir, startMoisture: number, settlesAt: number, air: AirOnDay[], within: number) {
  const first = (air[0] as AirOnDay).day;
  const last = (air[air.length - 1] as AirOnDay).day;
  const stack = putInAir(board, startMoisture, airBetween(air), first);
  const always = putInAir(board, settlesAt, airBetween(air), first);
  let days: number | undefined;
  for (let day = 0; ; day++) {
    if (first + day > last)
      throw new ShopError(
        `air: it ends after ${Math.floor(last - first)} days with the board still ${Math.abs(stack.middle - always.middle).toFixed(1)} % from settled in the middle; more than ${within} % is left`,
      );
    stack.advance(first + day);
    always.advance(first + day);
    if (days === undefined && Math.abs(stack.mean - always.mean) <= within) days = day;
    if (days !== undefined && Math.abs(stack.middle - always.middle) <= within) return { days, coreDays: day };
  }
}
