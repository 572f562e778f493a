import type { MillingLoss } from '../../stock/milling/milling-loss.js';
import type { DisplayItem } from '../kit/display.js';
import { plot } from './plot.js';

/**
 * The wood that is left after each step of milling, and its share of what was there at first.
 *
 * @param milling  as `millingLoss` gives it
 */
export function millingPlot(milling: Pick<MillingLoss, 'steps' | 'yield'>): DisplayItem {
  const rows = milling.steps.map((step) => ({ ...step, share: `${(100 * step.yield).toFixed(0)} %` }));
  return plot(
    (Plot) => ({
      height: 86 + 30 * rows.length,
      marginLeft: 210,
      x: { label: 'board feet left', grid: true, domain: [0, Math.max(...rows.map(({ left }) => left)) * 1.1] },
      y: { domain: rows.map(({ step }) => step), label: null },
      marks: [
        Plot.barX(rows, { x: 'left', y: 'step', fill: '#8a8a8a' }),
        Plot.text(rows, { x: 'left', y: 'step', text: 'share', dx: 6, textAnchor: 'start' }),
      ],
    }),
    {
      alt: `Wood left after each step: ${rows.map(({ step, left, share }) => `${step} ${left.toFixed(2)} board feet (${share})`).join(', ')}.`,
      caption: `Of the boards you use, ${(100 * milling.yield).toFixed(0)} % ends in the piece. What the rough cut leaves over is kerf, waste, and the offcuts that go back to your stock.`,
    },
  );
}
