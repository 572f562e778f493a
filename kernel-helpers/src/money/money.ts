import { ShopError } from '../measure/shop-error.js';

/** An amount of money: a whole number of the currency's smallest unit, so that sums have no lost pennies. */
export interface Money {
  /** Cents for USD, yen for JPY. */
  minor: number;
  /** ISO 4217 code. */
  currency: string;
}

const currencyNames = new Intl.DisplayNames('en', { type: 'currency', fallback: 'none' });

function minorPerUnit(currency: string): number {
  if (!/^[A-Z]{3}$/.test(currency) || !currencyNames.of(currency))
    throw new ShopError(`currency: "${currency}" given; possible: a code of ISO 4217 such as USD, EUR, GBP, JPY`);
  const digits =
    new Intl.NumberFormat('en', { style: 'currency', currency }).resolvedOptions().maximumFractionDigits ?? 2;
  return 10 ** digits;
}

/**
 * To whole smallest units, halves away from zero. What a double adds in its sixteenth digit is taken off first: 1.005
 * times 100 is 100.49999999999999 to the machine and 100.5 to everyone else.
 */
function wholeUnits(minor: number): number {
  const meant = Number(minor.toPrecision(15));
  const rounded = Math.sign(meant) * Math.round(Math.abs(meant));
  if (!Number.isSafeInteger(rounded)) throw new ShopError(`${minor} given; possible: an amount of money`);
  return rounded + 0;
}

/**
 * An amount in whole currency units as money, rounded to the smallest unit, halves away from zero.
 *
 * @param amount  currency units, such as 14.5
 * @param currency  ISO 4217 code
 * @throws ShopError  not a number; unknown currency
 */
export function money(amount: number, currency: string): Money {
  return { minor: wholeUnits(amount * minorPerUnit(currency)), currency };
}

/** The amount in currency units. */
export function unitsOf(amount: Money): number {
  return amount.minor / minorPerUnit(amount.currency);
}

/**
 * Sum of amounts of one currency.
 *
 * @throws ShopError  currencies that differ; nothing to add
 */
export function addMoney(amounts: Money[]): Money {
  const currencies = [...new Set(amounts.map(({ currency }) => currency))];
  if (currencies.length !== 1)
    throw new ShopError(`currency: ${currencies.join(' and ') || 'none'} given; possible: amounts of one currency`);
  return { minor: amounts.reduce((sum, { minor }) => sum + minor, 0), currency: currencies[0] as string };
}

/**
 * One amount less another.
 *
 * @throws ShopError  currencies that differ
 */
export function lessMoney(from: Money, less: Money): Money {
  return addMoney([from, { ...less, minor: -less.minor }]);
}

/** A fraction of an amount, rounded to the smallest unit, halves away from zero. */
export function shareOfMoney(amount: Money, fraction: number): Money {
  return { minor: wholeUnits(amount.minor * fraction), currency: amount.currency };
}

/**
 * Divides an amount so that the shares add up to it to the last penny: each is rounded down, and what is left goes,
 * a smallest unit each, to those that were cut most.
 *
 * @param weights  zero or more each, such as [0.5, 0.5] or [3, 1, 1]; not all zero
 * @returns as many shares as weights; none is off its exact value by a smallest unit or more
 * @throws ShopError  a weight below zero; no weight over zero
 * @see method of largest remainders
 */
export function allocateMoney(amount: Money, weights: number[]): Money[] {
  const whole = weights.reduce((sum, weight) => sum + weight, 0);
  if (weights.some((weight) => !(weight >= 0)) || !(whole > 0) || whole === Infinity)
    throw new ShopError(`weights: ${weights.join(', ') || 'none'} given; possible: numbers of zero or more, one above`);
  const exact = weights.map((weight) => (amount.minor * weight) / whole);
  const shares = exact.map((share) => Math.floor(share));
  const order = exact.map((_, i) => i).sort((i, j) => rest(j) - rest(i) || i - j);
  const left = amount.minor - shares.reduce((sum, share) => sum + share, 0);
  for (const i of order.slice(0, left)) shares[i] = (shares[i] as number) + 1;
  return shares.map((minor) => ({ minor: minor + 0, currency: amount.currency }));

  function rest(i: number): number {
    return (exact[i] as number) - Math.floor(exact[i] as number);
  }
}

/** Money as it is written: `$1,234.50`. */
export function formatMoney(amount: Money, locale = 'en-US'): string {
  return new Intl.NumberFormat(locale, { style: 'currency', currency: amount.currency }).format(unitsOf(amount));
}
