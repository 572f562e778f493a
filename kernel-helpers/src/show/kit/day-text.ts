import { dayNumber, isoDay, weekday } from '../../measure/day.js';

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

/** `Fri 12 Feb`, kept on one line. */
export function shortDay(iso: string): string {
  return short.format(utcDay(iso)).replace(',', '').replaceAll(' ', '\u00a0');
}

const tick = new Intl.DateTimeFormat('en-GB', { day: 'numeric', month: 'short', timeZone: 'UTC' });

/** An axis of days with a label on some Mondays, as many as there is room for. Plot options. */
export function dayAxis(first: number, last: number, most: number): object {
  const monday = first + ((7 - weekday(first)) % 7);
  const every = 7 * Math.max(1, Math.ceil((last - monday) / 7 / most));
  const ticks: Date[] = [];
  for (let day = monday; day <= last; day += every) ticks.push(utcDay(isoDay(day)));
  return {
    type: 'utc',
    label: 'Mondays',
    domain: [first, last].map((day) => utcDay(isoDay(day))),
    ticks,
    tickFormat: (day: Date) => tick.format(day),
  };
}
