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
 * An amount in whole currency units as money, rounded to the smallest unit.
 *
 * @param amount  currency units, such as 14.5
 * @param currency  ISO 4217 code
 * @throws ShopError  not a number; unknown currency
 */
export function money(amount: number, currency: string): Money {
  const minor = Math.round(amount * minorPerUnit(currency));
  if (!Number.isSafeInteger(minor)) throw new ShopError(`${amount} ${currency} given; possible: an amount of money`);
  return { minor: minor + 0, currency };
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

/** Money as it is written: `$1,234.50`. */
export function formatMoney(amount: Money, locale = 'en-US'): string {
  return new Intl.NumberFormat(locale, { style: 'currency', currency: amount.currency }).format(unitsOf(amount));
}
