import { formatMoney, type Money, unitsOf } from '../../money/money.js';
import type { PriceChange } from '../../money/price-sensitivity.js';
import type { DisplayItem } from '../kit/display.js';
import { ink } from '../kit/svg.js';
import { plot } from './plot.js';

/**
 * What moves the price, largest first: for each figure the price with it low and with it high, around the price as planned.
 *
 * @param changes  as `priceSensitivity` gives them
 * @param planned  net price as planned, before it is rounded up
 */
export function priceTornadoPlot(changes: PriceChange[], planned: Money): DisplayItem {
  const rows = changes.map(({ what, range, low, high }) => {
    const ends = [unitsOf(low), unitsOf(high)];
    return { what: `${what}, ${range}`, from: Math.min(...ends), to: Math.max(...ends), low, high };
  });
  const middle = unitsOf(planned);
  const least = Math.min(middle, ...rows.map(({ from }) => from));
  const most = Math.max(middle, ...rows.map(({ to }) => to));
  const room = (most - least || 1) * 0.06;
  return plot(
    (Plot) => ({
      height: 86 + 28 * rows.length,
      marginLeft: 330,
      marginRight: 24,
      x: { label: `net price, ${planned.currency}`, domain: [least - room, most + room], grid: true, ticks: 5 },
      y: { domain: rows.map(({ what }) => what), label: null, padding: 0.35 },
      marks: [
        Plot.barX(rows, { x1: 'from', x2: 'to', y: 'what', fill: '#9a9a9a' }),
        Plot.ruleX([middle], { stroke: ink, strokeWidth: 2 }),
      ],
    }),
    {
      alt: `Net price ${formatMoney(planned)} as planned. ${changes.map(({ what, low, high }) => `${what}: ${formatMoney(low)} to ${formatMoney(high)}`).join('; ')}.`,
      caption: `The dark line is the net price as planned, ${formatMoney(planned)} before rounding. Each bar moves one figure alone, and the longest stands first: there a better guess is worth most.`,
    },
  );
}
