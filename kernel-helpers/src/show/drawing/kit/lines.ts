import { element, ink, line, quietInk } from '../../kit/svg.js';

/** A point: inches from the view's origin, x to the right and y up. */
export type Point = readonly [x: number, y: number];

/** Kinds of line by ISO 128: what is seen, what lies behind, middle lines, and thin lines for all else. */
export type LineType = 'outline' | 'hidden' | 'centre' | 'thin';

/** Stroke of each kind of line; a wide line is twice a narrow one. */
export const strokes: Record<LineType, { stroke: string; 'stroke-width': number; 'stroke-dasharray'?: string }> = {
  outline: { stroke: ink, 'stroke-width': 1.6 },
  hidden: { stroke: ink, 'stroke-width': 0.8, 'stroke-dasharray': '6 3' },
  centre: { stroke: quietInk, 'stroke-width': 0.8, 'stroke-dasharray': '14 3 2 3' },
  thin: { stroke: quietInk, 'stroke-width': 0.8 },
};

const headLength = 9;
const headHalf = 2;

/** A closed, filled arrowhead with its point at `x`, `y`, looking along the direction given; pixels. */
export function arrowhead(x: number, y: number, towards: 'left' | 'right' | 'up' | 'down'): string {
  const [along, across] = {
    left: [headLength, 0],
    right: [-headLength, 0],
    up: [0, headLength],
    down: [0, -headLength],
  }[towards] as [number, number];
  const side = (sign: number) =>
    along === 0 ? `${x + sign * headHalf} ${y + across}` : `${x + along} ${y + sign * headHalf}`;
  const points = [`${x} ${y}`, side(1), side(-1)].map((point) => point.split(' ').map(toPlaces).join(','));
  return element('polygon', { points: points.join(' '), fill: ink });
}

/** A line broken off: it zigzags once in the middle. Pixels. */
export function breakLine(x1: number, x2: number, y: number): string {
  const middle = (x1 + x2) / 2;
  const step = Math.min(6, (x2 - x1) / 6);
  const parts = [
    [x1, y],
    [middle - step, y],
    [middle - step / 2, y - step],
    [middle + step / 2, y + step],
    [middle + step, y],
    [x2, y],
  ];
  return parts
    .slice(1)
    .map(([x = 0, to = 0], i) => line(parts[i]?.[0] ?? 0, parts[i]?.[1] ?? 0, x, to, strokes.thin))
    .join('');
}

function toPlaces(number: string): string {
  return String(Math.round(Number(number) * 1000) / 1000);
}
