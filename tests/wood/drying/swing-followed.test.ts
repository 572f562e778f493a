import { describe, expect, it } from 'vitest';
import { yearOfAir } from '../../../kernel-helpers/src/wood/air/air.js';
import { dailyAir } from '../../../kernel-helpers/src/wood/air/daily-air.js';
import { moistureThroughTime } from '../../../kernel-helpers/src/wood/drying/drying.js';
import { swingFollowed } from '../../../kernel-helpers/src/wood/drying/swing-followed.js';
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
