import type { Table } from '../../measure/csv-table.js';
import type { HygrometerUnits, ReadingProblem } from './hygrometer-reading.js';

/** Where each thing stands in a row, and in which unit where the header tells. */
export interface HygrometerColumns {
  /** How many columns the header names. */
  count: number;
  date: number;
  time?: number;
  temperature: number;
  humidity: number;
  /** Columns that hold a unit. */
  units: number[];
  temperatureUnit?: '°C' | '°F';
  humidityUnit?: '%' | 'fraction';
  problems: ReadingProblem[];
}

type Role = 'date' | 'time' | 'temperature' | 'humidity' | 'unit';

/** Reads the header's names and units; units that it leaves unsaid are looked for in the values. @internal */
export function readHeader({ header, rows }: Table, said: HygrometerUnits): HygrometerColumns | ReadingProblem {
  const { line, fields } = header;
  const problem = (what: string) => ({ line, what: `${what}; nothing was read` });
  const roles = fields.map(roleOf);
  const placesOf = (role: Role) => roles.flatMap((own, place) => (own === role ? [place] : []));
  for (const role of ['date', 'time', 'temperature', 'humidity'] as const) {
    const places = placesOf(role);
    if (places.length > 1)
      return problem(
        `${places.length} columns look like the ${role}: ${places.map((p) => `"${fields[p]}"`).join(', ')}`,
      );
  }
  const [temperature] = placesOf('temperature');
  const [humidity] = placesOf('humidity');
  // A lone column named "time" holds date and time together.
  const [date = placesOf('time')[0]] = placesOf('date');
  const [time] = placesOf('date').length > 0 ? placesOf('time') : [];
  const missing = Object.entries({ date, temperature, humidity }).filter(([, place]) => place === undefined);
  if (date === undefined || temperature === undefined || humidity === undefined)
    return problem(
      `no column for ${missing.map(([name]) => name).join(', ')} in the header (it has ${fields.map((field) => `"${field}"`).join(', ')})`,
    );

  const units = placesOf('unit');
  const temperatureUnit = temperatureUnitIn(fields[temperature] as string) ?? said.temperature;
  const everyRowTells = (place: number, unitIn: (text: string) => unknown) =>
    rows.every((row) => [place, ...units].some((at) => unitIn(row.fields[at] ?? '') !== undefined));
  if (!temperatureUnit && !everyRowTells(temperature, temperatureUnitIn))
    return problem('the temperature has no unit: write °C or °F into its header, or give it as units.temperature');

  const problems: ReadingProblem[] = [];
  let humidityUnit = humidityUnitIn(fields[humidity] as string) ?? said.humidity;
  if (!humidityUnit && !everyRowTells(humidity, humidityUnitIn)) {
    const values = rows.map((row) => Number.parseFloat(row.fields[humidity] ?? '')).filter((value) => value > 0);
    const fractions = values.filter((value) => value <= 1).length;
    if (fractions > 0 && fractions < values.length)
      return problem(
        'the humidity has no unit, and its values can be neither all % nor all fractions: write % or fraction into its header, or give it as units.humidity',
      );
    humidityUnit = fractions > 0 ? 'fraction' : '%';
    if (values.length > 0)
      problems.push({
        line,
        what: `the humidity has no unit; no value ${fractions > 0 ? 'is above 1, so they are taken as fractions' : 'is as low as 1, so they are taken as %'}`,
      });
  }
  return { count: fields.length, date, time, temperature, humidity, units, temperatureUnit, humidityUnit, problems };
}

function roleOf(name: string): Role | undefined {
  const text = name.toLowerCase();
  const words = wordsOf(text);
  if (/unit/.test(text)) return 'unit';
  if (/dew|wet|feels/.test(text)) return undefined;
  if (/temp/.test(text)) return 'temperature';
  if (/humid/.test(text) || words.includes('rh')) return 'humidity';
  if (words.includes('date') || words.includes('datetime') || words.includes('timestamp') || words.includes('day'))
    return 'date';
  return words.includes('time') ? 'time' : undefined;
}

const wordsOf = (text: string) => text.toLowerCase().split(/[^a-z%]+/);

/** The unit of temperature that a header or value names. @internal */
export function temperatureUnitIn(text: string): '°C' | '°F' | undefined {
  const words = wordsOf(text);
  if (words.some((word) => ['c', 'celsius', 'degc'].includes(word))) return '°C';
  return words.some((word) => ['f', 'fahrenheit', 'degf'].includes(word)) ? '°F' : undefined;
}

/** The unit of humidity that a header or value names. @internal */
export function humidityUnitIn(text: string): '%' | 'fraction' | undefined {
  if (text.includes('%') || /\b(percent|pct)\b/i.test(text)) return '%';
  return /fraction/i.test(text) ? 'fraction' : undefined;
}
