import type { InscribedCircle, InscribedCircles } from './inscribed-circles.js';
import { simplifyLine } from './simplify-line.js';

/** A line that the point of the bit follows: circles whose radius is half the groove's width there. */
export type CentreLine = readonly InscribedCircle[];

/**
 * Two touching places seen from the centre: where they are nearer together than this the outline merely bends. A curve straightened to
 * 0.0005 in turns by up to 25 degrees at a radius of 1/50 in, and no branch runs into such a turn.
 */
const leastAngle = (40 * Math.PI) / 180;
/** A corner of the outline that the bit rises into. */
const cornerTurn = (35 * Math.PI) / 180;

/**
 * The middle lines of the strokes, joined end to end: the way of the bit's point.
 *
 * Two neighbouring circles belong to a middle line when they touch the outline on two sides; where they touch one bend, they do not.
 * A line that runs into a corner ends in it with radius 0.
 *
 * @param found  as {@link inscribedCircles} returns them
 * @param tolerance  a line may stray by so much when it is thinned out, in
 */
export function centreLines(found: InscribedCircles, tolerance: number): CentreLine[] {
  const { circles, halfedges, corners } = found;
  const joined = new Map<number, number[]>();
  for (let edge = 0; edge < halfedges.length; edge++) {
    const other = halfedges[edge] as number;
    if (other < edge || !isMiddle(found, edge, other)) continue;
    const [a, b] = [Math.floor(edge / 3), Math.floor(other / 3)];
    joined.set(a, [...(joined.get(a) ?? []), b]);
    joined.set(b, [...(joined.get(b) ?? []), a]);
  }
  const walked = new Set<number>();
  const lines: number[][] = [];
  const walk = (start: number, second: number): void => {
    const line = [start];
    let [from, to] = [start, second];
    while (!walked.has(pair(from, to))) {
      walked.add(pair(from, to));
      line.push(to);
      const onward = (joined.get(to) ?? []).filter((each) => each !== from);
      if (onward.length !== 1) break;
      [from, to] = [to, onward[0] as number];
    }
    if (line.length > 1) lines.push(line);
  };
  const starts = [...joined.keys()];
  // Ends and forks first; what is left then are closed rings.
  for (const start of starts.filter((each) => joined.get(each)?.length !== 2))
    for (const second of joined.get(start) ?? []) walk(start, second);
  for (const start of starts) for (const second of joined.get(start) ?? []) walk(start, second);

  const intoCorner = (triangle: number): InscribedCircle[] => {
    if ((joined.get(triangle)?.length ?? 0) !== 1) return [];
    const corner = [0, 1, 2]
      .map((i) => corners[3 * triangle + i] as number)
      .find((sample) => (found.samples.turn[sample] as number) > cornerTurn);
    if (corner === undefined) return [];
    const { places } = found.samples;
    return [{ x: places[2 * corner] as number, y: places[2 * corner + 1] as number, radius: 0 }];
  };
  return lines.map((line) => {
    const own = line.map((triangle) => circles[triangle] as InscribedCircle);
    const [first, last] = [line[0] as number, line.at(-1) as number];
    return simplifyLine([...intoCorner(first), ...own, ...intoCorner(last)], tolerance);
  });
}

/** One number for two triangles, whichever comes first; exact, since both are far below 2^26. */
const pair = (a: number, b: number): number => Math.min(a, b) * 2 ** 26 + Math.max(a, b);

/** Whether the step from one circle to its neighbour runs between two sides of the stroke. */
function isMiddle({ circles, corners, samples }: InscribedCircles, edge: number, other: number): boolean {
  const [one, two] = [circles[Math.floor(edge / 3)], circles[Math.floor(other / 3)]];
  if (!one || !two) return false;
  const p = corners[edge] as number;
  const q = corners[edge % 3 === 2 ? edge - 2 : edge + 1] as number;
  if (samples.next[p] === q || samples.next[q] === p) return false;
  const [x, y] = [(one.x + two.x) / 2, (one.y + two.y) / 2];
  const towards = (sample: number) =>
    [(samples.places[2 * sample] as number) - x, (samples.places[2 * sample + 1] as number) - y] as const;
  const [[px, py], [qx, qy]] = [towards(p), towards(q)];
  return Math.abs(Math.atan2(px * qy - py * qx, px * qx + py * qy)) >= leastAngle;
}
