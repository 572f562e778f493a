import { describe, expect, it } from 'vitest';
import { fahrenheit } from '../../../kernel-helpers/src/measure/temperature.js';
import { yearOfAir } from '../../../kernel-helpers/src/wood/air/air.js';
import { readOwnPlace } from '../../../kernel-helpers/src/wood/air/own-place.js';
import { climate } from '../../../kernel-helpers/src/wood/place/climates.js';

const { temperatureC: temperature, relativeHumidityPercent: humidity } = climate('london');
const house = { heatTo: 20, coolTo: 25, humidifyTo: 0.3, dehumidifyTo: 0.6 };

describe("a place of the maker's own", () => {
  it('gives the year of its twelve months, outdoors and in the house, like a place of the list', () => {
    const own = readOwnPlace('Uphill', { temperature, humidity });
    expect(own.place).toBe('Uphill');
    expect(yearOfAir({ place: own })).toEqual(yearOfAir({ place: 'london' }));
    expect(yearOfAir({ place: own, heating: house })).toEqual(yearOfAir({ place: 'london', heating: house }));
  });

  it('takes Fahrenheit where that is what was read', () => {
    const own = readOwnPlace('Uphill', { temperature: temperature.map(fahrenheit), humidity, unit: '°F' });
    for (const [i, each] of own.temperatureC.entries()) expect(each).toBeCloseTo(temperature[i] as number, 9);
  });

  it('is not changed by its height where its own months are given: humidity indoors goes with the vapour, not with the pressure', () => {
    const high = readOwnPlace('Uphill', { temperature, humidity, altitude: '10,150 ft' });
    expect(yearOfAir({ place: high, heating: house })).toEqual(yearOfAir({ place: 'london', heating: house }));
  });

  it('like another one is colder and has less vapour the higher it lies', () => {
    const leadville = readOwnPlace('Leadville', { like: 'Boulder', altitude: '10,150 ft' });
    const [boulder, own] = [yearOfAir({ place: 'boulder' }), yearOfAir({ place: leadville })];
    // 3,094 m against 1,634 m: 1,460 m, 9.5 °C.
    for (const [i, month] of own.entries())
      expect(month.temperatureC).toBeCloseTo((boulder[i]?.temperatureC ?? 0) - 9.49, 1);
    const [winter] = yearOfAir({ place: leadville, heating: { heatTo: 20 } });
    const [below] = yearOfAir({ place: 'boulder', heating: { heatTo: 20 } });
    expect(winter?.relativeHumidity).toBeLessThan(below?.relativeHumidity ?? 0);
    expect(leadville.source).toMatch(/^as Boulder, Colorado, taken 1,460 m higher/);
    const same = readOwnPlace('Next door', { like: 'Boulder', altitude: '1,634 m' });
    for (const [i, month] of yearOfAir({ place: same }).entries())
      expect(month.relativeHumidity).toBeCloseTo(boulder[i]?.relativeHumidity ?? 0, 6);
  });

  it.each<[object | string, string]>([
    ['Leadville', 'ownPlace: "Leadville" given; possible: \'\' for a place of the list, or its months in braces'],
    [null as never, "ownPlace: null given; possible: '' for a place of the list"],
    [{}, 'ownPlace, temperature: nothing given; possible: twelve numbers'],
    [{ temperature }, 'ownPlace, humidity: nothing given; possible: twelve numbers'],
    [
      { temperature: temperature.slice(1), humidity },
      'possible: twelve numbers in square brackets, January to December',
    ],
    [{ temperature: temperature.map(String), humidity }, 'possible: twelve numbers in square brackets'],
    [
      { temperature: temperature.map(fahrenheit), humidity },
      "ownPlace, temperature, April: 51.08 given; possible: -50 to 50 °C (for Fahrenheit write unit: '°F')",
    ],
    [
      { temperature, humidity: humidity.map((each) => each / 100) },
      'ownPlace, humidity, January: 0.8 given; possible: 1 to 100 % (45 % is 45, not 0.45)',
    ],
    [{ temperature, humidity, unit: 'K' }, 'ownPlace, unit: "K" given; possible: °C, °F'],
    [
      { temperature, humidity, altitude: '10,150' },
      'ownPlace, altitude: "10,150" given; possible: a height above the sea with its unit',
    ],
    [{ temperature, humidity, altitude: '99,000 ft' }, 'possible: a height above the sea with its unit'],
    [
      { temperature, humidity, like: 'London' },
      'ownPlace, like: "london" given; possible: either a place that is like it, or temperature',
    ],
    [{ like: 'London' }, 'ownPlace, altitude: nothing given; possible: how high it lies'],
    [{ like: 'Nowhere', altitude: '10 m' }, 'ownPlace, like: "Nowhere" given;'],
    [
      { temperatures: temperature, humidity },
      'ownPlace, temperatures: there is no such parameter; the nearest is temperature',
    ],
  ])('with %j is refused in one line', (typed, message) => {
    const read = () => readOwnPlace('Uphill', typed as never);
    expect(read).toThrow(message);
    expect(read).not.toThrow(/\n/);
  });
});
