import { describe, expect, it } from 'vitest';
import {
  dewPoint,
  humidityFromWetBulb,
  saturationPressure,
  wetBulb,
} from '../../kernel-helpers/src/wood/air/psychrometrics.js';

/**
 * ASHRAE Handbook Fundamentals (2017), SI edition, chapter 1. The handbook was not read; rows marked `memory` are
 * remembered, the others are quoted with table and example in the tests of the psychrolib package.
 */
describe('ASHRAE Handbook Fundamentals (2017), chapter 1', () => {
  // Tolerance: the handbook says its formula keeps within 300 parts in a million of the table.
  it.each([
    { celsius: -20, printedPa: 103.24 },
    { celsius: -5, printedPa: 401.74 },
    { celsius: 0, printedPa: 611.2, memory: true },
    { celsius: 5, printedPa: 872.6 },
    { celsius: 10, printedPa: 1228.2, memory: true },
    { celsius: 20, printedPa: 2339.3, memory: true },
    { celsius: 25, printedPa: 3169.7 },
    { celsius: 30, printedPa: 4246.7, memory: true },
    { celsius: 50, printedPa: 12351.3 },
  ])('table 3: saturated vapour at $celsius °C has $printedPa Pa', ({ celsius, printedPa }) => {
    expect(Math.abs(saturationPressure(celsius) / printedPa - 1)).toBeLessThan(0.0003);
  });

  // Read off the psychrometric chart in print: 14 % to 1 %, 7 °C to the whole degree.
  it('example 1: air of 40 °C with a wet bulb of 20 °C has 14 % and a dew point of 7 °C', () => {
    const relativeHumidity = humidityFromWetBulb({ temperatureC: 40, wetBulbC: 20 });
    expect(Math.abs(relativeHumidity - 0.14)).toBeLessThanOrEqual(0.01);
    expect(Math.abs(dewPoint({ temperatureC: 40, relativeHumidity }) - 7)).toBeLessThanOrEqual(0.5);
    expect(Math.abs(wetBulb({ temperatureC: 40, relativeHumidity }) - 20)).toBeLessThanOrEqual(0.001);
  });
});

/**
 * The meteorologist's table for a ventilated psychrometer at 20 °C and about 1000 hPa, whole %; from memory, unverified.
 * Tolerance 1: half for the print, half for the constant of the psychrometer, which the tables take as 0.00066 to 0.00067
 * and ASHRAE's balance of heat gives as a slightly different one.
 */
it('a psychrometer table at 20 °C: 91, 83, 74, 66, 59, 51, 44, 37 % for 1 to 8 degrees of difference', () => {
  const printed = [91, 83, 74, 66, 59, 51, 44, 37];
  const off = printed.map((percent, index) =>
    Math.abs(100 * humidityFromWetBulb({ temperatureC: 20, wetBulbC: 19 - index }) - percent),
  );
  console.log(`psychrometer table at 20 °C: largest difference ${Math.max(...off).toFixed(1)} %`);
  expect(Math.max(...off)).toBeLessThanOrEqual(1);
});
