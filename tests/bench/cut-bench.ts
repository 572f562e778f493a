/**
 * `npm run bench`, third part: how long a cut plan takes, how often it is proven, how far off it is otherwise. Random jobs like
 * those of a shop, seeded; the two-stage problems of print; how time and memory grow. Other sizes: `tsx tests/bench/cut-bench.ts 8
 * 30/10,60/20 0.25`, the last figure the effort.
 *
 * What was tried, and what is not reached (processor seconds, effort 0.25 unless told otherwise):
 * - What closed 20 on 8 (sections first: from 2 of 6 proven in 7.4 s to 19 of 20 in 0.6 s): the ways to cut of column
 *   generation come from the pricing programme itself, with the parts it counts too often, instead of from a search that
 *   counts right, so that part values learn of them; sets of boards are priced before any plan is looked for on them; what
 *   pricing leaves is searched exhaustively before a beam looks wide; sections with defects are priced only where a clean
 *   one of their length would beat the best (a tenth).
 * - Prices on copies beyond the count, per board (cap rows): no gain on sets of two boards and more, where the demand rows
 *   do the same (1.0207 and 1.0209 in one set, 0.9998 and 0.9986 in another). On one board they decide: two-stage problems,
 *   39 to 51 of 53. The two left are not ended in ten million steps, a second each.
 * - Part values begun from all ways known so far, instead of from the area: no gain (15.5 s and 16.0 s for eight jobs).
 * - 30 on 10, not all proven: 6 of 8 least area, 7 of 8 fewest boards with sections; the rest have many sets of boards
 *   within a step of the best, each refuted on its own.
 * - 60 on 20, effort 0.4: gap 3.7 per cent rip first, 5 to 6 sections first, in 10 to 16 s. Column generation over all
 *   boards at once bounds no better (91,546 and 90,699 in one job, sets one at a time 92,748 and 90,821); plans are the
 *   weak side: a beam of 100 over seven boards finds none at 6 per cent to spare. Cutting the parts of two to four boards
 *   anew took 98,855 to 96,323. Untried: choosing which boards to free by their waste; whole-number choice among ways that
 *   count right.
 * - A first plan for 60 on 20 takes 1 to 2.5 s: pricing twenty boards by area, then up to forty sets of boards by beam.
 * - Order of boards matters more to a beam than its width: both orders at width 30 found plans that width 100 missed in
 *   one.
 * - Stock lengths of one size (Falkenauer): the bound is the optimum of print, plans are one to three lengths above it or
 *   not found within the boards given. Untried: whole-number choice among the ways to cut that column generation has found.
 * - Pricing all sections of a board takes 5 to 20 ms on a quarter-inch grid, strips over the whole board 0.2 ms. On a 1/64
 *   in grid places are many more, and time grows with their square.
 *
 * How it grows (least area, effort 0.25, three jobs, middle; seconds and megabytes at most, sections first / rip first):
 *   parts on 10 boards   5: 0.02 / 0.00, 110   10: 0.3 / 0.05, 190   20: 2.1 / 0.2, 260   40: 5.4 / 4.6 (not ended), 450
 *   boards for 20 parts  5: 0.7 / 0.1, 230     10: 2.1 / 0.2, 260   20: 4.3 / 0.3, 280
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
