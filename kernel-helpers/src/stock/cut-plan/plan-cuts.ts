import type { Highs } from 'highs';
import { ShopError } from '../../measure/shop-error.js';
import { type CutJob, readCutJob, type TypedCutJob } from './cut-job.js';
import { cutList } from './cut-list.js';
import type { GridBoard, GridCutting, GridJob } from './grid-job.js';
import type { CutBoard, CutPlan } from './plan.js';
import { settle } from './settle.js';
import { type Solution, solveSteps } from './solve.js';
import { type OnGrid, type Row, toGrid } from './to-grid.js';

/**
 * Plans cuts: which boards to use at least cost, then of least area, and where each part comes out of them, step by step. Each
 * plan given out is the best so far; the last one is the result. Work is counted, not timed: a job has one plan.
 *
 * @param typed  parts, boards, kerf, which cut comes first; see {@link TypedCutJob}
 * @param highs  the solver of linear programmes; without it less is proven
 * @throws ShopError  one line: the field, the value given, what is possible, why; or that the parts do not fit the boards
 * @internal
 */
export function* planSteps(typed: TypedCutJob, highs?: Highs): Generator<CutPlan, CutPlan> {
  const job = readCutJob(typed);
  const grid = toGrid(job);
  const steps = solveSteps(grid.job, job.effort, highs);
  for (;;) {
    const { done, value } = steps.next();
    if (done) return planOf(job, grid, value);
    if (value.cuttings) yield planOf(job, grid, value);
  }
}

/** About a second of work. */
const quickEffort = 0.05;

/**
 * Plans cuts at once: which boards to use at least cost, then of least area, and where each part comes out of them. For the
 * proof of larger jobs see {@link proveCuts}, which does not hold up the kernel.
 *
 * Work is counted, not timed: a job has one plan.
 *
 * @param job  parts, boards, kerf, which cut comes first; see {@link TypedCutJob}
 * @throws ShopError  one line: the field, the value given, what is possible, why; or that the parts do not fit the boards
 * @example planCuts({ parts: [{ name: 'side', count: 2, length: 12, width: 4, thickness: 0.75 }],
 *   boards: [{ mark: 'A', thickness: 1, width: 6, length: 48, cost: 2400 }], kerf: 1 / 8, firstCut: 'crosscut' })
 */
export function planCuts(job: TypedCutJob): CutPlan {
  const steps = planSteps({ effort: quickEffort, ...job });
  for (;;) {
    const { done, value } = steps.next();
    if (done) return value;
  }
}

function planOf(job: CutJob, grid: OnGrid, solution: Solution): CutPlan {
  const { cuttings } = solution;
  if (!cuttings)
    throw new ShopError(
      Number.isFinite(solution.bound)
        ? 'boards: no plan was found for all parts on the boards given; possible: more boards, or fewer parts (more effort may find one)'
        : 'boards: the parts do not fit on the boards given; possible: more boards, or fewer parts',
    );
  const waiting = grid.rows.map((rows) => [...rows]);
  const boards = cuttings.map((cutting) =>
    cutList(
      grid,
      settled(cutting, grid.job),
      job.boards[cutting.board] as CutBoard,
      job.leastOffcut,
      (part) => (waiting[part] as Row[]).shift() as Row,
    ),
  );
  const areaOf = (of: { length: number; width: number }[]) =>
    of.reduce((sum, each) => sum + each.length * each.width, 0);
  const { cost, bound, proven, leastArea, steps } = solution;
  return {
    boards,
    cost,
    yield: areaOf(boards.flatMap(({ parts }) => parts)) / areaOf(boards.map(({ board }) => board)),
    bound,
    proven,
    leastArea,
    steps,
    bounds: boundsText(job, grid),
  };
}

function settled(cutting: GridCutting, { boards, parts }: GridJob): GridCutting {
  const board = boards[cutting.board] as GridBoard;
  return { ...cutting, sections: cutting.sections.map((section) => settle(section, board, parts)) };
}

function boundsText({ firstCut, parts }: CutJob, { exact, stepName }: OnGrid): string {
  const order =
    firstCut === 'crosscut'
      ? 'boards crosscut into sections, sections ripped into strips, strips crosscut into parts'
      : 'whole boards ripped into strips, strips crosscut into parts';
  const together = parts.some(({ sequence }) => sequence !== undefined)
    ? '; parts of a sequence one after the other along one strip, clear of defects from first to last over the widest'
    : '';
  const rounding = exact
    ? `lengths are whole steps of ${stepName}`
    : `parts and kerf rounded up to ${stepName}, boards down`;
  return `Every plan with ${order}, each part at either edge of its strip and freed by at most one more rip; a part is clear of defects under itself, a strip and a cut need not be${together}; ${rounding}.`;
}
