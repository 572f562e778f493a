import * as z from 'zod';
import { dayNumber, isoDay } from '../measure/day.js';
import { evaluate, type Formula } from '../measure/formula.js';
import { amount, day, readParameters, words } from '../measure/parameters.js';
import { addMoney, allocateMoney, lessMoney, type Money, money, shareOfMoney, unitsOf } from './money.js';

/** Price for the client. */
export interface Quote {
  /** What the client pays in all, tax included. */
  price: Money;
  /** The same without tax: what the shop keeps. */
  net: Money;
  /** Nothing where no tax is asked. */
  tax: { name: string; rate: number; amount: Money };
  /** Profit over net price. */
  margin: number;
  /** Profit over cost: a different number from the margin. */
  markup: number;
  deposit: Money;
  balance: Money;
  /** ISO day. */
  validUntil: string;
}

/** How the maker's tax goes: by the maker's own rule. */
export interface TaxRule {
  /** What it is called on the bill. */
  name: string;
  /** A fraction: 8.25 % is 0.0825. */
  rate: number;
  /** `on top` of a round net price, or `inside` a round price that the client pays. */
  how: 'on top' | 'inside';
}

/** On what terms a price is offered. */
export interface Terms {
  /** Profit over net price, 0 to 0.9. */
  margin: number;
  /** Paid at the order, a fraction of the price. */
  deposit: number;
  /** ISO day the quote is written. */
  date: string;
  validDays: number;
  /** No tax unless told otherwise. */
  tax?: TaxRule;
  /** Price rounded up to a multiple of this many currency units; 1 unless told otherwise. */
  roundTo?: number;
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
  tax: z
    .strictObject({
      name: words('what the tax is called on the bill'),
      rate: amount({ least: 0, most: 0.5, why: 'a fraction: 8.25 % is 0.0825; ask your tax office' }),
      how: z.enum(['on top', 'inside'], { error: 'possible: on top, inside (of a round price)' }),
    })
    .default({ name: 'Tax', rate: 0, how: 'on top' }),
  roundTo: amount({ least: 0.01, most: 1000, why: 'what the price is rounded up to' }).default(1),
});

/**
 * Price, tax, deposit and validity from the cost.
 *
 * @param offer.cost  what the piece costs the shop
 * @param offer.margin, offer.deposit, offer.date, offer.validDays, offer.tax, offer.roundTo  see {@link Terms}
 * @returns margin and markup of the rounded price; net and tax add up to it, and so do deposit and balance
 * @throws ShopError  one line: the field, the value given, what is possible, why
 */
export function quote(offer: { cost: Money } & Terms): Quote {
  const { cost } = offer;
  const { margin, deposit, date, validDays, tax, roundTo } = readParameters(quoteFields, { ...offer });
  const wanted = evaluate(priceFormula, { K: unitsOf(cost), m: margin });
  const { net, price } = withTax(wanted, tax, roundTo, cost.currency);
  const profit = lessMoney(net, cost).minor;
  const [paidFirst, balance] = allocateMoney(price, [deposit, 1 - deposit]) as [Money, Money];
  return {
    price,
    net,
    tax: { name: tax.name, rate: tax.rate, amount: lessMoney(price, net) },
    margin: net.minor === 0 ? 0 : profit / net.minor,
    markup: cost.minor === 0 ? 0 : profit / cost.minor,
    deposit: paidFirst,
    balance,
    validUntil: isoDay(dayNumber(date) + Math.floor(validDays)),
  };
}

/** Net price and price, the one that is named rounded up, neither below what was wanted. */
function withTax(wanted: number, { rate, how }: TaxRule, roundTo: number, currency: string) {
  const roundUp = (units: number) => money(Math.ceil(units / roundTo - 1e-9) * roundTo, currency);
  if (how === 'on top') {
    const net = roundUp(wanted);
    return { net, price: addMoney([net, shareOfMoney(net, rate)]) };
  }
  const price = roundUp(wanted * (1 + rate));
  return { price, net: lessMoney(price, shareOfMoney(price, rate / (1 + rate))) };
}
