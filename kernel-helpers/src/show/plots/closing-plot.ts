import type { OperationWorked } from '../../money/actuals.js';
import type { DisplayItem } from '../kit/display.js';
import { plot } from './plot.js';

const ink = '#1a1a1a';
const eightInTen = 1.2816;

/**
 * Hours estimated and taken, operation by operation, the largest difference first: the estimate's eight-in-ten range as a bar,
 * what it took as a dot.
 *
 * @param operations  as `readActuals` gives them
 */
export function closingPlot(operations: readonly OperationWorked[]): DisplayItem {
  const rows = operations
    .map(({ name, estimated, deviation, actual }) => ({
      name,
      estimated,
      actual,
      low: Math.max(0, estimated - eightInTen * deviation),
      high: estimated + eightInTen * deviation,
      words: `${actual.toFixed(1)} (${estimated.toFixed(1)})`,
    }))
    .sort((a, b) => Math.abs(b.actual - b.estimated) - Math.abs(a.actual - a.estimated));
  const most = Math.max(...rows.map(({ actual, high }) => Math.max(actual, high)), 0.1);
  const outside = rows.filter(({ actual, low, high }) => actual < low || actual > high);
  const hours = (h: number) => `${h.toFixed(1)} h`;
  const y = { y: 'name' };
  return plot(
    (Plot) => ({
      height: 60 + 26 * rows.length,
      marginLeft: 290,
      marginRight: 90,
      x: { label: 'hours', domain: [0, most * 1.1], grid: true },
      y: { domain: rows.map(({ name }) => name), label: null, tickSize: 0 },
      marks: [
        Plot.ruleY(rows, { ...y, x1: 'low', x2: 'high', stroke: '#b9c0c8', strokeWidth: 11 }),
        Plot.tickX(rows, { ...y, x: 'estimated', stroke: ink, strokeWidth: 2, insetTop: 5, insetBottom: 5 }),
        Plot.dot(rows, { ...y, x: 'actual', r: 5, fill: ink, stroke: 'white' }),
        Plot.text(rows, { ...y, text: 'words', frameAnchor: 'right', textAnchor: 'start', dx: 10 }),
      ],
    }),
    {
      alt: `Hours by operation, the largest difference first: ${rows.map((row) => `${row.name}, ${hours(row.estimated)} estimated, ${hours(row.actual)} taken`).join('; ')}.`,
      caption: `Dots are what it took, grey bars the range estimated for eight times in ten with its mean marked; at the right the hours taken, estimated in brackets. ${
        outside.length === 0
          ? 'Every operation lies in its range.'
          : `Outside the range: ${outside.map(({ name }) => name.toLowerCase()).join('; ')}.`
      }`,
    },
  );
}
