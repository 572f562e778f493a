import { expect, test } from 'vitest';
import { proveCuts } from '../../../kernel-helpers/src/runner/cuts/prove-cuts.js';
import type { CutPlan } from '../../../kernel-helpers/src/stock/cut-plan/plan.js';
import { checkPlan } from '../../stock/cut-plan/check-plan.js';

const knot = { kind: 'knot', fromEnd: 20, fromEdge: 2, length: 2, width: 1.5 };
const board = { thickness: 1, length: 60, width: 7, defects: [knot] };
const job = {
  boards: [
    { ...board, mark: 'A', cost: 3000 },
    { ...board, mark: 'B', length: 48, cost: 2500 },
    { ...board, mark: 'C', width: 6, cost: 2600 },
  ],
  parts: [
    { name: 'side', count: 4, length: 16, width: 3.5, thickness: 0.75 },
    { name: 'end', count: 4, length: 9, width: 3.25, thickness: 0.75 },
    { name: 'lid', count: 1, length: 17, width: 5, thickness: 0.75 },
  ],
  kerf: 1 / 8,
  firstCut: 'crosscut' as const,
};

test('a plan is proven in a thread while the kernel goes on, and is told of on the way', async () => {
  const plans: CutPlan[] = [];
  let turns = 0;
  const turning = setInterval(() => turns++, 1);
  const plan = await proveCuts(job, { onPlan: (each) => plans.push(each) });
  clearInterval(turning);
  expect(plan.proven).toBe(true);
  expect(checkPlan(plan, job)).toEqual([]);
  expect(plans.length).toBeGreaterThan(0);
  expect(plans.every(({ cost, bound }) => cost >= plan.cost && bound <= plan.bound)).toBe(true);
  expect(turns).toBeGreaterThan(0);
  expect(await proveCuts(job)).toEqual(plan);
});

test('what was typed wrong is said before any work, and what cannot be done in the words of the shop', async () => {
  await expect(proveCuts({ ...job, kerf: 0 })).rejects.toThrow(/^kerf: 0 given; possible/);
  const many = [{ ...(job.parts[0] as (typeof job.parts)[number]), count: 40 }];
  await expect(proveCuts({ ...job, parts: many })).rejects.toThrow(/^boards: the parts do not fit/);
});

test('a time limit ends the work with the best plan so far', async () => {
  const many = job.parts.map((part) => ({ ...part, count: part.count * 3 }));
  const boards = Array.from({ length: 9 }, (_, index) => ({
    ...board,
    mark: `${index}`,
    length: 50 + index,
    width: 6 + (index % 5) / 4,
    cost: 2000 + 37 * index,
  }));
  let first: CutPlan | undefined;
  const started = proveCuts(
    { ...job, parts: many, boards, effort: 100 },
    { seconds: 8, onPlan: (plan) => (first ??= plan) },
  );
  const plan = await started;
  expect(checkPlan(plan, { ...job, parts: many, boards })).toEqual([]);
  expect(plan.bound).toBeLessThanOrEqual(plan.cost);
  expect(first?.cost).toBeGreaterThanOrEqual(plan.cost);
});
