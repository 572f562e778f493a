import type { DovetailLayout, JointPiece } from '../../joints/dovetails.js';
import { figure } from '../figure.js';
import type { Shown } from '../shown.js';
import type { Dimension } from './dimension.js';
import { type DrawingOptions, lengthText } from './lengths.js';
import { drawRows } from './sheet.js';
import { rectangle, type Shape, type View } from './view.js';

/** Wood that is the neighbour's, or waste. */
const grey = '#d4d4d4';

/**
 * A dovetailed corner as it is scribed: the end of the tail board, its outside face, and the end of the pin board as it is
 * traced from the tails; one under the other, to one scale.
 *
 * @param layout  as `layOutDovetails` returns it; inches
 * @param options  how sizes are shown
 */
export function jointDrawing(layout: DovetailLayout, options: DrawingOptions = {}): Shown {
  const show = lengthText(options);
  const { svg, width } = drawRows([[tailEnd(layout, show)], [tailFace(layout, show)], [pinEnd(layout, show)]], {
    height: 900,
  });
  const { tails, pins, sawAngle, slope, gaugeSetting, boardWidth, dividerSetting } = layout;
  const [tail] = tails as [JointPiece];
  const pin = pins.find(({ half }) => !half);
  const sizes = [
    `${tails.length} ${tails.length === 1 ? 'tail' : 'tails'} of ${show(tail.to - tail.from)}`,
    ...(pin ? [`pins of ${show(pin.to - pin.from)}`] : []),
    `half pins of ${show(pins[0]?.to ?? 0)} below and ${show(boardWidth - (pins.at(-1)?.from ?? 0))} above`,
    `on a board ${show(boardWidth)} wide`,
  ].join(', ');
  const settings = `gauge ${show(gaugeSetting)}, dividers ${show(dividerSetting)}, slope 1:${slope} (${sawAngle.toFixed(1)} degrees)`;
  return figure({
    svg,
    width,
    alt: `A dovetailed corner from the end and from outside: ${sizes}; ${settings}.`,
    caption: `The corner as it is scribed, to scale, lower edge at the left: ${settings}. Grey is waste; on the face of the tail board it is where the ends of the pins will show.`,
  });
}

function tailEnd(layout: DovetailLayout, show: (inches: number) => string): View {
  const { boardWidth, stockThickness, tails, pins, dividerSetting } = layout;
  const [tail] = tails as [JointPiece];
  const pin = pins.find(({ half }) => !half);
  const above = (from: number, to: number, text = ''): Dimension => ({
    side: 'above',
    from,
    to,
    text: `${text}${show(to - from)}`,
  });
  return {
    name: 'End of the tail board',
    width: boardWidth,
    height: stockThickness,
    shapes: [
      ...pins.map(({ from, to }) => area(rectangle([from, to], [0, stockThickness]))),
      { points: rectangle([0, boardWidth], [0, stockThickness]), type: 'outline', fill: 'none' },
    ],
    dimensions: [
      above(0, tail.from),
      above(tail.from, tail.to),
      ...(pin ? [above(pin.from, pin.to), above(tail.from, tail.from + dividerSetting, 'dividers ')] : []),
      above(pins.at(-1)?.from ?? 0, boardWidth),
      above(0, boardWidth),
      { side: 'right', from: 0, to: stockThickness, text: show(stockThickness) },
    ],
  };
}

function tailFace(layout: DovetailLayout, show: (inches: number) => string): View {
  const { boardWidth, gaugeSetting, stockThickness, proud, tails, pins, slope, sawAngle } = layout;
  const height = gaugeSetting + stockThickness;
  const [tail] = tails as [JointPiece];
  const pin = pins.find(({ half }) => !half);
  const below = ({ baselineFrom: from, baselineTo: to }: JointPiece): Dimension => ({
    side: 'below',
    from,
    to,
    text: show(to - from),
  });
  return {
    name: 'Outside face of the tail board',
    width: boardWidth,
    height,
    broken: true,
    shapes: [
      ...pins.map((piece) =>
        area([
          [piece.from, height],
          [piece.to, height],
          [piece.baselineTo, stockThickness],
          [piece.baselineFrom, stockThickness],
        ]),
      ),
      {
        points: [
          [0, stockThickness],
          [boardWidth, stockThickness],
        ],
        type: 'thin',
      },
      {
        points: [
          [0, 0],
          [0, height],
          [boardWidth, height],
          [boardWidth, 0],
        ],
        type: 'outline',
      },
    ],
    dimensions: [
      { side: 'right', from: stockThickness, to: height, text: `gauge ${show(gaugeSetting)}` },
      ...(proud > 0 ? [{ side: 'left' as const, from: height - proud, to: height, text: `proud ${show(proud)}` }] : []),
      below(tail),
      ...(pin ? [below(pin)] : []),
    ],
    notes: [
      `Slope 1:${slope}, ${sawAngle.toFixed(1)} degrees from the line of the board. Sizes below: at the baseline.`,
    ],
  };
}

/** The pin board's end: narrow where the tails' ends come out, wide at the inside face. */
function pinEnd(layout: DovetailLayout, show: (inches: number) => string): View {
  const { boardWidth, stockThickness, gaugeSetting, proud, tails } = layout;
  const at = (piece: JointPiece, depth: number): [number, number] => {
    const part = depth / gaugeSetting;
    const between = (end: number, baseline: number) => end + (baseline - end) * part;
    return [between(piece.from, piece.baselineFrom), between(piece.to, piece.baselineTo)];
  };
  return {
    name: 'End of the pin board',
    width: boardWidth,
    height: stockThickness,
    shapes: [
      ...tails.map((tail) => {
        const [outside, inside] = [at(tail, proud), at(tail, gaugeSetting)];
        return area([
          [outside[0], stockThickness],
          [outside[1], stockThickness],
          [inside[1], 0],
          [inside[0], 0],
        ]);
      }),
      { points: rectangle([0, boardWidth], [0, stockThickness]), type: 'outline', fill: 'none' },
    ],
    dimensions: [{ side: 'right', from: 0, to: stockThickness, text: show(stockThickness) }],
    notes: ['Outside face above. Trace it from the tails: these shapes are to check by.'],
  };
}

function area(points: Shape['points']): Shape {
  return { points, type: 'outline', fill: grey };
}
