import type { DovetailLayout } from '../../joints/dovetails.js';
import type { DisplayItem } from '../kit/display.js';
import { figure } from '../kit/figure.js';
import { spreadApart } from '../kit/label-places.js';
import { element, fontSize, ink, label, line, quietInk, svgPicture, textWidth } from '../kit/svg.js';
import { overLines, turned } from './kit/dimension.js';
import { type DrawingOptions, dimensionText, lengthText, settingText } from './kit/lengths.js';
import { arrowhead, strokes } from './kit/lines.js';
import { pageWidth } from './kit/sheet.js';

const margin = 24;
const board = 26;
const hop = 34;
const grey = '#d4d4d4';

/** One row of the picture: what is done, and where the point lands, inches from the lower edge. */
interface Row {
  words: string;
  marks: readonly number[];
  hops: boolean;
}

/**
 * How the tails are stepped off on the end of the tail board: up from the lower half pin, down from the upper one, and what
 * lies between the marks; each mark with its distance from the lower edge.
 *
 * @param layout  as `layOutDovetails` returns it; inches
 * @param options  how sizes are shown
 */
export function dividerWalk(layout: DovetailLayout, options: DrawingOptions = {}): DisplayItem {
  const show = lengthText(options);
  const { boardWidth, tails, walk, dividerSetting } = layout;
  const steps = `${tails.length} ${tails.length === 1 ? 'step' : 'steps'}`;
  const [lower = 0, upper = 0] = [walk.up[0], walk.down[0]];
  const rows: Row[] = [
    { words: `1. Set the dividers to ${settingText(options)(dividerSetting)}.`, marks: [lower, upper], hops: false },
    { words: `2. Walk ${steps} up from the lower half pin, pressing a point at each.`, marks: walk.up, hops: true },
    { words: `3. Walk ${steps} down from the upper half pin.`, marks: walk.down, hops: true },
    { words: '4. Square the marks across the end: white is tail, grey is waste.', marks: [], hops: false },
  ];
  const from = Math.min(0, ...walk.down);
  const to = Math.max(boardWidth, ...walk.up);
  const scale = (pageWidth - 2 * margin) / (to - from);
  const px = (inches: number) => margin + (inches - from) * scale;
  let top = margin / 2;
  const content = rows.map((row, i) => {
    const drawn = drawRow(row, i === rows.length - 1 ? layout : undefined, {
      top,
      px,
      boardWidth,
      show: dimensionText(options),
    });
    top = drawn.foot;
    return drawn;
  });
  const landing = `The last step up lands ${show((walk.up.at(-1) ?? 0) - upper)} past the upper half pin: the width of a pin. If it does not, change the setting by a hair and walk again`;
  return figure({
    svg: svgPicture(pageWidth, top, [...content.map(({ lines }) => lines), ...content.map(({ texts }) => texts)]),
    width: pageWidth,
    alt:
      `Dividers set to ${settingText(options)(dividerSetting)} walk ${steps} on a board ${show(boardWidth)} wide. ` +
      `Up from the lower edge: ${walk.up.map(show).join(', ')}. Down: ${walk.down.map(show).join(', ')}.`,
    caption: `The divider walk on the end of the tail board, lower edge at the left; distances are from that edge. ${landing}.`,
  });
}

interface Place {
  top: number;
  px: (inches: number) => number;
  boardWidth: number;
  show: (inches: number) => string;
}

function drawRow(row: Row, tailsOf: DovetailLayout | undefined, place: Place) {
  const { px, boardWidth, show } = place;
  const wordsAt = place.top + fontSize;
  const boardTop = wordsAt + fontSize + (row.hops ? hop : 6);
  const boardFoot = boardTop + board;
  const marks = row.marks.map((inches, i) => ({ x: px(inches), text: show(inches), step: i }));
  const named =
    marks.length * (fontSize + 3) <= pageWidth - margin ? marks : [...marks.slice(0, 3), ...marks.slice(-1)];
  const places = spreadApart(
    named.map(({ x }) => x),
    fontSize + 3,
    margin / 2,
    pageWidth - margin / 2,
  );
  const longest = Math.max(0, ...named.map(({ text }) => textWidth(text)));
  const textsAt = boardFoot + 16;
  const step = Math.abs((marks[1]?.x ?? 0) - (marks[0]?.x ?? 0));

  const pins = (tailsOf?.pins ?? []).map((pin) =>
    element('rect', { x: px(pin.from), y: boardTop, width: px(pin.to) - px(pin.from), height: board, fill: grey }),
  );
  const cuts = (tailsOf?.tails ?? []).flatMap((tail) => [tail.from, tail.to]).map((inches) => px(inches));
  const lines = [
    ...pins,
    element('rect', {
      x: px(0),
      y: boardTop,
      width: px(boardWidth) - px(0),
      height: board,
      fill: 'none',
      ...strokes.outline,
    }),
    ...cuts.map((x) => line(x, boardTop, x, boardFoot, strokes.outline)),
    ...marks.map(({ x }) => line(x, boardTop - 4, x, boardTop + board / 2, { 'stroke-width': 1.6 })),
    ...(row.hops ? marks.slice(1).map(({ x }, i) => arc(marks[i]?.x ?? 0, x, boardTop - 5)) : []),
    ...named.map(({ x }, i) => leader(x, places[i] as number, boardTop + board / 2, boardFoot)),
  ];
  const numbered = row.hops && step >= textWidth(`${marks.length}`) + 4 ? marks.slice(1) : [];
  const texts = [
    label(row.words, margin, wordsAt, { fill: quietInk, 'font-weight': 'bold' }),
    ...numbered.map(({ x, step: number }, i) =>
      overLines(`${number}`, (x + (marks[i]?.x ?? 0)) / 2, boardTop - 5 - arcHeight(step) - fontSize * 0.7),
    ),
    ...named.map(({ text }, i) => turned(text, places[i] as number, textsAt, 'end')),
  ];
  return { lines: lines.join(''), texts: texts.join(''), foot: textsAt + longest + margin / 2 };
}

function arcHeight(step: number): number {
  return Math.min(step / 2, hop - fontSize - 6);
}

/** One swing of the dividers, with an arrowhead where the point comes down. */
function arc(from: number, to: number, foot: number): string {
  const height = arcHeight(Math.abs(to - from));
  const path = `M${[from, foot].map(places).join(',')}Q${[(from + to) / 2, foot - 2 * height].map(places).join(',')} ${[to, foot].map(places).join(',')}`;
  const swing = element('path', { d: path, fill: 'none', stroke: ink });
  return Math.abs(to - from) < 24 ? swing : swing + arrowhead(to, foot, 'down');
}

function leader(x: number, place: number, boardMiddle: number, boardFoot: number): string {
  return (
    line(x, boardMiddle, x, boardFoot + 3, strokes.thin) + line(x, boardFoot + 3, place, boardFoot + 13, strokes.thin)
  );
}

function places(value: number): number {
  return Math.round(value * 1000) / 1000;
}
