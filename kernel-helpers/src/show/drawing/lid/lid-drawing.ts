import type { Handle } from '../../../surface/handle/laid-out-handle.js';
import type { Lettering } from '../../../surface/lettering/laid-out-lettering.js';
import type { Contour, LidPoint } from '../../../surface/lettering/outline.js';
import { simplifyLine } from '../../../surface/lettering/simplify-line.js';
import type { DisplayItem } from '../../kit/display.js';
import { figure } from '../../kit/figure.js';
import type { Dimension } from '../kit/dimension.js';
import { type DrawingOptions, dimensionText, lengthText } from '../kit/lengths.js';
import { drawRows } from '../kit/sheet.js';
import { rectangle, type Shape, type View } from '../kit/view.js';

const white = '#ffffff';
const grey = '#d4d4d4';

/**
 * The lid from above with its front end at the bottom: lettering and handle in their places, to scale.
 *
 * @param lid.lettering  as `layOutLettering` returns it
 * @param lid.handle  as `layOutHandle` returns it
 * @param options  how sizes are shown
 */
export function lidDrawing(lid: { lettering: Lettering; handle?: Handle }, options: DrawingOptions = {}): DisplayItem {
  const show = lengthText(options);
  const size = dimensionText(options);
  const { lettering, handle } = lid;
  const { field, extent } = lettering;
  const lettered = lettering.outlines.length > 0;
  const [low, high] = [-field.rabbet, field.width + field.rabbet];
  const rise = (from: number, to: number, side: 'left' | 'right'): Dimension => ({
    side,
    from,
    to,
    text: size(to - from),
  });
  const onLid = ([x, y]: LidPoint): LidPoint => [x + field.rabbet, y];
  const view: View = {
    name: 'Lid from above, front end at the bottom',
    width: high - low,
    height: field.length + field.rabbet,
    shapes: [
      { points: rectangle([0, high - low], [0, field.length + field.rabbet]), type: 'outline', fill: white },
      {
        points: [
          [field.rabbet, 0],
          [field.rabbet, field.length],
          [high, field.length],
          [high, 0],
        ],
        type: 'thin',
      },
      ...lettering.outlines.flatMap((outline) =>
        outline.map(
          (contour, i): Shape => ({
            points: thinForPrint(contour).map(onLid),
            type: 'thin',
            fill: i === 0 ? grey : white,
          }),
        ),
      ),
      ...(handle ? handleShapes(handle).map((shape) => ({ ...shape, points: shape.points.map(onLid) })) : []),
    ],
    dimensions: [
      ...(lettered
        ? [
            rise(0, extent.front, 'left'),
            rise(extent.front, extent.back, 'left'),
            rise(extent.back, field.length, 'left'),
          ]
        : []),
      ...(handle
        ? [rise(0, handle.extent.front, 'right'), rise(handle.extent.front, handle.extent.back, 'right')]
        : []),
      across('below', 0, high - low),
      { side: 'right', from: 0, to: field.length + field.rabbet, text: size(field.length + field.rabbet) },
      across('below', 0, field.rabbet),
      across('below', field.rabbet, high),
      ...(lettered ? [across('above', extent.left + field.rabbet, extent.right + field.rabbet)] : []),
      ...(handle ? [across('below', handle.extent.left + field.rabbet, handle.extent.right + field.rabbet)] : []),
    ],
  };
  function across(side: 'above' | 'below', from: number, to: number): Dimension {
    return { side, from, to, text: size(to - from) };
  }
  const { svg, width } = drawRows([[view]], { height: 640 });
  return figure({
    svg,
    width,
    alt: `The lid's top, ${show(field.width)} by ${show(field.length)} inside its rabbets${lettered ? `; the lettering starts ${show(extent.front)} from the front and takes ${show(extent.right - extent.left)} by ${show(extent.back - extent.front)}` : ''}${handle ? `; the ${handle.kind} starts ${show(handle.extent.front)} from the front` : ''}.`,
    caption: `${lettered ? 'Where lettering and handle lie on the lid' : 'The lid'}, ${show(field.width + 2 * field.rabbet)} wide and ${show(field.length + field.rabbet)} long, left and right as seen from the front. The thin line around is the shoulder of the tongue: nothing may be cut beyond it.${lettered ? ' Round letters stand a hair above and below the others.' : ''}`,
  });
}

/** Outline of a cut or a pull as it looks from above. @internal */
export function handleShapes({ kind, extent, toolpath, chord, bitDiameter }: Handle): Shape[] {
  const bitRadius = bitDiameter / 2;
  const { left, right, front, back } = extent;
  if (!toolpath) {
    const foot = { points: rectangle([left, right], [front, back]), type: 'thin', fill: 'none' } as const;
    const [r, top] = [
      bitRadius,
      rectangle([left + bitRadius, right - bitRadius], [front + bitRadius, back - bitRadius]),
    ];
    return r > 0 ? [foot, { points: top, type: 'outline', fill: grey }] : [foot];
  }
  const [[fromX, fromY], [toX, toY]] = toolpath;
  const round = (x: number, y: number, start: number, radius: number): LidPoint[] =>
    Array.from({ length: 25 }, (_, i) => start + (i * Math.PI) / 24).map(
      (angle): LidPoint => [x + radius * Math.cos(angle), y + radius * Math.sin(angle)],
    );
  const outline =
    kind === 'scoop'
      ? [...round(fromX, fromY, Math.PI / 2, chord / 2), ...round(toX, toY, -Math.PI / 2, chord / 2)]
      : [...round(fromX, fromY, Math.PI, chord / 2), ...ramp(fromX, fromY, chord / 2, back)];
  return [
    { points: outline, type: 'outline', fill: grey },
    {
      points: [
        [fromX, fromY],
        [toX, toY],
      ],
      type: 'centre',
    },
  ];
}

/** The edge of a notch whose bit rises evenly: it narrows as the chord of a circle does. */
function ramp(x: number, y: number, half: number, back: number): LidPoint[] {
  const steps = Array.from({ length: 17 }, (_, i) => i / 16);
  const side = (sign: number) =>
    steps.map((part): LidPoint => [x + sign * half * Math.sqrt(1 - part), y + part * (back - y)]);
  return [...side(1), ...side(-1).toReversed()];
}

/** Finer than print shows, in. */
const printed = 0.002;

/** Fewer points than the bit needs: as many as print can show, every corner among them. */
function thinForPrint(contour: Contour): LidPoint[] {
  const closed = [...contour, contour[0] as LidPoint].map(([x, y]) => ({ x, y, radius: 0 }));
  return simplifyLine(closed, printed)
    .slice(0, -1)
    .map(({ x, y }): LidPoint => [x, y]);
}
