import type { InscribedCircle, InscribedCircles } from './inscribed-circles.js';
import { contourArea, type LidPoint } from './outline.js';
import { simplifyLine } from './simplify-line.js';

/** A sloping wall of a V-cut stroke: what lies nearest to one straight piece of the outline. */
export interface Facet {
  points: readonly LidPoint[];
  /** Which way the wall looks, seen from above: a direction of length 1, away from its piece of the outline. */
  normal: LidPoint;
}

/** Walls of a stroke, and the floor between them where the depth is limited. */
export interface CutSurface {
  facets: Facet[];
  /** Area of the flat bottom, square inches. */
  floorArea: number;
  /** Edge of the flat bottom, piece by piece, in. */
  floorEdge: (readonly [LidPoint, LidPoint])[];
}

/** Below this turn the outline merely bends, and its pieces share the room at their meeting point. */
const roundedTurn = -0.35;

/**
 * The surface that a V-bit leaves in a stroke.
 *
 * Every place of the cut belongs to the piece of the outline that it lies nearest to; the bit's side there is a plane that falls away
 * from that piece. The planes meet in the middle line. Where the depth is limited, the wall ends and a flat bottom begins.
 *
 * @param found  as `inscribedCircles` returns them, all of one outline
 * @param tolerance  the middle line may stray by so much when it is thinned out, in
 * @param reach  from the outline to the foot of the wall, seen from above, in; Infinity without a limit
 */
export function cutSurface(found: InscribedCircles, tolerance: number, reach: number): CutSurface {
  const { samples } = found;
  const surface: CutSurface = { facets: [], floorArea: 0, floorEdge: [] };
  const fans = fansAtSamples(found);
  const count = samples.next.length;
  const place = (i: number): LidPoint => [samples.places[2 * i] as number, samples.places[2 * i + 1] as number];
  for (let start = 0; start < count; start++) {
    if (!isCorner(found, start)) continue;
    const fan = fans[start] ?? [];
    // Round a corner that juts into the stroke the wall is part of a cone: its own facet.
    if ((samples.turn[start] as number) < roundedTurn && fan.length > 1)
      addWall(surface, [place(start), ...fan.map(pointOf)], undefined, place(start), reach);
    const chain: InscribedCircle[] = [];
    let at = start;
    do {
      const circles = fans[at] ?? [];
      chain.push(...(at === start ? circles.slice(0, 1) : circles.toReversed()));
      at = samples.next[at] as number;
    } while (!isCorner(found, at));
    const bends = (samples.turn[at] as number) >= roundedTurn;
    if (bends) chain.push(...(fans[at] ?? []).toReversed());
    const [from, to] = [place(start), place(at)];
    const length = Math.hypot(to[0] - from[0], to[1] - from[1]);
    const normal: LidPoint = [-(to[1] - from[1]) / length, (to[0] - from[0]) / length];
    addWall(surface, [to, from, ...simplifyLine(chain, tolerance).map(pointOf)], normal, from, reach);
  }
  return surface;
}

const pointOf = ({ x, y }: InscribedCircle): LidPoint => [x, y];

function isCorner({ samples }: InscribedCircles, i: number): boolean {
  return (samples.turn[i] as number) !== 0;
}

/** Inner circles around each sample, from the side of the next sample to that of the one before. */
function fansAtSamples({ samples, circles, corners, halfedges }: InscribedCircles): InscribedCircle[][] {
  const fans: InscribedCircle[][] = [];
  for (let edge = 0; edge < corners.length; edge++) {
    const sample = corners[edge] as number;
    if (samples.next[sample] !== corners[edge % 3 === 2 ? edge - 2 : edge + 1]) continue;
    const fan: InscribedCircle[] = [];
    for (let at = edge, steps = 0; at >= 0 && steps < 1000; steps++) {
      const circle = circles[Math.floor(at / 3)];
      if (circle) fan.push(circle);
      const back = at % 3 === 0 ? at + 2 : at - 1;
      if (corners[back] === samples.previous[sample]) break;
      at = halfedges[back] as number;
    }
    fans[sample] = fan;
  }
  return fans;
}

/** Adds a wall; what lies farther from the outline than it reaches is floor. */
function addWall(
  surface: CutSurface,
  points: LidPoint[],
  plane: LidPoint | undefined,
  [x, y]: LidPoint,
  reach: number,
): void {
  const middle = points.reduce(([sumX, sumY], [px, py]) => [sumX + px, sumY + py] as LidPoint, [0, 0] as LidPoint);
  const [towardsX, towardsY] = [middle[0] / points.length - x, middle[1] / points.length - y];
  const size = Math.hypot(towardsX, towardsY) || 1;
  const normal = plane ?? ([towardsX / size, towardsY / size] as LidPoint);
  const distance = (point: LidPoint) => (point[0] - x) * normal[0] + (point[1] - y) * normal[1];
  const wall: LidPoint[] = [];
  const foot: LidPoint[] = [];
  points.forEach((point, i) => {
    const following = points[(i + 1) % points.length] as LidPoint;
    const [here, there] = [distance(point), distance(following)];
    if (here <= reach) wall.push(point);
    if (here <= reach === there <= reach) return;
    const part = (reach - here) / (there - here);
    const meets: LidPoint = [point[0] + part * (following[0] - point[0]), point[1] + part * (following[1] - point[1])];
    wall.push(meets);
    foot.push(meets);
  });
  if (wall.length > 2) surface.facets.push({ points: wall, normal });
  surface.floorArea += Math.abs(contourArea(points)) - (wall.length > 2 ? Math.abs(contourArea(wall)) : 0);
  for (let i = 0; i + 1 < foot.length; i += 2) surface.floorEdge.push([foot[i] as LidPoint, foot[i + 1] as LidPoint]);
}
