import { ShopError } from '../../measure/shop-error.js';
import type { MonthOfAir } from './air.js';
import { byDay } from './hygrometer.js';
import { readingDay } from './hygrometer-checks.js';
import type { HygrometerReading } from './hygrometer-reading.js';
import { monthLengths } from './months.js';

/** Mean air of one day. */
export interface AirOnDay {
  /** Any count of days that rises. */
  day: number;
  temperatureC: number;
  /** 0 to 1. */
  relativeHumidity: number;
}

/**
 * Air day by day: a smooth year drawn through twelve months, or the days of the maker's own readings.
 *
 * Of a year: 365 days, 1 January is day 1. Each month is a parabola that joins its neighbours without a step or a kink,
 * December to January too, and has the month's own mean. It is cut at the lowest and the highest of the twelve means, so
 * that a limit which the house keeps for months is kept on every day; the mean of a month next to such a limit, or of
 * the year's extreme month, moves for that by up to a tenth of the year's swing (20 places tried), mostly far less.
 *
 * Of readings: the mean of each day that has any, counted from the first (day 0); missing days stay missing.
 *
 * @param air.year  as `yearOfAir` gives it
 * @param air.readings  as `readHygrometer` gives them
 * @param air.until  with readings: the last day wanted, such as the day of fitting; ISO date
 * @throws ShopError  a year that is not twelve months; no readings, or readings that end before the day wanted
 */
export function dailyAir(air: { year: MonthOfAir[] } | { readings: HygrometerReading[]; until?: string }): AirOnDay[] {
  return 'year' in air ? smoothYear(air.year) : daysOfReadings(air.readings, air.until);
}

function daysOfReadings(readings: HygrometerReading[], until?: string): AirOnDay[] {
  const days = byDay(readings);
  const first = days[0];
  const last = days[days.length - 1];
  if (!first || !last) throw new ShopError('readings: none given; at least one day of them is needed');
  if (until !== undefined) {
    if (Number.isNaN(readingDay(until)))
      throw new ShopError(`until: "${until}" given; possible: a day in ISO form, such as 2026-02-14`);
    const short = readingDay(until) - readingDay(last.date);
    if (short > 0)
      throw new ShopError(
        `readings: the last is of ${last.date}, ${short === 1 ? '1 day' : `${short} days`} before the day wanted (${until}); read on, or take an earlier day`,
      );
  }
  return days
    .filter(({ date }) => until === undefined || readingDay(date) <= readingDay(until))
    .map(({ date, temperatureC, relativeHumidity }) => ({
      day: readingDay(date) - readingDay(first.date),
      temperatureC,
      relativeHumidity,
    }));
}

function smoothYear(year: MonthOfAir[]): AirOnDay[] {
  if (year.length !== 12 || year.some(({ month }, index) => month !== index + 1))
    throw new ShopError('year: twelve months are needed, January first, as yearOfAir gives them');
  const temperatures = smoothDays(year.map(({ temperatureC }) => temperatureC));
  const humidities = smoothDays(year.map(({ relativeHumidity }) => relativeHumidity));
  return temperatures.map((temperatureC, index) => ({
    day: index + 1,
    temperatureC,
    relativeHumidity: humidities[index] as number,
  }));
}

/** Daily means of parabolas, one a month, that have the monthly means and join without step or kink, cut at the extremes. */
function smoothDays(means: number[]): number[] {
  const at = <T>(list: T[], month: number) => list[(month + 12) % 12] as T;
  // Value where a month starts, from equal slopes on both sides; each sweep leaves at most half the error.
  const starts = means.map((mean, month) => (mean + at(means, month - 1)) / 2);
  for (let sweep = 0; sweep < 60; sweep++)
    for (let month = 0; month < 12; month++) {
      const [before, here] = [1 / at(monthLengths, month - 1), 1 / at(monthLengths, month)];
      starts[month] =
        (6 * (before * at(means, month - 1) + here * at(means, month)) -
          2 * (before * at(starts, month - 1) + here * at(starts, month + 1))) /
        (4 * (before + here));
    }
  const [lowest, highest] = [Math.min(...means), Math.max(...means)];
  return monthLengths.flatMap((length, month) => {
    const [mean, start, end] = [at(means, month), at(starts, month), at(starts, month + 1)];
    const sum = (t: number) => length * t * (start + t * (3 * mean - 2 * start - end + t * (start + end - 2 * mean)));
    return Array.from({ length }, (_, day) =>
      Math.min(Math.max(sum((day + 1) / length) - sum(day / length), lowest), highest),
    );
  });
}
