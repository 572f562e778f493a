/**
 * `npm run bench`, third part: how long a cut plan takes, how often it is proven, how far off it is otherwise. Random jobs like
 * those of a shop, seeded; the two-stage problems of print; how time and memory grow. Other sizes: `tsx tests/bench/cut-bench.ts 8
 * 30/10,60/20 0.25`, the last figure the effort.
 *
@@NOTES@@
 */
import { readFileSync } from 'node:fs';
import { randomLcg } from 'd3-random';
import loadHighs, { type Highs } from 'highs';
import type { GridJob } from '../../kernel-helpers/src/stock/cut-plan/grid-job.js';
import { type Solution, solveSteps } from '../../kernel-helpers/src/stock/cut-plan/solve.js';
import { asBoard, mostValue, type TwoStage } from '../stock/cut-plan/most-value.js';

interface Size {
  parts: number;
  boards: number;
  jobs: number;
}

const sizesOf = (list: string, jobs: number): Size[] =>
  list.split(',').map((size) => {
    const [parts = 0, boards = 0] = size.split('/').map(Number);
    return { parts, boards, jobs };
  });
const [jobsAsked, sizesAsked, effortAsked] = process.argv.slice(2);
const effort = Number(effortAsked ?? 0.25);

/** Boards 6 to 9 ft long and 6 to 10 in wide with up to four knots; parts of a box or a small cabinet; quarter inches. */
function shopJob(parts: number, boards: number, seed: number, firstCut: GridJob['firstCut'], goal: string): GridJob {
  const source = randomLcg(seed / 997);
  const draw = (least: number, most: number) => least + Math.floor(source() * (most + 1 - least));
  const kerf = 1;
  const kinds: GridJob['parts'] = [];
  for (let left = parts; left > 0; ) {
    const count = Math.min(left, draw(1, 4));
    left -= count;
    kinds.push({ length: draw(40, 110) + kerf, width: draw(12, 22) + kerf, count });
  }
  return {
    firstCut,
    parts: kinds,
    boards: Array.from({ length: boards }, () => {
      const length = draw(280, 440);
      const width = draw(24, 40);
      const defects = Array.from({ length: draw(0, 4) }, () => {
        const [w, h] = [draw(2, 14), draw(2, 8)];
        const [x, y] = [draw(0, length - w), draw(0, width - h)];
        return { x1: x + kerf, x2: x + w, y1: y + kerf, y2: y + h };
      });
      const area = length * width;
      return {
        length: length + kerf,
        width: width + kerf,
        cost: goal === 'boards' ? 1 : area,
        area,
        defects,
        takes: kinds.map(() => true),
      };
    }),
  };
}

const middle = (values: number[]) => [...values].sort((a, b) => a - b)[Math.floor(values.length / 2)] as number;
/** Seconds of the processor, so that a busy machine does not count. */
const processor = () => process.cpuUsage().user / 1e6;

const peak = () => `${(process.resourceUsage().maxRSS / 1024).toFixed(0)} MB at most so far`;

/** Solves the jobs of a size and prints a line. */
function tell(highs: Highs, { parts, boards, jobs }: Size, goal: string, firstCut: GridJob['firstCut']): void {
  const first: number[] = [];
  const whole: number[] = [];
  const gaps: number[] = [];
  let proven = 0;
  let impossible = 0;
  for (let seed = 1; seed <= jobs; seed++) {
    const began = processor();
    const steps = solveSteps(shopJob(parts, boards, seed, firstCut, goal), effort, highs);
    let result = steps.next();
    first.push(processor() - began);
    while (!result.done) result = steps.next();
    const { cost, bound, proven: certain } = result.value as Solution;
    whole.push(processor() - began);
    if (certain) proven++;
    if (!Number.isFinite(bound)) impossible++;
    if (Number.isFinite(cost)) gaps.push((cost - bound) / cost);
  }
  const gap =
    gaps.length > 0 ? `${(100 * middle(gaps)).toFixed(1)} % (most ${(100 * Math.max(...gaps)).toFixed(1)})` : '-';
  console.log(
    `${parts} on ${boards}, least ${goal}, ${firstCut} first`.padEnd(40),
    `first ${middle(first).toFixed(2)} s, all ${middle(whole).toFixed(2)} s (longest ${Math.max(...whole).toFixed(2)}),`,
    `proven ${proven} of ${jobs}${impossible > 0 ? `, ${impossible} impossible` : ''}, gap ${gap}, ${peak()}`,
  );
}

/** Most value from one rectangle in two stages: problems of print with their optimum. */
function tellTwoStage(highs: Highs): void {
  const { problems } = JSON.parse(
    readFileSync(new URL('../published/cutting/two-stage-knapsack.json', import.meta.url), 'utf8'),
  ) as { problems: TwoStage[] };
  const seconds: number[] = [];
  let proven = 0;
  for (const problem of problems) {
    const began = processor();
    const found = mostValue(highs, asBoard(problem), 10_000_000);
    seconds.push(processor() - began);
    if (found.proven && found.value === problem.optimum) proven++;
  }
  console.log(
    `Two-stage problems of print: proven ${proven} of ${problems.length}, ${middle(seconds).toFixed(2)} s (longest ${Math.max(...seconds).toFixed(2)})`,
  );
}

loadHighs().then((highs) => {
  console.log(`Cut plans, effort ${effort}, processor seconds`);
  const sizes = sizesAsked
    ? sizesOf(sizesAsked, Number(jobsAsked))
    : [...sizesOf('12/3,12/5,20/8', Number(jobsAsked ?? 20)), ...sizesOf('30/10', 8), ...sizesOf('60/20', 3)];
  for (const size of sizes)
    for (const goal of ['area', 'boards'])
      for (const firstCut of ['crosscut', 'rip'] as const) tell(highs, size, goal, firstCut);
  if (sizesAsked) return;
  tellTwoStage(highs);
  console.log('Growth with parts, then with boards');
  for (const size of sizesOf('5/10,10/10,20/10,40/10,20/5,20/10,20/20,20/40', 3))
    for (const firstCut of ['crosscut', 'rip'] as const) tell(highs, size, 'area', firstCut);
});
