import { type DrawnPiece, extent, type ViewName } from '../../piece/drawn-piece.js';
import { capital } from '../kit/capital.js';
import type { DisplayItem } from '../kit/display.js';
import { figure } from '../kit/figure.js';
import type { Dimension } from './kit/dimension.js';
import { type DrawingOptions, dimensionText, lengthText } from './kit/lengths.js';
import { projected } from './kit/projection.js';
import { drawRows } from './kit/sheet.js';
import { rectangle, type Shape, type View } from './kit/view.js';

/**
 * Plan, front and right side of a piece, all to one scale, with its main sizes. The front lies under the plan and at the left
 * of the side view (third-angle projection). Dashed edges lie behind others; dash-dotted lines are middles.
 *
 * @param piece  as `drawnBox`, `drawnBookcase` and the like return it; inches
 * @param options  how sizes are shown
 */
export function pieceDrawing(piece: DrawnPiece, options: DrawingOptions = {}): DisplayItem {
  const show = lengthText(options);
  const views = viewsOf(piece, dimensionText(options));
  const { svg, width } = drawRows([[views.plan], [views.front, views['right side']]], { height: 700 });
  const { plan, front } = views;
  const overall = `${show(plan.width)} from left to right, ${show(plan.height)} from front to back and ${show(front.height)} high over everything`;
  const sizes = piece.sizes.map(({ view, what, from, to }) => `${what} ${show(to - from)} (${view})`).join(', ');
  return figure({
    svg,
    width,
    alt: `Plan, front and right side of ${piece.name}: ${overall}; ${sizes}.`,
    caption: `${capital(piece.name)} to scale, plan over front, right side at the right: ${overall}. Dashed edges lie behind others, the dash-dotted line is the middle.`,
  });
}

function viewsOf(piece: DrawnPiece, show: (inches: number) => string): Record<ViewName, View> {
  const { x, y, z } = extent(piece.solids);
  const [width, length, height] = [x, y, z].map(([from, to]) => to - from) as [number, number, number];
  const view = (name: ViewName, across: number, up: number, over: Dimension[]): View => {
    const own = piece.sizes.filter((size) => size.view === name);
    const openings = (piece.openings ?? []).filter((opening) => opening.view === name);
    return {
      name: capital(name),
      width: across,
      height: up,
      shapes: [
        ...projected(piece.solids, name),
        ...openings.map((each): Shape => ({ points: rectangle(each.across, each.up), type: 'outline', fill: 'none' })),
        ...(name === 'right side' ? [] : [middle(across / 2, up)]),
      ],
      dimensions: [
        ...over,
        ...own.map(({ side, from, to, what }) => ({ side, from, to, text: `${what} ${show(to - from)}` })),
      ],
    };
  };
  return {
    plan: view('plan', width, length, [
      { side: 'above', from: 0, to: width, text: show(width) },
      { side: 'left', from: 0, to: length, text: show(length) },
    ]),
    front: view('front', width, height, [{ side: 'left', from: 0, to: height, text: show(height) }]),
    'right side': view('right side', length, height, [{ side: 'below', from: 0, to: length, text: show(length) }]),
  };
}

/** A middle line, a little past the outline at both ends. */
function middle(at: number, height: number): Shape {
  const past = height * 0.03;
  return {
    points: [
      [at, -past],
      [at, height + past],
    ],
    type: 'centre',
  };
}
