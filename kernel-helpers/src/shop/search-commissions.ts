import * as z from 'zod';
import { amount, day, oneOf, readParameters } from '../measure/parameters.js';
import { ShopError } from '../measure/shop-error.js';
import { unitsOf } from '../money/money.js';
import { species } from '../wood/species.js';
import type { CommissionCard } from './commission-card.js';

/** What to look for; all that is given must hold, and what a commission does not say does not hold. */
export interface CommissionQuery {
  /** Part of the wood's id or name: `walnut`. */
  wood?: string;
  /** Part of the joint's name: `dovetail`. */
  joint?: string;
  /** Words in the piece's, the client's or the folder's name. */
  words?: string;
  /** Hours it took, when it was closed. */
  hoursOver?: number;
  hoursUnder?: number;
  /** Code of ISO 4217: needed beside a price when the book holds more than one. */
  currency?: string;
  /** Price asked, currency units. */
  priceOver?: number;
  priceUnder?: number;
  /** Begun on or after, on or before; ISO days. */
  from?: string;
  to?: string;
  answer?: 'accepted' | 'declined';
}

const hours = amount({ least: 0, most: 100_000, unit: 'h', why: 'hours it took' }).optional();
const price = amount({ least: 0, most: 1e9, why: 'the price asked' }).optional();
const some = z.string({ error: 'possible: some words' }).trim().min(1, 'possible: some words').optional();
const fields = z.strictObject({
  wood: some,
  joint: some,
  words: some,
  hoursOver: hours,
  hoursUnder: hours,
  currency: z
    .string({ error: 'possible: a code of ISO 4217 such as USD' })
    .regex(/^[A-Z]{3}$/, 'possible: a code of ISO 4217 such as USD')
    .optional(),
  priceOver: price,
  priceUnder: price,
  from: day('begun on this day or after').optional(),
  to: day('begun on this day or before').optional(),
  answer: oneOf(['accepted', 'declined'], 'what the client said').optional(),
});

/**
 * The commissions that answer a question, in their order.
 *
 * @throws ShopError  one line: the field, the value given, what is possible, why
 * @example searchCommissions(shopBook().commissions, { wood: 'walnut', joint: 'dovetail', hoursOver: 20 })
 */
export function searchCommissions(commissions: readonly CommissionCard[], query: CommissionQuery): CommissionCard[] {
  const { wood, joint, words, hoursOver, hoursUnder, currency, priceOver, priceUnder, from, to, answer } =
    readParameters(fields, query);
  const currencies = [...new Set(commissions.flatMap(({ quoted }) => quoted?.price.currency ?? []))];
  if ((priceOver !== undefined || priceUnder !== undefined) && currency === undefined && currencies.length > 1)
    throw new ShopError(
      `currency: nothing given; possible: ${currencies.join(', ')} (the book holds more than one, and a price is one of one currency)`,
    );
  const holds = (card: CommissionCard): boolean => {
    const took = card.worked?.actual;
    const asked = card.quoted && unitsOf(card.quoted.price);
    return (
      (wood === undefined || has(woodName(card.species), wood)) &&
      (joint === undefined || has(card.joint, joint)) &&
      (words === undefined || has(`${card.piece} ${card.client} ${card.name}`, words)) &&
      within(took, hoursOver, hoursUnder) &&
      (currency === undefined || card.quoted?.price.currency === currency) &&
      within(asked, priceOver, priceUnder) &&
      (from === undefined || card.date >= from) &&
      (to === undefined || card.date <= to) &&
      (answer === undefined || card.answer === answer)
    );
  };
  return commissions.filter(holds);
}

function within(value: number | undefined, over: number | undefined, under: number | undefined): boolean {
  if (over === undefined && under === undefined) return true;
  return (
    value !== undefined && value > (over ?? Number.NEGATIVE_INFINITY) && value < (under ?? Number.POSITIVE_INFINITY)
  );
}

function has(text: string | undefined, part: string): boolean {
  return text?.toLowerCase().includes(part.toLowerCase()) ?? false;
}

/** A wood by id and name; one that is not in the list any more, by its id. */
function woodName(id: string | undefined): string | undefined {
  if (id === undefined) return undefined;
  try {
    return `${id} ${species(id).commonName}`;
  } catch {
    return id;
  }
}
