/**
 * Whole jobs on boards with knots, kerf 1/4 in: plans and bounds of other programs, made for this project (see the file);
 * the bound on stock lengths of Falkenauer (1996), optimum after BPPLIB (Delorme, Iori, Martello 2018); and fewest bins in three
 * stages, Berkey & Wang (1987) and Martello & Vigo (1998), best known number and bound (see the file).
 */
import { readFileSync } from 'node:fs';
import loadHighs from 'highs';
import { expect, test } from 'vitest';
import type { GridJob } from '../../kernel-helpers/src/stock/cut-plan/grid-job.js';
import { type Solution, solveSteps } from '../../kernel-helpers/src/stock/cut-plan/solve.js';

type Known = { cost: number; costBound: number; costProven: boolean };

interface ShopJob {
  name: string;
  kerf: number;
  boards: { w: number; h: number; cost: number; defects: [x: number, y: number, w: number, h: number][] }[];
  items: [length: number, width: number, count: number][];
  optimum: { S3?: Known; R2?: Known };
}

interface Lengths {
  name: string;
  length: number;
  items: [length: number, count: number][];
  optimum: number;
}

interface Bins {
  name: string;
  stock: { w: number; h: number };
  items: [w: number, h: number, count: number][];
  best: number;
  bound: number;
}

const problems = <T>(name: string) =>
  (JSON.parse(readFileSync(new URL(`cutting/${name}.json`, import.meta.url), 'utf8')) as { problems: T[] }).problems;

const onGrid = ({ kerf, boards, items }: ShopJob, firstCut: GridJob['firstCut']): GridJob => ({
  firstCut,
  parts: items.map(([length, width, count]) => ({ length: length + kerf, width: width + kerf, count })),
  boards: boards.map(({ w, h, cost, defects }) => ({
    length: w + kerf,
    width: h + kerf,
    cost,
    area: w * h,
    takes: items.map(() => true),
    defects: defects.map(([x, y, wide, high]) => ({ x1: x + kerf, x2: x + wide, y1: y + kerf, y2: y + high })),
  })),
});

const highs = await loadHighs();

function solved(job: GridJob, effort: number): Solution {
  const steps = solveSteps(job, effort, highs);
  for (;;) {
    const { done, value } = steps.next();
    if (done) return value;
  }
}

const small = problems<ShopJob>('shop-boards').filter(({ name }) => /^shop-(6|12|run)-/.test(name));

test.each(['S3', 'R2'] as const)(
  'jobs of up to 12 parts, class %s: proven, at the cost that others found',
  (name) => {
    for (const job of small) {
      const known = job.optimum[name];
      if (!known) continue;
      const { cost, bound, proven } = solved(onGrid(job, name === 'S3' ? 'crosscut' : 'rip'), 1);
      expect({ job: job.name, cost, bound, proven }).toEqual({
        job: job.name,
        cost: known.cost,
        bound: known.cost,
        proven: true,
      });
    }
  },
  60_000,
);

test('20 parts on 8 boards, rip first: no bound above the cost of any plan, no plan below a proven bound', () => {
  for (const job of problems<ShopJob>('shop-boards').filter(({ name }) => name.startsWith('shop-20-'))) {
    const known = job.optimum.R2 as Known;
    const { cost, bound, proven } = solved(onGrid(job, 'rip'), 0.2);
    expect(bound, job.name).toBeLessThanOrEqual(known.cost);
    expect(cost, job.name).toBeGreaterThanOrEqual(known.costBound);
    if (proven && known.costProven) expect(cost, job.name).toBe(known.cost);
  }
}, 60_000);

test('stock lengths of one size: the bound is the proven optimum of print, and no plan lies below it', () => {
  for (const { name, length, items, optimum } of problems<Lengths>('falkenauer').slice(0, 2)) {
    const job: GridJob = {
      firstCut: 'rip',
      parts: items.map(([long, count]) => ({ length: long, width: 1, count })),
      boards: Array.from({ length: optimum + 4 }, () => ({
        length,
        width: 1,
        cost: 1,
        area: length,
        defects: [],
        takes: items.map(() => true),
      })),
    };
    const { cost, bound } = solved(job, 0.02);
    expect(bound, name).toBe(optimum);
    expect(cost, name).toBeGreaterThanOrEqual(optimum);
  }
}, 60_000);

test('bins in three stages: the best known number where proven, no plan below the known bound, no bound above a known plan', () => {
  let ended = 0;
  for (const { name, stock, items, best, bound } of problems<Bins>('three-stage-bins')) {
    // Their first cut runs across the height, so that the height lies along the grain.
    const job: GridJob = {
      firstCut: 'crosscut',
      parts: items.map(([w, h, count]) => ({ length: h, width: w, count })),
      boards: Array.from({ length: best + 2 }, () => ({
        length: stock.h,
        width: stock.w,
        cost: 1,
        area: stock.w * stock.h,
        defects: [],
        takes: items.map(() => true),
      })),
    };
    const found = solved(job, 0.02);
    expect(found.bound, name).toBeLessThanOrEqual(best);
    expect(found.cost, name).toBeGreaterThanOrEqual(bound);
    if (found.proven) expect(found.cost, name).toBe(best);
    if (found.proven) ended++;
  }
  // 17 of 20 when this was written; for the other three no bound in print meets the best known number either.
  expect(ended).toBeGreaterThanOrEqual(15);
}, 60_000);
