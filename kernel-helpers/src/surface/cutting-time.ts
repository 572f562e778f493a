import type { Formula } from '../measure/formula.js';
import type { CentreLine } from './centre-lines.js';

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
export function wayOfTheBit(
  lines: readonly CentreLine[],
  options: { slope: number; limit: number; pass: number },
): { length: number; starts: number } {
  const { slope, limit, pass } = options;
  let length = 0;
  let starts = 0;
  for (const line of lines) {
    const depths = line.map(({ radius }) => Math.min(radius / slope, limit));
    const passes = Math.max(1, Math.ceil(Math.max(...depths) / pass - 1e-9));
    for (let k = 1; k <= passes; k++) {
      starts += 1;
      for (let i = 1; i < line.length; i++) {
        const [from, to] = [line[i - 1], line[i]] as [CentreLine[0], CentreLine[0]];
        const [before, here] = [depths[i - 1] as number, depths[i] as number];
        const left = (k - 1) * pass;
        if (k > 1 && before <= left && here <= left) continue;
        const floor = k * pass;
        length += Math.hypot(to.x - from.x, to.y - from.y, Math.min(here, floor) - Math.min(before, floor));
      }
    }
  }
  return { length, starts };
}
