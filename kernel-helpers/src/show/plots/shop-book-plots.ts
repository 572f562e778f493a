import type { Correction } from '../../money/correction.js';
import type { CommissionCard } from '../../shop/commission-card.js';
import { type ShopBook, yearOf } from '../../shop/shop-book.js';
import { monthNames } from '../../wood/air/months.js';
import { capital } from '../kit/capital.js';
import type { DisplayItem } from '../kit/display.js';
import { plot } from './plot.js';

const ink = '#1a1a1a';
const dots = { r: 3.5, stroke: ink, strokeOpacity: 0.7, fill: 'none' };

/**
 * The factor of each operation with its band, the farthest from 1 first; to the right of 1 the work takes longer than estimated.
 *
 * @param corrections  as `shopBook` gives them; at least one
 */
export function correctionPlot(corrections: readonly Correction[]): DisplayItem {
  const rows = [...corrections].sort((a, b) => Math.abs(Math.log(b.factor)) - Math.abs(Math.log(a.factor)));
  const lowest = Math.min(0.8, ...rows.map(({ low }) => low));
  const highest = Math.max(1.25, ...rows.map(({ high }) => high));
  const ticks = [0.25, 0.5, 0.75, 1, 1.25, 1.5, 2, 3, 4].filter(
    (tick) => tick >= lowest * 0.95 && tick <= highest * 1.05,
  );
  const sure = rows.filter(({ low, high }) => low > 1 || high < 1);
  const words = (row: Correction) => `${row.factor.toFixed(2)} (${row.pieces})`;
  return plot(
    (Plot) => ({
      height: 70 + 26 * rows.length,
      marginLeft: 290,
      marginRight: 96,
      x: {
        type: 'log',
        label: 'times the estimate',
        domain: [lowest * 0.95, highest * 1.05],
        ticks,
        tickFormat: String,
      },
      y: { domain: rows.map(({ name }) => name), label: null, tickSize: 0 },
      marks: [
        Plot.gridX({ ticks, stroke: '#d8d8d8', strokeOpacity: 1 }),
        Plot.ruleX([1], { stroke: ink, strokeDasharray: '5 4' }),
        Plot.ruleY(rows, { y: 'name', x1: 'low', x2: 'high', stroke: '#8d97a3', strokeWidth: 4 }),
        Plot.dot(rows, { y: 'name', x: 'factor', r: 5, fill: ink, stroke: 'white' }),
        Plot.text(rows, { y: 'name', text: words, frameAnchor: 'right', textAnchor: 'start', dx: 10 }),
      ],
    }),
    {
      alt: `Time taken over time estimated, by operation: ${rows.map((row) => `${row.name} ${row.factor.toFixed(2)}, between ${row.low.toFixed(2)} and ${row.high.toFixed(2)}, from ${row.pieces} pieces`).join('; ')}.`,
      caption: `Dots are the factors for the next estimate, bars hold the true one eight times in ten; the number of pieces stands in brackets. ${
        sure.length === 0
          ? 'None is clearly off yet.'
          : sure.length > 4
            ? `${sure.length} of ${rows.length} are clearly off.`
            : `Clearly off: ${sure.map(({ name }) => name.toLowerCase()).join('; ')}.`
      }`,
    },
  );
}

/**
 * What was asked for an hour of estimated work through the years, one currency at a time, with a straight line where one can
 * be drawn.
 */
export function pricesPlot({ currency, asked, trend }: ShopBook['prices'][0]): DisplayItem {
  const points = asked.map(({ date, perHour }) => ({ year: yearOf(date), perHour }));
  const [first, last] = [points[0]?.year ?? 0, points.at(-1)?.year ?? 0];
  const at = (year: number) => ({ year, perHour: (trend?.intercept ?? 0) + (trend?.slope ?? 0) * year });
  const rise = trend && `${Math.abs(trend.slope).toFixed(2)} ${currency} a year ${trend.slope < 0 ? 'less' : 'more'}`;
  const clear = trend && Math.abs(trend.slope) > 2 * trend.error;
  return plot(
    (Plot) => ({
      height: 280,
      x: years(first, last),
      y: { label: `asked for an hour, ${currency}`, grid: true, zero: true },
      marks: [
        Plot.dot(points, { x: 'year', y: 'perHour', ...dots }),
        ...(trend ? [Plot.line([at(first), at(last)], { x: 'year', y: 'perHour', stroke: ink, strokeWidth: 2 })] : []),
      ],
    }),
    {
      alt: `Price over estimated hours for ${points.length} quotes in ${currency}.${rise ? ` A straight line rises or falls by ${rise}.` : ''}`,
      caption: `Price over estimated hours, one ring a quote. ${
        rise ? `The line: ${rise}${clear ? '' : ', which may be chance'}.` : 'Too few quotes for a line.'
      }`,
    },
  );
}

/** Part of the boards bought that is in the piece, commission by commission. */
export function yieldPlot(commissions: readonly CommissionCard[]): DisplayItem {
  const points = commissions.flatMap(({ date, yield: part, worked }) =>
    part === undefined ? [] : [{ year: yearOf(date), percent: 100 * part, closed: worked !== undefined }],
  );
  const middle = median(points.map(({ percent }) => percent));
  return plot(
    (Plot) => ({
      height: 240,
      x: years(points[0]?.year ?? 0, points.at(-1)?.year ?? 0),
      y: { label: 'of the boards in the piece, %', grid: true, zero: true },
      marks: [
        Plot.ruleY([middle], { stroke: ink, strokeDasharray: '5 4' }),
        Plot.dot(points, {
          x: 'year',
          y: 'percent',
          ...dots,
          fill: ({ closed }: { closed: boolean }) => (closed ? ink : 'white'),
        }),
      ],
    }),
    {
      alt: `Yield of ${points.length} commissions; half of them lie above ${middle.toFixed(0)} %.`,
      caption: `Filled: as it came out. Rings: as planned, not closed. The broken line is the middle one, ${middle.toFixed(0)} %.`,
    },
  );
}

/** Measured lids beside their prediction, by month: 0 is the middling board, 1 and -1 the edges of the band for nine in ten. */
export function lidSeasonsPlot({ lids, lidsInBand }: Pick<ShopBook, 'lids' | 'lidsInBand'>): DisplayItem {
  const points = lids.map(({ date, clearance, predicted, low, high }) => ({
    month: Number(date.slice(5, 7)) + (Number(date.slice(8, 10)) - 15.5) / 31,
    off:
      clearance >= predicted
        ? (clearance - predicted) / (high - predicted)
        : (clearance - predicted) / (predicted - low),
  }));
  const share = lidsInBand
    ? `${lidsInBand.count} of ${lidsInBand.of} lie in the band (eight times in ten the true share is between ${percent(lidsInBand.low)} and ${percent(lidsInBand.high)}; nine in ten were predicted)`
    : 'no lid was measured yet';
  const reach = Math.max(1.5, ...points.map(({ off }) => Math.abs(off) * 1.05));
  return plot(
    (Plot) => ({
      height: 280,
      x: {
        domain: [0.4, 12.6],
        ticks: monthNames.map((_, i) => i + 1),
        tickFormat: (month: number) => monthNames[month - 1]?.slice(0, 3),
        label: null,
        tickSize: 0,
      },
      y: { label: 'off the prediction; 1 is the edge of the band', domain: [-reach, reach], grid: true },
      marks: [
        Plot.rectY([0], { x1: 0.4, x2: 12.6, y1: -1, y2: 1, fill: '#c3ccd6', fillOpacity: 0.5 }),
        Plot.ruleY([0], { stroke: ink }),
        Plot.ruleY([-1, 1], { stroke: ink, strokeDasharray: '5 4' }),
        Plot.dot(points, { x: 'month', y: 'off', ...dots, fill: 'white' }),
      ],
    }),
    {
      alt: `Lids measured in later seasons beside what was predicted: ${share}.`,
      caption: `One ring a measurement: above the middle the lid has more play than predicted. ${capital(share)}.`,
    },
  );
}

function years(first: number, last: number) {
  const [from, to] = [Math.floor(first), Math.max(Math.ceil(last), Math.floor(first) + 1)];
  const step = Math.ceil((to - from) / 10);
  return {
    label: null,
    domain: [from, to],
    ticks: Array.from({ length: Math.floor((to - from) / step) + 1 }, (_, i) => from + i * step),
    tickFormat: (year: number) => String(year),
  };
}

function median(values: number[]): number {
  const sorted = [...values].sort((a, b) => a - b);
  return sorted[Math.floor(sorted.length / 2)] ?? 0;
}

function percent(share: number): string {
  return `${(100 * share).toFixed(0)} %`;
}
