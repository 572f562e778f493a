import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { connectedAreas } from '../../../kernel-helpers/src/surface/lettering/connected-areas.js';
import { inscribedCircles, largestCircle } from '../../../kernel-helpers/src/surface/lettering/inscribed-circles.js';
import {
  type Contour,
  contourArea,
  extentOf,
  type LidPoint,
  type Outline,
} from '../../../kernel-helpers/src/surface/lettering/outline.js';
import { annulus, letterLines, rectangle } from './shapes.js';

const largest = (outline: Outline, spacing: number) => largestCircle(inscribedCircles(outline, spacing));

describe('the largest circle inside', () => {
  test.each([
    [3, 1],
    [0.11, 0.75],
    [1, 1],
  ])('a stroke of %f by %f is half as wide as its narrow side', (width, height) => {
    // Both sides are cut into equal pieces, so that samples face one another: the middle line is met exactly.
    expect(largest(rectangle(width, height), 0.01).radius).toBeCloseTo(Math.min(width, height) / 2, 9);
  });

  test('a ring has half the difference of its radii', () => {
    // 720 corners stand for each circle: a side lies 1 - cos(pi / 720) of the radius inside it.
    const flat = 1 - Math.cos(Math.PI / 720);
    const { radius } = largest(annulus(2, 1), 0.02);
    expect(Math.abs(radius - 0.5)).toBeLessThan(2 * flat + 0.02 ** 2 / (8 * 0.5));
  });

  test('any triangle has its incircle, 2 area over perimeter', () => {
    const coordinate = fc.double({ min: 0, max: 2, noNaN: true });
    const point = fc.tuple(coordinate, coordinate);
    fc.assert(
      fc.property(point, point, point, (a, b, c) => {
        const area = contourArea([a, b, c]);
        const corners: Contour = area > 0 ? [a, b, c] : [a, c, b];
        const sides = corners.map(([x, y], i) => {
          const [nextX, nextY] = corners[(i + 1) % 3] as LidPoint;
          return Math.hypot(nextX - x, nextY - y);
        });
        const inradius = (2 * Math.abs(area)) / sides.reduce((sum, side) => sum + side, 0);
        fc.pre(inradius > 0.05);
        const { radius } = largest([corners], 0.01);
        expect(Math.abs(radius - inradius)).toBeLessThan(0.01 ** 2 / (8 * inradius));
      }),
      {
        numRuns: 60,
        examples: [
          [
            [0, 3.1607979575276263e-302],
            [0, 1.9384775310754756],
            [1.8710937495343356, 0],
          ],
        ],
      },
    );
  });
});

/** Distance from a point to the nearest outline, piece by piece; nothing outside. */
function distanceInside(lines: readonly Contour[], x: number, y: number): number {
  let [least, odd] = [Infinity, false];
  for (const line of lines)
    for (const [i, [ax, ay]] of line.entries()) {
      const [bx, by] = line[(i + 1) % line.length] as LidPoint;
      if (ay > y !== by > y && x < ax + ((y - ay) / (by - ay)) * (bx - ax)) odd = !odd;
      const part = ((x - ax) * (bx - ax) + (y - ay) * (by - ay)) / ((bx - ax) ** 2 + (by - ay) ** 2);
      const held = Math.min(1, Math.max(0, part));
      least = Math.min(least, Math.hypot(ax + held * (bx - ax) - x, ay + held * (by - ay) - y));
    }
  return odd ? least : 0;
}

describe('letters, an inch high, against the distance field on a grid', () => {
  const grid = 0.006;
  test.each([
    ['A', 'roman'],
    ['2', 'roman'],
    ['R', 'book'],
    ['g', 'book'],
    ['&', 'plain'],
    ['8', 'plain'],
  ] as const)('%s of %s: same widest place, and no circle over the outline', (character, face) => {
    const lines = letterLines(character, face);
    const { left, right, front, back } = extentOf(lines.flat());
    let deepest = 0;
    for (let x = left; x <= right; x += grid)
      for (let y = front; y <= back; y += grid) deepest = Math.max(deepest, distanceInside(lines, x, y));

    const found = connectedAreas([lines]).map((outline) => inscribedCircles(outline, 1 / 120));
    const most = Math.max(...found.map((each) => largestCircle(each).radius));
    // The nearest grid point lies at most half a diagonal from the deepest place, and distance changes no faster than the place.
    expect(most).toBeGreaterThanOrEqual(deepest - (1 / 120) ** 2 / (8 * most));
    expect(most).toBeLessThanOrEqual(deepest + grid * Math.SQRT1_2);
    for (const circle of found.flatMap(({ circles }) => circles.filter((each, i) => each && i % 7 === 0)))
      if (circle) {
        const over = circle.radius - distanceInside(lines, circle.x, circle.y);
        expect(over).toBeLessThan((1 / 120) ** 2 / (8 * circle.radius) + 1e-9);
      }
  });
});
