import * as z from 'zod';
import { evaluate, type Formula } from '../../measure/formula.js';
import { amount, known, readParameters } from '../../measure/parameters.js';
import { occupancy, vapourAddedFormula, vapourAddedValues } from './house-vapour.js';
import { saturationPressure } from './psychrometrics.js';

/** What a house does to the air that comes in. Left out: it does nothing of the kind. */
export interface Heating {
  /** Heated to at least this, °C. */
  heatTo?: number;
  /** Cooled to at most this, °C. */
  coolTo?: number;
  /** Dew point that the coil of the cooling dries the room to, °C; 13 unless told otherwise. */
  coilDewPoint?: number;
  /** How it is lived in, which decides the vapour that people add: see `allOccupancies`; `home` unless told otherwise. */
  livedIn?: string;
  /** Humidified to at least this, 0 to 1. */
  humidifyTo?: number;
  /** Dried to at most this, 0 to 1. */
  dehumidifyTo?: number;
}

/** What a room's humidity was last set by in a month. */
export type SetBy = 'air from outdoors' | 'people' | 'coil' | 'humidifier' | 'dehumidifier';

/** @internal */
export const heatingFields = z
  .strictObject({
    heatTo: amount({ least: 0, most: 35, unit: '°C', why: 'what the room is heated to' }).optional(),
    coolTo: amount({ least: 5, most: 40, unit: '°C', why: 'what the room is cooled to' }).optional(),
    coilDewPoint: amount({ least: 5, most: 20, unit: '°C', why: "dew point of the cooling's coil" }).default(13),
    livedIn: known(occupancy, 'how the house is lived in').default('home'),
    humidifyTo: amount({ least: 0, most: 0.8, why: 'least humidity kept, a fraction: 35 % is 0.35' }).default(0),
    dehumidifyTo: amount({ least: 0.2, most: 1, why: 'most humidity allowed, a fraction: 55 % is 0.55' }).default(1),
  })
  .refine(({ heatTo = 0, coolTo = 40 }) => heatTo <= coolTo, {
    path: ['coolTo'],
    message: 'possible: at least heatTo (a room is not heated and cooled at once)',
  });

/** @throws ShopError  a limit that is not possible @internal */
export const readHeating = (heating: Heating) => readParameters(heatingFields, heating);

/**
 * How much warmer than outdoors a house stands by itself, from people, lamps and sun, °C: so its cooling runs before it is
 * as warm outdoors as the room may become. ASHRAE Standard 160, simplified indoor temperature (from memory).
 */
export const warmerByItself = 2.8;

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
  outdoors: { temperatureC: number; relativeHumidity: number },
  indoorsC: number,
): Record<'h' | 'po' | 'pn', number> {
  return {
    h: outdoors.relativeHumidity,
    po: saturationPressure(outdoors.temperatureC),
    pn: saturationPressure(indoorsC),
  };
}

/**
 * A room in a month, from the air outdoors: heated or cooled, with what people add; dried by the coil where the cooling
 * runs, then humidified or dried to the limits given. A month is taken as one: the coil runs in all of it or not at all.
 *
 * @param outdoors.relativeHumidity  0 to 1
 * @param house  as `readHeating` gives it
 * @see {@link heatedAirFormula}, {@link vapourAddedFormula}, {@link warmerByItself}; a coil at 55 °F (13 °C) holds a room of
 *   75 °F at about 50 %: air-conditioning practice, read in an engineer's article
 * @internal
 */
export function roomAir(
  outdoors: { temperatureC: number; relativeHumidity: number },
  house: ReturnType<typeof readHeating>,
): { temperatureC: number; relativeHumidity: number; setBy: SetBy } {
  const { heatTo = -Infinity, coolTo = Infinity, coilDewPoint, livedIn, humidifyTo, dehumidifyTo } = house;
  const byItself = outdoors.temperatureC + warmerByItself;
  const temperatureC = Math.min(Math.max(byItself, heatTo), coolTo);
  const brought = evaluate(heatedAirFormula, heatedAirValues(outdoors, temperatureC));
  const added = evaluate(
    vapourAddedFormula,
    vapourAddedValues({ livedIn, outdoorsC: outdoors.temperatureC, indoorsC: temperatureC }),
  );
  const room = {
    temperatureC,
    relativeHumidity: Math.min(brought + added, 1),
    setBy: (added > 0 ? 'people' : 'air from outdoors') as SetBy,
  };
  const limited = (relativeHumidity: number, setBy: SetBy) => Object.assign(room, { relativeHumidity, setBy });
  const coil = saturationPressure(coilDewPoint) / saturationPressure(temperatureC);
  if (byItself > coolTo && room.relativeHumidity > coil) limited(coil, 'coil');
  if (room.relativeHumidity < humidifyTo) limited(humidifyTo, 'humidifier');
  if (room.relativeHumidity > dehumidifyTo) limited(dehumidifyTo, 'dehumidifier');
  return room;
}
