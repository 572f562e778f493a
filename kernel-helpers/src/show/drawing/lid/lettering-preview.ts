import type { Lettering } from '../../../surface/lettering/laid-out-lettering.js';
import type { DisplayItem } from '../../kit/display.js';
import { figure } from '../../kit/figure.js';
import { element, line, svgPicture, textWidth } from '../../kit/svg.js';
import { drawDimension, inLanes, laneDepth, overLines } from '../kit/dimension.js';
import { type DrawingOptions, dimensionText, lengthText, oneSystem, settingText } from '../kit/lengths.js';
import { strokes } from '../kit/lines.js';
import { pageWidth } from '../kit/sheet.js';
import { vCutShading } from './v-cut-shading.js';

/**
 * The letters as the bit leaves them, seen from above with light from the upper left, to scale; with their size, the way of the bit's
 * point and the deepest place.
 *
 * @param lettering  as `layOutLettering` returns it
 * @param options  how sizes are shown
 */
export function letteringPreview(lettering: Lettering, options: DrawingOptions = {}): DisplayItem {
  const { svg, width } = previewSvg(lettering, options);
  const show = lengthText(options);
  const { text, letters, deepest, remaining } = lettering;
  return figure({
    svg,
    width,
    alt: `"${text.replaceAll('\n', ' / ')}", ${letters} letters ${show(lettering.height)} high, cut in V-grooves; deepest ${settingText(options)(deepest.depth)}, ${show(remaining)} of the lid left under it.`,
    caption: `The letters as the bit leaves them, to scale but not full size, light from the upper left. Broken lines are the way of the bit's point: the wider the stroke, the deeper it goes. The ring marks the deepest place.`,
  });
}

/** The picture itself. @internal */
export function previewSvg(lettering: Lettering, options: DrawingOptions = {}): { svg: string; width: number } {
  const show = dimensionText(options);
  const { extent, deepest, lines } = lettering;
  const [wide, high] = [extent.right - extent.left, extent.back - extent.front];
  const room = { left: 14, right: 60, above: 34, below: 52 };
  const scale = Math.min((pageWidth - room.left - room.right) / wide, 560 / high);
  const frame = { scale, x: room.left - extent.left * scale, y: room.above + extent.back * scale };
  const [right, foot] = [room.left + wide * scale, room.above + high * scale];

  const way = lines.map((each) =>
    element('polyline', {
      points: each.map(({ x, y }) => `${pixel(frame.x + x * scale)},${pixel(frame.y - y * scale)}`).join(' '),
      fill: 'none',
      stroke: '#fff',
      'stroke-width': 1,
      'stroke-dasharray': '3 2.5',
    }),
  );
  const across = drawDimension('below', { from: room.left, to: right, text: show(wide), lane: 0 }, foot);
  const upright = inLanes([{ from: room.above, to: foot, text: show(high) }]).map((each) =>
    drawDimension('right', each, right),
  );
  const at = [frame.x + deepest.x * scale, frame.y - deepest.y * scale] as const;
  const words = `deepest ${settingText(oneSystem(options))(deepest.depth)}`;
  const half = textWidth(words) / 2 + 4;
  const labelAt = Math.min(right - half, Math.max(room.left + half, at[0]));
  const ring = [
    element('circle', { cx: at[0], cy: at[1], r: 5, fill: 'none', stroke: '#fff', 'stroke-width': 3.5 }),
    element('circle', { cx: at[0], cy: at[1], r: 5, fill: 'none', stroke: '#1a1a1a', 'stroke-width': 1.4 }),
    line(at[0], at[1] - 5, labelAt, 24, strokes.thin),
  ];
  const width = right + Math.max(room.right, laneDepth(inLanes([{ from: 0, to: 1, text: '' }])) + 14);
  const content = [
    vCutShading(lettering, frame, 'letters'),
    ...way,
    ...ring,
    across.lines,
    ...upright.map(({ lines: drawn }) => drawn),
    across.text,
    ...upright.map(({ text }) => text),
    overLines(words, labelAt, 14),
  ];
  return { svg: svgPicture(width, foot + room.below, content), width };
}

function pixel(value: number): number {
  return Math.round(value * 100) / 100;
}
