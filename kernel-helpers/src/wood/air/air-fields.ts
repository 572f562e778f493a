import * as z from 'zod';
import { amount, readParameters } from '../../measure/parameters.js';
import { ShopError } from '../../measure/shop-error.js';
import { celsius } from '../../measure/temperature.js';

/** Air of one temperature, on either scale, and one humidity (0 to 1). */
export type Air =
  | { temperatureC: number; relativeHumidity: number }
  | { temperatureF: number; relativeHumidity: number };

/**
 * A relative humidity between two limits. One given in percent is told from a fraction.
 *
 * @param limits.least, limits.most  fractions; 0 and 1 unless told otherwise
 * @internal
 */
export function humidity(limits: { least?: number; most?: number } = {}): z.ZodType<number> {
  const { least = 0, most = 1 } = limits;
  const possible = `a fraction from ${least} to ${most} is possible`;
  return z.number({ error: possible }).superRefine((value, context) => {
    if (value >= least && value <= most) return;
    context.addIssue(value >= 2 && value <= 100 ? `${possible}, so ${value} % is written ${value / 100}` : possible);
  });
}

/** A temperature of air that wood meets, °C. @internal */
export const airTemperatureC = amount({ least: -40, most: 100, unit: '°C', why: 'temperature of the air' });

const inCelsius = z.object({ temperatureC: airTemperatureC, relativeHumidity: humidity() });
const inFahrenheit = z.object({
  temperatureF: amount({ least: -40, most: 212, unit: '°F', why: 'temperature of the air' }),
  relativeHumidity: humidity(),
});

/**
 * Air read from either temperature scale.
 *
 * @throws ShopError  both scales given, temperature or humidity out of range
 * @internal
 */
export function readAir(air: Air): { temperatureC: number; relativeHumidity: number } {
  if (!('temperatureF' in air)) return readParameters(inCelsius, air);
  if ('temperatureC' in air) throw new ShopError('temperatureC, temperatureF: give one of the two, not both');
  const { temperatureF, relativeHumidity } = readParameters(inFahrenheit, air);
  return { temperatureC: celsius(temperatureF), relativeHumidity };
}
