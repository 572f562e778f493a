import { describe, expect, it } from 'vitest';
import {
  type FitMonth,
  type SeasonalFit,
  seasonalFindings,
  seasonalFit,
} from '../../kernel-helpers/src/fit/seasonal-fit.js';

const year = [8, 6.5, 7, 9, 11, 12, 13, 12.5, 11, 9, 8.5, 7.5].map((moisture, index) => ({
  month: index + 1,
  moisture,
}));
const usual = {
  opening: 6.75,
  species: 'walnut-black',
  ringAngle: 20,
  fittingMoisture: 8,
  moistures: year,
  leastClearance: 0.01,
  mostClearance: 7 / 32,
  cuttingTolerance: 1 / 64,
};

describe('a piece that moves in an opening that does not', () => {
  it('is aimed a cutting tolerance inside the widest width, and at the middle where the window has no room for that', () => {
    const snug = seasonalFit(usual);
    expect(snug.fittedWidth).toBeCloseTo(snug.window.widest - 1 / 64, 12);
    expect(seasonalFit({ ...usual, cuttingTolerance: 0 }).fittedWidth).toBeCloseTo(snug.window.widest, 12);
    const coarse = seasonalFit({ ...usual, cuttingTolerance: 1 });
    expect(coarse.fittedWidth).toBeCloseTo((coarse.window.narrowest + coarse.window.widest) / 2, 12);
  });

  it('at its widest leaves nine boards in ten the least play in the wettest month, at its narrowest the most in the driest', () => {
    const { window, wettest, driest } = seasonalFit(usual);
    expect([wettest, driest]).toEqual([7, 2]);
    // The tangential and radial coefficients turned by 20 degrees, 5 % up from 8 % and 1.5 % down
    const coefficient = 0.00274 * Math.cos(Math.PI / 9) ** 2 + 0.0019 * Math.sin(Math.PI / 9) ** 2;
    const most = coefficient * 5 * (1 + 1.6449 * 0.175);
    const least = -coefficient * 1.5 * (1 + 1.6449 * 0.175);
    expect(window.widest).toBeCloseTo((6.75 - 0.01) / (1 + most), 4);
    expect(window.narrowest).toBeCloseTo((6.75 - 7 / 32) / (1 + least), 4);
  });

  it('takes the first of two months that are alike', () => {
    const moistures = year.map(({ month }) => ({ month, moisture: month % 2 === 0 ? 8 : 10 }));
    expect(seasonalFit({ ...usual, moistures })).toMatchObject({ wettest: 1, driest: 2 });
  });
});

describe('its findings', () => {
  const verdicts = (wet: Partial<FitMonth>, dry: Partial<FitMonth>) => {
    const month = { moisture: 8, clearance: 0.1, low: 0.1, high: 0.1 };
    // A month between that would be stopped either way, were it looked at.
    const between = { ...month, month: 4, clearance: -1, low: -1, high: 9 };
    const fit: SeasonalFit = {
      ...seasonalFit(usual),
      limits: { leastClearance: 0.01, mostClearance: 0.2 },
      byMonth: [between, { ...month, month: 7, ...wet }, { ...month, month: 2, ...dry }],
    };
    return seasonalFindings(fit, { piece: 'lid', tight: 'it sticks', loose: 'it falls out' }, '', usual)
      .slice(1, 3)
      .map(({ verdict }) => verdict);
  };

  it.each([
    [{ low: 0.01, clearance: 0.02 }, 'ok'],
    [{ low: 0.009, clearance: 0.02 }, 'watch'],
    [{ low: 0.009, clearance: 0.01 }, 'watch'],
    [{ low: 0, clearance: 0.009 }, 'stop'],
  ])('with %j in the wettest month: %s', (wet, verdict) => {
    expect(verdicts(wet, {})).toEqual([verdict, 'ok']);
  });

  it.each([
    [{ high: 0.2, clearance: 0.19 }, 'ok'],
    [{ high: 0.201, clearance: 0.19 }, 'watch'],
    [{ high: 0.201, clearance: 0.2 }, 'watch'],
    [{ high: 0.3, clearance: 0.201 }, 'stop'],
  ])('with %j in the driest month: %s', (dry, verdict) => {
    expect(verdicts({}, dry)).toEqual(['ok', verdict]);
  });
});
