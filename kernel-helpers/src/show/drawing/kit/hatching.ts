import { element, ink, line } from '../../kit/svg.js';
import type { Box } from './free-place.js';

/** Between two lines of a hatching, pixels. */
const spacing = 5;

/** A rectangle hatched at 45 degrees on white, with a thin edge. */
export function hatching({ x, y, width, height }: Box): string {
  const [left, top, right, foot] = [x - width / 2, y - height / 2, x + width / 2, y + height / 2];
  const lines: string[] = [];
  // Lines x + y = c, on one grid over the whole picture, so that neighbours match.
  for (let c = Math.ceil((left + top) / spacing) * spacing; c < right + foot; c += spacing) {
    const from = Math.max(left, c - foot);
    const to = Math.min(right, c - top);
    if (to > from) lines.push(line(from, c - from, to, c - to, { 'stroke-width': 1.2 }));
  }
  const edge = { fill: '#fff', stroke: ink, 'stroke-width': 0.8 };
  return element('rect', { x: left, y: top, width, height, ...edge }) + lines.join('');
}
