import { describe, expect, test } from 'vitest';
import { connectedAreas } from '../../../kernel-helpers/src/surface/lettering/connected-areas.js';
import { cutSurface } from '../../../kernel-helpers/src/surface/lettering/facets.js';
import { inscribedCircles } from '../../../kernel-helpers/src/surface/lettering/inscribed-circles.js';
import { contourArea, type Outline, outlineArea } from '../../../kernel-helpers/src/surface/lettering/outline.js';
import { annulus, letterLines, rectangle } from './shapes.js';

const cut = (outline: Outline, reach: number, spacing = 0.02) =>
  cutSurface(inscribedCircles(outline, spacing), 1e-6, reach);
const wallArea = (surface: ReturnType<typeof cut>) =>
  surface.facets.reduce((sum, { points }) => sum + Math.abs(contourArea(points)), 0);
const edgeLength = ({ floorEdge }: ReturnType<typeof cut>) =>
  floorEdge.reduce((sum, [[ax, ay], [bx, by]]) => sum + Math.hypot(bx - ax, by - ay), 0);

describe('walls of a V-cut', () => {
  test.each([...'TEA2R&Qg8'])('cover the letter %s, no more and no less', (character) => {
    for (const outline of connectedAreas([letterLines(character)]))
      expect(wallArea(cut(outline, Infinity, 1 / 120)) / outlineArea([outline])).toBeCloseTo(1, 3);
  });

  test('look away from their own piece of the outline', () => {
    const normal = cut(rectangle(3, 1), Infinity).facets.map((facet) => facet.normal.map(Math.round).join(' '));
    expect(normal.sort()).toEqual(['-1 0', '0 -1', '0 1', '1 0'].sort());
  });
});

test('a wall for each straight piece, and a cone of its own only round a corner that juts into the stroke', () => {
  expect(cut(annulus(2, 1), Infinity).facets).toHaveLength(2 * 720);
  const elbow: Outline = [
    [
      [0, 0],
      [3, 0],
      [3, 1],
      [1, 1],
      [1, 3],
      [0, 3],
    ],
  ];
  const { facets } = cut(elbow, Infinity);
  expect(facets).toHaveLength(6 + 1);
  // From the inner corner the cone normal to the outer one.
  expect(
    facets.some(({ normal: [x, y] }) => Math.abs(x + Math.SQRT1_2) < 0.05 && Math.abs(y + Math.SQRT1_2) < 0.05),
  ).toBe(true);
});

describe('a depth limit leaves a flat bottom', () => {
  test('in a stroke: the rectangle inside the walls', () => {
    const surface = cut(rectangle(3, 1), 0.3);
    expect(surface.floorArea).toBeCloseTo(2.4 * 0.4, 9);
    expect(edgeLength(surface)).toBeCloseTo(2 * (2.4 + 0.4), 9);
  });

  test('in a ring: a narrower ring', () => {
    const surface = cut(annulus(2, 1), 0.3);
    expect(surface.floorArea).toBeCloseTo(Math.PI * (1.7 ** 2 - 1.3 ** 2), 3);
    expect(edgeLength(surface)).toBeCloseTo(2 * Math.PI * (1.7 + 1.3), 3);
  });

  test('in a triangle: the same triangle, smaller by what the limit takes of the incircle', () => {
    const outline: Outline = [
      [
        [0, 0],
        [4, 0],
        [0, 3],
      ],
    ];
    const surface = cut(outline, 0.3);
    expect(surface.floorArea).toBeCloseTo(6 * 0.7 ** 2, 6);
    expect(edgeLength(surface)).toBeCloseTo(12 * 0.7, 6);
  });

  test('none where the limit is never reached', () => {
    const surface = cut(rectangle(3, 1), 0.6);
    expect(surface.floorArea).toBeCloseTo(0, 9);
    expect(surface.floorEdge).toEqual([]);
  });
});
