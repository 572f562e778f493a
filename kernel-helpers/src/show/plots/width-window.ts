import type { LidFit } from '../../fit/lid-fit.js';
import { caliperScale, shownLength } from '../../measure/length.js';
import type { DisplayItem } from '../kit/display.js';
import { figure } from '../kit/figure.js';
import { element, fontSize, label, line, quietInk, svgPicture, textWidth } from '../kit/svg.js';

type Units = 'tape' | 'mm' | 'both';

/** What the drawing needs of a fit; see {@link LidFit}. Inches. */
export type LidWidths = Pick<LidFit, 'fittedWidth' | 'window'>;

const width = 720;
const margin = 170;
const rulerTop = 104;

/**
 * The widths that the lid may be planed to today, on a tape or a rule: narrowest, widest and the width to aim for.
 * When no width will do, it says so.
 *
 * @param fit  as `lidFit` returns it; inches
 * @param units  millimetres for `mm`, else inches
 */
export function widthWindow(fit: LidWidths, units: Units = 'tape'): DisplayItem {
  const scale = caliperScale(units);
  const decimal = (inches: number) => `${(inches * scale.perInch).toFixed(scale.decimals)} ${scale.unit}`;
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
    ...edge(toPixel(narrowest), possible ? 'end' : 'start', 'narrowest', decimal(narrowest)),
    ...edge(toPixel(widest), possible ? 'start' : 'end', 'widest', decimal(widest)),
    ...(possible
      ? aimMark(toPixel(aim), decimal(aim))
      : [label('no width will do', width / 2, 20, { 'text-anchor': 'middle', 'font-weight': 'bold' })]),
    ...(scale.unit === 'mm' ? rule(from, to, toPixel) : tape(from, to, toPixel)),
  ];
  const read = shownLength(aim, { system: units === 'mm' ? 'mm' : 'tape', denominator: 64 });
  const off =
    Math.abs(read.off) < 5e-4 ? 'to the hair' : `${decimal(Math.abs(read.off))} ${read.off < 0 ? 'less' : 'more'}`;
  const words = possible
    ? `Plane the lid between ${decimal(narrowest)} and ${decimal(widest)} wide today. Aim for ${decimal(aim)} by caliper; ${read.text} on the ${scale.unit === 'mm' ? 'rule' : 'tape'} is ${off}.`
    : `No width will do: to run in the wettest month the lid may be ${decimal(widest)} at most, to hold in the driest it must be ${decimal(narrowest)} at least.`;
  return figure({ svg: svgPicture(width, 160, content), width, alt: words, caption: words });
}

function edge(x: number, anchor: 'start' | 'end', word: string, reading: string): string[] {
  const away = anchor === 'end' ? -8 : 8;
  return [
    line(x, rulerTop - 34, x, rulerTop, { 'stroke-width': 2 }),
    label(word, x + away, rulerTop - 32, { 'text-anchor': anchor }),
    label(reading, x + away, rulerTop - 14, { 'text-anchor': anchor, 'font-weight': 'bold' }),
  ];
}

function aimMark(x: number, aim: string): string[] {
  return [
    line(x, 40, x, rulerTop, { 'stroke-width': 2 }),
    element('path', { d: `M${x.toFixed(2)},${rulerTop}l-6,-12h12z` }),
    label(`aim: ${aim}`, x, 26, { 'text-anchor': 'middle', 'font-weight': 'bold' }),
  ];
}

/** A stretch of tape: longer marks for coarser fractions, a number wherever there is room for one. */
function tape(from: number, to: number, toPixel: (inches: number) => number): string[] {
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

/** A stretch of a metric rule: half millimetres where there is room, longer marks for fives and tens. */
function rule(from: number, to: number, toPixel: (inches: number) => number): string[] {
  const perMm = (toPixel(1) - toPixel(0)) / 25.4;
  const step = [0.5, 1, 5, 10].find((mm) => mm * perMm >= 6) ?? 10;
  const labelled = [1, 5, 10, 50].find((mm) => mm >= step && mm * perMm >= textWidth(`${Math.floor(to * 25.4)}`) + 14);
  const marks = [
    line(toPixel(from), rulerTop, toPixel(to), rulerTop),
    label('mm', toPixel(to) + 8, rulerTop, { fill: quietInk }),
  ];
  for (let i = Math.ceil((from * 25.4) / step); i <= Math.floor((to * 25.4) / step); i++) {
    const mm = i * step;
    const x = toPixel(mm / 25.4);
    const length = mm % 10 === 0 ? 24 : mm % 5 === 0 ? 18 : Number.isInteger(mm) ? 12 : 8;
    marks.push(line(x, rulerTop, x, rulerTop + length, { stroke: quietInk }));
    if (labelled && mm % labelled === 0)
      marks.push(label(`${mm}`, x, rulerTop + 26 + fontSize / 2, { 'text-anchor': 'middle' }));
  }
  return marks;
}
