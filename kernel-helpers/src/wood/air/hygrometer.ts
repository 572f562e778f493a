import * as z from 'zod';
import { tableRows } from '../../measure/csv-table.js';
import { readParameters } from '../../measure/parameters.js';
import { ShopError } from '../../measure/shop-error.js';
import { airTemperatureC, humidity } from './air-fields.js';
import { readingChecks } from './hygrometer-checks.js';
import { readHeader } from './hygrometer-header.js';
import type { HygrometerReading, HygrometerUnits, ReadingProblem } from './hygrometer-reading.js';
import { type NumberedReading, readRow } from './hygrometer-row.js';

/**
 * The maker's hygrometer readings from a table of text (CSV).
 *
 * The first line names the columns: date, temperature and humidity, in any order; others are passed over. The unit
 * stands in the header (`temperature (°C)`, `RH %`), in a column of its own (`unit`) or behind each value (`68 °F`).
 * Comma, semicolon or tab between fields; dates in ISO form (2026-02-14), with or without a time of day. What is doubtful
 * is reported with its line and left out, or kept and said so; nothing is guessed.
 *
 * @param csvText  the file's text
 * @param units  units that neither header nor values tell
 * @returns readings in order of date; problems in order of line: rows left out, days without a reading, doubled rows, a
 *   value that stays the same for five days or more (common practice, no source)
 * @throws ShopError  when what is given is not text
 */
export function readHygrometer(
  csvText: string,
  units: HygrometerUnits = {},
): { readings: HygrometerReading[]; problems: ReadingProblem[] } {
  if (typeof csvText !== 'string')
    throw new ShopError("csvText: the file's text is needed, such as readFileSync('shop-air.csv', 'utf8') gives");
  const table = tableRows(csvText);
  if ('what' in table) return { readings: [], problems: [table] };
  const header = readHeader(table, units);
  if ('what' in header) return { readings: [], problems: [header] };

  const problems: ReadingProblem[] = [...header.problems];
  const read: NumberedReading[] = [];
  for (const row of table.rows) {
    const reading = readRow(row, header, table.separator);
    if ('what' in reading) problems.push(reading);
    else read.push(reading);
  }
  const { kept, problems: found } = readingChecks(read);
  return {
    readings: kept.map(({ date, temperatureC, relativeHumidity }) => ({ date, temperatureC, relativeHumidity })),
    problems: [...problems, ...found].sort((a, b) => a.line - b.line),
  };
}

const readingsField = z.object({
  readings: z.array(
    z.object({
      date: z.string().regex(/^\d{4}-\d{2}-\d{2}/, 'possible: a date in ISO form, such as 2026-02-14'),
      temperatureC: airTemperatureC,
      relativeHumidity: humidity(),
    }),
    { error: 'possible: the readings that readHygrometer gives' },
  ),
});

/**
 * Mean of each day that has readings, in order.
 *
 * @throws ShopError  names the reading and field at fault
 * @internal
 */
export function byDay(readings: HygrometerReading[]): HygrometerReading[] {
  const days = new Map<string, HygrometerReading[]>();
  for (const reading of readParameters(readingsField, { readings }).readings) {
    const date = reading.date.slice(0, 10);
    days.set(date, [...(days.get(date) ?? []), reading]);
  }
  return [...days]
    .map(([date, own]) => ({
      date,
      temperatureC: own.reduce((sum, { temperatureC }) => sum + temperatureC, 0) / own.length,
      relativeHumidity: own.reduce((sum, { relativeHumidity }) => sum + relativeHumidity, 0) / own.length,
    }))
    .sort((a, b) => a.date.localeCompare(b.date));
}
