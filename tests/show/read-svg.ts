import { parseHTML } from 'linkedom';
import type { DisplayItem } from '../../kernel-helpers/src/show/kit/display.js';
import { type Read, svgOf } from './read-html.js';

/** A label as it stands in a picture, pixels from the upper left corner. */
export interface Label {
  text: string;
  left: number;
  right: number;
  top: number;
  bottom: number;
}

/** A point, pixels from the upper left corner. */
export interface Point {
  x: number;
  y: number;
}

// Advance widths of Helvetica, thousandths of the size; the letters not named are 556 wide.
const widths: Record<string, number> = {
  ' ': 278,
  '.': 278,
  ',': 278,
  ':': 278,
  '/': 278,
  '(': 333,
  ')': 333,
  '-': 333,
};
for (const letter of 'ijlI') widths[letter] = 250;
for (const letter of 'ftr') widths[letter] = 310;
for (const letter of 'cksvxyz') widths[letter] = 500;
for (const letter of 'mwMW%') widths[letter] = 860;
for (const letter of 'ABCDEFGHKLNOPQRSTUVXYZ') widths[letter] = 700;

/** What stands in a picture, and where. */
export function pictureOf(shown: DisplayItem) {
  const svg = svgOf(shown);
  const root = parseHTML(svg).document.querySelector('svg') as unknown as Read;
  const number = (element: Read, name: string) => Number(element.getAttribute(name) ?? 0);
  const all = (selector: string) => [...root.querySelectorAll(selector)];
  return {
    svg,
    root,
    width: number(root, 'width'),
    height: number(root, 'height'),
    all,
    number,
    labels: all('text')
      .filter((element) => element.textContent !== '')
      .map(labelOf),
    place,
  };
}

/** Labels that stand over one another, by their texts. */
export function overlaps(labels: Label[]): string[] {
  return labels.flatMap((a, i) =>
    labels
      .slice(i + 1)
      .filter((b) => a.left < b.right && b.left < a.right && a.top < b.bottom && b.top < a.bottom)
      .map((b) => `${a.text} / ${b.text}`),
  );
}

/** Labels that are cut off by the edge of the picture. */
export function cutOff(labels: Label[], { width, height }: { width: number; height: number }): string[] {
  return labels
    .filter(({ left, right, top, bottom }) => left < 0 || right > width || top < 0 || bottom > height)
    .map(({ text }) => text);
}

function labelOf(element: Read): Label {
  const size = 13;
  const bold = inherited(element, 'font-weight') === 'bold' ? 1.07 : 1;
  let wide = 0;
  for (const character of element.textContent) wide += ((widths[character] ?? 556) * size * bold) / 1000;
  const { x, y } = place(element);
  const anchor = inherited(element, 'text-anchor');
  const left = anchor === 'end' ? x - wide : anchor === 'middle' ? x - wide / 2 : x;
  return { text: element.textContent, left, right: left + wide, top: y - 0.72 * size, bottom: y + 0.21 * size };
}

/** Where an element's origin lies, with the moves of all that it stands in. */
function place(element: Read): Point {
  let x = length(element.getAttribute('x') ?? element.getAttribute('cx'));
  let y = length(element.getAttribute('y') ?? element.getAttribute('cy'));
  for (let at: Read | null = element; at; at = at.parentElement) {
    const moved = /translate\(([-\d.e]+)(?:,\s*([-\d.e]+))?\)/.exec(at.getAttribute('transform') ?? '');
    x += Number(moved?.[1] ?? 0);
    y += Number(moved?.[2] ?? 0);
  }
  return { x, y };
}

function length(text: string | null): number {
  return text?.endsWith('em') ? Number.parseFloat(text) * 13 : Number(text ?? 0);
}

function inherited(element: Read, name: string): string {
  for (let at: Read | null = element; at; at = at.parentElement) {
    const value = at.getAttribute(name);
    if (value) return value;
  }
  return '';
}
