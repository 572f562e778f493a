import type { DisplayItem } from '../../kernel-helpers/src/show/kit/display.js';
import type { Read } from './read-html.js';
import { type Label, pictureOf } from './read-svg.js';

/** A drawing, its labels as they stand: those turned to be read from the right too. */
export function drawingOf(shown: DisplayItem) {
  const picture = pictureOf(shown);
  const elements = picture.all('text').filter((element) => element.textContent !== '');
  return { ...picture, labels: picture.labels.map((label, i) => turned(label, elements[i] as Read)) };
}

/** An upright rectangle of a picture, pixels. */
type Box = Pick<Label, 'left' | 'right' | 'top' | 'bottom'>;

/** Labels that a line runs through: it is drawn over them, or behind them and they have no white ground of their own. */
export function linesThrough({ root, labels }: ReturnType<typeof drawingOf>): string[] {
  const order = [...root.querySelectorAll('*')];
  const texts = order.filter(({ localName, textContent }) => localName === 'text' && textContent !== '');
  const lines = order.flatMap((element, at) => (element.localName === 'line' ? [{ at, ends: endsOf(element) }] : []));
  return labels.flatMap((label, i) => {
    const text = texts[i] as Read;
    const ground = groundOf(text);
    const grounded = ground !== undefined && holds(ground, label);
    const through = lines.filter(({ at, ends }) => crosses(ends, label) && (!grounded || at > order.indexOf(text)));
    return through.map(({ ends }) => `${label.text} / ${ends.flat().map(Math.round)}`);
  });
}

/** Arrowheads that the white ground of a label hides, by the label. */
export function hiddenArrowheads({ root, labels }: ReturnType<typeof drawingOf>): string[] {
  const texts = [...root.querySelectorAll('text')].filter(({ textContent }) => textContent !== '');
  const heads = [...root.querySelectorAll('polygon:not([stroke])')].map((each) =>
    (each.getAttribute('points') ?? '').split(' ').map((point) => point.split(',').map(Number)),
  );
  return labels.flatMap(({ text }, i) => {
    const ground = groundOf(texts[i] as Read);
    const hides = (x: number, y: number) =>
      ground && x > ground.left && x < ground.right && y > ground.top && y < ground.bottom;
    return heads.some((points) => points.some(([x = 0, y = 0]) => hides(x, y))) ? [text] : [];
  });
}

/** The white rectangle drawn right before a label, as it stands. */
function groundOf(text: Read): Box | undefined {
  const siblings = [...(text.parentElement as Read).querySelectorAll('*')];
  const rect = siblings[siblings.indexOf(text) - 1];
  if (rect?.localName !== 'rect' || rect.getAttribute('fill') !== '#fff') return undefined;
  const [left = 0, top = 0, width = 0, height = 0] = numbers(rect, 'x', 'y', 'width', 'height');
  const own = { text: '', left, top, right: left + width, bottom: top + height };
  const place = quarterTurn(rect);
  return place ? turnedAbout(own, place) : own;
}

const numbers = (element: Read, ...names: string[]) => names.map((name) => Number(element.getAttribute(name)));

function endsOf(line: Read): [[number, number], [number, number]] {
  const [x1 = 0, y1 = 0, x2 = 0, y2 = 0] = numbers(line, 'x1', 'y1', 'x2', 'y2');
  return [
    [x1, y1],
    [x2, y2],
  ];
}

/** A hair is left: the widths of letters are good to that. */
const hair = 0.75;

function holds(outer: Box, inner: Box): boolean {
  return (
    outer.left <= inner.left + hair &&
    outer.right >= inner.right - hair &&
    outer.top <= inner.top + hair &&
    outer.bottom >= inner.bottom - hair
  );
}

/** Whether a line meets a rectangle: cut to it side by side, something is left (Liang and Barsky). */
function crosses([[x1, y1], [x2, y2]]: ReturnType<typeof endsOf>, { left, right, top, bottom }: Box): boolean {
  let [from, to] = [0, 1];
  for (const [start, step, least, most] of [
    [x1, x2 - x1, left + hair, right - hair],
    [y1, y2 - y1, top + hair, bottom - hair],
  ] as const) {
    if (step === 0 && (start <= least || start >= most)) return false;
    if (step === 0) continue;
    const [a, b] = [(least - start) / step, (most - start) / step];
    [from, to] = [Math.max(from, Math.min(a, b)), Math.min(to, Math.max(a, b))];
  }
  return from < to;
}

function turned(label: Label, element: Read): Label {
  const place = quarterTurn(element);
  if (!place) return label;
  // As the reader of pictures saw it, about the group's own origin, before it is turned a quarter to the left.
  const [x, y] = place;
  const { text, left, right, top, bottom } = label;
  return turnedAbout({ text, left: left - x, right: right - x, top: top - y, bottom: bottom - y }, place);
}

/** The point that an element's group is turned about, a quarter to the left; undefined where it is not turned. */
function quarterTurn(element: Read): [number, number] | undefined {
  const group = element.parentElement?.getAttribute('transform') ?? '';
  const place = /translate\(([-\d.]+),([-\d.]+)\) rotate\(-90\)/.exec(group);
  return place ? [Number(place[1]), Number(place[2])] : undefined;
}

function turnedAbout({ text, left, right, top, bottom }: Label, [x, y]: [number, number]): Label {
  return { text, left: x + top, right: x + bottom, top: y - right, bottom: y - left };
}
