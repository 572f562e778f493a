import { ShopError } from './shop-error.js';

// Days are counted in UTC, where each has 24 hours: no clock is put forward or back, and no day is lost on the way.
const perDay = 86_400_000;

/**
 * A calendar day as a whole number, so that days can be added and compared; 1970-01-01 is 0.
 *
 * @param iso  a day that exists, `2028-02-29`
 * @throws ShopError  anything else
 */
export function dayNumber(iso: string): number {
  const number = /^\d{4}-\d\d-\d\d$/.test(iso) ? Date.parse(`${iso}T00:00:00Z`) / perDay : Number.NaN;
  if (!Number.isInteger(number) || isoDay(number) !== iso)
    throw new ShopError(`day: "${iso}" given; possible: a day that exists, written like 2026-11-25`);
  return number;
}

/** The calendar day of a day number, in ISO form. */
export function isoDay(number: number): string {
  return new Date(number * perDay).toISOString().slice(0, 10);
}

/** Monday is 0, Sunday 6. */
export function weekday(number: number): number {
  // 1970-01-01 was a Thursday.
  return (((number + 3) % 7) + 7) % 7;
}
