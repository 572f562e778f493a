import fc from 'fast-check';
import { expect, test } from 'vitest';
import { ShopError } from '../../../kernel-helpers/src/measure/shop-error.js';
import { checkPlan } from '../../../kernel-helpers/src/stock/cut-plan/check-plan.js';
import { planCuts } from '../../../kernel-helpers/src/stock/cut-plan/plan-cuts.js';
import { randomJob } from './random-job.js';

const side = { name: 'side', count: 2, length: 12, width: 4, thickness: 0.75 };
const plank = { mark: 'A', thickness: 1, width: 6, length: 48, cost: 2400, defects: [] };
const job = { parts: [side], boards: [plank], kerf: 1 / 8, firstCut: 'crosscut' as const };

test('every plan of a random job can be cut as it says', () => {
  let planned = 0;
  fc.assert(
    fc.property(randomJob, (random) => {
      try {
        const plan = planCuts({ ...random, effort: 0.1 });
        planned++;
        expect(checkPlan(plan, random)).toEqual([]);
      } catch (error) {
        if (!(error instanceof ShopError)) throw error;
      }
    }),
    { numRuns: 150, seed: 5 },
  );
  expect(planned).toBeGreaterThan(75);
});

test('the same job gives the same plan', () => {
  fc.assert(
    fc.property(randomJob, (random) => {
      const plan = () => {
        try {
          return planCuts({ ...random, effort: 0.1 });
        } catch (error) {
          return (error as Error).message;
        }
      };
      expect(plan()).toEqual(plan());
    }),
    { numRuns: 10, seed: 6 },
  );
});

const message = (change: object) => {
  try {
    planCuts({ ...job, ...change } as Parameters<typeof planCuts>[0]);
  } catch (error) {
    if (error instanceof ShopError) return error.message;
    throw error;
  }
  return 'no message';
};

test('bad input gives one plain message', () => {
  expect(message({ kerf: 0 })).toMatch(/^kerf: 0 given; possible: 1\/64 in to 1\/2 in \(the saw takes something/);
  expect(message({ parts: [{ ...side, length: 60 }] })).toMatch(
    /^parts: "side" is 60 in .* by 4 in .*; possible: .*largest given: 48 in/,
  );
  expect(message({ parts: [{ ...side, thickness: 1.5 }] })).toMatch(
    /^parts: "side" needs a board 1 1\/2 in .* thick; possible: up to 1 in/,
  );
  const knot = { kind: 'knot', fromEnd: 47, fromEdge: 1, length: 2, width: 1 };
  expect(message({ boards: [{ ...plank, defects: [knot] }] })).toMatch(
    /^defects: the knot on board "A" reaches 49 in .* possible: within 48 in/,
  );
  expect(message({ parts: [{ ...side, count: 10_000 }] })).toMatch(
    /^parts: 10,000 given; possible: at most 500 in one plan/,
  );
  expect(message({ parts: [side, side] })).toBe('parts: the name "side" is given twice; each needs its own');
  expect(message({ parts: [{ ...side, count: 9 }] })).toMatch(/^boards: the parts do not fit on the boards given/);
  expect(message({ firstCut: 'sideways' })).toMatch(/^firstCut: "sideways" given; possible: crosscut, rip/);
  expect(message({ parts: [{ ...side, count: 5, sequence: 'round the box' }] })).toMatch(
    /^sequence: "round the box" is 60.50 in long/,
  );
});
