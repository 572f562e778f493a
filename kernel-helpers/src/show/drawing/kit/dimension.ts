import { element, fontSize, ink, label, line, textWidth } from '../../kit/svg.js';
import { arrowhead, strokes } from './lines.js';

/** Which side of a view a dimension stands at. */
export type Side = 'left' | 'right' | 'above' | 'below';

/** A size between two places of a view, inches along the side it stands at, and what it says. */
export interface Dimension {
  side: Side;
  from: number;
  to: number;
  text: string;
}

/** A dimension with its place: pixels along the side, and which lane out from the view. */
export interface PlacedDimension {
  from: number;
  to: number;
  text: string;
  lane: number;
}

/** From the view to the first dimension line, and from one to the next. */
const firstLane = 14;
const lane = 25;
/** From a dimension line to the middle of its text. */
const textRise = fontSize * 0.8;
const headRoom = 24;
/** From the middle of a text to the edge of its ground: clear of the arrowheads of its own line. */
const groundHalf = textRise - 3;

/**
 * Dimensions of one side, in lanes: short ones next to the view, and none over another.
 *
 * @param dimensions  pixels along the side
 */
export function inLanes(dimensions: readonly Omit<PlacedDimension, 'lane'>[]): PlacedDimension[] {
  const placed: (PlacedDimension & { taken: [number, number] })[] = [];
  for (const dimension of [...dimensions].sort((a, b) => a.to - a.from - (b.to - b.from))) {
    const taken = reach(dimension);
    const below = placed.filter((other) => taken[0] < other.taken[1] - 0.5 && other.taken[0] < taken[1] - 0.5);
    placed.push({ ...dimension, taken, lane: 1 + Math.max(-1, ...below.map((other) => other.lane)) });
  }
  return placed.map(({ taken: _, ...dimension }) => dimension);
}

/** What a dimension takes up along its side: its line with arrowheads, and its text with some air. */
export function reach({ from, to, text }: Omit<PlacedDimension, 'lane'>): [number, number] {
  const outside = to - from < headRoom ? headRoom / 2 : 0;
  const half = textWidth(text) / 2 + 4;
  const middle = (from + to) / 2;
  return [Math.min(from - outside, middle - half), Math.max(to + outside, middle + half)];
}

/** How far the lanes of a side reach out from the view, pixels. */
export function laneDepth(placed: readonly PlacedDimension[]): number {
  return placed.length === 0 ? 0 : firstLane + 6 + lane * (1 + Math.max(...placed.map((each) => each.lane)));
}

/**
 * A dimension after ISO 129-1: extension lines that start a little off the view and end a little past the dimension line,
 * filled arrowheads (from outside where there is no room between), and the text above the line, read from below or from
 * the right.
 *
 * @param edge  where the view ends on that side, pixels
 * @param clear  how much farther out the lanes begin, pixels
 * @returns lines, and texts that are to be drawn over all lines
 */
export function drawDimension(
  side: Side,
  dimension: PlacedDimension,
  edge: number,
  clear = 0,
): { lines: string; text: string } {
  const { from, to, text } = dimension;
  const upright = side === 'left' || side === 'right';
  const away = side === 'left' || side === 'above' ? -1 : 1;
  // Text stands above its line: beyond it on the left and above, between line and view on the other two.
  const at = edge + away * (clear + firstLane + dimension.lane * lane + (away > 0 ? textRise + 2 : 0));
  const draw = (a1: number, c1: number, a2: number, c2: number) =>
    upright ? line(c1, a1, c2, a2, strokes.thin) : line(a1, c1, a2, c2, strokes.thin);
  const head = (along: number, towards: -1 | 1) =>
    upright ? arrowhead(at, along, towards < 0 ? 'up' : 'down') : arrowhead(along, at, towards < 0 ? 'left' : 'right');
  const outside = to - from < headRoom;
  const lines = [
    draw(from, edge + away * 3, from, at + away * 4),
    draw(to, edge + away * 3, to, at + away * 4),
    draw(outside ? from - headRoom / 2 : from, at, outside ? to + headRoom / 2 : to, at),
    head(from, outside ? 1 : -1),
    head(to, outside ? -1 : 1),
  ].join('');
  const middle = (from + to) / 2;
  const above = at - textRise;
  return { lines, text: upright ? turned(text, above, middle) : overLines(text, middle, above) };
}

/** A label on a white ground: no line runs through it. Its middle stands at `x`, `y`; to be drawn after the lines. */
export function overLines(
  text: string,
  x: number,
  y: number,
  anchor: 'start' | 'middle' | 'end' = 'middle',
  looks: Parameters<typeof label>[3] = { fill: ink },
): string {
  const width = textWidth(text);
  const left = x - { start: 0, middle: width / 2, end: width }[anchor];
  const ground = element('rect', { x: left, y: y - groundHalf, width, height: 2 * groundHalf, fill: '#fff' });
  return ground + label(text, x, y, { 'text-anchor': anchor, ...looks });
}

/** The same, read from the right. */
export function turned(text: string, x: number, y: number, anchor: 'start' | 'middle' | 'end' = 'middle'): string {
  const place = { transform: `translate(${rounded(x)},${rounded(y)}) rotate(-90)` };
  return element('g', place, overLines(text, 0, 0, anchor));
}

function rounded(value: number): number {
  return Math.round(value * 1000) / 1000;
}
