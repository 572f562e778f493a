import type { SizedBox } from '../../piece/box/sized-box.js';
import type { DrawnPiece } from '../../piece/drawn-piece.js';
import { escapeHtml } from '../kit/escape.js';
import { spreadApart } from '../kit/label-places.js';
import { element, ink } from '../kit/svg.js';
import { type DrawingOptions, lengthText } from './kit/lengths.js';
import { letters, millimetres, type TemplatePiece, templateDocument } from './kit/template-page.js';

/** What a story stick needs of a sized box; see {@link SizedBox}. Inches. */
export type MarkedBox = Pick<SizedBox, 'overall' | 'design' | 'parts' | 'grooves'>;

/** A mark on a stick, inches from its end. */
interface Mark {
  at: number;
  what: string;
}

const stickWidth = 12;
const leastWidth = 88;
const labelAt = stickWidth + 10;
const leading = letters + 1.4;
const hint = 'The upper end of each stick is its zero. Mark the wood from it, not from a rule.';
const thin = { stroke: ink, 'stroke-width': 0.2 };

/**
 * Three story sticks at full size on paper, with every place that is marked on the wood: along a box, across it and up its height;
 * of any other piece from left to right, from front to back and upwards, where each part begins and ends. Glue them to a
 * stick and mark from it instead of from a rule.
 *
 * @param piece  a box as `sizeBox` returns it, or a piece as `drawnBookcase`, `drawnDrawer` and the like do; inches
 * @param options  how sizes are shown
 * @returns a whole HTML document to print on A4 or Letter; it loads nothing
 */
export function storyStick(piece: MarkedBox | DrawnPiece, options: DrawingOptions = {}): string {
  const show = lengthText(options);
  const marks: [string, Mark[]][] =
    'solids' in piece
      ? [
          ['From left to right', partMarks(piece, 'x')],
          ['From front to back', partMarks(piece, 'y')],
          ['Upwards, from the lower edge', partMarks(piece, 'z')],
        ]
      : [
          ['Length, from the front', alongMarks(piece, 'length')],
          ['Width, from the left', alongMarks(piece, 'width')],
          ['Height, from the lower edge', heightMarks(piece)],
        ];
  const sticks = marks.map(([name, places]) => stick(name, places, show));
  return templateDocument('Story stick', hint, sticks);
}

/** Where parts begin and end along one way, those at one place named together. */
function partMarks({ solids }: DrawnPiece, axis: 'x' | 'y' | 'z'): Mark[] {
  const places = new Map<number, Set<string>>();
  for (const { part, ...block } of solids)
    for (const at of block[axis]) {
      // Nearer than a knife's mark is one place.
      const place = Math.round(at * 1024) / 1024;
      places.set(place, (places.get(place) ?? new Set()).add(part.replace(/^(left|right) | \d+$/g, '')));
    }
  return [...places].map(([at, parts]) => ({ at, what: [...parts].join(', ') }));
}

function alongMarks({ overall, design, parts }: MarkedBox, along: 'length' | 'width'): Mark[] {
  const end = design.proud + design.stockThickness;
  const whole = overall[along];
  // How wide the lid is planed is settled on the day it is fitted: only its length is marked.
  const lid = along === 'length' ? parts.find(({ name }) => name === 'lid') : undefined;
  return [
    { at: 0, what: 'end of the board' },
    ...(design.proud > 0 ? [{ at: design.proud, what: 'outside face' }] : []),
    { at: end, what: 'inside face' },
    { at: whole - end, what: 'inside face' },
    ...(design.proud > 0 ? [{ at: whole - design.proud, what: 'outside face' }] : []),
    { at: whole, what: 'end of the board' },
    ...(lid
      ? [
          { at: design.proud, what: 'lid' },
          { at: design.proud + lid.length, what: 'lid' },
        ]
      : []),
  ];
}

function heightMarks({ overall, grooves, parts }: MarkedBox): Mark[] {
  const front = parts.find(({ name }) => name === 'front');
  return [
    { at: 0, what: 'lower edge' },
    ...grooves
      .filter(({ board }) => board === 'side')
      .flatMap(({ groove, fromBottom, width }) => [
        { at: fromBottom, what: `${groove} groove` },
        { at: fromBottom + width, what: `${groove} groove` },
      ]),
    ...(front ? [{ at: front.width, what: 'top of the front' }] : []),
    { at: overall.height, what: 'top of the sides' },
  ];
}

function stick(name: string, marks: readonly Mark[], show: (inches: number) => string): TemplatePiece {
  const ordered = [...marks].sort((a, b) => a.at - b.at);
  const length = (ordered.at(-1)?.at ?? 0) * millimetres;
  const words = (at: number, what: string) => `${show(at)}: ${what}`;
  const longest = Math.max(...ordered.map(({ at, what }) => words(at, what).length));
  const places = spreadApart(
    ordered.map(({ at }) => at * millimetres),
    leading,
    leading / 2,
    length - leading / 2,
  );
  const drawn = ordered.map(({ at, what }, i) => {
    const y = at * millimetres;
    const place = places[i] as number;
    const mark = element('line', { class: 'mark', x1: 0, y1: y, x2: stickWidth, y2: y, ...thin });
    const leader = element('line', { x1: stickWidth, y1: y, x2: labelAt - 1, y2: place, ...thin });
    const text = element('text', { x: labelAt, y: place + letters * 0.35 }, escapeHtml(words(at, what)));
    return mark + leader + text;
  });
  const outline = element('rect', {
    class: 'stick',
    x: 0,
    y: 0,
    width: stickWidth,
    height: length,
    fill: 'none',
    ...thin,
  });
  return {
    name,
    width: Math.max(leastWidth, labelAt + longest * letters * 0.6),
    cutWidth: stickWidth,
    length: Math.max(length, (places.at(-1) ?? 0) + leading) + 0.4,
    content: element('g', { transform: 'translate(0.2 0.2)' }, outline + drawn.join('')),
  };
}
