import { ShopError } from '../../measure/shop-error.js';
import { type Climate, climate } from '../place/climates.js';
import { byDay } from './hygrometer.js';
import type { HygrometerReading } from './hygrometer-reading.js';
import { monthNames } from './months.js';
import { outdoorsOf } from './outdoors.js';
import { type Heating, readHeating, roomAir, type SetBy } from './room-air.js';

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

/**
 * A year of air, month by month: either a place's, outdoors where no house is given, else in the house: heated or cooled,
 * with the vapour that people add, dried by the coil of the cooling, then humidified or dried to the limits given; or the
 * maker's own hygrometer readings of the room as it is.
 *
 * @param year.place  a climate's id, a name as `climate` reads it, or a place of the maker's own
 * @param year.heating  what the house does to it; outdoors when left out
 * @param year.readings  instead of a place: as `readHygrometer` gives them; days count alike however often they were
 *   read, and the same month of several years is taken together
 * @returns twelve months, January first
 * @throws ShopError  unknown place, limits out of range, months without a reading
 * @see `heatedAirFormula`, `vapourAddedFormula`; ASHRAE Handbook Fundamentals (2017), chapter 1, through psychrolib
 */
export function yearOfAir(
  year: { place: string | Climate; heating?: Heating } | { readings: HygrometerReading[] },
): MonthOfAir[] {
  return 'readings' in year ? yearOfReadings(year.readings) : yearOfPlace(year);
}

function yearOfPlace(year: { place: string | Climate; heating?: Heating }): MonthOfAir[] {
  const outdoors = outdoorsOf(climate(year.place));
  if (!year.heating) return outdoors;
  const house = readHeating(year.heating);
  return outdoors.map((air) => ({ month: air.month, ...roomAir(air, house) }));
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
