import type { Actuals } from '../../money/actuals.js';
import { type CostInput, estimateCost } from '../../money/cost.js';
import type { HoursEstimate } from '../../money/hours.js';
import { formatMoney, type Money } from '../../money/money.js';
import type { Offer } from '../../money/offers.js';
import type { DisplayItem } from '../kit/display.js';
import { right, table } from '../kit/table.js';

const left = (net: Money, cost: Money) => formatMoney({ ...net, minor: net.minor - cost.minor });

/**
 * What is left of the price on usual, poor and bad runs of days, with nothing spent on what goes wrong.
 *
 * @param price.net  what the maker keeps of it before costs
 */
export function leftOverTable(price: {
  spending: Omit<CostInput, 'hours'>;
  hours: Pick<HoursEstimate, 'p50' | 'p80' | 'p95'>;
  net: Money;
}): DisplayItem {
  const { spending, hours, net } = price;
  const atHours = (days: string, h: number) => {
    const { total } = estimateCost({ ...spending, hours: h, contingency: 0 });
    return [days, h.toFixed(1), formatMoney(total), left(net, total)];
  };
  return table({
    columns: ['Run of days', right('Hours'), right('Paid out'), right('Left over')],
    rows: [
      atHours('usual (half are worse)', hours.p50),
      atHours('one in five is worse', hours.p80),
      atHours('one in twenty is worse', hours.p95),
    ],
    caption: 'Left over at this price, contingency not spent',
  });
}

/** The same piece made in other ways, as `offersSideBySide` returns them. */
export function offerTable(offers: readonly Offer[]): DisplayItem {
  return table({
    columns: ['Made', right('Hours'), right('Cost'), right('Price'), right('Left over')],
    rows: offers.map(({ name, hours, cost, quote }) => [
      ...[name, hours.mean.toFixed(1)],
      ...[formatMoney(cost.total), formatMoney(quote.price), left(quote.net, cost.total)],
    ]),
    caption: 'Offers on the same terms',
  });
}

/** Wood and agreements of a finished piece, against what was planned. */
export function outcomeTable(actuals: Actuals, planned: { bought: number; yield: number }): DisplayItem {
  const percent = (share: number) => `${(100 * share).toFixed(0)} %`;
  return table({
    columns: ['', ''],
    rows: [
      ['Boards used', `${actuals.boardFeet.toFixed(2)} board feet; ${planned.bought.toFixed(2)} planned`],
      ['In the piece', `${percent(actuals.yield)}; ${percent(planned.yield)} planned`],
      ...actuals.changes.map(({ date, what }) => [`Agreed on ${date}`, what]),
      ...Object.entries(actuals.why).map(([id, because]) => [`Why: ${id}`, because]),
      ['Next time', actuals.learned || 'nothing noted'],
    ],
    caption: 'As it came out',
  });
}
