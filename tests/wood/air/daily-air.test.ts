import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { MonthOfAir } from '../../../kernel-helpers/src/wood/air/air.js';
import { dailyAir } from '../../../kernel-helpers/src/wood/air/daily-air.js';

const monthLengths = [31, 28, 31, 30, 31, 30, 31, 31, 30, 31, 30, 31];
const yearOf = (value: (month: number) => number): MonthOfAir[] =>
  Array.from({ length: 12 }, (_, index) => ({
    month: index + 1,
    temperatureC: 20,
    relativeHumidity: value(index + 1),
  }));
const anyYear = fc
  .array(fc.double({ min: 0.1, max: 0.9, noNaN: true }), { minLength: 12, maxLength: 12 })
  .map((values) => yearOf((month) => values[month - 1] as number));

describe('a smooth year of days', () => {
  it('has 365 days and no step between them, December to January too', () => {
    fc.assert(
      fc.property(anyYear, (year) => {
        const days = dailyAir({ year });
        expect(days.map(({ day }) => day)).toEqual(Array.from({ length: 365 }, (_, index) => index + 1));
        // The steepest parabola between two months of 28 days differing by d changes by less than d/5 a day.
        const widest =
          Math.max(...year.map((m) => m.relativeHumidity)) - Math.min(...year.map((m) => m.relativeHumidity));
        for (const [index, { relativeHumidity }] of days.entries())
          expect(Math.abs(relativeHumidity - (days[(index + 1) % 365]?.relativeHumidity as number))).toBeLessThan(
            widest / 5 + 1e-12,
          );
      }),
    );
  });

  it('never passes the driest and the dampest month, so that the limits of the house are kept', () => {
    fc.assert(
      fc.property(anyYear, (year) => {
        const months = year.map(({ relativeHumidity }) => relativeHumidity);
        for (const { relativeHumidity } of dailyAir({ year })) {
          expect(relativeHumidity).toBeGreaterThanOrEqual(Math.min(...months));
          expect(relativeHumidity).toBeLessThanOrEqual(Math.max(...months));
        }
      }),
    );
  });

  it('keeps the monthly means, but for a little near the extremes', () => {
    const swing = (month: number) => 0.5 + 0.1 * Math.cos((2 * Math.PI * (month - 7.6)) / 12);
    const days = dailyAir({ year: yearOf(swing) });
    let first = 0;
    for (const [index, length] of monthLengths.entries()) {
      const own = days.slice(first, first + length);
      const mean = own.reduce((sum, { relativeHumidity }) => sum + relativeHumidity, 0) / length;
      const middle = Math.abs(swing(index + 1) - 0.5) < 0.07;
      expect(Math.abs(mean - swing(index + 1)), `month ${index + 1}`).toBeLessThan(middle ? 1e-9 : 0.004);
      first += length;
    }
  });

  it('has no kink where months meet: it bends there no more than the months on either side do', () => {
    fc.assert(
      fc.property(anyYear, (year) => {
        const days = dailyAir({ year }).map(({ relativeHumidity }) => relativeHumidity);
        const at = (day: number) => days[(day + 365) % 365] as number;
        // In a month the bend is the same on all its days, for it is a parabola.
        const bend = (day: number) => at(day - 1) - 2 * at(day) + at(day + 1);
        const [lowest, highest] = [Math.min(...days), Math.max(...days)];
        let first = 0;
        for (const length of monthLengths) {
          const near = Array.from({ length: 8 }, (_, day) => at(first - 4 + day));
          const [before, after] = [bend(first - 3), bend(first + 2)];
          first += length;
          // Cut off at the limits of the house it does have one.
          if (near.includes(lowest) || near.includes(highest)) continue;
          for (const here of [bend(first - length - 1), bend(first - length)]) {
            expect(here).toBeGreaterThan(Math.min(before, after) - 1e-12);
            expect(here).toBeLessThan(Math.max(before, after) + 1e-12);
          }
        }
      }),
    );
  });

  it('draws the temperature as it draws the humidity', () => {
    const swing = (month: number) => 0.5 + 0.1 * Math.cos((2 * Math.PI * (month - 7.6)) / 12);
    const year = yearOf(swing).map((month) => ({ ...month, temperatureC: 100 * month.relativeHumidity }));
    for (const { temperatureC, relativeHumidity } of dailyAir({ year }))
      expect(temperatureC).toBeCloseTo(100 * relativeHumidity, 9);
  });

  it('refuses a year that is not twelve months in their order', () => {
    const year = yearOf(() => 0.5);
    expect(() => dailyAir({ year: year.slice(1) })).toThrow(/twelve months are needed/);
    expect(() => dailyAir({ year: year.slice(0, 11) })).toThrow(/twelve months are needed/);
    expect(() => dailyAir({ year: [...year].reverse() })).toThrow(/twelve months are needed, January first/);
  });
});

describe('days of readings', () => {
  const readings = [
    { date: '2026-02-10T08:00', temperatureC: 18, relativeHumidity: 0.4 },
    { date: '2026-02-10T20:00', temperatureC: 20, relativeHumidity: 0.5 },
    { date: '2026-02-14', temperatureC: 19, relativeHumidity: 0.42 },
  ];

  it('are the means of the days that were read, counted from the first', () => {
    expect(dailyAir({ readings })).toEqual([
      { day: 0, temperatureC: 19, relativeHumidity: 0.45 },
      { day: 4, temperatureC: 19, relativeHumidity: 0.42 },
    ]);
    expect(dailyAir({ readings, until: '2026-02-12' })).toHaveLength(1);
    // In whatever order they were typed.
    expect(dailyAir({ readings: [...readings].reverse() })).toEqual(dailyAir({ readings }));
    // The last day wanted is wanted too.
    expect(dailyAir({ readings, until: '2026-02-14' })).toHaveLength(2);
    expect(dailyAir({ readings, until: '2026-02-10' })).toHaveLength(1);
  });

  it('says when they end before the day of fitting', () => {
    expect(() => dailyAir({ readings, until: '2026-02-26' })).toThrow(
      'readings: the last is of 2026-02-14, 12 days before the day wanted (2026-02-26); read on, or take an earlier day',
    );
    expect(() => dailyAir({ readings, until: '2026-02-15' })).toThrow(/1 day before the day wanted/);
    expect(() => dailyAir({ readings, until: 'soon' })).toThrow(/until: "soon" given/);
    expect(() => dailyAir({ readings: [] })).toThrow(/readings: none given/);
  });
});
