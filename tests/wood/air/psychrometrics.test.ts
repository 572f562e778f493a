import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  dewPoint,
  humidityFromDewPoint,
  humidityFromWetBulb,
  wetBulb,
} from '../../../kernel-helpers/src/wood/air/psychrometrics.js';

const temperature = fc.double({ min: -35, max: 60, noNaN: true });
const humidity = fc.double({ min: 0.01, max: 1, noNaN: true });

describe('dew point and wet bulb', () => {
  it('the dew point gives the humidity back', () => {
    fc.assert(
      fc.property(temperature, humidity, (temperatureC, relativeHumidity) => {
        const dewPointC = dewPoint({ temperatureC, relativeHumidity });
        fc.pre(dewPointC >= -40);
        // The dew point is found to 0.001 °C; vapour pressure changes by at most 12 % a degree.
        expect(Math.abs(humidityFromDewPoint({ temperatureC, dewPointC }) - relativeHumidity)).toBeLessThan(0.00013);
      }),
    );
  });

  it('the wet bulb gives the humidity back, from the shore to the mountains', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 5, max: 60, noNaN: true }),
        humidity,
        fc.integer({ min: 0, max: 3000 }),
        (temperatureC, relativeHumidity, altitudeM) => {
          const wetBulbC = wetBulb({ temperatureC, relativeHumidity, altitudeM });
          // The wet bulb is found to 0.001 °C; at 5 °C and over that is at most 0.02 % of humidity.
          expect(Math.abs(humidityFromWetBulb({ temperatureC, wetBulbC, altitudeM }) - relativeHumidity)).toBeLessThan(
            0.0002,
          );
        },
      ),
    );
  });

  it('dew point, wet bulb and dry bulb stand in this order, and meet in saturated air', () => {
    fc.assert(
      fc.property(temperature, humidity, (temperatureC, relativeHumidity) => {
        const wet = wetBulb({ temperatureC, relativeHumidity });
        expect(dewPoint({ temperatureC, relativeHumidity })).toBeLessThanOrEqual(wet + 0.001);
        expect(wet).toBeLessThanOrEqual(temperatureC);
      }),
    );
    expect(wetBulb({ temperatureC: 15, relativeHumidity: 1 })).toBeCloseTo(15, 2);
    expect(dewPoint({ temperatureC: 15, relativeHumidity: 1 })).toBeCloseTo(15, 2);
  });

  it('gives the figures of its examples', () => {
    expect(dewPoint({ temperatureC: 20, relativeHumidity: 0.5 })).toBeCloseTo(9.27, 2);
    expect(wetBulb({ temperatureC: 20, relativeHumidity: 0.5 })).toBeCloseTo(13.8, 1);
    expect(humidityFromDewPoint({ temperatureC: 20, dewPointC: 9.27 })).toBeCloseTo(0.5, 3);
    expect(humidityFromWetBulb({ temperatureC: 20, wetBulbC: 13.8 })).toBeCloseTo(0.5, 2);
  });

  it('a wet wick dries faster in the thin air of the mountains, so it shows less', () => {
    const air = { temperatureC: 25, relativeHumidity: 0.3 };
    expect(wetBulb({ ...air, altitudeM: 2000 })).toBeLessThan(wetBulb(air) - 0.2);
  });

  it('refuses what cannot be in one line', () => {
    expect(() => dewPoint({ temperatureC: 20, relativeHumidity: 55 })).toThrow(/so 55 % is written 0.55/);
    expect(() => dewPoint({ temperatureC: 70, relativeHumidity: 0.5 })).toThrow(/temperatureC: 70 given/);
    expect(() => humidityFromDewPoint({ temperatureC: 20, dewPointC: 21 })).toThrow(/dewPointC: 21 given.*at most/);
    expect(() => humidityFromWetBulb({ temperatureC: 20, wetBulbC: 21 })).toThrow(/wetBulbC: 21 given.*at most/);
    expect(() => humidityFromWetBulb({ temperatureC: 40, wetBulbC: 5 })).toThrow(
      /wetBulbC: 5 given; possible: nearer to temperatureC \(even in air of 40 °C without any vapour/,
    );
  });
});
