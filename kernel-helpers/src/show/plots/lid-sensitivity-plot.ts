import type { LidChange } from '../../fit/lid-sensitivity.js';
import { caliperScale } from '../../measure/length.js';
import type { DisplayItem } from '../kit/display.js';
import { plot } from './plot.js';

const columns = 3;
const ink = '#1a1a1a';

/**
 * What each change does to the lid's year, side by side on one scale: the plan first, then one thing changed at a time. Band
 * and line as in {@link clearancePlot}; the two limits as broken lines.
 *
 * @param changes  as `lidSensitivity` gives them
 * @param units  millimetres for `mm`, else inches
 */
export function lidSensitivityPlot(changes: LidChange[], units: 'tape' | 'mm' | 'both' = 'tape'): DisplayItem {
  const { unit, decimals, perInch } = caliperScale(units);
  const reading = (inches: number) => `${(inches * perInch).toFixed(decimals)} ${unit}`;
  const place = (index: number) => ({ column: index % columns, row: Math.floor(index / columns) });
  const months = changes.flatMap(({ fit }, index) =>
    fit.byMonth.map(({ month, clearance, low, high }) => ({
      month,
      clearance: clearance * perInch,
      low: low * perInch,
      high: high * perInch,
      ...place(index),
    })),
  );
  const limits = changes.flatMap(({ fit }, index) =>
    [fit.limits.leastClearance, fit.limits.mostClearance].map((at) => ({ at: at * perInch, ...place(index) })),
  );
  const highest = Math.max(...months.map(({ high }) => high), ...limits.map(({ at }) => at));
  const lowest = Math.min(0, ...months.map(({ low }) => low));
  const words = changes.map(({ what, fit, room }, index) => ({
    ...place(index),
    what,
    room: `room ${reading(room)}, plane to ${reading(fit.fittedWidth)}`,
  }));
  const rows = Math.ceil(changes.length / columns);
  const facets = { fx: 'column', fy: 'row' };
  return plot(
    (Plot) => ({
      height: 40 + rows * 165,
      marginTop: 44,
      marginBottom: 30,
      fx: { axis: null, padding: 0.08 },
      fy: { axis: null, padding: 0.32 },
      x: {
        domain: [0.7, 12.3],
        ticks: [1, 4, 7, 10],
        tickFormat: (month: number) => 'JFMAMJJASOND'[month - 1],
        label: null,
      },
      y: { domain: [lowest, highest * 1.02], ticks: 4, label: null, grid: true },
      marks: [
        Plot.areaY(months, { ...facets, x: 'month', y1: 'low', y2: 'high', fill: '#c3ccd6', fillOpacity: 1 }),
        Plot.ruleY(limits, { ...facets, y: 'at', stroke: ink, strokeDasharray: '5 4' }),
        Plot.line(months, { ...facets, x: 'month', y: 'clearance', stroke: ink, strokeWidth: 2 }),
        Plot.text(words, { ...facets, text: 'what', frameAnchor: 'top-left', dy: -32, fontWeight: 'bold' }),
        Plot.text(words, { ...facets, text: 'room', frameAnchor: 'top-left', dy: -16 }),
      ],
    }),
    {
      alt: `Clearance through the year for the plan and ${changes.length - 1} changes. ${changes.map(({ what, room }) => `${what}: room ${reading(room)}`).join('; ')}.`,
      caption: `Play of the lid, in ${unit === 'mm' ? 'millimetres' : 'inches'}, January to December, with one thing changed at a time; broken lines are the two limits. Room is what lies between the narrowest and the widest lid that may be planed.`,
    },
  );
}
