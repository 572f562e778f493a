import { describe, expect, test } from 'vitest';
import { connectedAreas } from '../../../kernel-helpers/src/surface/lettering/connected-areas.js';
import {
  type CurvedPath,
  contourArea,
  extentOf,
  type LidPoint,
  outlineArea,
  straightened,
} from '../../../kernel-helpers/src/surface/lettering/outline.js';
import { circle, letterLines, letterPaths, rectangle } from './shapes.js';

/** Area inside a path by Green's theorem on the curves themselves: no straight pieces are involved. */
function integral({ start, steps }: CurvedPath): number {
  const cross = (a: LidPoint, b: LidPoint) => a[0] * b[1] - a[1] * b[0];
  let [area, from] = [0, start];
  for (const { to, bend: b, secondBend: c } of steps) {
    if (b && c)
      area +=
        (6 * cross(from, b) +
          3 * cross(from, c) +
          cross(from, to) +
          3 * cross(b, c) +
          3 * cross(b, to) +
          6 * cross(c, to)) /
        20;
    else if (b) area += (2 * cross(from, b) + 2 * cross(b, to) + cross(from, to)) / 6;
    else area += cross(from, to) / 2;
    from = to;
  }
  return area + cross(from, start) / 2;
}

describe.each(['roman', 'book', 'plain'] as const)('letters of the face %s', (face) => {
  test.each([...'OSQR&8gëß'])('%s has the area of its curves', (character) => {
    const exact = letterPaths(character, face).reduce((sum, path) => sum + integral(path), 0);
    const lines = letterLines(character, face);
    // Straight pieces stray at most 0.0005 in, and on a curve only: an inch-high letter has under 10 in of outline.
    expect(Math.abs(outlineArea([lines]) - exact)).toBeLessThan(0.0005 * 10);
    expect(Math.abs(Math.abs(exact) - outlineArea(connectedAreas([lines])))).toBeLessThan(0.0005 * 10);
  });
});

describe('a path in straight pieces', () => {
  test('stays within the tolerance of a quarter circle drawn by one cubic curve', () => {
    // The usual cubic for a quarter circle is itself off by up to 0.00027 of the radius.
    const k = 0.5522847498;
    const path: CurvedPath = {
      start: [1, 0],
      steps: [{ to: [0, 1], bend: [1, k], secondBend: [k, 1] }, { to: [0, 0] }],
    };
    const points = straightened(path, 0.001).filter(([x, y]) => x > 0 || y > 0);
    for (const [i, [x, y]] of points.entries()) {
      const [nextX, nextY] = points[i + 1] ?? [x, y];
      expect(Math.hypot((x + nextX) / 2, (y + nextY) / 2)).toBeGreaterThan(1 - 0.0013);
      expect(Math.hypot(x, y)).toBeLessThan(1.0003);
    }
  });

  test('leaves straight steps alone', () => {
    const path: CurvedPath = { start: [0, 0], steps: [{ to: [2, 0] }, { to: [2, 1] }, { to: [0, 0] }] };
    expect(straightened(path, 0.001)).toEqual([
      [2, 0],
      [2, 1],
      [0, 0],
    ]);
  });
});

describe('connected areas', () => {
  test('a ring keeps its hole, outer line counterclockwise and hole clockwise', () => {
    const [ring, ...others] = connectedAreas([[circle(1, 60), circle(0.5, 60)]]);
    expect(others).toEqual([]);
    expect(ring?.map((contour) => Math.sign(contourArea(contour)))).toEqual([1, -1]);
  });

  test('letters that overlap become one, and what they share is counted once', () => {
    const [one] = rectangle(2, 1);
    const moved = (one as LidPoint[]).map(([x, y]): LidPoint => [x + 1, y]);
    const areas = connectedAreas([[one as LidPoint[]], [moved]]);
    expect(areas).toHaveLength(1);
    expect(outlineArea(areas)).toBeCloseTo(3, 9);
    expect(extentOf(areas.flat(2))).toEqual({ left: 0, right: 3, front: 0, back: 1 });
  });
});
