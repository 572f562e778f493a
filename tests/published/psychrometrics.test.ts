import { describe, expect, it } from 'vitest';
import { saturationPressure } from '../../kernel-helpers/src/wood/air/psychrometrics.js';

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
});
