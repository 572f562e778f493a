import psychrolib from 'psychrolib';
import * as z from 'zod';
import { amount, readParameters } from '../../measure/parameters.js';
import { humidity } from './air-fields.js';

psychrolib.SetUnitSystem(psychrolib.SI);

const temperature = (why: string) => amount({ least: -40, most: 60, unit: '°C', why });
const temperatureC = temperature('what a dry thermometer shows');
const relativeHumidity = humidity({ least: 0.01 });

const dewPointFields = z.object({ temperatureC, relativeHumidity });
const fromDewPointFields = z
  .object({ temperatureC, dewPointC: temperature('where its vapour starts to condense') })
  .refine((air) => air.dewPointC <= air.temperatureC, {
    path: ['dewPointC'],
    message: 'possible: at most temperatureC (air at its dew point is saturated)',
  });

/**
 * Pressure of water vapour in saturated air: over ice below the triple point, over water above.
 *
 * @param temperatureC  -100 to 200 °C
 * @returns Pa
 * @see ASHRAE Handbook Fundamentals (2017), chapter 1, eq. 5 and 6; table 3 met within 0.03 %
 * @internal
 */
export function saturationPressure(temperatureC: number): number {
  return psychrolib.GetSatVapPres(temperatureC);
}

/**
 * The temperature at which this air, cooled with its vapour kept, starts to wet a surface (or to frost it).
 *
 * @param air.temperatureC  -40 to 60 °C
 * @param air.relativeHumidity  0.01 to 1
 * @returns dew point, °C
 * @throws ShopError  outside these ranges
 * @see ASHRAE Handbook Fundamentals (2017), chapter 1, eq. 5 and 6 solved for the temperature
 * @example dewPoint({ temperatureC: 20, relativeHumidity: 0.5 }) // 9.27
 */
export function dewPoint(air: { temperatureC: number; relativeHumidity: number }): number {
  const { temperatureC, relativeHumidity } = readParameters(dewPointFields, air);
  return psychrolib.GetTDewPointFromRelHum(temperatureC, relativeHumidity);
}

/**
 * Humidity from a dew point.
 *
 * @returns relative humidity, 0 to 1
 * @throws ShopError  a dew point above the temperature, or outside -40 to 60 °C
 * @see ASHRAE Handbook Fundamentals (2017), chapter 1, eq. 5, 6 and 22
 * @example humidityFromDewPoint({ temperatureC: 20, dewPointC: 9.27 }) // 0.500
 */
export function humidityFromDewPoint(air: { temperatureC: number; dewPointC: number }): number {
  const { temperatureC, dewPointC } = readParameters(fromDewPointFields, air);
  return saturationPressure(dewPointC) / saturationPressure(temperatureC);
}
