/**
 * Bounds and plans against full enumeration, on tiny jobs with defects and kerf, both cut orders. Nothing published: the
 * enumeration tries every section, strip and place one unit at a time, and shares no code with the planner.
 */
import { randomLcg } from 'd3-random';
import loadHighs from 'highs';
import { expect, test } from 'vitest';
import type { GridJob } from '../../kernel-helpers/src/stock/cut-plan/grid-job.js';
import { type Solution, solveSteps } from '../../kernel-helpers/src/stock/cut-plan/solve.js';
import { cheapestByEnumeration, type TinyJob } from '../stock/cut-plan/enumerate.js';

function tinyJob(seed: number): TinyJob {
  const source = randomLcg(seed / 1000);
  const draw = (least: number, most: number) => least + Math.floor(source() * (most + 1 - least));
  return {
    kerf: draw(0, 1),
    firstCut: seed % 2 === 0 ? 'crosscut' : 'rip',
    boards: Array.from({ length: draw(2, 3) }, () => {
      const length = draw(7, 11);
      const width = draw(4, 6);
      const defects = Array.from({ length: draw(0, 3) }, () => {
        const w = draw(1, 3);
        const h = draw(1, 2);
        return { x: draw(0, length - w), y: draw(0, width - h), w, h };
      });
      return { length, width, cost: draw(3, 9), defects };
    }),
    parts: Array.from({ length: draw(2, 3) }, () => ({ length: draw(2, 5), width: draw(1, 3), count: draw(1, 3) })),
  };
}

function onGrid({ kerf, firstCut, boards, parts }: TinyJob): GridJob {
  return {
    firstCut,
    parts: parts.map(({ length, width, count }) => ({ length: length + kerf, width: width + kerf, count })),
    boards: boards.map(({ length, width, cost, defects }) => ({
      length: length + kerf,
      width: width + kerf,
      cost,
      area: length * width,
      takes: parts.map(() => true),
      defects: defects.map(({ x, y, w, h }) => ({ x1: x + kerf, x2: x + w, y1: y + kerf, y2: y + h })),
    })),
  };
}

const highs = await loadHighs();

function solved(job: GridJob, withProgrammes: boolean): Solution {
  const steps = solveSteps(job, 1, withProgrammes ? highs : undefined);
  for (;;) {
    const { done, value } = steps.next();
    if (done) return value;
  }
}

test('a proven plan costs what full enumeration finds, and no bound lies above it', () => {
  let proven = 0;
  let possible = 0;
  for (let seed = 1; seed <= Number(process.env.SEEDS ?? 160); seed++) {
    const job = tinyJob(seed);
    const best = cheapestByEnumeration(job) ?? Number.POSITIVE_INFINITY;
    const { cost, bound, proven: certain } = solved(onGrid(job), seed % 3 > 0);
    const said = `job ${seed}: ${JSON.stringify(job)}`;
    expect(bound, said).toBeLessThanOrEqual(best);
    expect(cost, said).toBeGreaterThanOrEqual(best);
    if (certain) expect(cost, said).toBe(best);
    if (certain) proven++;
    if (Number.isFinite(best)) possible++;
  }
  expect(possible).toBeGreaterThan(100);
  expect(proven).toBe(possible);
}, 60_000);
