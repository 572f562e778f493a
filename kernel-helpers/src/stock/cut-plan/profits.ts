import type { GridBoard, GridJob } from './grid-job.js';

/** Area of each part, in units so coarse that all parts together come to less than a thousand million. */
export function areaProfits(job: GridJob): number[] {
  const areas = job.parts.map(({ length, width }) => length * width);
  const total = areas.reduce((sum, area, part) => sum + area * (job.parts[part]?.count ?? 0), 0);
  const unit = Math.max(1, total / 1e8);
  return areas.map((area) => Math.max(1, Math.round(area / unit)));
}

/** As the area, with something added for parts that are long or wide, since they are the hard ones to place. */
export function bulkProfits(job: GridJob): number[] {
  const longest = Math.max(...job.parts.map(({ length }) => length));
  const widest = Math.max(...job.parts.map(({ width }) => width));
  return areaProfits(job).map((area, part) => {
    const { length, width } = job.parts[part] as GridJob['parts'][number];
    return Math.round(area * (1 + 0.5 * Math.max(length / longest, width / widest)));
  });
}

/** One price for cost first and area second, where both fit into whole numbers that are exact. */
export function pricesOf(boards: GridBoard[]): number[] {
  const areas = boards.map(({ area }) => area).reduce((sum, area) => sum + area, 0) + 1;
  const costs = boards.map(({ cost }) => cost).reduce((sum, cost) => sum + cost, 0);
  if (costs * areas < 2 ** 50) return boards.map(({ cost, area }) => cost * areas + area);
  return boards.map(({ cost }) => cost);
}

/** Alike for boards that give the same for the same price. */
export function likeness({ length, width, cost, area, defects, takes }: GridBoard): string {
  return JSON.stringify([length, width, cost, area, defects, takes]);
}
