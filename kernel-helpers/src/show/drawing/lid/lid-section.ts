import type { Handle } from '../../../surface/handle/laid-out-handle.js';
import type { Lettering } from '../../../surface/lettering/laid-out-lettering.js';
import type { LidPoint } from '../../../surface/lettering/outline.js';
import { capital } from '../../kit/capital.js';
import type { DisplayItem } from '../../kit/display.js';
import { figure } from '../../kit/figure.js';
import type { Dimension } from '../kit/dimension.js';
import { type DrawingOptions, dimensionText, lengthText, oneSystem, settingText } from '../kit/lengths.js';
import { drawRows } from '../kit/sheet.js';
import type { Shape, View } from '../kit/view.js';

const wood = '#ececec';

/**
 * Sections through the lid where it is thinnest: the deepest place of the lettering, across the stroke, and the middle of the handle,
 * front to back; nothing where neither is cut.
 *
 * @param lid.lettering  as `layOutLettering` returns it
 * @param lid.handle  as `layOutHandle` returns it
 * @param options  how sizes are shown
 */
export function lidSection(lid: { lettering: Lettering; handle?: Handle }, options: DrawingOptions = {}): DisplayItem {
  const show = lengthText(options);
  const size = dimensionText(options);
  const { lettering, handle } = lid;
  const { deepest, remaining } = lettering;
  const stroke = {
    view: grooveView(lettering, size, settingText(oneSystem(options))),
    alt: `Section through the deepest stroke: ${settingText(options)(deepest.depth)} deep, ${show(remaining)} left.`,
    caption:
      'The lid cut across its deepest stroke, to scale. What lies under the point of the V is all that holds there.',
  };
  const held = handle && {
    view: handleView(handle, size),
    alt: `Section through the ${handle.kind}: ${show(handle.remaining)} left under it.`,
    caption:
      'The lid cut from front (left) to back through the middle of the handle, to scale; the back part is left out.',
  };
  const sections = [...(lettering.outlines.length > 0 ? [stroke] : []), ...(held ? [held] : [])];
  const shown = sections.map(({ view, alt, caption }) =>
    figure({ ...drawRows([[view]], { height: 300 }), alt, caption }),
  );
  return { mime: 'text/html', text: shown.map(({ text }) => text).join('') };
}

function grooveView(
  { deepest, remaining, field, bitAngle }: Lettering,
  show: (inches: number) => string,
  exact: (inches: number) => string,
): View {
  const slope = Math.tan((bitAngle * Math.PI) / 360);
  const top = deepest.depth * slope;
  const flat = Math.max(0, deepest.radius - top);
  const half = Math.max(3 * deepest.radius, field.thickness * 0.75);
  const t = field.thickness;
  const floor = t - deepest.depth;
  const points: LidPoint[] = [
    [0, 0],
    [2 * half, 0],
    [2 * half, t],
    [half + deepest.radius, t],
    [half + flat, floor],
    [half - flat, floor],
    [half - deepest.radius, t],
    [0, t],
  ];
  return {
    name: `Deepest stroke, ${bitAngle} degree bit${flat > 1e-9 ? ', flat bottom' : ''}`,
    width: 2 * half,
    height: t,
    shapes: [{ points, type: 'outline', fill: wood }],
    dimensions: [
      { side: 'right', from: 0, to: floor, text: show(remaining) },
      { side: 'right', from: floor, to: t, text: exact(deepest.depth) },
      { side: 'left', from: 0, to: t, text: show(t) },
      { side: 'above', from: half - deepest.radius, to: half + deepest.radius, text: exact(2 * deepest.radius) },
    ],
  };
}

function handleView(handle: Handle, show: (inches: number) => string): View {
  const { field, extent, profile, remaining, depth, height, kind } = handle;
  const end = Math.min(field.length, extent.back + 0.75);
  const t = field.thickness;
  const upper = profile.filter(([y]) => y <= end);
  const points: LidPoint[] = [[0, 0], ...upper, [end, t], [end, 0]];
  const along: Dimension[] = [
    { side: 'above', from: extent.front, to: extent.back, text: show(extent.back - extent.front) },
    ...(extent.front > 0 ? [{ side: 'above', from: 0, to: extent.front, text: show(extent.front) } as const] : []),
  ];
  const levels: Dimension[] =
    kind === 'raised pull'
      ? [
          { side: 'right', from: 0, to: t, text: show(t) },
          { side: 'right', from: t, to: t + height, text: show(height) },
        ]
      : [
          { side: 'right', from: 0, to: remaining, text: show(remaining) },
          { side: 'right', from: remaining, to: t, text: show(depth) },
          { side: 'left', from: 0, to: t, text: show(t) },
        ];
  return {
    name: `${capital(kind)}, front at the left`,
    width: end,
    height: t + height,
    shapes: [
      { points, type: 'outline', fill: wood },
      {
        points: [
          [0, field.tongueThickness],
          [end, field.tongueThickness],
        ],
        type: 'hidden',
      } satisfies Shape,
    ],
    dimensions: [...along, ...levels],
    notes: [
      `core-box bit of ${show(handle.bitDiameter)}, ${handle.passes} passes; the broken line is the top of the tongue at the lid's edges`,
    ],
  };
}
