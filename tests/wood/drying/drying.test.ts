import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { yearOfAir } from '../../../kernel-helpers/src/wood/air/air.js';
import { type AirOnDay, dailyAir } from '../../../kernel-helpers/src/wood/air/daily-air.js';
import { saturationPressure } from '../../../kernel-helpers/src/wood/air/psychrometrics.js';
import { stillAirResistance } from '../../../kernel-helpers/src/wood/drying/board-in-air.js';
import { diffusivity } from '../../../kernel-helpers/src/wood/drying/diffusivity.js';
import { type DryingBoard, moistureThroughTime } from '../../../kernel-helpers/src/wood/drying/drying.js';
import { finishResistance } from '../../../kernel-helpers/src/wood/drying/finish-resistance.js';
import { equilibriumMoisture } from '../../../kernel-helpers/src/wood/emc.js';
import { species } from '../../../kernel-helpers/src/wood/species.js';
import { thirdKind } from '../../published/slab-series.js';

const days = (count: number, air: (day: number) => Omit<AirOnDay, 'day'>): AirOnDay[] =>
  Array.from({ length: count }, (_, day) => ({ day, ...air(day) }));
const steady = (count: number, relativeHumidity: number, temperatureC = 20) =>
  days(count, () => ({ temperatureC, relativeHumidity }));
const lid: DryingBoard = { thickness: '1/2', species: 'walnut-black' };

const anyBoard = fc.record({
  thickness: fc.constantFrom('1/8', '1/2', '7/8', '2'),
  species: fc.constantFrom('walnut-black', 'pine-eastern-white', 'oak-white', 'rosewood-indian'),
  finish: fc.constantFrom(undefined, 'shellac-2-coats', 'epoxy-2k-3-coats'),
});
const anyAir = fc
  .array(
    fc.record({
      relativeHumidity: fc.double({ min: 0.2, max: 0.9, noNaN: true }),
      gap: fc.integer({ min: 1, max: 20 }),
    }),
    {
      minLength: 2,
      maxLength: 8,
    },
  )
  .map((list) => {
    let day = 0;
    return list.map(({ relativeHumidity, gap }) => {
      day += gap;
      return { day, temperatureC: 20, relativeHumidity };
    });
  });

describe('a board through time', () => {
  it('stays where it is in air that suits it', () => {
    const startMoisture = equilibriumMoisture({ temperatureC: 20, relativeHumidity: 0.5 });
    for (const { mean, surface, core } of moistureThroughTime({ ...lid, air: steady(20, 0.5), startMoisture }))
      for (const moisture of [mean, surface, core]) expect(moisture).toBeCloseTo(startMoisture, 9);
  });

  it('never leaves what its start and its air span; face first, middle last', () => {
    fc.assert(
      fc.property(anyBoard, anyAir, fc.double({ min: 3, max: 20, noNaN: true }), (board, air, startMoisture) => {
        const reachable = [startMoisture, ...air.map((day) => equilibriumMoisture(day))];
        // An overshoot of the tolerance of one step, 0.001 %, is the solver's.
        const [least, most] = [Math.min(...reachable) - 0.002, Math.max(...reachable) + 0.002];
        for (const { mean, surface, core } of moistureThroughTime({ ...board, air, startMoisture }))
          for (const moisture of [mean, surface, core]) {
            expect(moisture).toBeGreaterThan(least);
            expect(moisture).toBeLessThan(most);
          }
      }),
    );
  });

  it('takes up water from the face inward: the face is dampest and the middle driest, all of it as it was at the start', () => {
    const [first, ...later] = moistureThroughTime({ ...lid, thickness: 1, air: steady(30, 0.8), startMoisture: 6 });
    expect(first).toMatchObject({ day: 0, surface: 6 });
    expect(first?.mean).toBeCloseTo(6, 9);
    expect(first?.core).toBeCloseTo(6, 9);
    for (const { mean, surface, core } of later) {
      expect(surface).toBeGreaterThan(mean);
      expect(mean).toBeGreaterThan(core);
    }
  });

  it('goes the same way whenever the days are counted from', () => {
    const air = days(20, (day) => ({ temperatureC: 15 + day / 4, relativeHumidity: 0.4 + day / 100 }));
    const later = air.map(({ day, ...rest }) => ({ day: day + 100, ...rest }));
    const [run, runLater] = [air, later].map((given) => moistureThroughTime({ ...lid, air: given, startMoisture: 8 }));
    for (const [index, { day, mean, surface, core }] of (runLater ?? []).entries()) {
      expect(day).toBe(100 + index);
      expect(mean).toBeCloseTo(run?.[index]?.mean as number, 6);
      expect(surface).toBeCloseTo(run?.[index]?.surface as number, 6);
      expect(core).toBeCloseTo(run?.[index]?.core as number, 6);
    }
  });

  it('may start anywhere from ovendry to fibre saturation', () => {
    const inFiveDays = (startMoisture: number) =>
      moistureThroughTime({ ...lid, air: steady(5, 0.5), startMoisture })[4]?.mean as number;
    expect(inFiveDays(0)).toBeGreaterThan(0);
    expect(inFiveDays(30)).toBeLessThan(30);
  });

  it('spreads twice as fast with twice the diffusivity: as far in half the time, where the face holds nothing back', () => {
    const thick = { ...lid, thickness: 4, startMoisture: 6 };
    const run = moistureThroughTime({ ...thick, air: steady(201, 0.7) });
    const fast = moistureThroughTime({ ...thick, air: steady(101, 0.7), diffusionFactor: 2 });
    for (const day of [20, 50, 100]) {
      const [slow, quick] = [run[2 * day]?.core as number, fast[day]?.core as number];
      // The still air at the face takes up to 2 % of the days of a half inch, less of four inches.
      expect(Math.abs((quick - 6) / (slow - 6) - 1), `day ${day}`).toBeLessThan(0.02);
    }
  });

  it('comes steadily nearer in steady air: slower when thicker, and with a finish', () => {
    const wet = { air: steady(30, 0.7), startMoisture: 6 };
    const run = (board: DryingBoard) => moistureThroughTime({ ...board, ...wet }).map(({ mean }) => mean);
    const [bare, thick, finished] = [
      run(lid),
      run({ ...lid, thickness: 1 }),
      run({ ...lid, finish: 'shellac-3-coats' }),
    ];
    for (let day = 1; day < bare.length; day++) {
      expect(bare[day]).toBeGreaterThan(bare[day - 1] as number);
      expect(thick[day]).toBeLessThan(bare[day] as number);
      expect(finished[day]).toBeLessThan(bare[day] as number);
    }
  });

  it('a small step is that of the slab with a resistance, in its own units', () => {
    // From 9.3 to 9.8 % the diffusivity changes by 4 %, so its middle value does within half a percent of the step.
    const temperatureC = 20;
    const [from, to] = [0.5, 0.53];
    const emc = (relativeHumidity: number) => equilibriumMoisture({ temperatureC, relativeHumidity });
    const [start, end] = [emc(from), emc(to)];
    const specificGravity = species('walnut-black').specificGravity?.at12 as number;
    const D = diffusivity({ moisture: (start + end) / 2, temperatureC, specificGravity });
    const a = (0.5 * 0.0254) / 2;
    for (const finish of [undefined, 'urethane-varnish-3-coats']) {
      const resistance = stillAirResistance + (finish ? finishResistance(finish) : 0);
      // kg/(m² s) for 1 % of moisture between wood and air, over the kg/m³ that 1 % is.
      const perPercent = (saturationPressure(temperatureC) * (to - from)) / (end - start) / resistance;
      const Bi = (perPercent / (10 * specificGravity)) * (a / D);
      const run = moistureThroughTime({ ...lid, finish, air: steady(31, to), startMoisture: start });
      for (const day of [2, 5, 10, 30]) {
        const reached = ((run[day]?.mean as number) - start) / (end - start);
        expect(Math.abs(reached - thirdKind(Bi, (D * day * 86_400) / a ** 2)), `${finish}, day ${day}`).toBeLessThan(
          0.005,
        );
      }
    }
  });

  it('takes no notice of days put in between', () => {
    const year = dailyAir({ year: yearOfAir({ place: 'minneapolis', heating: { heatTo: 20 } }) });
    const sparse = year.filter(({ day }) => day % 10 === 1);
    const filled = sparse.flatMap((from, index) => {
      const to = sparse[index + 1];
      if (!to) return [from];
      const middle = (key: 'day' | 'temperatureC' | 'relativeHumidity') => (from[key] + to[key]) / 2;
      return [
        from,
        { day: middle('day'), temperatureC: middle('temperatureC'), relativeHumidity: middle('relativeHumidity') },
      ];
    });
    const of = (air: AirOnDay[]) =>
      new Map(moistureThroughTime({ ...lid, air, startMoisture: 9 }).map((at) => [at.day, at]));
    const [few, many] = [of(sparse), of(filled)];
    for (const [day, { mean }] of few) expect(Math.abs(mean - (many.get(day)?.mean as number))).toBeLessThan(0.01);
  });

  it.each([
    [{ startMoisture: 35 }, /startMoisture: 35 % given; 0 to 30 % is possible \(above fibre saturation/],
    [{ species: 'redwood-old-growth', startMoisture: 25 }, /startMoisture: 25 % given; 0 to 22 %/],
    [{ species: 'wallnut' }, /species: "wallnut" given; nearest: walnut-black/],
    [{ species: 'apple' }, /species: apple has no published specific gravity; give one as specificGravity/],
    [{ finish: 'shellac' }, /finish: "shellac" given; nearest: shellac-1-coat/],
    [{ thickness: 0 }, /thickness: 0 given; possible: 1\/32 in to 6 in/],
    [{ thicknes: 1 }, /thicknes: there is no such parameter; the nearest is thickness/],
    [{ air: [] }, /air: \[\] given; possible: at least two days/],
    [
      { air: yearOfAir({ place: 'london' }) },
      /air no\. 1, day: nothing given; possible: a number of days \(dailyAir makes days/,
    ],
    [{ air: steady(3, 45) }, /air no\. 1, relativeHumidity: 45 given; .* so 45 % is written 0.45/],
    [{ air: steady(3, 0.5).reverse() }, /air no\. 2, day: 1 given; possible: more than 2 \(days must rise\)/],
    [
      { air: [...steady(2, 0.5), { day: 1, temperatureC: 20, relativeHumidity: 0.5 }] },
      /air no\. 3, day: 1 given; possible: more than 1 \(days must rise\)/,
    ],
  ])('refuses %j in one line', (bad, message) => {
    const good = { ...lid, air: steady(3, 0.5), startMoisture: 8 };
    expect(() => moistureThroughTime({ ...good, ...bad } as never)).toThrow(message);
  });

  it('takes a weighed specific gravity for a wood without a published one', () => {
    const apple = { thickness: '1/2', species: 'apple', specificGravity: 0.61 };
    const run = moistureThroughTime({ ...apple, air: steady(10, 0.6), startMoisture: 7 });
    expect(run[9]?.mean).toBeGreaterThan(8);
  });
});
