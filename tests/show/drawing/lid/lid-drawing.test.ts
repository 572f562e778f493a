import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { typeface } from '../../../../kernel-helpers/src/record/own/typeface-file.js';
import { lidDrawing } from '../../../../kernel-helpers/src/show/drawing/lid/lid-drawing.js';
import { lidSection } from '../../../../kernel-helpers/src/show/drawing/lid/lid-section.js';
import { layOutHandle } from '../../../../kernel-helpers/src/surface/handle/handle.js';
import { layOutLettering } from '../../../../kernel-helpers/src/surface/lettering/lettering.js';
import { extentOf, type LidPoint } from '../../../../kernel-helpers/src/surface/lettering/outline.js';
import { chest } from '../../../surface/lettering/shapes.js';
import { drawingOf, hiddenArrowheads, linesThrough } from '../../drawing-text.js';
import { cutOff, overlaps } from '../../read-svg.js';

const faces = ['roman', 'book', 'plain'] as const;
const lidWith = (text: string, face: (typeof faces)[number], height: number) =>
  layOutLettering({ box: chest, face: typeface(face), text, height });

/** Distance from a point to a straight piece. */
function distance([x, y]: LidPoint, [ax, ay]: LidPoint, [bx, by]: LidPoint): number {
  const [dx, dy] = [bx - ax, by - ay];
  const part = Math.min(1, Math.max(0, ((x - ax) * dx + (y - ay) * dy) / (dx * dx + dy * dy || 1)));
  return Math.hypot(x - ax - part * dx, y - ay - part * dy);
}

describe('the drawing of the lid', () => {
  test.each(faces)('has the letters as they are cut, every corner of M, W, E and 4 too (%s)', (face) => {
    const lettering = lidWith('MWE4', face, 0.75);
    const contours = lettering.outlines.flat();
    const { all } = drawingOf(lidDrawing({ lettering }));
    // The lid itself is the first area that is filled; the letters follow.
    const drawn = all('polygon[stroke]')
      .slice(1)
      .map((each) =>
        (each.getAttribute('points') ?? '').split(' ').map((point) => point.split(',').map(Number) as [number, number]),
      );
    expect(drawn).toHaveLength(contours.length);
    const [cut, seen] = [extentOf(contours.flat()), extentOf(drawn.flat())];
    const scale = (seen.right - seen.left) / (cut.right - cut.left);
    const inPixels = ([x, y]: LidPoint): LidPoint => [
      seen.left + (x - cut.left) * scale,
      seen.front + (cut.back - y) * scale,
    ];
    for (const [i, contour] of contours.entries()) {
      const polygon = drawn[i] ?? [];
      const off = contour
        .map(inPixels)
        .map((point) =>
          Math.min(...polygon.map((from, k) => distance(point, from, polygon[(k + 1) % polygon.length] as LidPoint))),
        );
      // In pixels: less than an eye sees.
      expect(Math.max(...off)).toBeLessThan(0.35);
    }
  });

  test('runs no line through a figure and hides no arrowhead, whatever is cut into it', () => {
    fc.assert(
      fc.property(
        fc.constantFrom('TEA', 'M', 'TEA 2027', 'A\nB'),
        fc.constantFrom(...faces),
        fc.double({ min: 0.3, max: 0.8, noNaN: true }),
        fc.constantFrom('scoop', 'thumb notch', 'raised pull'),
        (text, face, height, kind) => {
          const lettering = lidWith(text, face, height);
          const lid = { lettering, handle: layOutHandle({ box: chest, kind, lettering }) };
          for (const shown of [lidDrawing(lid), lidSection(lid)].flat()) {
            const drawing = drawingOf(shown);
            expect(overlaps(drawing.labels)).toEqual([]);
            expect(cutOff(drawing.labels, drawing)).toEqual([]);
            expect(linesThrough(drawing)).toEqual([]);
            expect(hiddenArrowheads(drawing)).toEqual([]);
          }
        },
      ),
      { numRuns: 25 },
    );
  });
});
