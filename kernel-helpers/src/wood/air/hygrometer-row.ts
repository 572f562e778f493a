import * as z from 'zod';
import type { TableRow } from '../../measure/csv-table.js';
import { celsius } from '../../measure/temperature.js';
import { type HygrometerColumns, humidityUnitIn, temperatureUnitIn } from './hygrometer-header.js';
import type { HygrometerReading, ReadingProblem } from './hygrometer-reading.js';

/** A reading with the line it came from and its values as they were written. */
export interface NumberedReading extends HygrometerReading {
  line: number;
  written: { temperature: string; humidity: string };
}

/** Coldest and warmest air that a hygrometer in a house or shed meets, °C: common practice, no source. */
const possibleC = [-40, 60] as const;

/** One row as a reading, or what is wrong with it. @internal */
export function readRow(
  row: TableRow,
  columns: HygrometerColumns,
  separator: string,
): NumberedReading | ReadingProblem {
  const { line, fields } = row;
  const left = (what: string) => ({ line, what: `${what}; the row is left out` });
  if (fields.length !== columns.count) {
    const tooMany = separator === ',' ? ' (a decimal comma? write 21.5)' : '';
    const why = fields.length < columns.count ? ' (parted otherwise than the header?)' : tooMany;
    return left(`${fields.length} of ${columns.count} fields${why}`);
  }
  const text = (place: number) => fields[place] as string;
  const unitFrom = <T>(place: number, unitIn: (text: string) => T | undefined) =>
    [place, ...columns.units].map((at) => unitIn(text(at))).find((unit) => unit !== undefined);

  const date = isoDate(columns.time === undefined ? text(columns.date) : `${text(columns.date)} ${text(columns.time)}`);
  if (date === undefined) return left(`date "${text(columns.date)}" is not a day in ISO form, such as 2026-02-14`);

  const temperature = numberIn(text(columns.temperature), separator);
  if (temperature === undefined) return left(`temperature "${text(columns.temperature)}" is not a number`);
  const ownTemperatureUnit = unitFrom(columns.temperature, temperatureUnitIn);
  if (ownTemperatureUnit && columns.temperatureUnit && ownTemperatureUnit !== columns.temperatureUnit)
    return left(`temperature in ${ownTemperatureUnit} under a header in ${columns.temperatureUnit}`);
  const temperatureUnit = ownTemperatureUnit ?? columns.temperatureUnit;
  const temperatureC = temperatureUnit === '°F' ? celsius(temperature) : temperature;
  if (temperatureC < possibleC[0] || temperatureC > possibleC[1])
    return left(`temperature ${temperature} ${temperatureUnit} is not possible here`);

  const humidity = numberIn(text(columns.humidity), separator);
  if (humidity === undefined) return left(`humidity "${text(columns.humidity)}" is not a number`);
  const ownHumidityUnit = unitFrom(columns.humidity, humidityUnitIn);
  if (ownHumidityUnit && columns.humidityUnit && ownHumidityUnit !== columns.humidityUnit)
    return left(`humidity as ${ownHumidityUnit} under a header of ${columns.humidityUnit}`);
  const inPercent = (ownHumidityUnit ?? columns.humidityUnit) === '%';
  if (inPercent && humidity > 0 && humidity <= 1)
    return left(
      `humidity ${humidity} among percentages looks like a fraction (${Number((humidity * 100).toPrecision(6))} %?)`,
    );
  if (!inPercent && humidity > 1 && humidity <= 100)
    return left(
      `humidity ${humidity} among fractions looks like a percentage (${Number((humidity / 100).toPrecision(6))}?)`,
    );
  const relativeHumidity = inPercent ? humidity / 100 : humidity;
  if (!(relativeHumidity > 0 && relativeHumidity <= 1))
    return left(`humidity ${humidity}${inPercent ? ' %' : ''} is not possible`);

  const written = {
    temperature: `${temperature} ${temperatureUnit}`,
    humidity: inPercent ? `${humidity} %` : `${humidity}`,
  };
  return { line, date, temperatureC, relativeHumidity, written };
}

/** A number, with its unit behind it or not; a decimal comma only where commas do not part the fields. */
function numberIn(text: string, separator: string): number | undefined {
  const plain = separator === ',' ? text : text.replace(',', '.');
  const match = /^([+-]?(?:\d+\.?\d*|\.\d+))\s*(?:%|[°º\uFFFD]?\s*[cf])?$/i.exec(plain);
  return match ? Number(match[1]) : undefined;
}

const dayThatExists = z.iso.date();

/** A day that exists, with the time of day where there is one; parts of a second and a time zone are dropped. */
function isoDate(text: string): string | undefined {
  const [, day, clock, seconds = ''] =
    /^(\d{4}-\d{2}-\d{2})(?:[T ]((?:[01]\d|2[0-3]):[0-5]\d)(?:(:[0-5]\d)(?:\.\d+)?)?\s*(?:Z|[+-]\d{2}:?\d{2})?)?$/.exec(
      text.trim(),
    ) ?? [];
  if (!dayThatExists.safeParse(day).success) return undefined;
  return clock === undefined ? day : `${day}T${clock}${seconds}`;
}
