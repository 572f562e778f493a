import { describe, expect, test } from 'vitest';
import { inscribedCircles } from '../../../kernel-helpers/src/surface/lettering/inscribed-circles.js';
import { type CentreLine, centreLines } from '../../../kernel-helpers/src/surface/lettering/medial-axis.js';
import type { Outline } from '../../../kernel-helpers/src/surface/lettering/outline.js';
import { annulus, circle, rectangle } from './shapes.js';

const linesOf = (outline: Outline, spacing = 0.01) => centreLines(inscribedCircles(outline, spacing), 0.0005);
const lengthOf = (lines: readonly CentreLine[]) =>
  lines.reduce(
    (sum, line) =>
      sum +
      line.reduce((own, { x, y }, i) => {
        const { x: fromX, y: fromY } = line[Math.max(0, i - 1)] as CentreLine[0];
        return own + Math.hypot(x - fromX, y - fromY);
      }, 0),
    0,
  );

describe('the way of the point', () => {
  test('in a stroke with square ends: down the middle and up into all four corners', () => {
    const lines = linesOf(rectangle(3, 1));
    expect(lines).toHaveLength(5);
    expect(lengthOf(lines)).toBeCloseTo(2 + 4 * Math.SQRT1_2, 6);
    const ends = lines.flatMap((line) => [...line.slice(0, 1), ...line.slice(-1)]).filter(({ radius }) => radius === 0);
    expect(ends.map(({ x, y }) => `${x} ${y}`).sort()).toEqual(['0 0', '0 1', '3 0', '3 1']);
  });

  test('in a ring: once around, closed', () => {
    const [line, ...others] = linesOf(annulus(2, 1), 0.02);
    expect(others).toEqual([]);
    expect(line?.[0]).toEqual(line?.at(-1));
    // Thinned to 0.0005 in, chords of a circle of radius 1.5 are shorter by about a thousandth.
    expect(Math.abs(lengthOf([line as CentreLine]) - 3 * Math.PI)).toBeLessThan(0.003 * Math.PI);
  });

  test('in a round dot: nearly nothing, since its wall is one bend', () => {
    expect(lengthOf(linesOf([circle(0.5, 200)]))).toBeLessThan(0.01);
    // A small curve in straight pieces turns by 12 degrees at each: no branch runs into these.
    expect(lengthOf(linesOf([circle(0.05, 30)], 0.002))).toBeLessThan(0.002);
  });

  test('in a triangle: from the middle of its incircle into its corners', () => {
    const outline: Outline = [
      [
        [0, 0],
        [4, 0],
        [0, 3],
      ],
    ];
    // Incircle of 3-4-5: radius 1 at (1, 1).
    const straight = Math.hypot(1, 1) + Math.hypot(3, 1) + Math.hypot(1, 2);
    expect(Math.abs(lengthOf(linesOf(outline)) - straight)).toBeLessThan(0.02);
  });
});
