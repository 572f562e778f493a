import { figure } from '../figure.js';
import type { Shown } from '../shown.js';
import { boxSolids, type DrawnBox } from './box-solids.js';
import { type DrawingOptions, lengthText } from './lengths.js';
import type { Point } from './lines.js';
import { projected } from './projection.js';
import { drawRows } from './sheet.js';
import { rectangle, type Shape, type View } from './view.js';

/**
 * Plan, front and right side of a sliding-lid box, all to one scale, with its main sizes. The front lies under the plan and
 * at the left of the side view (third-angle projection). Dashed edges lie behind others; dash-dotted lines are middles.
 *
 * @param box  as `sizeBox` returns it; inches
 * @param options  how sizes are shown
 */
export function boxDrawing(box: DrawnBox, options: DrawingOptions = {}): Shown {
  const show = lengthText(options);
  const { overall, design } = box;
  const { svg, width } = drawRows([[planView(box, show)], [frontView(box, show), sideView(box, show)]], {
    height: 700,
  });
  const sizes =
    `${show(overall.length)} long, ${show(overall.width)} wide and ${show(overall.height)} high outside; ` +
    `${show(design.insideLength)} by ${show(design.insideWidth)} by ${show(design.insideDepth)} inside`;
  const boards = `Boards ${show(design.stockThickness)} thick${design.proud > 0 ? `, joint ${show(design.proud)} proud` : ''}`;
  return figure({
    svg,
    width,
    alt: `Plan, front and right side of the box: ${sizes}. ${boards}.`,
    caption: `The box to scale, plan over front, right side at the right: ${sizes}. ${boards}. Dashed edges lie behind others, dash-dotted lines are middles; the lid slides out at the front.`,
  });
}

function planView(box: DrawnBox, show: (inches: number) => string): View {
  const { overall, design } = box;
  const { width, length } = overall;
  const end = design.proud + design.stockThickness;
  return {
    name: 'Plan',
    width,
    height: length,
    shapes: [
      ...projected(boxSolids(box), 'plan'),
      middle('up', width / 2, length),
      middle('across', length / 2, width),
    ],
    dimensions: [
      { side: 'above', from: 0, to: width, text: show(width) },
      { side: 'below', from: end, to: width - end, text: `inside ${show(design.insideWidth)}` },
      { side: 'left', from: 0, to: length, text: show(length) },
      { side: 'right', from: end, to: length - end, text: `inside ${show(design.insideLength)}` },
    ],
  };
}

function frontView(box: DrawnBox, show: (inches: number) => string): View {
  const { overall, design } = box;
  const { width, height } = overall;
  const low = height - design.lidThickness;
  const end = design.proud + design.stockThickness;
  // The sides' grooves run out here, where the lid goes in.
  const opening = (from: number, to: number): Shape => ({
    points: rectangle([from, to], [low, low + design.tongueThickness]),
    type: 'outline',
    fill: 'none',
  });
  return {
    name: 'Front',
    width,
    height,
    shapes: [
      ...projected(boxSolids(box), 'front'),
      opening(end - design.lidGrooveDepth, end),
      opening(width - end, width - end + design.lidGrooveDepth),
      middle('up', width / 2, height),
    ],
    dimensions: [
      { side: 'left', from: 0, to: height, text: show(height) },
      { side: 'right', from: 0, to: low, text: `front ${show(low)}` },
    ],
  };
}

function sideView(box: DrawnBox, show: (inches: number) => string): View {
  const { overall, design } = box;
  const { length, height } = overall;
  const floor = design.foot + design.bottomThickness;
  return {
    name: 'Right side',
    width: length,
    height,
    shapes: [...projected(boxSolids(box), 'right side'), middle('up', length / 2, height)],
    dimensions: [
      { side: 'below', from: 0, to: length, text: show(length) },
      { side: 'right', from: floor, to: floor + design.insideDepth, text: `clear ${show(design.insideDepth)}` },
    ],
  };
}

/** A middle line, a little past the outline at both ends. */
function middle(along: 'up' | 'across', at: number, length: number): Shape {
  const past = length * 0.03;
  const points: Point[] =
    along === 'up'
      ? [
          [at, -past],
          [at, length + past],
        ]
      : [
          [-past, at],
          [length + past, at],
        ];
  return { points, type: 'centre' };
}
