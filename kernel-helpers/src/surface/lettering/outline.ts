/** A point on the lid: inches, x from its left edge, y from its front end. */
export type LidPoint = readonly [x: number, y: number];

/** A closed line, its first point not repeated. */
export type Contour = readonly LidPoint[];

/** One connected area: its outer contour runs counterclockwise, those of its holes clockwise. */
export type Outline = readonly Contour[];

/** A step of a drawn path: straight, or bent by one or two control points. */
export type PathStep = { to: LidPoint; bend?: LidPoint; secondBend?: LidPoint };

/** A closed path of straight and bent steps. */
export interface CurvedPath {
  start: LidPoint;
  steps: readonly PathStep[];
}

/**
 * A closed path as a line of short straight pieces that stay within the tolerance of the curve.
 *
 * A quadratic piece strays from its chord by a quarter of its bend's offset, and that falls with the square of the number of pieces.
 *
 * @param tolerance  most distance from the curve, in the path's own unit
 */
export function straightened({ start, steps }: CurvedPath, tolerance: number): LidPoint[] {
  const points: LidPoint[] = [start];
  let from = start;
  for (const { to, bend, secondBend } of steps) {
    const pieces = bend ? Math.max(1, Math.ceil(Math.sqrt(strayed(from, to, bend, secondBend) / tolerance))) : 1;
    for (let i = 1; i < pieces; i++) points.push(onCurve(i / pieces, from, to, bend as LidPoint, secondBend));
    points.push(to);
    from = to;
  }
  return points.filter((point, i) => {
    const before = points[(i + points.length - 1) % points.length] as LidPoint;
    return Math.hypot(point[0] - before[0], point[1] - before[1]) > tolerance * 1e-3;
  });
}

/** How far a curve lies from its chord, at most; from the size of its second derivative. */
function strayed(from: LidPoint, to: LidPoint, bend: LidPoint, second?: LidPoint): number {
  const offset = (a: LidPoint, b: LidPoint, c: LidPoint) => Math.hypot(a[0] - 2 * b[0] + c[0], a[1] - 2 * b[1] + c[1]);
  if (!second) return offset(from, bend, to) / 4;
  return 0.75 * Math.max(offset(from, bend, second), offset(bend, second, to));
}

function onCurve(t: number, from: LidPoint, to: LidPoint, bend: LidPoint, second?: LidPoint): LidPoint {
  const u = 1 - t;
  const at = (i: 0 | 1) =>
    second
      ? u ** 3 * from[i] + 3 * u * u * t * bend[i] + 3 * u * t * t * second[i] + t ** 3 * to[i]
      : u * u * from[i] + 2 * u * t * bend[i] + t * t * to[i];
  return [at(0), at(1)];
}

/** Area inside a contour, positive when it runs counterclockwise. */
export function contourArea(contour: Contour): number {
  return contour.reduce((sum, [x, y], i) => {
    const [nextX, nextY] = contour[(i + 1) % contour.length] as LidPoint;
    return sum + (x * nextY - nextX * y) / 2;
  }, 0);
}

/** Area of outlines, holes taken off. */
export function outlineArea(outlines: readonly Outline[]): number {
  return outlines.flat().reduce((sum, contour) => sum + contourArea(contour), 0);
}

/** The least upright rectangle around points. */
export interface Extent {
  left: number;
  right: number;
  front: number;
  back: number;
}

/** What the outlines take up. */
export function extentOf(points: readonly LidPoint[]): Extent {
  let [left, right, front, back] = [Infinity, -Infinity, Infinity, -Infinity];
  for (const [x, y] of points) {
    left = Math.min(left, x);
    right = Math.max(right, x);
    front = Math.min(front, y);
    back = Math.max(back, y);
  }
  return { left, right, front, back };
}
