import { escapeHtml } from './escape.js';

/** Faces of equal widths on the common systems, so that a label takes the room it was given. */
export const fontFamily = "Helvetica, Arial, 'Liberation Sans', sans-serif";
/** Legible at the width of a printed page. */
export const fontSize = 13;
export const ink = '#1a1a1a';
export const quietInk = '#595959';

type Attributes = Record<string, string | number | undefined>;

/** A whole picture on its own white ground. */
export function svgPicture(width: number, height: number, content: string[]): string {
  const size = { width, height, viewBox: `0 0 ${places(width)} ${places(height)}` };
  const type = { 'font-family': fontFamily, 'font-size': fontSize, fill: ink, stroke: 'none' };
  const ground = element('rect', { width, height, fill: '#fff' });
  return element('svg', { xmlns: 'http://www.w3.org/2000/svg', ...size, ...type }, ground + content.join(''));
}

/** One element; numbers are rounded to a thousandth of a pixel, text values are escaped, content is not. */
export function element(name: string, attributes: Attributes, content = ''): string {
  const written = Object.entries(attributes)
    .filter(([, value]) => value !== undefined)
    .map(([key, value]) => ` ${key}="${typeof value === 'number' ? places(value) : escapeHtml(value as string)}"`);
  return `<${name}${written.join('')}${content === '' ? '/>' : `>${content}</${name}>`}`;
}

/** A straight line, one pixel of ink unless told otherwise. */
export function line(x1: number, y1: number, x2: number, y2: number, attributes: Attributes = {}): string {
  return element('line', { x1, y1, x2, y2, stroke: ink, ...attributes });
}

/** A label. Its middle stands at `y`. */
export function label(text: string, x: number, y: number, attributes: Attributes = {}): string {
  return element('text', { x, y: y + fontSize * 0.35, ...attributes }, escapeHtml(text));
}

/** Characters about a third as wide as they are high. */
const narrow = 'ijl.,:;|!\'" ()[]ft/I';

/** About how wide a label is, pixels; rather too wide than too narrow. */
export function textWidth(text: string, size = fontSize): number {
  let width = 0;
  for (const character of text) width += narrow.includes(character) ? 0.34 : /[A-ZmwMW%]/.test(character) ? 0.8 : 0.58;
  return width * size;
}

function places(value: number): string {
  return String(Math.round(value * 1000) / 1000 || 0);
}
