import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { daysToSettle } from '../../../kernel-helpers/src/wood/drying/days-to-settle.js';
import { readingOr, stackPlan, stackToday } from '../../../kernel-helpers/src/wood/drying/stack-plan.js';
import { equilibriumMoisture } from '../../../kernel-helpers/src/wood/emc.js';

const later = { driest: { moisture: 6 }, wettest: { moisture: 11 } };
const stack = { species: 'cherry-black', thickness: '1 in', moisture: 12, later };
const usual = { temperatureC: 19, relativeHumidity: 0.45 };
// Wood comes to about 15 % here.
const damp = { temperatureC: 12, relativeHumidity: 0.78 };

describe('a stack in a shop near the middle of its later year', () => {
  it('waits in the shop, as long as boards take there', () => {
    const plan = stackPlan({ ...stack, shop: usual });
    expect(plan).toMatchObject({ conditioned: false, air: usual, middle: 8.5, thickness: 1, moisture: 12 });
    expect(plan).toMatchObject(daysToSettle({ species: 'cherry-black', thickness: 1, startMoisture: 12, ...usual }));
  });
});

describe('a stack in a shop that would never bring it there', () => {
  it('waits in air made for it, warm enough, and comes to the middle', () => {
    const plan = stackPlan({ ...stack, moisture: 15, shop: damp });
    expect(plan.conditioned).toBe(true);
    expect(plan.shopSettlesAt).toBeGreaterThan(14);
    expect(plan.air.temperatureC).toBe(20);
    // Wood Handbook, table 4-2: 70 °F and 45 % give 8.5 %; the same at 68 °F within a tenth of a percent of moisture.
    expect(plan.air.relativeHumidity).toBeCloseTo(0.45, 1);
    expect(plan.settlesAt).toBeCloseTo(8.5, 6);
    expect(plan.days).toBeGreaterThan(5);
    // In the shop it would be called settled from the start, at a moisture that the house never has.
    expect(daysToSettle({ species: 'cherry-black', thickness: 1, startMoisture: 15, ...damp }).days).toBe(0);
  });

  it('in any shop comes within 2 % of the middle, and needs no other air where the shop does that', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0, max: 40, noNaN: true }),
        fc.double({ min: 0.1, max: 0.9, noNaN: true }),
        (temperatureC, relativeHumidity) => {
          const shop = { temperatureC, relativeHumidity };
          const plan = stackPlan({ ...stack, moisture: 8.5, shop });
          expect(Math.abs(plan.settlesAt - 8.5)).toBeLessThanOrEqual(2 + 1e-6);
          expect(equilibriumMoisture(plan.air)).toBeCloseTo(plan.settlesAt, 6);
          expect(plan.conditioned).toBe(Math.abs(equilibriumMoisture(shop) - 8.5) > 2);
        },
      ),
      { numRuns: 15 },
    );
  });
});

describe('what later sheets take from it', () => {
  const plan = stackPlan({ ...stack, shop: usual });

  it('is the stack of sheet 03, or a newer reading of it in the same air', () => {
    expect(stackToday(plan, '')).toBe(plan);
    const dried = stackToday(plan, 9);
    expect(dried).toMatchObject({ moisture: 9, air: plan.air, settlesAt: plan.settlesAt, days: 0 });
    expect(() => stackToday(plan, 'dry')).toThrow('moisture: "dry" given; possible: a number from 3 to 60 %');
    expect(() => stackToday(undefined, '')).toThrow('run sheet 03 again');
  });

  it('is the moisture a part is fitted at, where its meter was not read yet', () => {
    expect(readingOr('', plan)).toBeCloseTo(plan.settlesAt, 1);
    expect(readingOr(9, plan)).toBe(9);
    expect(() => readingOr('damp', plan)).toThrow('fittingMoisture: "damp" given; possible: a number from 3 to 20 %');
  });
});
