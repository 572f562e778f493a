import psychrolib from 'psychrolib';
import * as z from 'zod';
import { amount, readParameters } from '../../measure/parameters.js';
import { ShopError } from '../../measure/shop-error.js';
import { humidity } from './air-fields.js';

psychrolib.SetUnitSystem(psychrolib.SI);

const temperature = (why: string) => amount({ least: -40, most: 60, unit: '°C', why });
const temperatureC = temperature('what a dry thermometer shows');
const relativeHumidity = humidity({ least: 0.01 });
const altitudeM = amount({ least: -500, most: 5000, unit: 'm', why: 'height above the sea' }).default(0);

const dewPointFields = z.object({ temperatureC, relativeHumidity });
const wetBulbFields = z.object({ temperatureC, relativeHumidity, altitudeM });
const fromDewPointFields = z
  .object({ temperatureC, dewPointC: temperature('where its vapour starts to condense') })
  .refine((air) => air.dewPointC <= air.temperatureC, {
    path: ['dewPointC'],
    message: 'possible: at most temperatureC (air at its dew point is saturated)',
  });
const fromWetBulbFields = z
  .object({ temperatureC, wetBulbC: temperature('what a thermometer with a wet wick shows'), altitudeM })
  .refine((air) => air.wetBulbC <= air.temperatureC, {
    path: ['wetBulbC'],
    message: 'possible: at most temperatureC (a wet wick cools, or stays as warm in saturated air)',
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
 * What a thermometer with a wet wick shows in this air, well ventilated.
 *
 * @param air.temperatureC  -40 to 60 °C
 * @param air.relativeHumidity  0.01 to 1
 * @param air.altitudeM  height above the sea, m; 0 unless told otherwise (standard atmosphere)
 * @returns wet-bulb temperature, °C, found to 0.001; below 0 the wick is taken to be iced
 * @throws ShopError  outside these ranges
 * @see ASHRAE Handbook Fundamentals (2017), chapter 1, eq. 33 and 35 solved for the temperature
 * @example wetBulb({ temperatureC: 20, relativeHumidity: 0.5 }) // 13.8
 */
export function wetBulb(air: { temperatureC: number; relativeHumidity: number; altitudeM?: number }): number {
  const { temperatureC, relativeHumidity, altitudeM } = readParameters(wetBulbFields, air);
  return psychrolib.GetTWetBulbFromRelHum(temperatureC, relativeHumidity, pressureAt(altitudeM));
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

/**
 * Humidity from a dry and a wet thermometer (sling psychrometer).
 *
 * @param air.altitudeM  height above the sea, m; 0 unless told otherwise (standard atmosphere)
 * @returns relative humidity, 0 to 1
 * @throws ShopError  a wet bulb above the temperature or colder than dry air makes it, or outside -40 to 60 °C
 * @see ASHRAE Handbook Fundamentals (2017), chapter 1, eq. 33 and 35
 * @example humidityFromWetBulb({ temperatureC: 20, wetBulbC: 13.8 }) // 0.50
 */
export function humidityFromWetBulb(air: { temperatureC: number; wetBulbC: number; altitudeM?: number }): number {
  const { temperatureC, wetBulbC, altitudeM } = readParameters(fromWetBulbFields, air);
  const pressure = pressureAt(altitudeM);
  const humidityRatio = psychrolib.GetHumRatioFromTWetBulb(temperatureC, wetBulbC, pressure);
  // The package gives no less than this, also where its balance of heat comes out below zero.
  if (humidityRatio <= 1e-7)
    throw new ShopError(
      `wetBulbC: ${wetBulbC} given; possible: nearer to temperatureC (even in air of ${temperatureC} °C without any vapour a wet wick does not cool so far)`,
    );
  return psychrolib.GetRelHumFromHumRatio(temperatureC, humidityRatio, pressure);
}

function pressureAt(altitudeM: number): number {
  return psychrolib.GetStandardAtmPressure(altitudeM);
}
