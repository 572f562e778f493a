import { describe, expect, it } from 'vitest';
import { evaluate } from '../../../kernel-helpers/src/measure/formula.js';
import { climate, heatedAirFormula, heatedAirValues, yearOfAir } from '../../../kernel-helpers/src/wood/air/air.js';

describe('a year of indoor air', () => {
  it('is what the formula for heated air gives, month by month', () => {
    const outdoors = yearOfAir({ place: 'chicago-ohare' });
    const indoors = yearOfAir({ place: 'chicago-ohare', heating: { heatTo: 20 } });
    indoors.forEach((room, i) => {
      const values = heatedAirValues(outdoors[i] as (typeof outdoors)[0], room.temperatureC);
      expect(evaluate(heatedAirFormula, values)).toBeCloseTo(room.relativeHumidity, 12);
    });
  });

  it('is the outdoor air where the house does nothing to it', () => {
    const outdoors = climate('london');
    for (const { month, temperatureC, relativeHumidity } of yearOfAir({ place: 'london' })) {
      expect(temperatureC).toBe(outdoors.temperatureC[month - 1]);
      expect(relativeHumidity).toBeCloseTo((outdoors.relativeHumidityPercent[month - 1] as number) / 100, 9);
    }
  });

  it('dries in winter when it is heated', () => {
    const [january] = yearOfAir({ place: 'minneapolis', heating: { heatTo: 20 } });
    expect(january?.temperatureC).toBe(20);
    // -8.8 °C at 69.9 % carries about 2.0 hPa of vapour; 20 °C air could hold 23.4 hPa (ASHRAE Fundamentals 2017, ch. 1, table 3).
    expect(january?.relativeHumidity).toBeGreaterThan(0.07);
    expect(january?.relativeHumidity).toBeLessThan(0.1);
  });

  it('keeps the limits of humidifier and drier', () => {
    for (const { relativeHumidity } of yearOfAir({
      place: 'new-orleans',
      heating: { heatTo: 20, coolTo: 24, humidifyTo: 0.4, dehumidifyTo: 0.5 },
    })) {
      expect(relativeHumidity).toBeGreaterThanOrEqual(0.4);
      expect(relativeHumidity).toBeLessThanOrEqual(0.5);
    }
  });

  it('says which place or limit is not possible', () => {
    expect(() => yearOfAir({ place: 'chicago' })).toThrow(
      'place: "chicago" is not in the list; nearest: chicago-ohare',
    );
    expect(() => yearOfAir({ place: 'london', heating: { humidifyTo: 40 } })).toThrow(
      /humidifyTo: 40 given; possible: a number from 0 to 0.8/,
    );
  });
});
