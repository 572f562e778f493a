import type { CornerPoint } from './corner-solids.js';

/** Area by the shoelace formula, whichever way round the corners go. */
export function area(outline: readonly CornerPoint[]): number {
  const twice = outline.reduce((sum, [x, y], index) => {
    const [nextX, nextY] = outline[(index + 1) % outline.length] as CornerPoint;
    return sum + x * nextY - nextX * y;
  }, 0);
  return Math.abs(twice) / 2;
}

/** What two convex outlines have in common (Sutherland and Hodgman, 1974); both with their corners the same way round. */
export function intersection(subject: readonly CornerPoint[], clip: readonly CornerPoint[]): CornerPoint[] {
  return clip.reduce<CornerPoint[]>(
    (left, [ax, ay], index) => {
      const [bx, by] = clip[(index + 1) % clip.length] as CornerPoint;
      const side = ([x, y]: CornerPoint) => (bx - ax) * (y - ay) - (by - ay) * (x - ax);
      return left.flatMap((point, at) => {
        const next = left[(at + 1) % left.length] as CornerPoint;
        const [here, there] = [side(point), side(next)];
        const kept: CornerPoint[] = here >= 0 ? [point] : [];
        if (here >= 0 === there >= 0) return kept;
        const share = here / (here - there);
        return [...kept, [point[0] + share * (next[0] - point[0]), point[1] + share * (next[1] - point[1])]];
      });
    },
    [...subject],
  );
}
