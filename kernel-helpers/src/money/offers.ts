import { type Cost, type CostInput, estimateCost } from './cost.js';
import { estimateHours, type HoursEstimate } from './hours.js';
import type { Counts } from './operations.js';
import { type Quote, quote, type Terms } from './quote.js';

/** One way to make the piece, priced. */
export interface Offer {
  name: string;
  hours: HoursEstimate;
  cost: Cost;
  quote: Quote;
}

/** A way to make the piece, and what is different in it from the piece as planned. */
export interface OtherWay {
  name: string;
  /** Counts that differ: another joint, no lettering. */
  counts?: Partial<Counts>;
  /** Price of a board foot of another wood. */
  boardPrice?: number;
  /** Whatever else of the cost differs. */
  spending?: Partial<Omit<CostInput, 'hours' | 'currency'>>;
}

/**
 * The same piece made in other ways, each priced from its own hours and its own spending on the same terms, for a client
 * to choose from.
 *
 * @param offers.counts, offers.spending, offers.terms  the piece as planned
 * @param offers.ways  what each offer changes; an empty change is the piece as planned
 * @returns in the order given
 * @throws ShopError  as estimateHours, estimateCost and quote
 */
export function offersSideBySide(offers: {
  counts: Counts;
  spending: Omit<CostInput, 'hours'>;
  terms: Terms;
  ways: OtherWay[];
}): Offer[] {
  const { counts, spending, terms, ways } = offers;
  return ways.map(({ name, counts: other, boardPrice, spending: changed }) => {
    const hours = estimateHours({ counts: { ...counts, ...other } });
    const boards =
      boardPrice === undefined ? spending.boards : spending.boards.map((board) => ({ ...board, price: boardPrice }));
    const cost = estimateCost({ ...spending, boards, ...changed, hours: hours.mean });
    return { name, hours, cost, quote: quote({ ...terms, cost: cost.total }) };
  });
}
