import { describe, expect, test } from 'vitest';
import { toolpath } from '../../../kernel-helpers/src/surface/lettering/cutting-time.js';
import { inscribedCircles } from '../../../kernel-helpers/src/surface/lettering/inscribed-circles.js';
import { centreLines } from '../../../kernel-helpers/src/surface/lettering/medial-axis.js';
import { annulus, rectangle } from './shapes.js';

// A stroke of 3 by 1: its middle line is 2 long at depth 1/2, and four branches of half a diagonal rise into the corners.
const stroke = centreLines(inscribedCircles(rectangle(3, 1), 0.01), 0.0005);
const at90 = { slope: 1, limit: Infinity };

describe('the way of the bit', () => {
  test('in one pass: the middle line, and the branches along their slope', () => {
    // A branch runs half a unit each way and half a unit up.
    expect(toolpath(stroke, { ...at90, pass: 1 }).length).toBeCloseTo(2 + 4 * Math.sqrt(0.75), 6);
  });

  test('in two passes the first stays at its depth where the groove is deeper', () => {
    const { length } = toolpath(stroke, { ...at90, pass: 0.25 });
    // First pass at 1/4 deep: flat for 2 and, of every branch, half; the branches are drawn in straight steps, so each is one slope.
    const first = 2 + 4 * Math.hypot(0.5, 0.5, 0.25);
    expect(length).toBeCloseTo(first + 2 + 4 * Math.sqrt(0.75), 6);
  });

  test('a depth limit makes it flat', () => {
    const { length } = toolpath(stroke, { slope: 1, limit: 0.1, pass: 1 });
    expect(length).toBeCloseTo(2 + 4 * Math.hypot(0.5, 0.5, 0.1), 6);
  });

  test('six places with an odd number of lines: three goes without lifting; a ring is one', () => {
    expect(toolpath(stroke, { ...at90, pass: 1 }).starts).toBe(3);
    const ring = centreLines(inscribedCircles(annulus(2, 1), 0.02), 0.0005);
    expect(toolpath(ring, { ...at90, pass: 1 }).starts).toBe(1);
    expect(toolpath(ring, { ...at90, pass: 0.25 }).starts).toBe(2);
  });
});
