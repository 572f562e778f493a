import { describe, expect, it } from 'vitest';
import { evaluate } from '../../kernel-helpers/src/measure/formula.js';
import { yearOfAir } from '../../kernel-helpers/src/wood/air/air.js';
import { vapourAddedFormula } from '../../kernel-helpers/src/wood/air/house-vapour.js';
import { saturationPressure } from '../../kernel-helpers/src/wood/air/psychrometrics.js';
import { equilibriumMoisture } from '../../kernel-helpers/src/wood/emc.js';
import { serviceMoisture } from '../../kernel-helpers/src/wood/service-moisture.js';

/** Wood in a room, month by month, %; nothing caps the humidity. */
const woodIn = (place: string, coolTo?: number) =>
  yearOfAir({ place, heating: { heatTo: 20, ...(coolTo && { coolTo }) } }).map(equilibriumMoisture);
const mean = (values: number[]) => values.reduce((sum, value) => sum + value, 0) / values.length;

/**
 * Wood Handbook FPL-GTR-190 (2010), Figure 13-1 and Table 13-2: moisture of interior woodwork by region. The averages were
 * read; the range of single pieces is remembered. Each year's mean must lie in the range of its region: no tolerance.
 */
describe('wood in a room stays in the range that the handbook prints for its region', () => {
  it.each([
    ['minneapolis', 'interior-us-most', 25],
    ['chicago-ohare', 'interior-us-most', 25],
    ['boulder', 'interior-us-most', undefined],
    ['new-york-central-park', 'interior-us-most', 25],
    ['atlanta', 'interior-us-most', 25],
    ['las-vegas', 'interior-us-dry-southwest', 25],
    ['phoenix', 'interior-us-dry-southwest', 25],
    ['new-orleans', 'interior-us-damp-coastal', 25],
    ['miami', 'interior-us-damp-coastal', 25],
  ])('%s', (place, region, coolTo) => {
    const { lowPercent = 0, highPercent = 0 } = serviceMoisture(region);
    expect(mean(woodIn(place, coolTo))).toBeGreaterThan(lowPercent);
    expect(mean(woodIn(place, coolTo))).toBeLessThan(highPercent);
  });

  it('no month of a cooled house in New Orleans or a heated one in Minneapolis is one that no home has', () => {
    const cooled = yearOfAir({ place: 'new-orleans', heating: { heatTo: 20, coolTo: 25 } });
    // 70 %: upper limit of ASHRAE Standard 160's simple indoor humidity (from memory).
    for (const { relativeHumidity } of cooled) expect(relativeHumidity).toBeLessThan(0.7);
    expect(Math.max(...woodIn('new-orleans', 25))).toBeLessThan(13);
    expect(Math.min(...woodIn('minneapolis'))).toBeGreaterThan(5);
  });
});

/**
 * Air-conditioning practice: air leaving a coil at 55 °F (12.8 °C) holds a room of 75 °F at about 50 % (an engineer's
 * article, read); further dew points worked with the Magnus formula (17.625, 243.04), which is not what the code uses.
 * Printed to whole per cent: half of one is allowed, and a tenth for the two formulas.
 */
it.each([
  [7.2, 34],
  [10, 41],
  [12.8, 50],
  [13.9, 54],
  [15.6, 60],
])('a coil at %d °C leaves a room of 75 °F at %d %%', (coilDewPoint, percent) => {
  const coolTo = ((75 - 32) * 5) / 9;
  const august = yearOfAir({ place: 'singapore', heating: { coolTo, coilDewPoint } })[7];
  expect(Math.abs(100 * (august?.relativeHumidity ?? 0) - percent)).toBeLessThan(0.6);
});

describe('what people add', () => {
  /** EN ISO 13788: classes in g/m³ and in Pa (2 and 270, 4 and 540, 6 and 810, 8 and 1080; from memory), which meet at 20 °C. */
  it.each([
    [2, 270],
    [4, 540],
    [6, 810],
    [8, 1080],
  ])('%d g/m³ is the %d Pa that the standard prints beside it', (g, pascal) => {
    // Its Pa are rounded to 10.
    const pn = saturationPressure(20);
    const atFreezing = evaluate(vapourAddedFormula, { g, To: 0, Ti: 20, pn }) * pn;
    expect(Math.abs((atFreezing * 293.15) / 283.15 - pascal)).toBeLessThan(5);
  });

  it('falls in a straight line from 0 °C outdoors to nothing at 20 °C', () => {
    const pn = saturationPressure(20);
    // Of grams, so the pressure is divided by the mean temperature that turned it into one.
    const grams = (To: number) =>
      (evaluate(vapourAddedFormula, { g: 3, To, Ti: 20, pn }) * pn) / (0.4615 * ((20 + To) / 2 + 273.15));
    expect([-30, 0, 5, 10, 20, 30].map(grams)).toEqual([3, 3, 2.25, 1.5, 0, 0].map((g) => expect.closeTo(g, 9)));
  });

  /**
   * Timber-frame houses, 101 of them, and Estonian houses: 4.0 g/m³ in the cold is a level that 1 in 10 exceeds (abstracts
   * read). A usual home must lie under it and a full one over it.
   */
  it('of a usual home is under the 4 g/m³ that one house in ten exceeds, of a full one over it', () => {
    const added = (livedIn: string) => {
      const [room, empty] = [livedIn, 'empty'].map(
        (id) => yearOfAir({ place: 'minneapolis', heating: { heatTo: 20, livedIn: id } })[0]?.relativeHumidity ?? 0,
      ) as [number, number];
      // 17.3 g/m³ is what air of 20 °C holds.
      return (room - empty) * 17.3;
    };
    expect(added('home')).toBeLessThan(4);
    expect(added('full-home')).toBeGreaterThan(4);
  });
});
