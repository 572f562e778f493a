import { describe, expect, it } from 'vitest';
import { celsius } from '../../../kernel-helpers/src/measure/temperature.js';
import { moistureThroughTime } from '../../../kernel-helpers/src/wood/drying/drying.js';
import { finishResistance, keptOut } from '../../../kernel-helpers/src/wood/drying/finish-resistance.js';
import { equilibriumMoisture } from '../../../kernel-helpers/src/wood/emc.js';

describe("the laboratory's test of a finish", () => {
  // From 30 to 90 % of humidity at 80 °F. A panel of 3 x 5 x 5/8 in that drinks through all six faces has the volume over
  // its surface of a board 1 / (1/3 + 1/5 + 8/5) = 15/32 in thick that drinks through two.
  const temperatureC = celsius(80);
  const startMoisture = equilibriumMoisture({ temperatureC, relativeHumidity: 0.3 });
  const air = Array.from({ length: 15 }, (_, day) => ({ day, temperatureC, relativeHumidity: 0.9 }));
  const gains = (finish?: string, diffusionFactor?: number) =>
    moistureThroughTime({
      ...{ thickness: '15/32', species: 'pine-ponderosa', finish, diffusionFactor },
      ...{ startMoisture, air },
    }).map(({ mean }) => mean - startMoisture);

  it.each([
    ['urethane-varnish-3-coats', 1],
    ['shellac-2-coats', 1],
    ['tung-oil-3-coats', 2],
  ])('is that of a bare and a finished board in its air: %s, diffusivity times %f', (finish, diffusionFactor) => {
    const [bare, finished] = [gains(undefined, diffusionFactor), gains(finish, diffusionFactor)];
    const kept = (day: number) => 100 * (1 - (finished[day] as number) / (bare[day] as number));
    const { day1, day7, day14 } = keptOut(finishResistance(finish, diffusionFactor), diffusionFactor);
    for (const [day, said] of [
      [1, day1],
      [7, day7],
      [14, day14],
    ] as const)
      expect(Math.abs(kept(day) - said), `day ${day}`).toBeLessThan(0.05);
  });

  it('keeps all out where nothing goes through, and nothing where all does; less each week', () => {
    expect(keptOut(1e15, 1).day14).toBeGreaterThan(99.9);
    expect(keptOut(0, 1)).toEqual({ day1: 0, day7: 0, day14: 0 });
    const { day1, day7, day14 } = keptOut(5e9, 1);
    expect(day1).toBeGreaterThan(day7);
    expect(day7).toBeGreaterThan(day14);
  });

  it('gives a finish the same resistance each time it is asked', () => {
    expect(finishResistance('shellac-2-coats')).toBe(finishResistance('shellac-2-coats', 1));
    expect(finishResistance('shellac-2-coats', 2)).not.toBe(finishResistance('shellac-2-coats', 1));
  });
});
