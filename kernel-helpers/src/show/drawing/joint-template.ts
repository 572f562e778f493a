import { type CornerLayout, cornerPieces } from '../../joints/corner.js';
import { capital } from '../kit/capital.js';
import { element, ink } from '../kit/svg.js';
import { jointSettings } from './joint-drawing.js';
import { type DrawingOptions, lengthText } from './kit/lengths.js';
import type { Point } from './kit/lines.js';
import { letters, millimetres, type TemplatePiece, templateDocument } from './kit/template-page.js';

const grey = '#d4d4d4';
const line = { stroke: ink, 'stroke-width': 0.2 };

/**
 * A corner joint at full size on paper: a wrap for the board that is cut first (outside face, end, inside face, to fold
 * over the end) and the end of the other.
 *
 * @param layout  dovetails or fingers; inches
 * @param options.firstBoards  which boards are cut first, such as `front and back`
 * @param options  how sizes are shown
 * @returns a whole HTML document to print on A4 or Letter; it loads nothing
 */
export function jointTemplate(layout: CornerLayout, options: DrawingOptions & { firstBoards?: string } = {}): string {
  const show = lengthText(options);
  const hint =
    `${options.firstBoards ? `The ${cornerPieces(layout).board.first} is each of ${options.firstBoards}. ` : ''}Board ${show(layout.boardWidth)} wide, ${jointSettings(layout, options)}. ` +
    'Grey is waste, the upper end is the lower edge of the board. Fold the wrap over the end on its dashed lines.';
  return templateDocument('Joint template', hint, [wrap(layout), secondBoardEnd(layout)]);
}

/** Paper for the first board: faces as deep as the gauge, with the end between them. Too wide for a page, one face is left out. */
function wrap(layout: CornerLayout): TemplatePiece {
  const { boardWidth, stockThickness, gaugeSetting } = layout;
  const { second: pieces, board } = cornerPieces(layout);
  const bothFaces = (2 * gaugeSetting + stockThickness) * millimetres <= 150;
  const first = gaugeSetting;
  const second = first + stockThickness;
  const width = second + (bothFaces ? gaugeSetting : 0);
  const waste = pieces.map(({ from, to, baselineFrom, baselineTo }) =>
    polygon('pin', [
      [0, baselineFrom],
      [first, from],
      [second, from],
      ...(bothFaces
        ? ([
            [width, baselineFrom],
            [width, baselineTo],
          ] satisfies Point[])
        : []),
      [second, to],
      [first, to],
      [0, baselineTo],
    ]),
  );
  const folds = [first, second].map((x) => upright(x, boardWidth, { 'stroke-dasharray': '2 1' }));
  const outline = polygon('board', corners(width, boardWidth), 'none');
  return piece(`${capital(board.first)}: outside face, end${bothFaces ? ', inside face' : ''}`, width, boardWidth, [
    ...waste,
    outline,
    ...folds,
  ]);
}

/** Paper for the other board's end, outside face at the left. */
function secondBoardEnd(layout: CornerLayout): TemplatePiece {
  const { boardWidth, stockThickness } = layout;
  const { sockets, board } = cornerPieces(layout);
  const cut = sockets.map(({ from, to, baselineFrom, baselineTo }) =>
    polygon('socket', [
      [0, from],
      [stockThickness, baselineFrom],
      [stockThickness, baselineTo],
      [0, to],
    ]),
  );
  return piece(`End of the ${board.second}, outside face at the left`, stockThickness, boardWidth, [
    ...cut,
    polygon('board', corners(stockThickness, boardWidth), 'none'),
  ]);
}

function piece(name: string, width: number, length: number, content: string[]): TemplatePiece {
  // A hair's breadth around, so that the outline is not cut in half.
  const edge = 0.2;
  const moved = element('g', { transform: `translate(${edge} ${edge})` }, content.join(''));
  const named = name.length * letters * 0.6;
  return {
    name,
    width: Math.max(width * millimetres + 2 * edge, named),
    cutWidth: width * millimetres + 2 * edge,
    length: length * millimetres + 2 * edge,
    content: moved,
  };
}

function corners(width: number, length: number): Point[] {
  return [
    [0, 0],
    [width, 0],
    [width, length],
    [0, length],
  ];
}

function polygon(kind: string, points: readonly Point[], fill = grey): string {
  const places = points.map((point) => point.map((inches) => Math.round(inches * millimetres * 1e4) / 1e4).join(','));
  return element('polygon', { class: kind, points: places.join(' '), fill, ...line });
}

function upright(x: number, length: number, dashes: Record<string, string>): string {
  return element('line', {
    x1: x * millimetres,
    y1: 0,
    x2: x * millimetres,
    y2: length * millimetres,
    ...line,
    ...dashes,
  });
}
