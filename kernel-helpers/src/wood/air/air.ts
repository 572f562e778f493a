import * as z from 'zod';
import data from '../../../../data/climates.json';
import { dataTable } from '../../measure/data-file.js';
import { ShopError } from '../../measure/shop-error.js';
import { byDay } from './hygrometer.js';
import type { HygrometerReading } from './hygrometer-reading.js';
import { monthNames } from './months.js';
import { placeCalled } from './places.js';
import { saturationPressure } from './psychrometrics.js';
import { type Heating, readHeating, roomAir, type SetBy } from './room-air.js';

/** A place's monthly outdoor means. */
export interface Climate {
  /** Such as `chicago-ohare`. */
  id: string;
  place: string;
  country: string;
  kind: '30-year means' | 'typical year';
  /** January to December, °C. */
  temperatureC: number[];
  /** January to December, %. */
  relativeHumidityPercent: number[];
  /** January to December, °C, where published: safer for vapour than the mean humidity. */
  dewPointC?: number[];
  source: string;
  fromMemory: boolean;
  note?: string;
}

/** Mean air of one month. */
export interface MonthOfAir {
  /** 1 to 12. */
  month: number;
  temperatureC: number;
  /** 0 to 1. */
  relativeHumidity: number;
  /** What its humidity was last set by, where it is worked from a place's air and a house. */
  setBy?: SetBy;
  /** How many days with readings stand behind it, where it comes from readings. */
  days?: number;
}

const months = (least: number, most: number) => z.array(z.number().min(least).max(most)).length(12);

const climateEntry: z.ZodType<Climate> = z.strictObject({
  id: z.string().regex(/^[a-z0-9-]+$/),
  place: z.string().min(1),
  country: z.string().length(2),
  kind: z.enum(['30-year means', 'typical year']),
  temperatureC: months(-50, 50),
  relativeHumidityPercent: months(1, 100),
  dewPointC: months(-60, 35).optional(),
  source: z.string().min(1),
  fromMemory: z.boolean(),
  note: z.string().optional(),
});

const climates = dataTable('climates.json', data, { list: 'climates', what: 'place', entry: climateEntry });

/**
 * A place's monthly outdoor means.
 *
 * @param place  an id such as `chicago-ohare`, or an ordinary name: "Chicago", "Portland, OR", or a town near one of the places, such
 *   as "Denver"
 * @throws ShopError  names the nearest places
 */
export function climate(place: string): Climate {
  return climates.byId().get(place) ?? placeCalled(String(place), climates.all());
}

/** All places, in the order of data/climates.json. */
export function allClimates(): Climate[] {
  return climates.all();
}

/**
 * A year of air, month by month: either a place's, outdoors where no house is given, else in the house: heated or cooled,
 * with the vapour that people add, dried by the coil of the cooling, then humidified or dried to the limits given; or the
 * maker's own hygrometer readings of the room as it is.
 *
 * @param year.place  a climate's id
 * @param year.heating  what the house does to it; outdoors when left out
 * @param year.readings  instead of a place: as `readHygrometer` gives them; days count alike however often they were
 *   read, and the same month of several years is taken together
 * @returns twelve months, January first
 * @throws ShopError  unknown place, limits out of range, months without a reading
 * @see `heatedAirFormula`, `vapourAddedFormula`; ASHRAE Handbook Fundamentals (2017), chapter 1, through psychrolib
 */
export function yearOfAir(
  year: { place: string; heating?: Heating } | { readings: HygrometerReading[] },
): MonthOfAir[] {
  return 'readings' in year ? yearOfReadings(year.readings) : yearOfPlace(year);
}

function yearOfPlace(year: { place: string; heating?: Heating }): MonthOfAir[] {
  const outdoors = outdoorsOf(climate(year.place));
  if (!year.heating) return outdoors;
  const house = readHeating(year.heating);
  return outdoors.map((air) => ({ month: air.month, ...roomAir(air, house) }));
}

function outdoorsOf({ temperatureC, relativeHumidityPercent, dewPointC }: Climate): MonthOfAir[] {
  return temperatureC.map((outdoorC, index) => {
    const dewPoint = dewPointC?.[index];
    const relativeHumidity =
      dewPoint === undefined
        ? (relativeHumidityPercent[index] as number) / 100
        : Math.min(saturationPressure(dewPoint) / saturationPressure(outdoorC), 1);
    return { month: index + 1, temperatureC: outdoorC, relativeHumidity };
  });
}

function yearOfReadings(readings: HygrometerReading[]): MonthOfAir[] {
  const days = byDay(readings);
  const months = monthNames.map((name, index) => {
    const own = days.filter(({ date }) => Number(date.slice(5, 7)) === index + 1);
    const mean = (value: (day: (typeof own)[number]) => number) =>
      own.reduce((sum, day) => sum + value(day), 0) / own.length;
    return {
      name,
      month: index + 1,
      temperatureC: mean((day) => day.temperatureC),
      relativeHumidity: mean((day) => day.relativeHumidity),
      days: own.length,
    };
  });
  const missing = months.filter(({ days }) => days === 0).map(({ name }) => name);
  if (missing.length > 0)
    throw new ShopError(
      `readings: none in ${missing.join(', ')}; a year needs every month (read on, or give a place and its heating)`,
    );
  return months.map(({ name, ...month }) => month);
}
