import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { equilibriumMoisture, humidityFor, moistureByHumidity } from '../../kernel-helpers/src/wood/emc.js';

const temperature = fc.double({ min: -40, max: 100, noNaN: true });
const humidity = fc.double({ min: 0, max: 1, noNaN: true });

describe('equilibrium moisture', () => {
  it('is the same on both temperature scales', () => {
    expect(equilibriumMoisture({ temperatureF: 68, relativeHumidity: 0.5 })).toBe(
      equilibriumMoisture({ temperatureC: 20, relativeHumidity: 0.5 }),
    );
    expect(equilibriumMoisture({ temperatureC: 20, relativeHumidity: 0.5 })).toBeCloseTo(9.27, 2);
  });

  it('is the same in a loop, over the whole range', () => {
    fc.assert(
      fc.property(temperature, humidity, (temperatureC, relativeHumidity) => {
        expect(moistureByHumidity(temperatureC)(relativeHumidity)).toBe(
          equilibriumMoisture({ temperatureC, relativeHumidity }),
        );
      }),
    );
  });

  it.each([
    [{ temperatureC: 20, relativeHumidity: 45 }, /relativeHumidity: 45 given; .* so 45 % is written 0.45/],
    [{ temperatureC: 20, relativeHumidity: 2 }, /so 2 % is written 0.02/],
    [{ temperatureC: 20, relativeHumidity: 100 }, /so 100 % is written 1/],
    // Neither a fraction nor a likely percentage: nothing is guessed.
    [{ temperatureC: 20, relativeHumidity: 1.5 }, /1.5 given; a fraction from 0 to 1 is possible$/],
    [{ temperatureC: 20, relativeHumidity: 101 }, /101 given; a fraction from 0 to 1 is possible$/],
    [{ temperatureC: 20, relativeHumidity: -0.1 }, /relativeHumidity: -0.1 given; a fraction from 0 to 1 is possible/],
    [{ temperatureC: 120, relativeHumidity: 0.5 }, /temperatureC: 120 given; possible: a number from -40 to 100 °C/],
    [{ temperatureF: 300, relativeHumidity: 0.5 }, /temperatureF: 300 given; possible: a number from -40 to 212 °F/],
    [{ temperatureC: 20, temperatureF: 68, relativeHumidity: 0.5 }, /give one of the two, not both/],
    [{ relativeHumidity: 0.5 }, /temperatureC: nothing given/],
  ])('refuses %j in one line', (air, message) => {
    expect(() => equilibriumMoisture(air as never)).toThrow(message);
  });
});

describe('the humidity for a moisture', () => {
  it('is where wood comes to that moisture', () => {
    fc.assert(
      fc.property(temperature, humidity, (temperatureC, relativeHumidity) => {
        const moisture = equilibriumMoisture({ temperatureC, relativeHumidity });
        expect(Math.abs(humidityFor({ moisture, temperatureC }) - relativeHumidity)).toBeLessThan(1e-9);
      }),
    );
  });

  it('8 % wants 42 % at 20 °C, on both scales', () => {
    expect(humidityFor({ moisture: 8, temperatureC: 20 })).toBeCloseTo(0.42, 2);
    expect(humidityFor({ moisture: 8, temperatureF: 68 })).toBe(humidityFor({ moisture: 8, temperatureC: 20 }));
  });

  it('is none for ovendry wood, and saturated air for the most that air brings it to', () => {
    for (const temperatureC of [-20, 20, 60]) {
      const most = equilibriumMoisture({ temperatureC, relativeHumidity: 1 });
      expect(humidityFor({ moisture: 0, temperatureC })).toBe(0);
      expect(humidityFor({ moisture: most, temperatureC })).toBe(1);
    }
  });

  it('says how far air can bring wood where no humidity gives the moisture', () => {
    expect(() => humidityFor({ moisture: 30, temperatureC: 20 })).toThrow(
      /moisture: 30 % given; at 20 °C air brings wood to 0 to 2\d\.\d %, and no humidity to more/,
    );
    expect(() => humidityFor({ moisture: -1, temperatureC: 20 })).toThrow(/moisture: -1 % given/);
    expect(() => humidityFor({ moisture: Number.NaN, temperatureC: 20 })).toThrow(/moisture: NaN % given/);
  });
});
