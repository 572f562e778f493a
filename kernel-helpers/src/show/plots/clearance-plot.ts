import type { LidFit } from '../../fit/lid-fit.js';
import type { LidMeasured } from '../../fit/lid-measured.js';
import { caliperScale } from '../../measure/length.js';
import { monthNames } from '../../wood/air/months.js';
import type { DisplayItem } from '../kit/display.js';
import { spreadApart } from '../kit/label-places.js';
import { fontSize, quietInk, textWidth } from '../kit/svg.js';
import type { SvgDocument, SvgElement } from '../kit/svg-document.js';
import { plot } from './plot.js';

/** What the plot needs of a fit through the year; see {@link LidFit}. Inches, both sides together. */
export type LidYear = Pick<LidFit, 'limits'> & {
  byMonth: Month[];
};

interface Clearance {
  fit: LidYear;
  part?: string;
  units?: 'tape' | 'mm' | 'both';
  measured?: readonly LidMeasured[];
}

type Month = Pick<LidFit['byMonth'][0], 'month' | 'clearance' | 'low' | 'high'>;
type Ring = Pick<LidMeasured, 'date' | 'clearance'>;

const width = 720;
const height = 400;
const margins = { marginTop: 34, marginRight: 130, marginBottom: 34, marginLeft: 58 };
const inner = height - margins.marginTop - margins.marginBottom;
/** Labels stand between these months. */
const [firstFree, lastFree] = [0.8, 12.2];
/** Room for a label beyond each limit, pixels. */
const beyond = 30;

/**
 * Clearance of a sliding lid, or of another part that moves in its place, over the twelve months: the middling board as a line, nine boards in ten as a band, and the
 * two limits, below which it binds and above which it loses its hold. Everything is labelled where it stands.
 *
 * @param clearance.fit  as `lidFit` returns it; inches
 * @param clearance.part  which part: `lid`, `panel`, `drawer`
 * @param clearance.units  millimetres for `mm`, else inches
 * @param clearance.measured  play of the delivered lid, measured later: drawn as rings where they fall in the year
 */
export function clearancePlot({ fit, part = 'lid', units = 'tape', measured = [] }: Clearance): DisplayItem {
  const scale = caliperScale(units);
  const { byMonth, limits, rings } = inUnit(fit, measured, scale.perInch);
  const reading = (length: number) => `${length.toFixed(scale.decimals).replace('-', '\u2212')} ${scale.unit}`;
  const months = byMonth.sort((a, b) => a.month - b.month);
  const { leastClearance, mostClearance, gapOnlyShows } = limits;
  const pastMost = gapOnlyShows ? 'its gap shows' : 'loses its hold';
  const play = gapOnlyShows ? 'in all' : 'both sides together';
  const later = rings.map(({ date, clearance }) => ({ clearance, month: monthOf(date), words: date }));
  const plays = later.map(({ clearance }) => clearance);
  const lowest = Math.min(leastClearance, ...months.map(({ low }) => low), ...plays);
  const highest = Math.max(mostClearance, ...months.map(({ high }) => high), ...plays);
  const perPixel = (highest - lowest) / (inner - 2 * beyond);
  const domain = [lowest - beyond * perPixel, highest + beyond * perPixel] as const;
  const toPixel = (play: number) => margins.marginTop + ((domain[1] - play) / (domain[1] - domain[0])) * inner;
  const fromPixel = (y: number) => domain[1] - ((y - margins.marginTop) / inner) * (domain[1] - domain[0]);

  const tightest = months.reduce((a, b) => (b.clearance < a.clearance ? b : a));
  const loosest = months.reduce((a, b) => (b.clearance > a.clearance ? b : a));
  const last = months.at(-1) as Month;
  const [lineLabel, bandLabel] = spreadApart(
    [toPixel(last.clearance), toPixel((last.high + last.low) / 2) + 1],
    fontSize + 5,
    margins.marginTop,
    height - margins.marginBottom,
  ) as [number, number];

  const halo = { stroke: 'white', strokeWidth: 5, fill: '#1a1a1a' };

  const value = ({ clearance, month }: Month) => `in ${monthNames[month - 1]} at ${reading(clearance)}`;
  // Between the band and its limit, clear of both; right beside the band where they leave no room or much.
  const beside = (edge: number, limit: number) => {
    const room = Math.abs(toPixel(limit) - toPixel(edge));
    return room > fontSize + 4 ? Math.min(14, room / 2) : 14;
  };
  const tightestLabel = {
    month: tightest.month,
    edge: tightest.low,
    dy: beside(tightest.low, leastClearance),
    words: `${reading(tightest.clearance)}, at worst ${reading(tightest.low)}`,
  };
  const loosestLabel = {
    month: loosest.month,
    edge: loosest.high,
    dy: -beside(loosest.high, mostClearance),
    words: `${reading(loosest.clearance)}, at most ${reading(loosest.high)}`,
  };

  const zones = [
    {
      from: domain[0],
      to: leastClearance,
      middle: leastClearance - 0.5 * beyond * perPixel,
      words: `binds under ${reading(leastClearance)}`,
      away: (month: Month) => month.low,
      beside: tightestLabel,
    },
    {
      from: mostClearance,
      to: domain[1],
      middle: mostClearance + 0.5 * beyond * perPixel,
      words: `${pastMost} over ${reading(mostClearance)}`,
      away: (month: Month) => -month.high,
      beside: loosestLabel,
    },
  ];
  const zoneLabels = zones.map((zone) => ({ ...zone, month: clearest(months, zone.words, zone.away, zone.beside) }));

  const alt =
    `Clearance of the ${part} by month, ${play}. It is tightest ${value(tightest)} and loosest ${value(loosest)}. ` +
    `It binds below ${reading(leastClearance)} and ${pastMost} above ${reading(mostClearance)}.`;
  return plot(
    (Plot) => ({
      width,
      height,
      ...margins,
      x: {
        domain: [0.7, 12.3],
        ticks: months.map(({ month }) => month),
        tickFormat: (month: number) => monthNames[month - 1]?.slice(0, 3),
        label: null,
        tickSize: 0,
      },
      y: { domain, ticks: 6, label: `Clearance, ${play}, ${scale.unit}`, labelArrow: 'none' },
      marks: [
        hatch,
        Plot.gridY({ ticks: 6, stroke: '#d8d8d8', strokeOpacity: 1 }),
        Plot.rect(zones, { x1: 0.7, x2: 12.3, y1: 'from', y2: 'to', fill: 'url(#beyond)' }),
        Plot.areaY(months, { x: 'month', y1: 'low', y2: 'high', fill: '#c3ccd6', fillOpacity: 1 }),
        Plot.ruleY([leastClearance], { stroke: '#1a1a1a', strokeWidth: 2, strokeDasharray: '8 4' }),
        Plot.ruleY([mostClearance], { stroke: '#1a1a1a', strokeWidth: 2, strokeDasharray: '2 4' }),
        Plot.line(months, { x: 'month', y: 'clearance', stroke: '#1a1a1a', strokeWidth: 2 }),
        Plot.dot(months, { x: 'month', y: 'clearance', r: 3.5, fill: '#1a1a1a' }),
        Plot.dot(later, { x: 'month', y: 'clearance', r: 6, stroke: '#1a1a1a', strokeWidth: 2, fill: 'white' }),
        Plot.text(later, { x: 'month', y: 'clearance', text: 'words', dy: -16, ...halo }),
        Plot.text(zoneLabels, { x: 'month', y: 'middle', text: 'words', textAnchor: 'middle', ...halo }),
        ...[tightestLabel, loosestLabel].map((extreme) =>
          Plot.text([extreme], {
            x: 'month',
            y: 'edge',
            dy: extreme.dy,
            text: 'words',
            textAnchor: anchorAt(extreme),
            fontWeight: 'bold',
            ...halo,
          }),
        ),
        Plot.link([last], { x1: 12.12, x2: 12.12, y1: 'low', y2: 'high', stroke: quietInk, strokeWidth: 3 }),
        Plot.text(
          [
            { y: fromPixel(lineLabel), words: 'middling board' },
            { y: fromPixel(bandLabel), words: 'nine boards in ten' },
          ],
          { x: 12.3, y: 'y', text: 'words', textAnchor: 'start', dx: 8 },
        ),
      ],
    }),
    {
      alt,
      caption: `The ${part} is tightest ${value(tightest)} and loosest ${value(loosest)}. ${verdict(months, limits)}${asMeasured(months, rings, part)}`,
    },
  );
}

/** Where along the year a limit's label stands farthest from the data, and not over the label of an extreme. */
function clearest(
  months: Month[],
  words: string,
  away: (month: Month) => number,
  beside: { month: number; words: string },
): number {
  const half = monthsWide(words) / 2;
  const taken = monthsWide(beside.words);
  const takenFrom = anchorAt(beside) === 'start' ? beside.month : beside.month - taken;
  const nearest = (middle: number) =>
    Math.min(...months.filter(({ month }) => Math.abs(month - middle) <= half + 0.5).map(away));
  const inside = [...Array(49).keys()].map((i) => i / 4).filter((m) => m - half > firstFree && m + half < lastFree);
  const free = inside.filter((m) => m + half < takenFrom || m - half > takenFrom + taken);
  return (free.length > 0 ? free : inside).reduce((best, middle) => (nearest(middle) > nearest(best) ? middle : best));
}

/** A bold label's width as a stretch of the year. */
function monthsWide(words: string): number {
  return (1.05 * textWidth(words)) / ((width - margins.marginLeft - margins.marginRight) / 11.6);
}

/** An extreme's label reaches toward the nearer end of the year where it fits: the longest stretch stays free. */
function anchorAt({ month, words }: { month: number; words: string }): 'start' | 'end' {
  const fitsBefore = month - monthsWide(words) > firstFree;
  const fitsAfter = month + monthsWide(words) < lastFree;
  return fitsBefore && (month < 6.5 || !fitsAfter) ? 'end' : 'start';
}

function verdict(months: Month[], { leastClearance, mostClearance }: LidYear['limits']): string {
  const outside = months.filter(({ low, high }) => low < leastClearance - 1e-9 || high > mostClearance + 1e-9);
  if (outside.length === 0) return 'Nine boards in ten stay between the two limits all year.';
  const names = outside.map(({ month }) => monthNames[month - 1]).join(', ');
  return `The band crosses a limit in ${names}.`;
}

/** All lengths in the unit that is drawn. */
function inUnit(fit: LidYear, measured: readonly LidMeasured[], perInch: number) {
  return {
    byMonth: fit.byMonth.map(({ month, clearance, low, high }) => ({
      month,
      clearance: clearance * perInch,
      low: low * perInch,
      high: high * perInch,
    })),
    limits: {
      ...fit.limits,
      leastClearance: fit.limits.leastClearance * perInch,
      mostClearance: fit.limits.mostClearance * perInch,
    },
    rings: measured.map(({ date, clearance }) => ({ date, clearance: clearance * perInch })),
  };
}

/** Diagonal strokes: a zone that is told from the band without colour. */
function hatch(
  _index: unknown,
  _scales: unknown,
  _values: unknown,
  _dimensions: unknown,
  { document }: { document: SvgDocument },
): SvgElement {
  const made = (name: string, attributes: Record<string, string | number>) => {
    const child = document.createElementNS('http://www.w3.org/2000/svg', name);
    for (const [key, value] of Object.entries(attributes)) child.setAttribute(key, value);
    return child;
  };
  const defs = made('defs', {});
  const pattern = { id: 'beyond', width: 7, height: 7, patternUnits: 'userSpaceOnUse', patternTransform: 'rotate(45)' };
  const stroke = made('path', { d: 'M0,0V7', stroke: '#9a9a9a', 'stroke-width': 1.5 });
  defs.appendChild(made('pattern', pattern)).appendChild(stroke);
  return defs;
}

/** Where in the year a day falls: 1 is the middle of January. */
function monthOf(date: string): number {
  const [, month, dayOfMonth] = date.split('-').map(Number) as [number, number, number];
  return month + (dayOfMonth - 15.5) / 31;
}

function asMeasured(months: Month[], measured: readonly Ring[], part: string): string {
  if (measured.length === 0) return '';
  const within = measured.filter(({ date, clearance }) => {
    const month = months.find((other) => other.month === Number(date.slice(5, 7)));
    return month && clearance >= month.low && clearance <= month.high;
  });
  return ` Rings are the ${part} as measured later: ${within.length} of ${measured.length} in the band.`;
}
