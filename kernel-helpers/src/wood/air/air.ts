import * as z from 'zod';
import data from '../../../../data/climates.json';
import { dataTable } from '../../measure/data-file.js';
import type { Formula } from '../../measure/formula.js';
import { amount, readParameters } from '../../measure/parameters.js';
import { ShopError } from '../../measure/shop-error.js';
import { byDay, type HygrometerReading } from './hygrometer.js';
import { monthNames } from './months.js';
import { saturationPressure } from './psychrometrics.js';

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
  /** How many days with readings stand behind it, where it comes from readings. */
  days?: number;
}

/** What a house does to the air that comes in. Left out: it does nothing of the kind. */
export interface Heating {
  /** Heated to at least this, °C. */
  heatTo?: number;
  /** Cooled to at most this, °C. */
  coolTo?: number;
  /** Humidified to at least this, 0 to 1. */
  humidifyTo?: number;
  /** Dried to at most this, 0 to 1. */
  dehumidifyTo?: number;
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

const heatingFields = z.strictObject({
  heatTo: amount({ least: 0, most: 35, unit: '°C', why: 'what the room is heated to' }).optional(),
  coolTo: amount({ least: 5, most: 40, unit: '°C', why: 'what the room is cooled to' }).optional(),
  humidifyTo: amount({ least: 0, most: 0.8, why: 'least humidity kept, a fraction: 35 % is 0.35' }).optional(),
  dehumidifyTo: amount({ least: 0.2, most: 1, why: 'most humidity allowed, a fraction: 55 % is 0.55' }).optional(),
});

const climates = dataTable('climates.json', data, { list: 'climates', what: 'place', entry: climateEntry });

/**
 * A place's monthly outdoor means.
 *
 * @param id  such as `chicago-ohare`
 * @throws ShopError  names the nearest places
 */
export function climate(id: string): Climate {
  return climates.entry(id);
}

/**
 * A year of indoor air, month by month: either a place's outdoor air heated or cooled with its water vapour kept, then
 * humidified or dried to the limits given; or the maker's own hygrometer readings of the room as it is.
 *
 * @param year.place  a climate's id
 * @param year.heating  what the house does to it
 * @param year.readings  instead of a place: as `readHygrometer` gives them; days count alike however often they were
 *   read, and the same month of several years is taken together
 * @returns twelve months, January first
 * @throws ShopError  unknown place, limits out of range, months without a reading
 * @see ASHRAE Handbook Fundamentals (2017), chapter 1, through psychrolib: vapour pressure is kept when air is heated
 */
export function yearOfAir(
  year: { place: string; heating?: Heating } | { readings: HygrometerReading[] },
): MonthOfAir[] {
  return 'readings' in year ? yearOfReadings(year.readings) : yearOfPlace(year);
}

/** Humidity of air that is brought to another temperature with its vapour kept. */
export const heatedAirFormula: Formula<'h' | 'po' | 'pn'> = {
  name: 'Humidity of heated air',
  result: { tex: 'h_i', meaning: 'relative humidity indoors, 0 to 1', unit: '' },
  expression: 'h * po / pn',
  symbols: {
    h: { tex: 'h_o', meaning: 'relative humidity outdoors, 0 to 1', unit: '', min: 0, max: 1 },
    po: {
      tex: 'p_o',
      meaning: 'vapour pressure of saturated air at the temperature outdoors, -40 to 60 °C',
      unit: 'Pa',
      min: 0,
    },
    pn: { tex: 'p_i', meaning: 'and at the temperature indoors', unit: 'Pa', min: 0 },
  },
  source:
    'ASHRAE Handbook Fundamentals (2017), chapter 1, eq. 5, 6 and 22: the pressure of the vapour is kept when air is heated',
};

/** The numbers that {@link heatedAirFormula} takes for this air and the temperature it is brought to, °C: for its typeset working. */
export function heatedAirValues(
  outdoors: Pick<MonthOfAir, 'temperatureC' | 'relativeHumidity'>,
  indoorsC: number,
): Record<'h' | 'po' | 'pn', number> {
  return {
    h: outdoors.relativeHumidity,
    po: saturationPressure(outdoors.temperatureC),
    pn: saturationPressure(indoorsC),
  };
}

function yearOfPlace(year: { place: string; heating?: Heating }): MonthOfAir[] {
  const outdoors = climate(year.place);
  const { heatTo, coolTo, humidifyTo = 0, dehumidifyTo = 1 } = readParameters(heatingFields, year.heating ?? {});
  return outdoors.temperatureC.map((outdoorC, index) => {
    const dewPointC = outdoors.dewPointC?.[index];
    const vapourPressure =
      dewPointC === undefined
        ? saturationPressure(outdoorC) * ((outdoors.relativeHumidityPercent[index] as number) / 100)
        : saturationPressure(dewPointC);
    const temperatureC = Math.min(Math.max(outdoorC, heatTo ?? -Infinity), coolTo ?? Infinity);
    const carried = vapourPressure / saturationPressure(temperatureC);
    const relativeHumidity = Math.min(Math.max(carried, humidifyTo), dehumidifyTo, 1);
    return { month: index + 1, temperatureC, relativeHumidity };
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
