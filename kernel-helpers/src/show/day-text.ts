import { dayNumber } from '../measure/day.js';

const long = new Intl.DateTimeFormat('en-GB', { day: 'numeric', month: 'long', year: 'numeric', timeZone: 'UTC' });
const short = new Intl.DateTimeFormat('en-GB', { weekday: 'short', day: 'numeric', month: 'short', timeZone: 'UTC' });

/** An ISO day as plots place it. */
export function utcDay(iso: string): Date {
  return new Date(dayNumber(iso) * 86_400_000);
}

/** `12 February 2027`: the month in words, so that no reader takes it for the day. */
export function longDay(iso: string): string {
  return long.format(utcDay(iso));
}

/** `Fri 12 Feb` */
export function shortDay(iso: string): string {
  return short.format(utcDay(iso)).replace(',', '');
}
