import type { GridBoard, GridCutting, GridJob } from './grid-job.js';

/**
 * The parts of some boards of a plan as a job of their own: on those boards, and on all that the plan does not use.
 *
 * @returns what stays as it is, the boards that are free by their numbers in the whole job, and the job on them in that order
 */
export function withoutBoards(
  job: GridJob,
  cuttings: GridCutting[],
  freed: GridCutting[],
): { kept: GridCutting[]; free: number[]; job: GridJob } {
  const kept = cuttings.filter((each) => !freed.includes(each));
  const free = [...job.boards.keys()].filter((board) => kept.every((each) => each.board !== board));
  const counts = new Uint16Array(job.parts.length);
  for (const { sections } of freed)
    for (const { part } of sections.flatMap(({ strips }) => strips.flatMap(({ places }) => places)))
      counts[part] = (counts[part] as number) + 1;
  const boards = free.map((board) => job.boards[board] as GridBoard);
  const parts = job.parts.map((part, index) => ({ ...part, count: counts[index] as number }));
  return { kept, free, job: { ...job, boards, parts } };
}

/** All twos, then all threes, then all fours. */
export function twosToFours<T>(of: T[]): T[][] {
  const wider = (sets: T[][]) =>
    sets.flatMap((set) => of.slice(of.indexOf(set.at(-1) as T) + 1).map((next) => [...set, next]));
  const twos = wider(of.map((each) => [each]));
  const threes = wider(twos);
  return [...twos, ...threes, ...wider(threes)];
}
