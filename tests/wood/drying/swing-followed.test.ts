import { describe, expect, it } from 'vitest';
import { yearOfAir } from '../../../kernel-helpers/src/wood/air/air.js';
import { dailyAir } from '../../../kernel-helpers/src/wood/air/daily-air.js';
import { moistureThroughTime } from '../../../kernel-helpers/src/wood/drying/drying.js';
import { moistureByMonth, swingFollowed } from '../../../kernel-helpers/src/wood/drying/swing-followed.js';
import { equilibriumMoisture } from '../../../kernel-helpers/src/wood/emc.js';

const air = yearOfAir({ place: 'chicago-ohare', heating: { heatTo: 20, coolTo: 25 } });
const lid = { thickness: '1/2', species: 'walnut-black', air };

describe('the swing of the year in a board', () => {
  it('is less and later the thicker the board', () => {
    const [thin, lidThick, thick] = ['1/8', '1/2', 2].map((thickness) => swingFollowed({ ...lid, thickness }));
    expect(thin?.followed).toBeGreaterThan(0.99);
    expect(thin?.daysLate).toBeLessThan(1);
    expect(lidThick?.followed).toBeGreaterThan(thick?.followed as number);
    expect(lidThick?.daysLate).toBeLessThan(thick?.daysLate as number);
    expect(thick?.followed).toBeLessThan(0.8);
  });

  it('is less and later under a better finish', () => {
    const parts = [undefined, 'tung-oil-3-coats', 'urethane-varnish-3-coats', 'epoxy-2k-3-coats'].map((finish) =>
      swingFollowed({ ...lid, finish }),
    );
    for (let index = 1; index < parts.length; index++) {
      expect(parts[index]?.followed).toBeLessThan(parts[index - 1]?.followed as number);
      expect(parts[index]?.daysLate).toBeGreaterThan(parts[index - 1]?.daysLate as number);
    }
  });

  it('never passes the swing of the air, and tells its doubt', () => {
    const swing = swingFollowed({ ...lid, thickness: 1 });
    expect(swing.followedLow).toBeLessThan(swing.followed);
    expect(swing.followedHigh).toBeGreaterThan(swing.followed);
    expect(swing.followedHigh).toBeLessThan(1);
    expect(swing.daysLateLow).toBeLessThan(swing.daysLate);
    expect(swing.daysLateHigh).toBeGreaterThan(swing.daysLate);
    expect(swing.board.wettest.day).toBeGreaterThan(swing.air.wettest.day);
    expect(swing.days).toHaveLength(365);
    const [january] = swing.days;
    const { temperatureC, relativeHumidity } = dailyAir({ year: air })[0] as {
      temperatureC: number;
      relativeHumidity: number;
    };
    expect(january?.air).toBeCloseTo(equilibriumMoisture({ temperatureC, relativeHumidity }), 9);
  });

  it('is told from its days: driest and wettest, the part that reaches the board, least of it in the middle', () => {
    const { days, board, air: atOnce, followed } = swingFollowed({ ...lid, thickness: 2 });
    const ends = (value: (day: (typeof days)[number]) => number) => {
      const values = days.map(value);
      return [Math.min(...values), Math.max(...values)] as [number, number];
    };
    const swing = ([least, most]: [number, number]) => most - least;
    const [means, airs] = [ends(({ mean }) => mean), ends(({ air }) => air)];
    expect([board.driest.moisture, board.wettest.moisture]).toEqual(means);
    expect([atOnce.driest.moisture, atOnce.wettest.moisture]).toEqual(airs);
    for (const { day, moisture } of [board.driest, board.wettest]) expect(days[day - 1]?.mean).toBe(moisture);
    for (const { day, moisture } of [atOnce.driest, atOnce.wettest]) expect(days[day - 1]?.air).toBe(moisture);
    expect(followed).toBeCloseTo(swing(means) / swing(airs), 12);
    expect(swing(ends(({ surface }) => surface))).toBeGreaterThan(swing(means));
    expect(swing(ends(({ core }) => core))).toBeLessThan(swing(means));
  });

  it('comes as many days late as its wave must be moved back to go best with that of the air', () => {
    const wave = air.map(({ month }) => ({
      month,
      temperatureC: 20,
      relativeHumidity: 0.5 + 0.15 * Math.sin((2 * Math.PI * (month - 0.5)) / 12),
    }));
    for (const [thickness, finish] of [
      ['1/2', undefined],
      [1, 'urethane-varnish-3-coats'],
      [2, undefined],
    ] as const) {
      const { days, daysLate } = swingFollowed({ ...lid, thickness, finish, air: wave });
      const together = (shift: number) =>
        days.reduce((sum, { air: atOnce }, day) => sum + atOnce * (days[(day + shift) % 365]?.mean as number), 0);
      const shifts = Array.from({ length: 180 }, (_, shift) => shift);
      const best = shifts.reduce((a, b) => (together(b) > together(a) ? b : a));
      // Whole days, and humidity in a sine gives moisture in nearly one.
      expect(Math.abs(daysLate - best), `${thickness} ${finish}`).toBeLessThan(1);
    }
  });

  it('has for its doubt what half and twice the diffusivity give', () => {
    const { followedLow, followedHigh, daysLateLow, daysLateHigh } = swingFollowed({ ...lid, thickness: 1 });
    const [slow, fast] = [0.5, 2].map((diffusionFactor) => swingFollowed({ ...lid, thickness: 1, diffusionFactor }));
    expect([followedLow, followedHigh]).toEqual([slow?.followed, fast?.followed]);
    expect([daysLateHigh, daysLateLow]).toEqual([slow?.daysLate, fast?.daysLate]);
  });

  it('repeats itself: the step from 31 December to 1 January is like those beside it', () => {
    const { days } = swingFollowed({ ...lid, thickness: 2, finish: 'shellac-2-coats' });
    const step = (day: number) => (days[day % 365]?.mean as number) - (days[day - 1]?.mean as number);
    // A year that did not close would leave its gap in this one step.
    expect(Math.abs(step(365) - (step(364) + step(1)) / 2)).toBeLessThan(0.002);
  });

  it('is what a board goes through that starts far off, once it has been there for years', () => {
    const year = dailyAir({ year: air });
    const years = Array.from({ length: 4 }, (_, y) => year.map((day) => ({ ...day, day: day.day + 365 * y }))).flat();
    const run = moistureThroughTime({ thickness: '1/2', species: 'walnut-black', startMoisture: 20, air: years });
    const { days } = swingFollowed(lid);
    for (const { day, mean } of days) expect(run[3 * 365 + day - 1]?.mean).toBeCloseTo(mean, 2);
  });

  it('refuses a year without a swing', () => {
    const even = air.map(({ month }) => ({ month, temperatureC: 20, relativeHumidity: 0.5 }));
    expect(() => swingFollowed({ ...lid, air: even })).toThrow(/air: the same the whole year/);
  });
});

it('a board has the mean of its days in each month, and no day is lost', () => {
  const { days } = swingFollowed({ ...lid, thickness: 1 });
  const months = moistureByMonth(days);
  expect(months.map(({ month }) => month)).toEqual([1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12]);
  // A twelfth of 365 days has 30 or 31: the mean of the months is that of the days but for those.
  const mean = (values: number[]) => values.reduce((sum, value) => sum + value, 0) / values.length;
  expect(mean(months.map(({ moisture }) => moisture))).toBeCloseTo(mean(days.map((day) => day.mean)), 1);
  const counted = Array.from({ length: 365 }, (_, day) => ({ day: day + 1, mean: day + 1, surface: 0, core: 0 }));
  expect(moistureByMonth(counted)[0]?.moisture).toBe(15.5);
  expect(moistureByMonth(counted)[11]?.moisture).toBe(350);
});
