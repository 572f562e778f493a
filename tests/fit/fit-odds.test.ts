import { describe, expect, it } from 'vitest';
import { fitOdds } from '../../kernel-helpers/src/fit/fit-odds.js';
import { lidFit } from '../../kernel-helpers/src/fit/lid-fit.js';
import { lidSensitivity } from '../../kernel-helpers/src/fit/lid-sensitivity.js';
import type { FitMonth, SeasonalFit } from '../../kernel-helpers/src/fit/seasonal-fit.js';
import { sizeBox } from '../../kernel-helpers/src/piece/box/size-box.js';
import { yearOfAir } from '../../kernel-helpers/src/wood/air/air.js';

const box = sizeBox({
  insideLength: '9 1/2 in',
  insideWidth: '6 1/4 in',
  insideDepth: '4 in',
  species: 'walnut-black',
});
const air = yearOfAir({
  place: 'chicago-ohare',
  heating: { heatTo: 20, humidifyTo: 0.3, coolTo: 25, dehumidifyTo: 0.6 },
});
const input = { box: box.design, species: 'walnut-black', ringAngle: 20, air, fittingMoisture: 8 };
const fit = lidFit(input);
const lid = { fit, species: 'walnut-black', ringAngle: 20 };
const nothingElse = { meterError: 0, airDoubt: 0, cuttingError: 0 };

describe('odds of a fit', () => {
  it('are the same for the same seed and others for another', () => {
    expect(fitOdds({ ...lid, seed: 7 })).toEqual(fitOdds({ ...lid, seed: 7 }));
    expect(fitOdds({ ...lid, seed: 8 }).wettest).not.toEqual(fitOdds({ ...lid, seed: 7 }).wettest);
  });

  it('agree with the normal distribution where only boards differ', () => {
    // At the window's widest one board in twenty comes under the least play: that is how the window is made.
    const { binds } = fitOdds({ ...lid, ...nothingElse, width: fit.window.widest, simulations: 200_000 });
    // Standard error of 5 % in 200,000 is 0.05 %; the long form and the short form differ a little more.
    expect(Math.abs(binds - 0.05)).toBeLessThan(0.01);
    // Half of all boards move more than the mean.
    const wettest = fit.byMonth[fit.wettest - 1];
    const { wettest: drawn } = fitOdds({ ...lid, ...nothingElse });
    // Two forms of the handbook's equation and 20,000 boards: 0.0006 in apart at most over four seeds.
    const bands = [wettest?.low, wettest?.clearance, wettest?.high];
    for (const [at, band] of bands.entries())
      expect(Math.abs((drawn[at] as number) - (band as number))).toBeLessThan(1e-3);
  });

  it('count the rare board that hardly moves', () => {
    const [january, july] = [8, 12].map((moisture, at) => ({ ...fit.byMonth[6 * at], moisture }) as FitMonth);
    // Flat-sawn walnut, shrinkage 7.8 %: what a board does that moves a fifth as much as most.
    const fifth = (0.2 * (12 - 8)) / (3000 / 7.8 - 30 + 8);
    const limits = { leastClearance: 0, mostClearance: 0.1 - 6 * fifth };
    const year = { ...fit, opening: 6.1, fittingMoisture: 8, limits, byMonth: [january, july], driest: 7, wettest: 7 };
    const { rattles } = fitOdds({
      ...{ fit: year as SeasonalFit, species: 'walnut-black', ringAngle: 0 },
      ...{ ...nothingElse, width: 6, simulations: 1_000_000, seed: 2 },
    });
    // 4.6 standard deviations under the mean: 2.4 boards in a million.
    expect(rattles).toBeGreaterThan(0);
    expect(rattles).toBeLessThan(1e-5);
  });

  it('turn from binding to rattling as the lid is planed narrower', () => {
    const at = (width: number) => fitOdds({ ...lid, width });
    const widths = [6.72, 6.68, 6.64, 6.6, 6.56, 6.5];
    for (let i = 1; i < widths.length; i++) {
      expect(at(widths[i] as number).binds).toBeLessThanOrEqual(at(widths[i - 1] as number).binds);
      expect(at(widths[i] as number).rattles).toBeGreaterThanOrEqual(at(widths[i - 1] as number).rattles);
    }
    expect(at(6.76).fits).toBe(0);
    expect(at(6.62).fits).toBeGreaterThan(0.9);
  });

  it.each([
    [{ simulations: 3 }, 'simulations: 3 given; possible: a number from 100'],
    [{ meterError: -1 }, 'meterError: -1 given; possible: a number from 0 to 5 %'],
    [{ width: '0 in' }, 'width: "0 in" given'],
  ])('refuse %j in one line', (bad, message) => {
    expect(() => fitOdds({ ...lid, ...bad })).toThrow(message);
  });
});

describe('one change at a time', () => {
  const changes = lidSensitivity({ input, otherSpecies: ['mahogany-african', 'maple-sugar'] });

  it('start with the plan and put the most helpful first', () => {
    expect(changes[0]).toMatchObject({ what: 'as planned', gain: 0 });
    const gains = changes.slice(1).map(({ gain }) => gain);
    expect(gains).toEqual([...gains].sort((a, b) => b - a));
  });

  it('say what a woodworker knows: quarter-sawn and deeper grooves help, flat-sawn and restless wood do not', () => {
    const gain = (what: string) => changes.find((change) => change.what.includes(what))?.gain ?? Number.NaN;
    expect(gain('quarter-sawn')).toBeGreaterThan(0);
    expect(gain('groove')).toBeGreaterThan(0);
    expect(gain('flat-sawn')).toBeLessThan(0);
    expect(gain('Maple')).toBeLessThan(0);
  });
});
