import type { Lettering } from '../../../surface/lettering/laid-out-lettering.js';
import type { LidPoint } from '../../../surface/lettering/outline.js';
import { element } from '../../kit/svg.js';
import { letteringLayers, newDrawing } from '../dxf.js';
import { rectangle } from '../kit/view.js';

/**
 * Lettering as a drawing exchange file (DXF, ASCII), full size, units inches, origin at the middle of the lid's front end, which
 * is there before the lid is planed to width: the outlines, the way of the bit's point with its depth as z (below zero), and the edge of a flat bottom.
 *
 * @param lettering  as `layOutLettering` returns it
 * @returns the file's text; layers OUTLINE (the field), LETTERS, CENTRE, FLOOR
 */
export function letteringDxf({ outlines, lines, floorEdge, field, bitAngle, deepest }: Lettering): string {
  const drawing = newDrawing(letteringLayers);
  const slope = Math.tan((bitAngle * Math.PI) / 360);
  const middle = field.width / 2;
  const moved = ([x, y]: LidPoint): LidPoint => [x - middle, y];
  drawing.area('OUTLINE', rectangle([-middle, middle], [0, field.length]));
  for (const contour of outlines.flat()) drawing.area('LETTERS', contour.map(moved));
  for (const line of lines)
    drawing.way(
      'CENTRE',
      line.map(({ x, y, radius }) => [x - middle, y, -Math.min(radius / slope, deepest.depth)]),
    );
  for (const [from, to] of floorEdge) drawing.line('FLOOR', moved(from), moved(to));
  return drawing.text();
}

/**
 * The same as a drawing to print or to open elsewhere (SVG), full size: outlines thin and black, the way of the bit's point and
 * the lid's middle line grey.
 *
 * @param lettering  as `layOutLettering` returns it
 * @returns the file's text; one unit is one inch, seen from above with the front end at the bottom
 */
export function letteringSvg({ outlines, lines, field }: Lettering): string {
  const { width, length } = field;
  const points = (line: readonly LidPoint[]) => line.map(([x, y]) => `${place(x)},${place(length - y)}`).join(' ');
  const thin = { fill: 'none', 'stroke-width': 0.005 };
  const content = [
    element('rect', { x: 0, y: 0, width, height: length, ...thin, stroke: '#999' }),
    element('path', {
      d: `M${place(width / 2)},0V${place(length)}`,
      ...thin,
      stroke: '#999',
      'stroke-dasharray': '0.2 0.05',
    }),
    element(
      'g',
      { id: 'letters', ...thin, stroke: '#000' },
      outlines
        .flat()
        .map((each) => element('polygon', { points: points(each) }))
        .join(''),
    ),
    element(
      'g',
      { id: 'centre', ...thin, stroke: '#777' },
      lines.map((each) => element('polyline', { points: points(each.map(({ x, y }) => [x, y])) })).join(''),
    ),
  ];
  const size = {
    width: `${place(width)}in`,
    height: `${place(length)}in`,
    viewBox: `0 0 ${place(width)} ${place(length)}`,
  };
  return `${element('svg', { xmlns: 'http://www.w3.org/2000/svg', ...size }, content.join(''))}\n`;
}

function place(inches: number): number {
  return Math.round(inches * 1e4) / 1e4;
}
