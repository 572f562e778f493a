import type { LidPoint, Outline } from './outline.js';

/**
 * A test of whether a point lies inside an outline: a line from it to the right crosses the outline an odd number of times.
 *
 * The pieces of the outline are sorted into strips by height once, so that each test looks at few of them.
 */
export function pointInPolygon(outline: Outline): (x: number, y: number) => boolean {
  const pieces = outline.flatMap((contour) =>
    contour.map((from, i) => [from, contour[(i + 1) % contour.length] as LidPoint] as const),
  );
  const heights = outline.flat().map(([, y]) => y);
  const low = Math.min(...heights);
  const high = Math.max(...heights);
  const count = Math.max(1, Math.ceil(pieces.length / 4));
  const stripOf = (y: number) => Math.min(count - 1, Math.max(0, Math.floor(((y - low) / (high - low)) * count)));
  const strips: (typeof pieces)[] = Array.from({ length: count }, () => []);
  for (const piece of pieces) {
    const [one, other] = [stripOf(piece[0][1]), stripOf(piece[1][1])];
    for (let strip = Math.min(one, other); strip <= Math.max(one, other); strip++) strips[strip]?.push(piece);
  }
  return (x, y) => {
    if (!(y >= low && y <= high)) return false;
    let odd = false;
    for (const [[ax, ay], [bx, by]] of strips[stripOf(y)] ?? [])
      if (ay > y !== by > y && x < ax + ((y - ay) / (by - ay)) * (bx - ax)) odd = !odd;
    return odd;
  };
}
