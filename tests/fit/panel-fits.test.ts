import { describe, expect, it } from 'vitest';
import { drawerFit, fastenerTravel, panelFit } from '../../kernel-helpers/src/fit/panel-fits.js';
import { yearOfAir } from '../../kernel-helpers/src/wood/air/air.js';

const air = yearOfAir({
  place: 'chicago-ohare',
  heating: { heatTo: 20, humidifyTo: 0.3, coolTo: 25, dehumidifyTo: 0.6 },
});
const wood = { species: 'cherry-black', ringAngle: 0, fittingMoisture: 8, air };
// One month each way, so that the sums can be done by hand.
const twoMonths = {
  ...wood,
  moistures: [
    { month: 1, moisture: 6 },
    { month: 7, moisture: 12 },
  ],
};

describe('pieces that move in their place, worked by hand', () => {
  it('a panel 12 in between its stiles, grooves 3/8 deep', () => {
    const fit = panelFit({ ...twoMonths, between: '12 in', grooveDepth: '3/8 in' });
    expect(fit.opening).toBe(12.75);
    expect(fit.limits.mostClearance).toBe(0.375); // half of both grooves
    // Wettest: 4 % x 0.00248 = 0.00992, nine boards in ten at most 0.00992 x (1 + 1.6449 x 0.175) = 0.012776
    expect(fit.window.widest).toBeCloseTo((12.75 - 1 / 64) / 1.012776, 4);
    // Driest: -2 % x 0.00248 x 1.28786 = -0.006388
    expect(fit.window.narrowest).toBeCloseTo((12.75 - 0.375) / (1 - 0.006388), 4);
  });

  it('a drawer of 8 in keeps its gap in July', () => {
    const fit = drawerFit({ ...twoMonths, opening: '8 in' });
    const july = fit.byMonth.find(({ month }) => month === 7);
    expect(july?.low).toBeGreaterThanOrEqual(1 / 32 - 1e-9);
    expect(fit.fittedWidth * 1.012776).toBeLessThanOrEqual(8 - 1 / 32 + 1e-9);
  });

  it('a table top 16 in from its fixed line', () => {
    const travel = fastenerTravel({ ...twoMonths, fromFixed: '16 in', slot: '1/4 in' });
    expect(travel.outward).toBeCloseTo(16 * 0.012776, 4);
    expect(travel.inward).toBeCloseTo(16 * 0.006388, 4);
    expect(travel.slotLength).toBeCloseTo(16 * 0.019164 + 3 / 16, 3);
    expect(travel.findings[0]?.verdict).toBe('stop');
    expect(fastenerTravel({ ...twoMonths, fromFixed: '16 in', slot: '1/2 in' }).findings[0]?.verdict).toBe('ok');
  });

  it.each([
    [
      () => panelFit({ ...wood, between: '40 ft', grooveDepth: '3/8 in' }),
      'between: "40 ft" given; possible: 1/2 in to 120 in',
    ],
    [() => panelFit({ ...wood, between: '12 in', grooveDepth: 0 }), 'grooveDepth: 0 given; possible: 1/16 in to 1 in'],
    [() => drawerFit({ ...wood, opening: '8 in', ringAngle: -1 }), 'ringAngle: -1 given'],
    [() => fastenerTravel({ ...wood, fromFixed: 'wide' }), 'fromFixed: "wide" given; not a length'],
  ])('bad input %# is refused in one line', (attempt, message) => {
    expect(attempt).toThrow(message);
  });
});
