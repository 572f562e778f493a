import * as z from 'zod';
import { evaluate } from '../../measure/formula.js';
import { known, readParameters } from '../../measure/parameters.js';
import { refusal } from '../../measure/shop-error.js';
import { celsius } from '../../measure/temperature.js';
import { type Climate, climate, climateFields } from '../place/climates.js';
import { spotOf } from '../place/places.js';
import { altitude, lapseFormula, vapourHigherFormula } from './altitude.js';
import { monthNames } from './months.js';
import { outdoorsOf } from './outdoors.js';
import { saturationPressure } from './psychrometrics.js';

/**
 * A place of the maker's own as it is typed: its twelve months outdoors, or a place of the list that is like it and how high it
 * lies itself.
 */
export interface TypedOwnPlace {
  /** January to December, in `unit`: means of the whole month, day and night. */
  temperature?: number[];
  /** January to December, %: likewise. */
  humidity?: number[];
  /** `°C` or `°F`; °C unless told otherwise. */
  unit?: string;
  /** Instead of months: a place of the list. */
  like?: string;
  /** How high it lies, `10,150 ft` or `3,094 m`: what a place that is like it is taken up or down to. */
  altitude?: string;
}

const twelve = (why: string) => {
  const possible = `possible: twelve numbers in square brackets, January to December (${why})`;
  return z.array(z.number({ error: possible }), { error: possible }).length(12, possible);
};

const possible =
  "possible: '' for a place of the list, or its months in braces: { temperature: [twelve numbers], humidity: [twelve numbers], unit: '°C' }";
const fields = z.strictObject(
  {
    temperature: twelve('mean temperature of each month, day and night').optional(),
    humidity: twelve('mean humidity of each month, day and night, %').optional(),
    unit: z.enum(['°C', '°F', 'C', 'F'], { error: 'possible: °C, °F (what temperature is in)' }).default('°C'),
    like: known(climate, 'a place whose year is like it').optional(),
    altitude: altitude.optional(),
  },
  { error: (issue) => (issue.code === 'invalid_type' ? possible : undefined) },
);

/** A place of the maker's own, as a brief keeps it. @internal */
export const ownClimate: z.ZodType<Climate> = climateFields.extend({ country: z.literal('') });

const temperatures = { least: -50, most: 50 };
const humidities = { least: 1, most: 100 };

/**
 * Reads a place of the maker's own. Where its months are given, its height changes nothing: air keeps its vapour when it is brought
 * indoors, whatever the pressure of the air. Where it is like another place, its months are that one's, colder and with less
 * vapour the higher it lies.
 *
 * @param name  what the place is called
 * @param typed  see {@link TypedOwnPlace}
 * @returns a place that `yearOfAir` takes like one of the list
 * @throws ShopError  one line: the field, the value given, what is possible
 * @see {@link lapseFormula}, {@link vapourHigherFormula}
 * @example readOwnPlace('Leadville', { like: 'Boulder', altitude: '10,150 ft' })
 */
export function readOwnPlace(name: string, typed: TypedOwnPlace | string): Climate {
  const { ownPlace } = readParameters(z.object({ ownPlace: fields }), { ownPlace: typed });
  const { temperature, humidity, like, unit } = ownPlace;
  const own = { id: 'own-place', place: name, country: '', kind: "the maker's own" as const, fromMemory: false };
  const lacking = (field: string, possible: string) =>
    refusal({ path: ['ownPlace', field], given: undefined, possible: `possible: ${possible}` });
  if (like !== undefined) {
    const months = temperature ? 'temperature' : humidity && 'humidity';
    if (months)
      throw refusal({
        path: ['ownPlace', 'like'],
        given: like,
        possible: `possible: either a place that is like it, or ${months}`,
      });
    if (ownPlace.altitude === undefined) throw lacking('altitude', 'how high it lies, such as 10,150 ft or 3,094 m');
    return { ...own, ...takenTo(ownPlace.altitude, climate(like)) };
  }
  const instead = 'twelve numbers in square brackets, January to December; or like: a place of the list, with altitude';
  if (!temperature) throw lacking('temperature', instead);
  if (!humidity) throw lacking('humidity', instead);
  const fahrenheit = unit.endsWith('F');
  const temperatureC = fahrenheit ? temperature.map(celsius) : temperature;
  refuse(
    'temperature',
    temperatureC,
    temperature,
    temperatures,
    fahrenheit ? '-58 to 122 °F' : "-50 to 50 °C (for Fahrenheit write unit: '°F')",
  );
  refuse('humidity', humidity, humidity, humidities, '1 to 100 % (45 % is 45, not 0.45)');
  return {
    ...own,
    temperatureC,
    relativeHumidityPercent: humidity,
    source: "the maker's own months, as typed in the brief",
  };
}

function refuse(
  field: string,
  values: readonly number[],
  typed: readonly number[],
  { least, most }: { least: number; most: number },
  possible: string,
): void {
  const wrong = values.findIndex((value) => !(value >= least && value <= most));
  if (wrong >= 0)
    throw refusal({
      path: ['ownPlace', field, monthNames[wrong] as string],
      given: typed[wrong],
      possible: `possible: ${possible}`,
    });
}

/** The months of a place, at another height. */
function takenTo(metres: number, like: Climate) {
  const h = metres - (spotOf(like.id)?.altitude ?? 0);
  const months = outdoorsOf(like).map(({ temperatureC: T, relativeHumidity }) => {
    const there = evaluate(lapseFormula, { T, h });
    const p = evaluate(vapourHigherFormula, { p: relativeHumidity * saturationPressure(T), h });
    return { temperatureC: there, percent: Math.min(100, (100 * p) / saturationPressure(there)) };
  });
  const higher = `${Math.round(Math.abs(h)).toLocaleString('en-US')} m ${h < 0 ? 'lower' : 'higher'}`;
  return {
    temperatureC: months.map(({ temperatureC }) => temperatureC),
    relativeHumidityPercent: months.map(({ percent }) => percent),
    source: `as ${like.place}, taken ${higher}: 6.5 °C colder for each 1,000 m, vapour after Hann (from memory). ${like.source}`,
  };
}
