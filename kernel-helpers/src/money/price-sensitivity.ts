import { type CostInput, estimateCost } from './cost.js';
import type { Money } from './money.js';
import { quote, type Terms } from './quote.js';

/** What one figure does to the price when it alone is lower or higher. */
export interface PriceChange {
  what: string;
  /** How far it was moved, in words: "15.2 to 19.8 h". */
  range: string;
  /** Net price with the figure at its low and at its high end. */
  low: Money;
  high: Money;
  /** Larger less smaller, smallest units. */
  swing: number;
}

/**
 * What moves the price most: each figure is moved alone, all others as planned, and the net price is worked out anew.
 * Hours go from their low to their high end, everything else by the same share down and up.
 *
 * Prices are not rounded up here, so that a small change does not vanish.
 *
 * @param plan.spending  as for {@link estimateCost}
 * @param plan.terms  as for {@link quote}
 * @param plan.hours  eight times in ten between these
 * @param plan.share  0.1, a tenth, unless told otherwise
 * @returns largest swing first
 * @throws ShopError  as estimateCost and quote
 */
export function priceSensitivity(plan: {
  spending: CostInput;
  terms: Terms;
  hours: { low: number; high: number };
  share?: number;
}): PriceChange[] {
  const { spending, terms, hours, share = 0.1 } = plan;
  const priceOf = (changed: Partial<CostInput>, margin = terms.margin) =>
    quote({ ...terms, margin, roundTo: 0.01, cost: estimateCost({ ...spending, ...changed }).total }).net;
  const times = (bills: CostInput['otherMaterials'] = [], factor: number) =>
    bills.map((bill) => ({ ...bill, price: bill.price * factor }));
  const percent = `${(100 * share).toFixed(0)} % less and more`;
  const moved = (what: string, at: (factor: number) => Money, range = percent) =>
    priceChange(what, range, at(1 - share), at(1 + share));

  const changes = [
    priceChange(
      'hours',
      `${hours.low.toFixed(1)} to ${hours.high.toFixed(1)} h`,
      priceOf({ hours: hours.low }),
      priceOf({ hours: hours.high }),
    ),
    moved('pay for an hour', (f) => priceOf({ hourlyRate: spending.hourlyRate * f })),
    moved('overhead of a year', (f) => priceOf({ overheadPerYear: spending.overheadPerYear * f })),
    moved('hours that clients pay for', (f) => priceOf({ billableHoursPerYear: spending.billableHoursPerYear * f })),
    moved('boards', (f) => priceOf({ boards: spending.boards.map((board) => ({ ...board, price: board.price * f })) })),
    moved('other materials and packing', (f) =>
      priceOf({ otherMaterials: times(spending.otherMaterials, f), packing: (spending.packing ?? 0) * f }),
    ),
    moved('outside work', (f) => priceOf({ outsideWork: times(spending.outsideWork, f) })),
    moved('contingency', (f) => priceOf({ contingency: Math.min(1, spending.contingency * f) })),
    moved('margin', (f) => priceOf({}, Math.min(0.9, terms.margin * f))),
  ];
  return changes.filter(({ swing }) => swing > 0).sort((a, b) => b.swing - a.swing);
}

function priceChange(what: string, range: string, low: Money, high: Money): PriceChange {
  return { what, range, low, high, swing: Math.abs(high.minor - low.minor) };
}
