import * as z from 'zod';
import { amount, known, readParameters, size } from '../../measure/parameters.js';
import { ShopError } from '../../measure/shop-error.js';
import { shopAir, type TypedShopAir } from '../air/shop-air.js';
import { equilibriumMoisture, humidityFor } from '../emc.js';
import { species as speciesOf } from '../species.js';
import { type DaysToSettle, daysToSettle } from './days-to-settle.js';
import type { DayOfYear } from './swing-followed.js';

/** Steady air of a room. */
export interface SteadyAir {
  temperatureC: number;
  /** 0 to 1. */
  relativeHumidity: number;
}

/** Where a stack waits before it is milled, for how long, and what it comes to. */
export interface StackPlan extends DaysToSettle {
  species: string;
  /** In. */
  thickness: number;
  /** Meter reading, %. */
  moisture: number;
  shop: SteadyAir;
  /** What the shop's own air would bring it to, %. */
  shopSettlesAt: number;
  /** Middle of the later year of what is made of it, %. */
  middle: number;
  /** Air that it waits in: the shop's own, or one that is made for it where the shop's is too far from the middle. */
  air: SteadyAir;
  conditioned: boolean;
}

/** How far from the middle of its later year a shop may settle wood: common practice, no source. Points of moisture. */
export const nearMiddle = 2;

/** A room in which wood is conditioned is heated to at least this, °C: below, water hardly moves in wood. From memory. */
const warmRoom = 20;

const fields = z.object({
  species: known(speciesOf, 'the wood of the stack'),
  thickness: size({ least: 1 / 32, most: 6, why: 'thickness of the stacked boards' }),
  moisture: amount({ least: 3, most: 60, unit: '%', why: 'meter reading of the stack' }),
});

/**
 * Where a stack waits and how long: in the shop's air where that settles wood within 2 % of the middle of its later year, else
 * in air of the humidity that settles it at that middle. It never comes there in the shop.
 *
 * @param stack.shop  see `shopAir`
 * @param stack.later  driest and wettest day of what is made of it, as `swingFollowed` gives them
 * @throws ShopError  one line: the field, the value given, what is possible, why
 * @see {@link daysToSettle}, {@link humidityFor}; 2 %: common practice, no source
 */
export function stackPlan(stack: {
  species: string;
  thickness: number | string;
  moisture: number;
  shop: SteadyAir;
  later: { driest: Pick<DayOfYear, 'moisture'>; wettest: Pick<DayOfYear, 'moisture'> };
}): StackPlan {
  const { shop, later, ...typed } = stack;
  const read = readParameters(fields, typed);
  const middle = (later.driest.moisture + later.wettest.moisture) / 2;
  const shopSettlesAt = equilibriumMoisture(shop);
  const conditioned = Math.abs(shopSettlesAt - middle) > nearMiddle;
  const temperatureC = Math.max(shop.temperatureC, warmRoom);
  const air = conditioned ? { temperatureC, relativeHumidity: humidityFor({ moisture: middle, temperatureC }) } : shop;
  const waits = settling({ ...read, air });
  return { ...read, shop, shopSettlesAt, middle, air, conditioned, ...waits };
}

/**
 * The same stack by a newer reading of the meter: in the air that was decided for it.
 *
 * @param given  meter reading, %; nothing, or empty, keeps that of the plan
 * @throws ShopError  one line; an older record without a stack
 */
export function stackToday(plan: StackPlan | undefined, given?: number | string): StackPlan {
  if (!plan)
    throw new ShopError('stack: the record does not say how it waits (it is an older one); run sheet 03 again');
  if (given === undefined || given === '') return plan;
  const read = readParameters(fields, { ...plan, moisture: given });
  return { ...plan, ...read, ...settling({ ...plan, ...read }) };
}

/**
 * The meter reading of a part on the day it is fitted, or, where none was typed, what wood settles at: its stack, or before a
 * stack was looked at, wood in the shop's air.
 *
 * @param given  %; nothing, or empty, takes what wood settles at
 * @param where  the stack, or the shop's air as it is typed
 * @throws ShopError  nothing typed, and an older record without a stack
 */
export function readingOr(given: number | string | undefined, where: StackPlan | TypedShopAir | undefined): number {
  if (given === undefined || given === '') {
    const settlesAt =
      where && 'shopHumidity' in where ? equilibriumMoisture(shopAir(where)) : stackToday(where).settlesAt;
    return Math.round(10 * settlesAt) / 10;
  }
  return readParameters(fitted, { fittingMoisture: given }).fittingMoisture;
}

const fitted = z.object({
  fittingMoisture: amount({ least: 3, most: 20, unit: '%', why: 'moisture of the part today, by meter' }),
});

const settling = ({
  species,
  thickness,
  moisture,
  air,
}: Pick<StackPlan, 'species' | 'thickness' | 'moisture' | 'air'>) =>
  daysToSettle({ species, thickness, startMoisture: moisture, ...air });
