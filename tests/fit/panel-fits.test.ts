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

  it("a drawer's gap in winter is seen and harms nothing: no stop, and where no height does both it does not stick", () => {
    // From the wettest to the driest a board of 18 in across changes by 0.019164 x 18, twice what the limits leave.
    const fit = drawerFit({ ...twoMonths, opening: '18 in' });
    expect(fit.window.narrowest).toBeGreaterThan(fit.window.widest);
    expect(fit.findings.filter(({ verdict }) => verdict === 'stop')).toEqual([]);
    const at = (month: number) => fit.byMonth.find((each) => each.month === month);
    expect(at(7)?.low).toBeCloseTo(1 / 32, 9);
    expect(at(1)?.clearance).toBeGreaterThan(3 / 16);
    const said = fit.findings.map(({ rule, verdict, figures }) => `${verdict}: ${rule}: ${figures}`);
    expect(said[0]).toMatch(/^watch: drawer: a height that fits the whole year: no height does/);
    expect(said[1]).toMatch(/^ok: drawer: free in the wettest month/);
    expect(said[2]).toMatch(/^watch: drawer: gap in the driest month/);
    expect(said.join()).not.toMatch(/width|hold/);
    // A panel of that size loses its hold: that stays a stop.
    const panel = panelFit({ ...twoMonths, between: '18 in', grooveDepth: '1/8 in' });
    expect(panel.findings.some(({ verdict }) => verdict === 'stop')).toBe(true);
  });

  it('a panel and a drawer are planed 1/64 in under the widest that fits, or to the middle of a narrow window', () => {
    const panel = panelFit({ ...twoMonths, between: '12 in', grooveDepth: '3/8 in' });
    expect(panel.window.widest - panel.fittedWidth).toBeCloseTo(1 / 64, 12);
    const drawer = drawerFit({ ...twoMonths, opening: '4 in' });
    expect(drawer.window.widest - drawer.fittedWidth).toBeCloseTo(1 / 64, 12);
    const { window, fittedWidth } = drawerFit({ ...twoMonths, opening: '8 in' });
    expect(window.widest - window.narrowest).toBeLessThan(1 / 64);
    expect(fittedWidth).toBeCloseTo((window.narrowest + window.widest) / 2, 12);
  });

  it('a panel whose groove must hold more of it may show less play', () => {
    const most = (leastEngagement: number) =>
      panelFit({ ...twoMonths, between: '12 in', grooveDepth: '3/8 in', leastEngagement }).limits.mostClearance;
    expect(most(0)).toBe(0.75); // both grooves
    expect(most(0.75)).toBe(0.1875); // a quarter of both
  });

  it('a table top 16 in from its fixed line', () => {
    const travel = fastenerTravel({ ...twoMonths, fromFixed: '16 in', slot: '1/4 in' });
    expect(travel.outward).toBeCloseTo(16 * 0.012776, 4);
    expect(travel.inward).toBeCloseTo(16 * 0.006388, 4);
    expect(travel.slotLength).toBeCloseTo(16 * 0.019164 + 3 / 16, 3);
    expect(travel.findings[0]?.verdict).toBe('stop');
    expect(fastenerTravel({ ...twoMonths, fromFixed: '16 in', slot: '1/2 in' }).findings[0]?.verdict).toBe('ok');
    // A slot of just the length that is needed serves.
    const just = fastenerTravel({ ...twoMonths, fromFixed: '16 in', slot: travel.slotLength });
    expect(just.findings[0]?.verdict).toBe('ok');
    expect(fastenerTravel({ ...twoMonths, fromFixed: '16 in' }).findings[0]?.verdict).toBe('ok');
  });

  it('a table top fastened on its driest day only moves outward, on its wettest only inward', () => {
    const [dry, wet] = [6, 12].map((fittingMoisture) =>
      fastenerTravel({ ...twoMonths, fittingMoisture, fromFixed: '16 in', screw: '1/4 in' }),
    );
    expect(dry?.inward).toBe(0);
    expect(dry?.outward).toBeCloseTo(16 * 6 * 0.00248 * 1.28786, 4);
    expect(dry?.slotLength).toBeCloseTo((dry?.outward ?? 0) + 1 / 4, 12);
    expect(wet?.outward).toBe(0);
    expect(wet?.inward).toBeCloseTo(16 * 6 * 0.00248 * 1.28786, 4);
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
