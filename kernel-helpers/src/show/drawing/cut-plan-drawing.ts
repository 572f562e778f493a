import type { BoardLayout, NumberedCut, NumberedPart } from '../../stock/board-layouts.js';
import { figure } from '../figure.js';
import type { Shown } from '../shown.js';
import { element, fontSize, ink, label, line, quietInk, svgPicture, textWidth } from '../svg.js';
import { overLines } from './dimension.js';
import { type Box, placesInRows, placesInside, Taken } from './free-place.js';
import { hatching } from './hatching.js';
import { type DrawingOptions, lengthText } from './lengths.js';
import { strokes } from './lines.js';
import { pageWidth } from './sheet.js';
import { broken } from './view.js';

const margin = 30;
const mostScale = 24;
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
export function cutPlanDrawing(layouts: readonly BoardLayout[], options: DrawingOptions = {}): Shown {
  const show = lengthText(options);
  const longest = Math.max(1, ...layouts.map(({ board }) => board.length));
  const scale = Math.min(mostScale, (pageWidth - 2 * margin) / longest);
  let top = 8;
  const drawn = layouts.map((layout) => {
    const picture = boardPicture(layout, scale, show);
    const moved = element('g', { transform: `translate(${margin},${top + picture.above})` }, picture.content);
    top += picture.above + picture.below + 18;
    return moved;
  });
  return figure({
    svg: svgPicture(pageWidth, top, drawn),
    width: pageWidth,
    alt: layouts.map((layout) => inWords(layout, show)).join(' ') || 'No board is used.',
    caption:
      'Boards to scale, marked end at the left. White: parts, by their bold numbers. Rings: cuts in the order they are made. Dashed: offcuts that go back to the stock. Grey: waste. Hatched: knots, checks, sapwood.',
  });
}

/** One board, its lower left corner at 0, 0 when moved there; how far it reaches above its upper edge and below its foot. */
function boardPicture(layout: BoardLayout, scale: number, show: (inches: number) => string) {
  const { board, parts, cuts, offcuts } = layout;
  const [width, height] = [board.length * scale, board.width * scale];
  const area = (each: { fromEnd: number; fromEdge: number; length: number; width: number }): Box => ({
    x: (each.fromEnd + each.length / 2) * scale,
    y: height - (each.fromEdge + each.width / 2) * scale,
    width: each.length * scale,
    height: each.width * scale,
  });
  const rows = { from: -ring.height / 2 - 2, left: -margin + 2, right: pageWidth - margin - 2 };
  const taken = new Taken();

  const rings = cuts.map((cut) => cutRing(cut, { width, height, scale }, taken, rows));
  const names = parts.map((part) => partName(part, area(part), show, taken, rows));
  const kept = offcuts.map((offcut) =>
    offcutName(area(offcut), `keep ${show(offcut.length)} x ${show(offcut.width)}`, taken),
  );

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

  const title = broken(
    `Board ${shortened(board.mark)}: ${show(board.length)} x ${show(board.width)} x ${show(board.thickness)}`,
    pageWidth - 2 * margin,
  );
  const highest = Math.min(-4, ...taken.boxes.map(({ y, height: high }) => y - high / 2));
  const lowest = Math.max(height, ...taken.boxes.map(({ y, height: high }) => y + high / 2));
  const titles = title.map((text, i) =>
    label(text, 0, highest - 4 - (title.length - i - 0.5) * lineHeight, { 'font-weight': 'bold' }),
  );
  const content = [
    rect({ x: width / 2, y: height / 2, width, height }, { fill: waste }),
    ...offcuts.map((offcut) => rect(area(offcut), { fill: '#fff', ...strokes.hidden })),
    ...parts.map((part) => rect(area(part), { fill: '#fff', stroke: ink, 'stroke-width': 1 })),
    ...spots.map((spot) => hatching(area(spot))),
    rect({ x: width / 2, y: height / 2, width, height }, { fill: 'none', ...strokes.outline }),
    ...[...rings, ...names].map(({ lines }) => lines),
    ...[...rings, ...names].map(({ texts }) => texts),
    ...kept,
    ...titles,
  ];
  return { content: content.join(''), above: -highest + 6 + title.length * lineHeight, below: lowest };
}

type Rows = { from: number; left: number; right: number };

/** A cut's line and its number in a ring: at the edge where the cut starts there, else on the line, else over the board. */
function cutRing(
  cut: NumberedCut,
  board: { width: number; height: number; scale: number },
  taken: Taken,
  rows: Rows,
): { lines: string; texts: string } {
  const [at, from, to] = [cut.at, cut.from, cut.to].map((each) => each * board.scale) as [number, number, number];
  const across = cut.kind === 'crosscut';
  const on = (share: number) =>
    across
      ? { ...ring, x: at, y: board.height - from - (to - from) * share }
      : { ...ring, x: from + (to - from) * share, y: board.height - at };
  const half = (across ? ring.height : ring.width) / 2 + 2;
  const end = half / Math.max(1, to - from);
  const choices = [
    ...(across && to >= board.height - 1 ? [{ ...ring, x: at, y: -half }] : []),
    ...(!across && from <= 1 ? [{ ...ring, x: -half, y: board.height - at }] : []),
    ...[end, 1 - end, 0.5, 0.25, 0.75].filter((share) => share >= end && share <= 1 - end).map(on),
  ];
  const inside = taken.take(choices);
  const place = inside ?? (taken.take(placesInRows(on(1), ring, rows)) as Box);
  const leader = inside ? '' : line(place.x, place.y, on(0.5).x, on(0.5).y, strokes.thin);
  const sawn = across
    ? line(at, board.height - from, at, board.height - to, strokes.outline)
    : line(from, board.height - at, to, board.height - at, strokes.outline);
  const shape = element('ellipse', {
    cx: place.x,
    cy: place.y,
    rx: ring.width / 2 - 1,
    ry: ring.height / 2 - 1,
    fill: '#fff',
    stroke: ink,
  });
  const number = label(String(cut.number), place.x, place.y, { 'text-anchor': 'middle' });
  return { lines: sawn + leader, texts: shape + number };
}

/** A part's number with name and size where they fit, else the number alone, else the number over the board with a leader. */
function partName(
  part: NumberedPart,
  area: Box,
  show: (inches: number) => string,
  taken: Taken,
  rows: Rows,
): { lines: string; texts: string } {
  const number = String(part.number);
  const name = `${number} ${part.name}`;
  const size = `${show(part.length)} x ${show(part.width)}`;
  for (const texts of [[name, size], [name], [number]]) {
    const wide = Math.max(...texts.map((text) => textWidth(text) * 1.08)) + 6;
    const place = taken.take(placesInside(area, { width: wide, height: texts.length * lineHeight + 2 }));
    if (!place) continue;
    const first = place.y - ((texts.length - 1) * lineHeight) / 2;
    return {
      lines: '',
      texts: texts
        .map((text, i) =>
          label(text, place.x, first + i * lineHeight, {
            'text-anchor': 'middle',
            'font-weight': i === 0 ? 'bold' : undefined,
          }),
        )
        .join(''),
    };
  }
  const wide = textWidth(number) * 1.08 + 6;
  const place = taken.take(placesInRows(area, { width: wide, height: ring.height }, rows)) as Box;
  return {
    lines: line(place.x, place.y + 6, area.x, area.y, strokes.thin),
    texts: overLines(number, place.x, place.y).replace('<text ', '<text font-weight="bold" '),
  };
}

function offcutName(area: Box, text: string, taken: Taken): string {
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
