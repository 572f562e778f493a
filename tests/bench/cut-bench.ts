/**
 * `npm run bench`, third part: how long a cut plan takes, how often it is proven, how far off it is otherwise. Random jobs like
 * those of a shop, seeded; more of them with `tsx tests/bench/cut-bench.ts 20`, and other sizes with `... 20 30/10,60/20`.
 *
 * What was tried for what is not reached:
 * - 20 on 8 and more, sections first: the best plan is mostly found, the proof is not. Part values refute a set of boards only
 *   where they leave nothing over; pricing allows a part more often than it is needed across strips and sections, which leaves
 *   5 to 15 per cent over on sets of one to three boards, too much for the exhaustive search. Untried: counting copies of the
 *   overused parts within the pricing; branching on copies of a part on a board.
 * - 30 on 10 and 60 on 20, least area: sets of boards cheaper than the best plan number in the hundreds and thousands, and are
 *   refuted one at a time. Untried: part values from one programme over all boards; sets of boards chosen by such values.
 * - Order of boards matters more to a beam than its width: both orders at width 30 found plans that width 100 missed in one.
 * - Stock lengths of one size (Falkenauer): the bound is the optimum of print, plans are one to three lengths above it or not
 *   found within the boards given. Untried: whole-number choice among the ways to cut that column generation has found.
 * - Pricing all sections of a board takes 10 to 130 ms on a quarter-inch grid; most of the time goes there. On a 1/64 in grid
 *   places are many more, and time grows with their square.
 */
import { randomLcg } from 'd3-random';
import loadHighs from 'highs';
import type { GridJob } from '../../kernel-helpers/src/stock/cut-plan/grid-job.js';
import { type Solution, solveSteps } from '../../kernel-helpers/src/stock/cut-plan/solve.js';

const jobs = Number(process.argv[2] ?? 3);
const sizes = (process.argv[3] ?? '12/3,12/5,20/8,30/10,60/20').split(',').map((size) => size.split('/').map(Number));
const effort = Number(process.argv[4] ?? 0.25);

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

loadHighs().then((highs) => {
  console.log(`Cut plans, ${jobs} jobs a size, effort ${effort}, processor seconds`);
  for (const [parts = 0, boards = 0] of sizes)
    for (const goal of ['area', 'boards'])
      for (const firstCut of ['crosscut', 'rip'] as const) {
        const first: number[] = [];
        const whole: number[] = [];
        const gaps: number[] = [];
        let proven = 0;
        for (let seed = 1; seed <= jobs; seed++) {
          const began = processor();
          const steps = solveSteps(shopJob(parts, boards, seed, firstCut, goal), effort, highs);
          let result = steps.next();
          first.push(processor() - began);
          while (!result.done) result = steps.next();
          const { cost, bound, proven: certain } = result.value as Solution;
          whole.push(processor() - began);
          if (certain) proven++;
          if (Number.isFinite(cost)) gaps.push((cost - bound) / cost);
        }
        const gap =
          gaps.length > 0 ? `${(100 * middle(gaps)).toFixed(1)} % (most ${(100 * Math.max(...gaps)).toFixed(1)})` : '-';
        console.log(
          `${parts} on ${boards}, least ${goal}, ${firstCut} first`.padEnd(40),
          `first ${middle(first).toFixed(2)} s, all ${middle(whole).toFixed(2)} s (longest ${Math.max(...whole).toFixed(2)}),`,
          `proven ${proven} of ${jobs}, planned ${gaps.length}, gap ${gap}`,
        );
      }
  console.log(`Peak memory ${(process.resourceUsage().maxRSS / 1024).toFixed(0)} MB`);
});
