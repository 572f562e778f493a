import type { SizedBox } from '../box/size-box.js';
import { formatLength, type LengthSystem } from '../measure/length.js';
import { figure } from './figure.js';
import type { Shown } from './shown.js';
import { element, fontSize, ink, label, line, quietInk, svgPicture, textWidth } from './svg.js';

/** What the drawing needs of a sized box; see {@link SizedBox}. Inches. */
export type DrawnBox = Pick<SizedBox, 'overall' | 'design'>;

/**
 * A rectangle of the piece in one view: inches from the view's middle line and from its lower edge.
 * One without width is a stroke of grain.
 */
interface Face {
  x: [number, number];
  y: [number, number];
  hidden?: boolean;
  fill?: string;
}

/** A dimension beside a view: which side, between which two places, what it says. */
interface Dimension {
  side: 'left' | 'right' | 'above' | 'below';
  from: number;
  to: number;
  text: string;
}

interface View {
  name: string;
  width: number;
  height: number;
  faces: Face[];
  dimensions: Dimension[];
}

const pageWidth = 720;
const mostHeight = 640;
/** From a view to its dimension line, and from that to its text. */
const offset = 14;
const lane = offset + fontSize + 12;
const gap = 20;

/**
 * Front, right side and plan of a sliding-lid box, all to one scale, with its main sizes. The front lies at the foot of the
 * plan and at the left of the side view. Dashed lines lie behind a board.
 *
 * @param box  as `sizeBox` returns it; inches
 * @param options.lengths  how sizes are shown; tape fractions unless told otherwise
 * @param options.denominator  finest tape mark; 1/64 unless told otherwise
 */
export function boxDrawing(
  box: DrawnBox,
  options: { lengths?: LengthSystem; denominator?: 8 | 16 | 32 | 64 } = {},
): Shown {
  const { lengths: system = 'tape', denominator = 64 } = options;
  const show = (inches: number) => formatLength(inches, { system, denominator });
  const { overall, design } = box;
  const [plan, front, side] = [planView(box, show), frontView(box, show), sideView(box, show)];

  const room = { plan: lanes(plan), front: lanes(front), side: lanes(side) };
  const leftLane = Math.max(room.plan.left, room.front.left);
  const middleLane = Math.max(room.plan.right, room.front.right) + gap + room.side.left;
  const aboveFront = Math.max(room.front.above, room.side.above);
  const belowFront = Math.max(room.front.below, room.side.below);
  const scale = Math.min(
    (pageWidth - leftLane - middleLane - room.side.right) / (plan.width + side.width),
    (mostHeight - room.plan.above - room.plan.below - aboveFront - belowFront) / (plan.height + front.height),
  );

  const firstColumn = Math.max(plan.width * scale, room.plan.across, room.front.across);
  const secondColumn = Math.max(side.width * scale, room.side.across);
  const firstMiddle = leftLane + firstColumn / 2;
  const secondMiddle = leftLane + firstColumn + middleLane + secondColumn / 2;
  const planFoot = room.plan.above + Math.max(plan.height * scale, room.plan.down);
  const frontRow = Math.max(front.height * scale, room.front.down, room.side.down);
  const frontFoot = planFoot + room.plan.below + aboveFront + frontRow;
  const width = secondMiddle + secondColumn / 2 + room.side.right;

  const svg = svgPicture(width, frontFoot + belowFront, [
    drawn(plan, firstMiddle, planFoot, scale),
    drawn(front, firstMiddle, frontFoot, scale),
    drawn(side, secondMiddle, frontFoot, scale),
  ]);
  const sizes =
    `${show(overall.length)} long, ${show(overall.width)} wide and ${show(overall.height)} high outside; ` +
    `${show(design.insideLength)} by ${show(design.insideWidth)} by ${show(design.insideDepth)} inside`;
  const boards = `Boards ${show(design.stockThickness)} thick${design.proud > 0 ? `, joint ${show(design.proud)} proud` : ''}`;
  return figure({
    svg,
    width,
    alt: `Plan, front and right side of the box: ${sizes}. ${boards}.`,
    caption: `The box to scale: ${sizes}. ${boards}. Dashed lines lie behind a board; the lid slides out at the front.`,
  });
}

function planView({ overall, design }: DrawnBox, show: (inches: number) => string): View {
  const { stockThickness: t, proud, insideWidth, insideLength, lidGrooveDepth, lidClearance } = design;
  const inner = insideWidth / 2;
  const end = proud + t;
  const length = overall.length;
  const strokes = [-0.3, -0.1, 0.1, 0.3].map((part): Face => {
    const x = part * insideWidth;
    return { x: [x, x], y: [proud + t * 0.5, length - end - insideLength * 0.08] };
  });
  return {
    name: 'Plan',
    width: overall.width,
    height: length,
    faces: [
      { x: [-overall.width / 2, overall.width / 2], y: [proud, end] },
      { x: [-overall.width / 2, overall.width / 2], y: [length - end, length - proud] },
      { x: [-inner - t, -inner], y: [0, length], fill: '#fff' },
      { x: [inner, inner + t], y: [0, length], fill: '#fff' },
      { x: [-inner, inner], y: [proud, length - end], fill: '#eceff2' },
      ...strokes,
      {
        x: [-inner - lidGrooveDepth + lidClearance, inner + lidGrooveDepth - lidClearance],
        y: [proud, length - end + lidGrooveDepth - lidClearance],
        hidden: true,
      },
    ],
    dimensions: [
      { side: 'above', from: -overall.width / 2, to: overall.width / 2, text: show(overall.width) },
      { side: 'below', from: -inner, to: inner, text: `inside ${show(insideWidth)}` },
      { side: 'left', from: 0, to: length, text: show(length) },
      { side: 'right', from: end, to: end + insideLength, text: `inside ${show(insideLength)}` },
    ],
  };
}

function frontView({ overall, design }: DrawnBox, show: (inches: number) => string): View {
  const { stockThickness: t, insideWidth, lidThickness, tongueThickness, lidGrooveDepth, lidClearance } = design;
  const inner = insideWidth / 2;
  const height = overall.height;
  const frontHeight = height - lidThickness;
  const tongue = inner + lidGrooveDepth - lidClearance;
  return {
    name: 'Front',
    width: overall.width,
    height,
    faces: [
      { x: [-overall.width / 2, overall.width / 2], y: [0, frontHeight] },
      { x: [-inner - t, -inner], y: [0, height], fill: '#fff' },
      { x: [inner, inner + t], y: [0, height], fill: '#fff' },
      { x: [-inner, inner], y: [frontHeight, height], fill: '#eceff2' },
      { x: [-tongue, tongue], y: [frontHeight, frontHeight + tongueThickness], fill: '#eceff2' },
    ],
    dimensions: [
      { side: 'left', from: 0, to: height, text: show(height) },
      { side: 'right', from: 0, to: frontHeight, text: `front ${show(frontHeight)}` },
    ],
  };
}

function sideView({ overall, design }: DrawnBox, show: (inches: number) => string): View {
  const { stockThickness: t, proud, insideLength, lidThickness, lidGrooveDepth, lidClearance } = design;
  const { foot, bottomThickness, bottomGrooveDepth, insideDepth } = design;
  const half = overall.length / 2;
  const inner = insideLength / 2;
  const height = overall.height;
  return {
    name: 'Right side',
    width: overall.length,
    height,
    faces: [
      { x: [-half, half], y: [0, height] },
      { x: [-half + proud, -half + proud + t], y: [0, height - lidThickness], hidden: true },
      { x: [half - proud - t, half - proud], y: [0, height], hidden: true },
      { x: [-inner - bottomGrooveDepth, inner + bottomGrooveDepth], y: [foot, foot + bottomThickness], hidden: true },
      { x: [-half + proud, inner + lidGrooveDepth - lidClearance], y: [height - lidThickness, height], hidden: true },
    ],
    dimensions: [
      { side: 'below', from: -half, to: half, text: show(overall.length) },
      {
        side: 'right',
        from: foot + bottomThickness,
        to: foot + bottomThickness + insideDepth,
        text: `clear ${show(insideDepth)}`,
      },
    ],
  };
}

/** Room a view needs around it for its sizes and its name, and the least it may be across and down, pixels. */
function lanes({ name, dimensions }: View) {
  const widest = (...sides: Dimension['side'][]) =>
    Math.max(0, ...dimensions.filter(({ side }) => sides.includes(side)).map(({ text }) => textWidth(text)));
  const beside = (text: number) => (text === 0 ? gap : offset + 6 + text + 4);
  return {
    left: beside(widest('left')),
    right: beside(widest('right')),
    above: widest('above') === 0 ? gap : lane,
    below: (widest('below') === 0 ? offset : lane) + fontSize + 12,
    across: Math.max(widest('above', 'below'), textWidth(name)),
    down: widest('left', 'right') === 0 ? 0 : fontSize,
  };
}

function drawn(view: View, middle: number, foot: number, scale: number): string {
  const px = (x: number) => middle + x * scale;
  const py = (y: number) => foot - y * scale;
  const faces = view.faces.map(({ x, y, hidden, fill = 'none' }) =>
    x[0] === x[1]
      ? line(px(x[0]), py(y[0]), px(x[1]), py(y[1]), { stroke: '#b5b5b5', 'stroke-width': 0.8 })
      : element('rect', {
          x: px(x[0]),
          y: py(y[1]),
          width: (x[1] - x[0]) * scale,
          height: (y[1] - y[0]) * scale,
          fill,
          stroke: ink,
          'stroke-width': hidden ? 0.8 : 1.4,
          'stroke-dasharray': hidden ? '5 3' : undefined,
        }),
  );
  const below = view.dimensions.some(({ side }) => side === 'below');
  const name = label(view.name, middle, foot + (below ? lane : offset) + fontSize / 2 + 2, {
    'text-anchor': 'middle',
    fill: quietInk,
  });
  const edges = { left: px(-view.width / 2), right: px(view.width / 2), above: py(view.height), below: foot };
  return faces.join('') + view.dimensions.map((dimension) => sized(dimension, edges, px, py)).join('') + name;
}

/** A dimension: two witness lines, a line with a slanted tick at each end, and its text beyond the line. */
function sized(
  { side, from, to, text }: Dimension,
  edges: Record<Dimension['side'], number>,
  px: (x: number) => number,
  py: (y: number) => number,
): string {
  const away = side === 'left' || side === 'above' ? -1 : 1;
  const at = edges[side] + away * offset;
  const thin = { stroke: quietInk, 'stroke-width': 0.8 };
  const tick = (x: number, y: number) => line(x - 4, y + 4, x + 4, y - 4, { 'stroke-width': 1.4 });
  if (side === 'above' || side === 'below') {
    const [a, b] = [px(from), px(to)];
    const witness = [a, b].map((x) => line(x, edges[side] + away * 3, x, at + away * 5, thin));
    const words = label(text, (a + b) / 2, at + away * (fontSize / 2 + 5), { 'text-anchor': 'middle' });
    return [...witness, line(a, at, b, at, thin), tick(a, at), tick(b, at), words].join('');
  }
  const [a, b] = [py(from), py(to)];
  const witness = [a, b].map((y) => line(edges[side] + away * 3, y, at + away * 5, y, thin));
  const words = label(text, at + away * 8, (a + b) / 2, { 'text-anchor': away < 0 ? 'end' : 'start' });
  return [...witness, line(at, a, at, b, thin), tick(at, a), tick(at, b), words].join('');
}
