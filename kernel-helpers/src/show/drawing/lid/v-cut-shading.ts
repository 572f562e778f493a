import type { Lettering } from '../../../surface/lettering/laid-out-lettering.js';
import type { LidPoint } from '../../../surface/lettering/outline.js';
import { element } from '../../kit/svg.js';

/** The frame of a picture: pixels an inch, and where the lid's front left corner stands. */
export interface Frame {
  scale: number;
  x: number;
  y: number;
}

/** Light from the upper left, as drawings have it: towards it, length 1. */
const light = [-0.5, 0.62, 0.605] as const;

const inPixels = ({ scale, x, y }: Frame, [right, up]: LidPoint): string =>
  `${hundredth(x + right * scale)} ${hundredth(y - up * scale)}`;

function hundredth(value: number): number {
  return Math.round(value * 100) / 100;
}

/** Closed lines as the data of an SVG path. */
export function pathData(contours: readonly (readonly LidPoint[])[], frame: Frame): string {
  return contours.map((points) => `M${points.map((point) => inPixels(frame, point)).join('L')}Z`).join('');
}

/**
 * The walls and the floor of V-cut letters, each shade by how much light falls on it from the upper left.
 *
 * Walls of one shade are one path: a line of thirty letters stays a small picture.
 */
export function vCutShading({ facets, outlines, bitAngle }: Lettering, frame: Frame, id: string): string {
  const fall = 1 / Math.tan((bitAngle * Math.PI) / 360);
  const steep = Math.hypot(1, fall);
  const byShade = new Map<string, string[]>();
  for (const { points, normal } of facets) {
    const lit = (normal[0] * fall * light[0] + normal[1] * fall * light[1] + light[2]) / steep;
    const tone = grey(lit);
    byShade.set(tone, [...(byShade.get(tone) ?? []), pathData([points], frame)]);
  }
  const whole = pathData(outlines.flat(), frame);
  const clip = element('clipPath', { id }, element('path', { d: whole, 'clip-rule': 'evenodd' }));
  const walls = [...byShade].map(([tone, paths]) =>
    element('path', { d: paths.join(''), fill: tone, stroke: tone, 'stroke-width': 0.4 }),
  );
  const floor = element('path', { d: whole, fill: grey(light[2]), 'fill-rule': 'evenodd' });
  const edge = element('path', { d: whole, fill: 'none', stroke: '#1a1a1a', 'stroke-width': 0.7 });
  return element('defs', {}, clip) + floor + element('g', { 'clip-path': `url(#${id})` }, walls.join('')) + edge;
}

/** Twenty shades of grey, none quite white so that a letter stands out from the lid. */
function grey(lit: number): string {
  const step = Math.round(Math.min(1, Math.max(0, lit)) * 20) / 20;
  const level = Math.round(38 + 190 * step)
    .toString(16)
    .padStart(2, '0');
  return `#${level}${level}${level}`;
}
