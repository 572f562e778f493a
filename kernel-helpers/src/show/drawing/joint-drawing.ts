import { type CornerLayout, cornerPieces } from '../../joints/corner.js';
import type { DovetailLayout, JointPiece } from '../../joints/dovetails.js';
import type { DisplayItem } from '../kit/display.js';
import { figure } from '../kit/figure.js';
import type { Dimension } from './kit/dimension.js';
import { type DrawingOptions, dimensionText, lengthText, settingText } from './kit/lengths.js';
import { drawRows } from './kit/sheet.js';
import { rectangle, type Shape, type View } from './kit/view.js';

/** Wood that is the neighbour's, or waste. */
const grey = '#d4d4d4';

/**
 * A corner as it is scribed: the end of the board that is cut first (the tail board), its outside face, and the end of the
 * other as it is traced from it; one under the other, to one scale.
 *
 * @param layout  dovetails or fingers; inches
 * @param options  how sizes are shown
 */
export function jointDrawing(layout: CornerLayout, options: DrawingOptions = {}): DisplayItem {
  const show = lengthText(options);
  const size = dimensionText(options);
  const { svg, width } = drawRows([[firstEnd(layout, options)], [firstFace(layout, size)], [secondEnd(layout, size)]], {
    height: 900,
  });
  const settings = jointSettings(layout, options);
  const { board } = cornerPieces(layout);
  return figure({
    svg,
    width,
    alt: `A corner from the end and from outside: ${jointSizes(layout, show)}; ${settings}.`,
    caption: `The corner as it is scribed, to scale, lower edge at the left: ${settings}. Grey is waste; on the face of the ${board.first} it is where the ends of the other's pieces will show.`,
  });
}

/** Counts and widths, in words. */
function jointSizes(layout: CornerLayout, show: (inches: number) => string): string {
  const onBoard = `on a board ${show(layout.boardWidth)} wide`;
  if (!('tails' in layout)) return `${layout.count} fingers of ${show(layout.fingerWidth)} ${onBoard}`;
  const { tails, pins, boardWidth } = layout;
  const [tail] = tails as [JointPiece];
  const pin = pins.find(({ half }) => !half);
  return [
    `${tails.length} ${tails.length === 1 ? 'tail' : 'tails'} of ${show(tail.to - tail.from)}`,
    ...(pin ? [`pins of ${show(pin.to - pin.from)}`] : []),
    `half pins of ${show(pins[0]?.to ?? 0)} below and ${show(boardWidth - (pins.at(-1)?.from ?? 0))} above`,
    onBoard,
  ].join(', ');
}

/** What gauge, dividers, bevel or jig stand at, in words. @internal */
export function jointSettings(layout: CornerLayout, options: DrawingOptions): string {
  const show = lengthText(options);
  const gauge = `gauge ${show(layout.gaugeSetting)}`;
  return 'tails' in layout
    ? `${gauge}, dividers ${settingText(options)(layout.dividerSetting)}, slope 1:${layout.slope} (${layout.sawAngle.toFixed(1)} degrees)`
    : `${gauge}, ${layout.count} fingers of ${show(layout.fingerWidth)}`;
}

function firstEnd(layout: CornerLayout, options: DrawingOptions): View {
  const show = dimensionText(options);
  const { boardWidth, stockThickness } = layout;
  const { second, board } = cornerPieces(layout);
  const above = (from: number, to: number, text = show(to - from)): Dimension => ({ side: 'above', from, to, text });
  const dividers = (setting: number) => `dividers ${settingText(options)(setting)}`;
  return {
    name: `End of the ${board.first}`,
    width: boardWidth,
    height: stockThickness,
    shapes: [
      ...second.map(({ from, to }) => area(rectangle([from, to], [0, stockThickness]))),
      { points: rectangle([0, boardWidth], [0, stockThickness]), type: 'outline', fill: 'none' },
    ],
    dimensions: [
      ...('tails' in layout ? dovetailPlaces(layout, above, dividers) : [above(0, layout.fingerWidth)]),
      above(0, boardWidth),
      { side: 'right', from: 0, to: stockThickness, text: show(stockThickness) },
    ],
  };
}

/** Half pin, tail, pin, the dividers' step, and the upper half pin. */
function dovetailPlaces(
  { boardWidth, tails, pins, dividerSetting }: DovetailLayout,
  above: (from: number, to: number, text?: string) => Dimension,
  dividers: (setting: number) => string,
): Dimension[] {
  const [tail] = tails as [JointPiece];
  const pin = pins.find(({ half }) => !half);
  return [
    above(0, tail.from),
    above(tail.from, tail.to),
    ...(pin ? [above(pin.from, pin.to), above(tail.from, tail.from + dividerSetting, dividers(dividerSetting))] : []),
    above(pins.at(-1)?.from ?? 0, boardWidth),
  ];
}

function firstFace(layout: CornerLayout, show: (inches: number) => string): View {
  const { boardWidth, gaugeSetting, stockThickness, proud } = layout;
  const { first, second, board } = cornerPieces(layout);
  const height = gaugeSetting + stockThickness;
  const [tail] = first as [JointPiece];
  const pin = 'tails' in layout ? layout.pins.find(({ half }) => !half) : undefined;
  const below = ({ baselineFrom: from, baselineTo: to }: JointPiece): Dimension => ({
    side: 'below',
    from,
    to,
    text: show(to - from),
  });
  return {
    name: `Outside face of the ${board.first}`,
    width: boardWidth,
    height,
    broken: true,
    shapes: [
      ...second.map((piece) =>
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
      ...('tails' in layout ? [below(tail)] : []),
      ...(pin ? [below(pin)] : []),
    ],
    notes: [
      'tails' in layout
        ? `Slope 1:${layout.slope}, ${layout.sawAngle.toFixed(1)} degrees from the line of the board. Sizes below: at the baseline.`
        : 'Sockets are cut square to the end, down to the baseline.',
    ],
  };
}

/** The other board's end: a socket of a pin board is narrow at the inside face, where the tail is; a finger's is straight. */
function secondEnd(layout: CornerLayout, show: (inches: number) => string): View {
  const { boardWidth, stockThickness } = layout;
  const { sockets, board } = cornerPieces(layout);
  return {
    name: `End of the ${board.second}`,
    width: boardWidth,
    height: stockThickness,
    shapes: [
      ...sockets.map(({ from, to, baselineFrom, baselineTo }) =>
        area([
          [from, stockThickness],
          [to, stockThickness],
          [baselineTo, 0],
          [baselineFrom, 0],
        ]),
      ),
      { points: rectangle([0, boardWidth], [0, stockThickness]), type: 'outline', fill: 'none' },
    ],
    dimensions: [{ side: 'right', from: 0, to: stockThickness, text: show(stockThickness) }],
    notes: [
      'tails' in layout
        ? 'Outside face above. Trace it from the tails: these shapes are to check by.'
        : 'Outside face above. Cut it by the same key, started from the edge with the socket.',
    ],
  };
}

function area(points: Shape['points']): Shape {
  return { points, type: 'outline', fill: grey };
}
