import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { evaluate } from '../../../kernel-helpers/src/measure/formula.js';
import { yearOfAir } from '../../../kernel-helpers/src/wood/air/air.js';
import {
  allOccupancies,
  vapourAddedFormula,
  vapourAddedValues,
} from '../../../kernel-helpers/src/wood/air/house-vapour.js';
import { dewPoint } from '../../../kernel-helpers/src/wood/air/psychrometrics.js';
import { heatedAirFormula, heatedAirValues } from '../../../kernel-helpers/src/wood/air/room-air.js';
import { allClimates, climate } from '../../../kernel-helpers/src/wood/place/climates.js';

describe('a year of indoor air', () => {
  it('is what its formulas give, month by month, where nothing limits it', () => {
    const outdoors = yearOfAir({ place: 'chicago-ohare' });
    const house = { heatTo: 20, livedIn: 'full-home' };
    yearOfAir({ place: 'chicago-ohare', heating: house }).forEach((room, i) => {
      const { temperatureC: outdoorsC, relativeHumidity } = outdoors[i] as (typeof outdoors)[0];
      const brought = heatedAirValues({ temperatureC: outdoorsC, relativeHumidity }, room.temperatureC);
      const added = vapourAddedValues({ livedIn: house.livedIn, outdoorsC, indoorsC: room.temperatureC });
      expect(evaluate(heatedAirFormula, brought) + evaluate(vapourAddedFormula, added)).toBeCloseTo(
        room.relativeHumidity,
        12,
      );
    });
  });

  it('is the outdoor air where the house does nothing to it', () => {
    const outdoors = climate('london');
    for (const { month, temperatureC, relativeHumidity } of yearOfAir({ place: 'london' })) {
      expect(temperatureC).toBe(outdoors.temperatureC[month - 1]);
      expect(relativeHumidity).toBeCloseTo((outdoors.relativeHumidityPercent[month - 1] as number) / 100, 9);
    }
  });

  it('dries in winter when it is heated, far more where nobody lives', () => {
    const january = (livedIn: string) => yearOfAir({ place: 'minneapolis', heating: { heatTo: 20, livedIn } })[0];
    expect(january('empty')?.temperatureC).toBe(20);
    // -8.8 °C at 69.9 % carries about 2.0 hPa of vapour; 20 °C air could hold 23.4 hPa (ASHRAE Fundamentals 2017, ch. 1, table 3).
    expect(january('empty')?.relativeHumidity).toBeGreaterThan(0.07);
    expect(january('empty')?.relativeHumidity).toBeLessThan(0.1);
    expect(january('home')?.relativeHumidity).toBeGreaterThan(0.2);
  });

  it('takes a house for a usual home with a usual coil where nothing is said of either', () => {
    const heating = { heatTo: 20, coolTo: 25 };
    expect(yearOfAir({ place: 'miami', heating })).toEqual(
      yearOfAir({ place: 'miami', heating: { ...heating, livedIn: 'home', coilDewPoint: 13 } }),
    );
  });

  it('is never damper than the coil leaves it while the cooling runs, and says so', () => {
    const cooled = yearOfAir({ place: 'new-orleans', heating: { heatTo: 20, coolTo: 25 } });
    const july = cooled[6];
    expect(july).toMatchObject({ temperatureC: 25, setBy: 'coil' });
    expect(dewPoint(july as NonNullable<typeof july>)).toBeCloseTo(13, 2);
    const drier = yearOfAir({ place: 'new-orleans', heating: { heatTo: 20, coolTo: 25, coilDewPoint: 12 } });
    expect(drier[6]?.relativeHumidity).toBeLessThan(july?.relativeHumidity as number);
  });

  it('leaves desert air alone that is drier than its coil', () => {
    const may = yearOfAir({ place: 'las-vegas', heating: { heatTo: 20, coolTo: 25 } })[4];
    expect(may).toMatchObject({ temperatureC: 25, setBy: 'air from outdoors' });
    expect(may?.relativeHumidity).toBeLessThan(0.25);
  });

  it('is damper the more people add, and in every house stays between bone dry and saturated', () => {
    fc.assert(
      fc.property(
        fc.constantFrom(...allClimates().map(({ id }) => id)),
        fc.record({ heatTo: fc.integer({ min: 0, max: 24 }), coolTo: fc.integer({ min: 24, max: 40 }) }),
        (place, heating) => {
          const [empty, ...fuller] = allOccupancies().map(({ id: livedIn }) =>
            yearOfAir({ place, heating: { ...heating, livedIn } }),
          );
          fuller.reduce(
            (less, more) => {
              more.forEach(({ relativeHumidity }, month) => {
                expect(relativeHumidity).toBeGreaterThanOrEqual(less[month]?.relativeHumidity as number);
                expect(relativeHumidity).toBeLessThanOrEqual(1);
              });
              return more;
            },
            empty as NonNullable<typeof empty>,
          );
        },
      ),
    );
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
    expect(() => yearOfAir({ place: 'chicagoo' })).toThrow(
      'place: "chicagoo" is not in the list; nearest: Chicago O\'Hare, Illinois',
    );
    expect(() => yearOfAir({ place: 'london', heating: { livedIn: 'hoem' } })).toThrow(
      /livedIn: "hoem" given; .*possible: empty, seldom-used, home/,
    );
    expect(() => yearOfAir({ place: 'london', heating: { heatTo: 22, coolTo: 20 } })).toThrow(
      'coolTo: 20 given; possible: at least heatTo',
    );
    expect(() => yearOfAir({ place: 'london', heating: { humidifyTo: 40 } })).toThrow(
      /humidifyTo: 40 given; possible: a number from 0 to 0.8/,
    );
  });
});
