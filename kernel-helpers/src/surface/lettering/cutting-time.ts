import type { Formula } from '../../measure/formula.js';
import type { CentreLine } from './medial-axis.js';

/** Minutes to cut a path. */
export const cuttingTimeFormula: Formula<'L' | 'F' | 'n' | 's'> = {
  name: 'Time of cutting',
  result: { tex: 't', meaning: 'time', unit: 'min', min: 0 },
  expression: 'L / F + n * s / 60',
  symbols: {
    L: { meaning: 'length of all passes', unit: 'in', min: 0 },
    F: { meaning: 'feed', unit: 'in/min', min: 0.1 },
    n: { meaning: 'times the bit is lifted and set down', unit: '', min: 0 },
    s: { meaning: 'time for one', unit: 's', min: 0 },
  },
  source: 'definition of feed; time for lifting: common practice, no source, measure your own',
};

/**
 * Length of the bit's way along the middle lines, in as many passes as the depth asks for.
 *
 * @param lines  middle lines; depth = half width / slope, at most the limit
 * @param options.slope  tangent of half the bit's angle
 * @param options.limit  most depth, in
 * @param options.pass  most depth of one pass, in; a later pass goes only where wood is left
 * @returns length of all passes along the sloping way, and how often the bit is set down
 */
export function toolpath(
  lines: readonly CentreLine[],
  options: { slope: number; limit: number; pass: number },
): { length: number; starts: number } {
  const { slope, limit, pass } = options;
  const deepest = (line: CentreLine) => Math.min(Math.max(...line.map(({ radius }) => radius)) / slope, limit);
  const passes = Math.max(1, ...lines.map((line) => Math.ceil(deepest(line) / pass - 1e-9)));
  let length = 0;
  let starts = 0;
  for (let k = 1; k <= passes; k++) {
    const [done, floor] = [(k - 1) * pass, k * pass];
    const cut = lines.filter((line) => k === 1 || deepest(line) > done);
    starts += trailsOf(cut);
    for (const line of cut)
      for (let i = 1; i < line.length; i++) {
        const [from, to] = [line[i - 1], line[i]] as [CentreLine[0], CentreLine[0]];
        const [before, here] = [from, to].map(({ radius }) => Math.min(radius / slope, limit)) as [number, number];
        if (k > 1 && before <= done && here <= done) continue;
        length += Math.hypot(to.x - from.x, to.y - from.y, Math.min(here, floor) - Math.min(before, floor));
      }
  }
  return { length, starts };
}

/** Lines that meet are cut in one go where the bit can run on: half as often as an odd number of them meet, and once for each ring. */
function trailsOf(lines: readonly CentreLine[]): number {
  const meeting = new Map<string, number>();
  let rings = 0;
  for (const line of lines) {
    const [first, last] = [line[0], line.at(-1)].map((end) => `${end?.x} ${end?.y}`) as [string, string];
    if (first === last) rings += 1;
    else for (const end of [first, last]) meeting.set(end, (meeting.get(end) ?? 0) + 1);
  }
  return rings + [...meeting.values()].filter((count) => count % 2 === 1).length / 2;
}
