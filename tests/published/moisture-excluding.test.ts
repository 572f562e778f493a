import { describe, expect, it } from 'vitest';
import { finishResistance, keptOut } from '../../kernel-helpers/src/wood/drying/finish-resistance.js';
import { allMoistureExcluding } from '../../kernel-helpers/src/wood/drying/moisture-excluding.js';

/**
 * Wood Handbook FPL-GTR-190 (2010), table 16-3 (after Feist, Little and Wennesheimer 1985): each finish's resistance is
 * found from one day's value; the other days are then a prediction, checked here against print.
 */
it('gives the figure of its example', () => {
  expect(finishResistance('urethane-varnish-3-coats')).toBeCloseTo(5.9e9, -8);
});

describe('Wood Handbook FPL-GTR-190, table 16-3', () => {
  const finishes = allMoistureExcluding();
  const days = ['day1', 'day7', 'day14'] as const;
  const usedDay = (kept: (typeof finishes)[number]['keptOutPercent']) =>
    [...days].reverse().find((day) => (kept[day] ?? 0) >= 10) ?? 'day1';

  it('the day that a resistance is found from comes out as printed', () => {
    expect(finishes).toHaveLength(88);
    for (const { id, keptOutPercent } of finishes) {
      const day = usedDay(keptOutPercent);
      expect(Math.abs(keptOut(finishResistance(id), 1)[day] - (keptOutPercent[day] as number)), id).toBeLessThan(0.01);
    }
  });

  /**
   * The days that were not used are predictions. Tolerance: within 5 points in the mean of each day and within 10 points
   * for nine values in ten. 10 points after a week are about a quarter of the resistance, well inside the factor of 2 that
   * the diffusivity is known to. What is left is more than print explains (about 1 point): specimens scatter, and latex and
   * shellac films let more through once they are damp, so that one resistance cannot meet the first day and the last.
   */
  it('the other days come out near print', () => {
    const off = finishes.flatMap(({ id, keptOutPercent }) => {
      const predicted = keptOut(finishResistance(id), 1);
      return days.flatMap((day) => {
        const inPrint = keptOutPercent[day];
        if (day === usedDay(keptOutPercent) || inPrint === null) return [];
        return [{ at: `${id}, ${day}`, day, points: Math.abs(predicted[day] - inPrint) }];
      });
    });
    for (const day of days) {
      const own = off.filter((value) => value.day === day);
      const worst = own.reduce((a, b) => (b.points > a.points ? b : a));
      const mean = own.reduce((sum, { points }) => sum + points, 0) / own.length;
      console.log(
        `finishes, ${own.length} values of ${day}: largest difference ${worst.points.toFixed(1)} points (${worst.at}), mean ${mean.toFixed(1)}`,
      );
      expect(mean, day).toBeLessThan(5);
    }
    expect(off.filter(({ points }) => points <= 10).length / off.length).toBeGreaterThan(0.9);
  });
});

/**
 * Danish building research institute's direction 178 (1993), as quoted in the public help of a simulation program: alkyd oil
 * paint 15e9, polyurethane lacquer 50e9 m² s Pa/kg. Kinds of paint differ, so only the order of size can agree: a factor of 3.
 */
it.each([
  ['alkyd-house-primer-3-coats', 15e9],
  ['enamel-satin-1-coat', 15e9],
  ['polyurethane-paint-2k-3-coats', 50e9],
])('resistance of %s is of the order of %s, published for its kind', (id, published) => {
  const resistance = finishResistance(id);
  console.log(
    `finishes, ${id}: ${resistance.toExponential(1)} m² s Pa/kg, published for its kind ${published.toExponential(1)}`,
  );
  expect(resistance).toBeGreaterThan(published / 3);
  expect(resistance).toBeLessThan(published * 3);
});
