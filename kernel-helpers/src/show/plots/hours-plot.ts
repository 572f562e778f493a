import type { HoursEstimate } from '../../money/hours.js';
import type { DisplayItem } from '../kit/display.js';
import { ink } from '../kit/svg.js';
import { plot } from './plot.js';

/**
 * Hours by operation, longest first, each with the range that its least and its most allow.
 *
 * @param hours  as `estimateHours` gives them
 */
export function hoursPlot(hours: HoursEstimate): DisplayItem {
  const rows = [...hours.byOperation]
    .sort((a, b) => b.mean - a.mean)
    .map(({ name, mean, minutes: [least, , most] }) => ({ name, mean, least: least / 60, most: most / 60 }));
  return plot(
    (Plot) => ({
      height: 86 + 24 * rows.length,
      marginLeft: 300,
      x: { label: 'hours', grid: true, domain: [0, Math.max(...rows.map(({ most }) => most)) * 1.03] },
      y: { domain: rows.map(({ name }) => name), label: null },
      marks: [
        Plot.barX(rows, { x: 'mean', y: 'name', fill: '#b3b3b3' }),
        Plot.ruleY(rows, { y: 'name', x1: 'least', x2: 'most', stroke: ink, strokeWidth: 2 }),
      ],
    }),
    {
      alt: `Hours by operation, longest first: ${rows.map(({ name, mean }) => `${name} ${mean.toFixed(1)}`).join(', ')}.`,
      caption: `${hours.mean.toFixed(1)} hours in all. Bars are the estimate, the dark lines reach from all going well to a bad day. All together half of such pieces take under ${hours.p50.toFixed(1)} hours, eight in ten under ${hours.p80.toFixed(1)}, nineteen in twenty under ${hours.p95.toFixed(1)}. A piece that goes slowly goes slowly in every step: its pace is taken to scatter by ${(100 * hours.pace).toFixed(0)} %, common practice, no source.`,
    },
  );
}
