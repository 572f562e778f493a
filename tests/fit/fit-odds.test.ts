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

  it('of a cut alone are those of the normal distribution', () => {
    // In a year without change only the cut is in doubt: nine in ten within 0.02 in, one in twenty past either end.
    const still = fit.byMonth.map((month) => ({ ...month, moisture: fit.fittingMoisture }));
    const width = fit.opening - 0.1;
    const drawn = fitOdds({
      ...lid,
      ...nothingElse,
      fit: { ...fit, byMonth: still, limits: { leastClearance: 0.08, mostClearance: 0.12 } },
      width,
      cuttingError: 0.02,
    });
    // Standard error of 5 % in 20,000 is 0.15 %, that of the end of the band 0.00025 in.
    expect(Math.abs(drawn.binds - 0.05)).toBeLessThan(0.006);
    expect(Math.abs(drawn.rattles - 0.05)).toBeLessThan(0.006);
    expect(drawn.fits).toBeCloseTo(1 - drawn.binds - drawn.rattles, 12);
    for (const band of [drawn.wettest, drawn.driest])
      for (const [at, play] of [0.08, 0.1, 0.12].entries())
        expect(Math.abs((band[at] ?? 0) - play)).toBeLessThan(0.001);
  });

  it('of a meter alone, and of a year alone, are the play that a percent of moisture takes', () => {
    // Flat-sawn walnut, shrinkage 7.8 %, fibre saturation 30 %: for 1 % of moisture from 8 %.
    const onePercent = 6.65 / (3000 / 7.8 - 30 + 8);
    const still = fit.byMonth.map((month) => ({ ...month, moisture: 8 }));
    const year = { ...fit, byMonth: still, limits: { leastClearance: 0, mostClearance: 1 } };
    for (const doubt of [{ meterError: 1 }, { airDoubt: 1 }]) {
      const { wettest, driest } = fitOdds({ ...lid, fit: year, ringAngle: 0, ...nothingElse, width: 6.65, ...doubt });
      for (const band of [wettest, driest]) {
        expect(Math.abs((band[1] as number) - 0.1)).toBeLessThan(0.0003);
        // Boards differ by 17.5 %, which widens the band by about 2 %; the form bends by another 1 %.
        expect(Math.abs(((band[0] as number) - 0.1) / -onePercent - 1)).toBeLessThan(0.06);
        expect(Math.abs(((band[2] as number) - 0.1) / onePercent - 1)).toBeLessThan(0.06);
      }
    }
  });

  it('leave one lid in twenty under the band that they tell, and one in twenty over it', () => {
    const still = fit.byMonth.map((month) => ({ ...month, moisture: fit.fittingMoisture }));
    const thousand = (limits: SeasonalFit['limits']) =>
      fitOdds({
        ...lid,
        fit: { ...fit, byMonth: still, limits },
        ...nothingElse,
        cuttingError: 0.02,
        simulations: 1000,
      });
    const [low, , high] = thousand(fit.limits).wettest;
    expect(thousand({ leastClearance: low, mostClearance: high })).toMatchObject({
      binds: 0.05,
      rattles: 0.05,
      fits: 0.9,
    });
  });

  it('count a lid whose play is just the least, or just the most, as one that fits', () => {
    const still = fit.byMonth.map((month) => ({ ...month, moisture: fit.fittingMoisture }));
    const limits = { leastClearance: 0.25, mostClearance: 0.25 };
    const sure = { ...lid, ...nothingElse, fit: { ...fit, opening: 6.75, byMonth: still, limits } };
    expect(fitOdds({ ...sure, width: 6.5 })).toMatchObject({ fits: 1, binds: 0, rattles: 0 });
    expect(fitOdds({ ...sure, width: '6 33/64 in' })).toMatchObject({ fits: 0, binds: 1, rattles: 0 });
    expect(fitOdds({ ...sure, width: '6 31/64 in' })).toMatchObject({ fits: 0, binds: 0, rattles: 1 });
  });

  it('count a lid that binds in one month and rattles in another as both, and not as one that fits', () => {
    const limits = { leastClearance: 0.1, mostClearance: 0.1 };
    const { fits, binds, rattles } = fitOdds({
      ...lid,
      ...nothingElse,
      fit: { ...fit, limits },
      width: fit.opening - 0.1,
    });
    expect([fits, binds, rattles]).toEqual([0, 1, 1]);
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

  it('name each idea that differs from the plan, and no other', () => {
    const box = { ...input.box, stockThickness: 5 / 8 };
    const names = (plan: Parameters<typeof lidSensitivity>[0]) => lidSensitivity(plan).map(({ what }) => what);
    const { wettest, driest, byMonth } = fit;
    const middle = Math.round((byMonth[wettest - 1]?.moisture ?? 0) + (byMonth[driest - 1]?.moisture ?? 0)) / 2;
    const all = ['quarter-sawn board', 'flat-sawn board', 'groove 1/16 in deeper', `fitted at ${middle} %`];
    expect(names({ input: { ...input, box } })).toEqual(expect.arrayContaining(['as planned', ...all]));
    expect(names({ input: { ...input, box, ringAngle: 90 } })).not.toContain('quarter-sawn board');
    expect(names({ input: { ...input, box, ringAngle: 0 } })).not.toContain('flat-sawn board');
    expect(names({ input: { ...input, box, fittingMoisture: middle } })).not.toContain(`fitted at ${middle} %`);
    // No groove goes deeper than half the board.
    expect(names({ input: { ...input, box: { ...box, stockThickness: 1 / 2 } } })).not.toContain(
      'groove 1/16 in deeper',
    );
  });

  it('are to the nearest half percent the middle of the driest and the wettest month', () => {
    const fitted = (driest: number, wettest: number) =>
      lidSensitivity({
        input: {
          ...input,
          fittingMoisture: 7,
          moistures: [
            { month: 1, moisture: driest },
            { month: 7, moisture: wettest },
          ],
        },
      }).find(({ what }) => what.startsWith('fitted'));
    expect(fitted(6, 11.2)?.what).toBe('fitted at 8.5 %'); // middle 8.6
    expect(fitted(6, 11.6)?.what).toBe('fitted at 9 %'); // middle 8.8
    expect(fitted(6, 11.6)?.fit.fittingMoisture).toBe(9);
  });

  it('tell what a finish buys that keeps the lid from following its air', () => {
    const calmer = fit.byMonth.map(({ month, moisture }) => ({ month, moisture: 8 + (moisture - 8) / 2 }));
    const finished = lidSensitivity({ input, finished: { shellac: calmer, nothing: fit.byMonth } });
    const [shellac, bare] = ['shellac', 'nothing'].map((name) => finished.find(({ what }) => what === name));
    expect(shellac?.fit).toEqual(lidFit({ ...input, moistures: calmer }));
    const room = (of: typeof fit) => of.window.widest - of.window.narrowest;
    expect(shellac?.gain).toBeCloseTo(room(shellac?.fit as typeof fit) - room(fit), 12);
    expect(shellac?.gain).toBeGreaterThan(0);
    expect(bare?.gain).toBe(0);
  });

  it('have the odds of the plan by itself, from the seed given', () => {
    const plan = { fit, species: 'walnut-black', ringAngle: 20 };
    expect(changes[0]?.odds).toEqual(fitOdds(plan));
    expect(lidSensitivity({ input, seed: 7 })[0]?.odds).toEqual(fitOdds({ ...plan, seed: 7 }));
  });

  it('deepen both grooves by 1/16 in, or by what half the board allows', () => {
    const opening = (stockThickness: number) =>
      lidSensitivity({ input: { ...input, box: { ...input.box, stockThickness } } }).find(({ what }) =>
        what.startsWith('groove'),
      )?.fit.opening;
    expect(opening(3 / 4)).toBe(fit.opening + 1 / 8);
    expect(opening(5 / 8)).toBe(fit.opening + 1 / 8);
    expect(opening(9 / 16)).toBe(fit.opening + 1 / 16);
  });

  it('say what a woodworker knows: quarter-sawn and deeper grooves help, flat-sawn and restless wood do not', () => {
    const gain = (what: string) => changes.find((change) => change.what.includes(what))?.gain ?? Number.NaN;
    expect(gain('quarter-sawn')).toBeGreaterThan(0);
    expect(gain('groove')).toBeGreaterThan(0);
    expect(gain('flat-sawn')).toBeLessThan(0);
    expect(gain('Maple')).toBeLessThan(0);
  });
});
