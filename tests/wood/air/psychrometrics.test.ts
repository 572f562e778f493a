import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { dewPoint, humidityFromDewPoint } from '../../../kernel-helpers/src/wood/air/psychrometrics.js';

const temperature = fc.double({ min: -35, max: 60, noNaN: true });
const humidity = fc.double({ min: 0.01, max: 1, noNaN: true });

describe('dew point', () => {
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

  it('the dew point is at most the temperature, and meets it in saturated air', () => {
    fc.assert(
      fc.property(temperature, humidity, (temperatureC, relativeHumidity) => {
        expect(dewPoint({ temperatureC, relativeHumidity })).toBeLessThanOrEqual(temperatureC + 0.001);
      }),
    );
    expect(dewPoint({ temperatureC: 15, relativeHumidity: 1 })).toBeCloseTo(15, 2);
  });

  it('gives the figures of its examples', () => {
    expect(dewPoint({ temperatureC: 20, relativeHumidity: 0.5 })).toBeCloseTo(9.27, 2);
    expect(humidityFromDewPoint({ temperatureC: 20, dewPointC: 9.27 })).toBeCloseTo(0.5, 3);
  });

  it('refuses what cannot be in one line', () => {
    expect(() => dewPoint({ temperatureC: 20, relativeHumidity: 55 })).toThrow(/so 55 % is written 0.55/);
    expect(() => dewPoint({ temperatureC: 70, relativeHumidity: 0.5 })).toThrow(/temperatureC: 70 given/);
    expect(() => humidityFromDewPoint({ temperatureC: 20, dewPointC: 21 })).toThrow(/dewPointC: 21 given.*at most/);
  });
});
