import type { LidFit } from '../box/lid-fit.js';
import { shownLength } from '../measure/length.js';
import { figure } from './figure.js';
import type { Shown } from './shown.js';
import { element, fontSize, label, line, quietInk, svgPicture, textWidth } from './svg.js';

/** What the drawing needs of a fit; see {@link LidFit}. Inches. */
export type LidWidths = Pick<LidFit, 'fittedWidth' | 'window'>;

const width = 720;
const margin = 170;
const rulerTop = 104;

/**
 * The widths that the lid may be planed to today, on a tape: narrowest, widest and the width to aim for.
 * When no width will do, it says so.
 *
 * @param fit  as `lidFit` returns it; inches
 */
export function widthWindow(fit: LidWidths): Shown {
  const { narrowest, widest } = fit.window;
  const aim = fit.fittedWidth;
  const possible = narrowest <= widest;
  const [low, high] = [Math.min(narrowest, widest, aim), Math.max(narrowest, widest, aim)];
  const around = Math.max(1 / 32, (high - low) / 4);
  const [from, to] = [low - around, high + around];
  const toPixel = (inches: number) => margin + ((inches - from) / (to - from)) * (width - 2 * margin);

  const [left, right] = possible ? [narrowest, widest] : [widest, narrowest];
  const bar = { x: toPixel(left), y: rulerTop - 26, width: toPixel(right) - toPixel(left), height: 26 };
  const content = [
    element('rect', {
      ...bar,
      fill: possible ? '#c3ccd6' : '#fff',
      stroke: '#1a1a1a',
      'stroke-dasharray': possible ? undefined : '4 4',
    }),
    ...edge(toPixel(narrowest), possible ? 'end' : 'start', 'narrowest', narrowest),
    ...edge(toPixel(widest), possible ? 'start' : 'end', 'widest', widest),
    ...(possible
      ? aimMark(toPixel(aim), aim)
      : [label('no width will do', width / 2, 20, { 'text-anchor': 'middle', 'font-weight': 'bold' })]),
    ...ruler(from, to, toPixel),
  ];
  const tape = shownLength(aim, { system: 'tape', denominator: 64 });
  const off =
    Math.abs(tape.off) < 5e-4 ? 'to the hair' : `${Math.abs(tape.off).toFixed(3)} in ${tape.off < 0 ? 'less' : 'more'}`;
  const words = possible
    ? `Plane the lid between ${decimal(narrowest)} and ${decimal(widest)} wide today. Aim for ${decimal(aim)} by caliper; ${tape.text} on the tape is ${off}.`
    : `No width will do: to run in the wettest month the lid may be ${decimal(widest)} at most, to hold in the driest it must be ${decimal(narrowest)} at least.`;
  return figure({ svg: svgPicture(width, 160, content), width, alt: words, caption: words });
}

function edge(x: number, anchor: 'start' | 'end', word: string, inches: number): string[] {
  const away = anchor === 'end' ? -8 : 8;
  return [
    line(x, rulerTop - 34, x, rulerTop, { 'stroke-width': 2 }),
    label(word, x + away, rulerTop - 32, { 'text-anchor': anchor }),
    label(decimal(inches), x + away, rulerTop - 14, { 'text-anchor': anchor, 'font-weight': 'bold' }),
  ];
}

function aimMark(x: number, aim: number): string[] {
  return [
    line(x, 40, x, rulerTop, { 'stroke-width': 2 }),
    element('path', { d: `M${x.toFixed(2)},${rulerTop}l-6,-12h12z` }),
    label(`aim: ${decimal(aim)}`, x, 26, { 'text-anchor': 'middle', 'font-weight': 'bold' }),
  ];
}

/** A stretch of tape: longer marks for coarser fractions, a number wherever there is room for one. */
function ruler(from: number, to: number, toPixel: (inches: number) => number): string[] {
  const perInch = toPixel(1) - toPixel(0);
  const widestText = textWidth(`${Math.floor(to)} 63/64`);
  const finest = [64, 32, 16, 8, 4, 2, 1].find((denominator) => perInch / denominator >= 8) ?? 1;
  const labelled = [64, 32, 16, 8, 4, 2, 1].find((d) => perInch / d >= widestText + 14 && d <= finest) ?? 1;
  const marks = [
    line(toPixel(from), rulerTop, toPixel(to), rulerTop),
    label('in', toPixel(to) + 8, rulerTop, { fill: quietInk }),
  ];
  for (let i = Math.ceil(from * finest); i <= Math.floor(to * finest); i++) {
    const x = toPixel(i / finest);
    const coarse = [1, 2, 4, 8, 16, 32, 64].find((denominator) => Number.isInteger((i / finest) * denominator)) ?? 64;
    const length = { 1: 24, 2: 21, 4: 18, 8: 16, 16: 14, 32: 11, 64: 8 }[coarse] ?? 8;
    marks.push(line(x, rulerTop, x, rulerTop + length, { stroke: quietInk }));
    if (Number.isInteger((i / finest) * labelled))
      marks.push(label(tapeText(i / finest), x, rulerTop + 26 + fontSize / 2, { 'text-anchor': 'middle' }));
  }
  return marks;
}

function tapeText(inches: number): string {
  return shownLength(inches, { system: 'tape', denominator: 64 }).text.replace(' in', '');
}

function decimal(inches: number): string {
  return `${inches.toFixed(3)} in`;
}
