import { escapeHtml } from '../../kit/escape.js';
import { htmlPage } from '../../kit/html-page.js';
import { element, fontFamily, ink, quietInk } from '../../kit/svg.js';

export const millimetres = 25.4;
/** Height of letters on a template, mm. */
export const letters = 3.2;

/** Something drawn at full size along the page. Millimetres from its own upper left corner. */
export interface TemplatePiece {
  name: string;
  width: number;
  /** Width of what is cut out of the paper. */
  cutWidth: number;
  length: number;
  content: string;
}

// What A4 and Letter both have room for inside margins of 12 mm: the width of the one, the height of the other.
const page = { width: 186, height: 238 };
/** Part of a page that pieces are drawn in, and what two pages that follow one another share. */
const drawn = { top: 8, height: 200 };
const shared = 12;
const between = 10;

/**
 * Pieces at full size as a document to print: on A4 or Letter, on as many pages as they are long, with marks where one page
 * is laid on the next, and with a check length on each.
 *
 * @param title  plain text
 * @param hint  what to do with it, plain text
 * @returns a whole HTML document that loads nothing
 */
export function templateDocument(title: string, hint: string, pieces: readonly TemplatePiece[]): string {
  const groups = sideBySide(pieces);
  const pages = groups.flatMap((group) => {
    const length = Math.max(...group.map((piece) => piece.length));
    const count = Math.max(1, Math.ceil((length - shared) / (drawn.height - shared)));
    return Array.from({ length: count }, (_, i) => ({ group, number: i, count }));
  });
  const sections = pages.map(({ group, number, count }, i) => {
    const joining = count > 1 ? ' Lay one page on the next, 1 on 1, so that the dashed lines meet.' : '';
    const words = `${title}, page ${i + 1} of ${pages.length}. Print at 100 %, measure the check length first.`;
    const head = i === 0 ? 'h1' : 'h2';
    return `<section tabindex="0" aria-label="Page ${i + 1}"><header><${head}>${escapeHtml(words)}</${head}><p>${escapeHtml(hint + joining)}</p></header>${pageSvg(group, number, count, words)}</section>`;
  });
  return htmlPage({ title, style, body: `<main>${sections.join('')}</main>` });
}

const style = `@page { margin: 12mm; }
body { margin: 0; background: #fff; color: ${ink}; font: 9pt/1.3 ${fontFamily}; }
section { width: ${page.width}mm; break-inside: avoid; }
section + section { break-before: page; }
header { height: 16mm; overflow: hidden; font-size: 8.5pt; }
h1, h2, p { margin: 0; font-size: inherit; }
svg { display: block; }
@media screen { body { margin: 12mm; } section { width: auto; max-width: ${page.width}mm; overflow-x: auto; } header { height: auto; min-height: 16mm; } section + section { margin-top: 12mm; border-top: 1px dashed ${quietInk}; } }`;

/** Pieces that stand beside one another on a page. */
function sideBySide(pieces: readonly TemplatePiece[]): TemplatePiece[][] {
  const groups: TemplatePiece[][] = [];
  let room = 0;
  for (const piece of pieces) {
    if (piece.width > room) {
      groups.push([]);
      room = page.width;
    }
    groups.at(-1)?.push(piece);
    room -= piece.width + between;
  }
  return groups;
}

function pageSvg(group: readonly TemplatePiece[], number: number, count: number, words: string): string {
  const from = number * (drawn.height - shared);
  let x = 0;
  const pieces = group.map((piece) => {
    const view = { width: piece.width, height: drawn.height, viewBox: `0 ${from} ${piece.width} ${drawn.height}` };
    const name = element('text', { x, y: drawn.top - 3, 'font-weight': 'bold' }, escapeHtml(piece.name));
    const joins = [number, number + 1].filter((join) => join > 0 && join < count);
    const marks = joins.map((join) => matchMark(join, x, drawn.top - from, piece));
    const placed = name + element('svg', { x, y: drawn.top, ...view, class: 'piece' }, piece.content) + marks.join('');
    x += piece.width + between;
    return placed;
  });
  const size = { width: `${page.width}mm`, height: `${page.height}mm`, viewBox: `0 0 ${page.width} ${page.height}` };
  const type = { 'font-family': fontFamily, 'font-size': letters, fill: ink, role: 'img', 'aria-label': words };
  return element('svg', { xmlns: 'http://www.w3.org/2000/svg', ...size, ...type }, [...pieces, checks].join(''));
}

/** Where two pages are laid on one another: the same line on both, with the same number. */
function matchMark(join: number, x: number, top: number, { cutWidth, length }: TemplatePiece): string {
  const place = join * (drawn.height - shared) + shared / 2;
  if (place > length) return '';
  const y = top + place;
  const dashes = { stroke: ink, 'stroke-width': 0.2, 'stroke-dasharray': '6 1.5' };
  const across = element('line', { class: 'match', x1: x, y1: y, x2: x + cutWidth + 1, y2: y, ...dashes });
  return across + element('text', { x: x + cutWidth + 2, y: y + letters * 0.35 }, `${join}`);
}

/** The check lengths. */
const checks = [
  { length: 100, text: 'check: 100 mm', y: 219 },
  { length: 4 * millimetres, text: 'check: 4 in', y: 231 },
]
  .map(({ length, text, y }) => {
    const ends = [0.1, length + 0.1].map((x) => element('path', { d: `M${x},${y - 3}V${y + 3}` })).join('');
    const bar = element('path', { class: 'check', d: `M0.1,${y}H${length + 0.1}` });
    const drawing = element('g', { stroke: ink, 'stroke-width': 0.2, fill: 'none' }, bar + ends);
    return drawing + element('text', { x: length + 4, y: y + 1.1 }, text);
  })
  .join('');
