import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { daysToSettle } from '../../../kernel-helpers/src/wood/drying/days-to-settle.js';
import { moistureThroughTime } from '../../../kernel-helpers/src/wood/drying/drying.js';
import { equilibriumMoisture } from '../../../kernel-helpers/src/wood/emc.js';

const shop = { temperatureC: 20, relativeHumidity: 0.42 };
const stack = { thickness: 1, species: 'walnut-black', startMoisture: 12, ...shop };

describe('how long a stack must wait', () => {
  it('is when its mean has come within 1 %, not the day before; its middle comes later', () => {
    const { days, coreDays, settlesAt } = daysToSettle(stack);
    const air = Array.from({ length: 100 }, (_, day) => ({ day, ...shop }));
    const run = moistureThroughTime({ thickness: 1, species: 'walnut-black', startMoisture: 12, air });
    expect((run[days]?.mean as number) - settlesAt).toBeLessThanOrEqual(1);
    expect((run[days - 1]?.mean as number) - settlesAt).toBeGreaterThan(1);
    expect((run[coreDays]?.core as number) - settlesAt).toBeLessThanOrEqual(1);
    expect((run[coreDays - 1]?.core as number) - settlesAt).toBeGreaterThan(1);
    expect(coreDays).toBeGreaterThan(days);
  });

  it('grows as the square of the thickness, as diffusion does', () => {
    const [thin, thick] = [daysToSettle(stack), daysToSettle({ ...stack, thickness: 2 })];
    // Days are whole, and the air at the face holds the thin board back a little more.
    expect(thick.days / thin.days).toBeGreaterThan(3.6);
    expect(thick.days / thin.days).toBeLessThan(4.2);
  });

  it('tells its doubt: half to twice the days, but for what the air at the face takes', () => {
    const { days, low, high } = daysToSettle(stack);
    expect(low).toBeGreaterThanOrEqual(Math.floor(days / 2));
    expect(low).toBeLessThan(0.6 * days);
    expect(high).toBeGreaterThan(1.8 * days);
    expect(high).toBeLessThanOrEqual(2 * days);
  });

  it('is no day for wood that is there already, and more for finer or finished', () => {
    expect(daysToSettle({ ...stack, startMoisture: 8.5 }).days).toBe(0);
    const { days } = daysToSettle(stack);
    expect(daysToSettle({ ...stack, within: 0.5 }).days).toBeGreaterThan(days);
    expect(daysToSettle({ ...stack, finish: 'urethane-varnish-3-coats' }).days).toBeGreaterThan(days);
  });

  it('takes Fahrenheit, and days of air that change', () => {
    expect(
      daysToSettle({
        thickness: 1,
        species: 'walnut-black',
        startMoisture: 12,
        temperatureF: 68,
        relativeHumidity: 0.42,
      }),
    ).toEqual(daysToSettle(stack));
    fc.assert(
      fc.property(fc.double({ min: 0, max: 0.1, noNaN: true }), (swing) => {
        const air = Array.from({ length: 200 }, (_, day) => ({
          day,
          temperatureC: 20,
          relativeHumidity: 0.42 + swing * Math.sin(day / 20),
        }));
        const { days } = daysToSettle({ thickness: 1, species: 'walnut-black', startMoisture: 12, air });
        // The start is forgotten about as fast in air that swings as in steady air.
        expect(Math.abs(days - daysToSettle(stack).days)).toBeLessThanOrEqual(6);
      }),
      { numRuns: 10 },
    );
  });

  it('counts a stack that is too dry as one that is too damp', () => {
    const damp = { temperatureC: 20, relativeHumidity: 0.65 };
    const settlesAt = equilibriumMoisture(damp);
    const { days, coreDays } = daysToSettle({ thickness: 1, species: 'walnut-black', startMoisture: 6, ...damp });
    const air = Array.from({ length: 100 }, (_, day) => ({ day, ...damp }));
    const run = moistureThroughTime({ thickness: 1, species: 'walnut-black', startMoisture: 6, air });
    expect(settlesAt - (run[days]?.mean as number)).toBeLessThanOrEqual(1);
    expect(settlesAt - (run[days - 1]?.mean as number)).toBeGreaterThan(1);
    expect(settlesAt - (run[coreDays]?.core as number)).toBeLessThanOrEqual(1);
    expect(settlesAt - (run[coreDays - 1]?.core as number)).toBeGreaterThan(1);
  });

  it('is enough with air that ends on the day it settles, counted from whatever day, and not with a day less', () => {
    const { coreDays } = daysToSettle(stack);
    const until = (last: number, from: number) =>
      daysToSettle({
        ...{ thickness: 1, species: 'walnut-black', startMoisture: 12 },
        air: Array.from({ length: last + 1 }, (_, day) => ({ day: from + day, ...shop })),
      });
    for (const from of [0, 59]) {
      // Steady air has no other days than these.
      const { low, high, ...likely } = daysToSettle(stack);
      expect(until(3 * coreDays, from)).toMatchObject(likely);
      // The slow board of the doubt needs the longest: with air that just lasts for it, it settles.
      const slowest = daysToSettle({ ...stack, diffusionFactor: 0.5 }).coreDays;
      expect(until(slowest, from)).toMatchObject(likely);
      expect(() => until(slowest - 1, from)).toThrow(`air: it ends after ${slowest - 1} days`);
    }
  });

  it('has for its doubt what twice and half the diffusivity give', () => {
    const { low, high } = daysToSettle(stack);
    expect(daysToSettle({ ...stack, diffusionFactor: 2 }).days).toBe(low);
    expect(daysToSettle({ ...stack, diffusionFactor: 0.5 }).days).toBe(high);
  });

  it('gives a stack up that has not settled in ten years', () => {
    expect(() => daysToSettle({ ...stack, thickness: 6, startMoisture: 25, finish: 'epoxy-2k-3-coats' })).toThrow(
      /^air: it ends after 3650 days/,
    );
  });

  it('says when the air given ends too soon', () => {
    const air = Array.from({ length: 11 }, (_, day) => ({ day, ...shop }));
    expect(() => daysToSettle({ thickness: 2, species: 'walnut-black', startMoisture: 14, air })).toThrow(
      /air: it ends after 10 days with the board still \d\.\d % from settled in the middle/,
    );
  });

  it('refuses in one line', () => {
    expect(() => daysToSettle({ ...stack, startMoisture: 40 })).toThrow(/startMoisture: 40 % given/);
    expect(() => daysToSettle({ ...stack, relativeHumidity: 42 })).toThrow(/so 42 % is written 0.42/);
    expect(() => daysToSettle({ ...stack, within: 0 })).toThrow(/within: 0 given/);
  });
});
