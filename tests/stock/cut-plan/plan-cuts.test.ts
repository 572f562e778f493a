import fc from 'fast-check';
import { expect, test } from 'vitest';
import { ShopError } from '../../../kernel-helpers/src/measure/shop-error.js';
import { planCuts } from '../../../kernel-helpers/src/stock/cut-plan/plan-cuts.js';
import { checkPlan } from './check-plan.js';
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

test('of plans that cost the same, the parts are drawn together, so that an offcut worth keeping is left', () => {
  const long = { ...plank, length: 96 };
  const plan = planCuts({ ...job, boards: [long] });
  const [offcut] = [...(plan.boards[0]?.offcuts ?? [])].sort((a, b) => b.length - a.length);
  expect(offcut?.length).toBeCloseTo(96 - 2 * (12 + 1 / 8), 9);
  expect(offcut?.width).toBe(6);
});

test('parts of a sequence come one after the other along one strip', () => {
  const parts = [
    { ...side, name: 'front', count: 1, length: 10, sequence: 'round the box' },
    { ...side, name: 'right', count: 1, length: 7, sequence: 'round the box' },
    { ...side, name: 'back', count: 1, length: 10, sequence: 'round the box' },
    { ...side, name: 'left', count: 1, length: 7, sequence: 'round the box' },
  ];
  const plan = planCuts({ ...job, parts });
  expect(checkPlan(plan, { ...job, parts })).toEqual([]);
  const along = plan.boards[0]?.parts.map(({ fromEnd }) => fromEnd);
  expect(along).toEqual([0, 10.125, 17.25, 27.375]);
});

test('a board in hand costs nothing and is taken first; of such boards the smaller', () => {
  const boards = [
    { ...plank, mark: 'bought', length: 40 },
    { ...plank, mark: 'large, in hand', length: 60, cost: 0 },
    { ...plank, mark: 'small, in hand', length: 36, cost: 0 },
  ];
  const plan = planCuts({ ...job, boards });
  expect(plan.boards.map(({ board }) => board.mark)).toEqual(['small, in hand']);
  expect({ cost: plan.cost, proven: plan.proven, leastArea: plan.leastArea }).toEqual({
    cost: 0,
    proven: true,
    leastArea: true,
  });
});

test('a checker finds what is wrong with a plan', () => {
  const plan = planCuts(job);
  expect(checkPlan(plan, job)).toEqual([]);
  const [board] = plan.boards as [(typeof plan.boards)[number]];
  const moved = { ...board, parts: board.parts.map((part) => ({ ...part, fromEnd: part.fromEnd + 1 })) };
  expect(checkPlan({ ...plan, boards: [moved] }, job).join()).toMatch(/runs through side/);
  expect(checkPlan({ ...plan, boards: [{ ...board, cuts: [] }] }, job).join()).toMatch(/not cut to its size/);
  const knot = { kind: 'knot', fromEnd: 1, fromEdge: 1, length: 1, width: 1 };
  expect(checkPlan(plan, { ...job, boards: [{ ...plank, defects: [knot] }] }).join()).toMatch(/lies on a knot/);
  expect(checkPlan(plan, { ...job, parts: [{ ...side, count: 3 }] }).join()).toMatch(/2 planned, 3 asked/);
  expect(checkPlan({ ...plan, cost: 1 }, job).join()).toMatch(/cost 2400, the plan says 1/);
});
