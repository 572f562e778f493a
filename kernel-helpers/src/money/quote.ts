import { z } from 'zod';
import { evaluate, type Formula } from '../measure/formula.js';
import { amount, day, readParameters } from '../measure/parameters.js';
import { type Money, money, unitsOf } from './money.js';

/** Price for the client. */
export interface Quote {
  price: Money;
  /** Profit over price. */
  margin: number;
  /** Profit over cost: a different number from the margin. */
  markup: number;
  deposit: Money;
  balance: Money;
  /** ISO day. */
  validUntil: string;
}

/** Price that leaves the wanted margin. */
export const priceFormula: Formula<'K' | 'm'> = {
  name: 'Price from cost and margin',
  result: { tex: 'P', meaning: 'price', unit: '' },
  expression: 'K / (1 - m)',
  symbols: {
    K: { meaning: 'cost to the shop', unit: '', min: 0 },
    m: { meaning: 'margin wanted, a fraction of the price', unit: '', min: 0, max: 0.9 },
  },
  source: 'definition: margin is profit over price',
};

/** What must be put on the cost to come to that margin. */
export const markupFormula: Formula<'m'> = {
  name: 'Markup that gives a margin',
  result: { tex: 'u', meaning: 'markup, a fraction of the cost', unit: '' },
  expression: 'm / (1 - m)',
  symbols: { m: priceFormula.symbols.m },
  source: 'definition: markup is profit over cost',
};

const quoteFields = z.object({
  margin: amount({ least: 0, most: 0.9, why: 'profit over price, a fraction: 25 % is 0.25' }),
  deposit: amount({ least: 0, most: 1, why: 'paid at the order, a fraction of the price' }),
  date: day('the day the quote is written'),
  validDays: amount({ least: 1, most: 365, unit: 'days', why: 'how long the quote holds' }),
});

/**
 * Price, deposit and validity from the cost.
 *
 * @param offer.cost  what the piece costs the shop
 * @param offer.margin  profit over price, 0 to 0.9
 * @param offer.roundTo  price rounded up to a multiple of this many currency units; 1 unless told otherwise
 * @returns margin and markup of the rounded price; deposit and balance add up to it
 * @throws ShopError  one line: the field, the value given, what is possible, why
 */
export function quote(offer: {
  cost: Money;
  margin: number;
  deposit: number;
  date: string;
  validDays: number;
  roundTo?: number;
}): Quote {
  const { cost, roundTo = 1 } = offer;
  const { margin, deposit, date, validDays } = readParameters(quoteFields, { ...offer });
  const step = readParameters(amount({ least: 0.01, most: 1000, why: 'what the price is rounded up to' }), roundTo);
  const wanted = evaluate(priceFormula, { K: unitsOf(cost), m: margin });
  const price = money(Math.ceil(wanted / step - 1e-9) * step, cost.currency);
  const profit = price.minor - cost.minor;
  const paidFirst: Money = { minor: Math.round(price.minor * deposit), currency: cost.currency };
  const until = new Date(`${date}T00:00:00Z`);
  until.setUTCDate(until.getUTCDate() + validDays);
  return {
    price,
    margin: price.minor === 0 ? 0 : profit / price.minor,
    markup: cost.minor === 0 ? 0 : profit / cost.minor,
    deposit: paidFirst,
    balance: { minor: price.minor - paidFirst.minor, currency: cost.currency },
    validUntil: until.toISOString().slice(0, 10),
  };
}
