import type { BoardLayout, NumberedCut, NumberedPart } from '../../stock/cutting/board-layouts.js';
import type { DisplayItem } from '../kit/display.js';
import { figure } from '../kit/figure.js';
import { element, fontSize, ink, label, line, quietInk, svgPicture, textWidth } from '../kit/svg.js';
import { type Box, leaderRows, Occupied, placesInside } from './kit/free-place.js';
import { hatching } from './kit/hatching.js';
import { type DrawingOptions, dimensionText, lengthText } from './kit/lengths.js';
import { strokes } from './kit/lines.js';
import { pageWidth } from './kit/sheet.js';
import { wrapText } from './kit/view.js';

const margin = 30;
const mostScale = 40;
const mostHeight = 200;
/** A number in its ring. */
const ring = { width: 22, height: 20 };
const lineHeight = fontSize + 4;
const waste = '#d9d9d9';

/**
 * Boards to scale, each with its defects, parts, cuts in the order they are made, and the offcuts that are kept.
 *
 * Numbers in rings are cuts, bold numbers are parts; where a name or a size does not fit, the number leads to `partTable`.
 *
 * @param layouts  as `boardLayouts` returns them; inches
 * @param options  how sizes are shown
 */
export function cutPlanDrawing(layouts: readonly BoardLayout[], options: DrawingOptions = {}): DisplayItem {
  const show = lengthText(options);
  let top = 8;
  const drawn = layouts.map((layout) => {
    const picture = boardPicture(layout, show, dimensionText(options));
    const moved = element('g', { transform: `translate(${margin},${top + picture.above})` }, picture.content);
    top += picture.above + picture.below + 18;
    return moved;
  });
  return figure({
    svg: svgPicture(pageWidth, top, drawn),
    width: pageWidth,
    alt: layouts.map((layout) => inWords(layout, show)).join(' ') || 'No board is used.',
    caption:
      'Each board to its own scale, marked end at the left, the faces up that will be outside. Bold numbers: parts. Rings: cuts in the order they are made; where the line of a cut is dotted, it waits until its blank is planed. Dashed: offcuts that go back to the stock. Grey: waste. Hatched: knots, checks, sapwood.',
  });
}

/** One board with its upper left corner at 0, 0; how far it reaches above that and below. */
function boardPicture(layout: BoardLayout, show: (inches: number) => string, size: (inches: number) => string) {
  const { board, parts, cuts, offcuts } = layout;
  const scale = Math.min(mostScale, (pageWidth - 2 * margin) / board.length, mostHeight / board.width);
  const [width, height] = [board.length * scale, board.width * scale];
  const area = (each: { fromEnd: number; fromEdge: number; length: number; width: number }): Box => ({
    x: (each.fromEnd + each.length / 2) * scale,
    y: height - (each.fromEdge + each.width / 2) * scale,
    width: each.length * scale,
    height: each.width * scale,
  });
  const taken = new Occupied();
  const marks = [
    ...cuts.map((cut) => cutMark(cut, { width, height, scale }, taken)),
    ...parts.map((part) => partMark(part, area(part), size, taken)),
  ];
  // What found no room stands over the board or under it, whichever is nearer.
  const reach = (side: 1 | -1) =>
    Math.max(0, ...taken.boxes.map((box) => (side < 0 ? -box.y : box.y - height) + box.height / 2)) +
    ring.height / 2 +
    6;
  for (const side of [-1, 1] as const) {
    const labels = marks.filter(
      (mark) => mark.place === undefined && (side < 0 ? mark.anchor.y < height / 2 : mark.anchor.y >= height / 2),
    );
    if (labels.length === 0) continue;
    const first = side < 0 ? -reach(side) : height + reach(side);
    const rows = { first, step: side * (ring.height + 2), left: 2 - margin, right: pageWidth - margin - 2 };
    const places = leaderRows(labels, { ...rows, height: ring.height });
    for (const [i, mark] of labels.entries()) {
      mark.place = places[i] as Box;
      mark.leader = true;
    }
    taken.boxes.push(...places);
  }

  const spots = [
    ...(board.defects ?? []),
    { fromEnd: 0, fromEdge: 0, length: board.length, width: board.sapwoodLower ?? 0 },
    {
      fromEnd: 0,
      fromEdge: board.width - (board.sapwoodUpper ?? 0),
      length: board.length,
      width: board.sapwoodUpper ?? 0,
    },
  ].filter((spot) => spot.width > 0 && spot.length > 0);

  const clear = new Occupied([...taken.boxes, ...spots.map(area)]);
  const kept = offcuts.map((offcut) =>
    offcutName(area(offcut), `keep ${size(offcut.length)} x ${size(offcut.width)}`, clear),
  );

  const title = wrapText(
    `${board.plywood ? 'Sheet' : 'Board'} ${shortened(board.mark)}: ${show(board.length)} x ${show(board.width)} x ${show(board.thickness)}`,
    pageWidth - 2 * margin,
  );
  const highest = Math.min(-4, ...taken.boxes.map((box) => box.y - box.height / 2));
  const lowest = Math.max(height, ...taken.boxes.map((box) => box.y + box.height / 2));
  const titles = title.map((text, i) =>
    label(text, 0, highest - 4 - (title.length - i - 0.5) * lineHeight, { 'font-weight': 'bold' }),
  );
  const content = [
    rect({ x: width / 2, y: height / 2, width, height }, { fill: waste }),
    ...offcuts.map((offcut) => rect(area(offcut), { fill: '#fff', ...strokes.hidden })),
    ...parts.map((part) => rect(area(part), { fill: '#fff', stroke: ink, 'stroke-width': 1 })),
    ...spots.map((spot) => hatching(area(spot))),
    rect({ x: width / 2, y: height / 2, width, height }, { fill: 'none', ...strokes.outline }),
    ...marks.map(({ sawn = '' }) => sawn),
    ...marks.map(({ place, anchor, leader }) =>
      leader && place ? line(place.x, place.y, anchor.x, anchor.y, strokes.thin) : '',
    ),
    ...marks.map((mark) => mark.draw(mark.place as Box)),
    ...kept,
    ...titles,
  ];
  return { content: content.join(''), above: -highest + 6 + title.length * lineHeight, below: lowest };
}

/** The number of a cut or a part: what it belongs to, and where it stands once there is room for it. */
interface Mark {
  anchor: { x: number; y: number };
  width: number;
  place: Box | undefined;
  leader?: boolean;
  sawn?: string;
  draw(place: Box): string;
}

/** A cut's line and its number in a ring: at the edge where the cut starts there, else on the line. */
function cutMark(cut: NumberedCut, board: { width: number; height: number; scale: number }, taken: Occupied): Mark {
  const [at, from, to] = [cut.at, cut.from, cut.to].map((each) => each * board.scale) as [number, number, number];
  const across = cut.kind === 'crosscut';
  const stroke = { ...strokes.outline, ...(cut.afterPlaning ? { 'stroke-dasharray': '2 3' } : {}) };
  const on = (share: number) =>
    across
      ? { ...ring, x: at, y: board.height - from - (to - from) * share }
      : { ...ring, x: from + (to - from) * share, y: board.height - at };
  const half = (across ? ring.height : ring.width) / 2 + 2;
  const end = half / Math.max(1, to - from);
  const place = taken.take([
    ...(across && to >= board.height - 1 ? [{ ...ring, x: at, y: -half }] : []),
    ...(!across && from <= 1 ? [{ ...ring, x: -half, y: board.height - at }] : []),
    ...[end, 1 - end, 0.5, 0.25, 0.75].filter((share) => share >= end && share <= 1 - end).map(on),
  ]);
  return {
    anchor: on(0.5),
    width: ring.width,
    place,
    sawn: across
      ? line(at, board.height - from, at, board.height - to, stroke)
      : line(from, board.height - at, to, board.height - at, stroke),
    draw({ x, y }) {
      const shape = { cx: x, cy: y, rx: ring.width / 2 - 1, ry: ring.height / 2 - 1, fill: '#fff', stroke: ink };
      return element('ellipse', shape) + label(String(cut.number), x, y, { 'text-anchor': 'middle' });
    },
  };
}

/** A part's number, with its name and size where they fit. */
function partMark(part: NumberedPart, area: Box, show: (inches: number) => string, taken: Occupied): Mark {
  const number = String(part.number);
  const anchor = { x: area.x, y: area.y };
  const width = textWidth(number) * 1.08 + 8;
  const full = [`${number} ${part.name}`, `${show(part.length)} x ${show(part.width)}`];
  for (const texts of [full, full.slice(0, 1), [number]]) {
    const wide = Math.max(...texts.map((text) => textWidth(text) * 1.08)) + 6;
    const place = taken.take(placesInside(area, { width: wide, height: texts.length * lineHeight + 2 }));
    if (!place) continue;
    const first = -((texts.length - 1) * lineHeight) / 2;
    const weight = (i: number) => (i === 0 ? 'bold' : undefined);
    const draw = ({ x, y }: Box) =>
      texts
        .map((text, i) =>
          label(text, x, y + first + i * lineHeight, { 'text-anchor': 'middle', 'font-weight': weight(i) }),
        )
        .join('');
    return { anchor, width, place, draw };
  }
  const onPaper = {
    'text-anchor': 'middle',
    'font-weight': 'bold',
    'paint-order': 'stroke',
    stroke: '#fff',
    'stroke-width': 3,
  };
  return { anchor, width, place: undefined, draw: ({ x, y }) => label(number, x, y, { ...onPaper, fill: ink }) };
}

function offcutName(area: Box, text: string, taken: Occupied): string {
  for (const words of [text, 'keep']) {
    const place = taken.take(placesInside(area, { width: textWidth(words) + 6, height: lineHeight }));
    if (place) return label(words, place.x, place.y, { 'text-anchor': 'middle', fill: quietInk });
  }
  return '';
}

function rect({ x, y, width, height }: Box, look: Record<string, string | number | undefined>): string {
  return element('rect', { x: x - width / 2, y: y - height / 2, width, height, ...look });
}

/** A mark as long as a title bears. */
function shortened(mark: string): string {
  return mark.length > 24 ? `${mark.slice(0, 23)}…` : mark;
}

function inWords({ board, parts, cuts, offcuts }: BoardLayout, show: (inches: number) => string): string {
  const placed = parts.map(
    ({ number, name, length, width, fromEnd, fromEdge }) =>
      `${number} ${name} ${show(length)} by ${show(width)}, ${show(fromEnd)} from the end and ${show(fromEdge)} from the edge`,
  );
  const kept = offcuts.map(({ length, width }) => `${show(length)} by ${show(width)}`);
  return `Board ${board.mark}, ${show(board.length)} by ${show(board.width)}, ${cuts.length} cuts: ${placed.join('; ') || 'no part'}. Offcuts kept: ${kept.join('; ') || 'none'}.`;
}
