import * as z from 'zod';
import { dayNumber, weekday } from '../measure/day.js';
import { amount, readParameters } from '../measure/parameters.js';
import { ShopError } from '../measure/shop-error.js';

const weekdays = ['monday', 'tuesday', 'wednesday', 'thursday', 'friday', 'saturday', 'sunday'] as const;

/** When there is work on this piece. Days are those of the wall calendar in the shop: no time zone comes into it. */
export interface WorkingCalendar {
  /** Hours of work on each day of the week; a day left out has none. */
  hours: { [day in (typeof weekdays)[number]]?: number };
  /** Days off and holidays: days, or first and last day as ISO 8601 writes an interval, `2026-12-24/2027-01-02`. */
  closed?: string[];
  /** Hour of the day at which work begins: a glue that takes ten hours is ready for tomorrow's work. 8 unless told otherwise. */
  opens?: number;
}

/** The hours that each day of a span has, and the sum of them before it. @internal */
export interface WorkingDays {
  /** Day number of the first day. */
  first: number;
  /** Hours of each day. */
  hours: Float64Array;
  /** Hours of all days before; one longer than `hours`. */
  before: Float64Array;
  /** Hour of the day at which work begins. */
  opens: number;
}

const calendarFields: z.ZodType<Required<WorkingCalendar>> = z.strictObject({
  hours: z.strictObject(
    Object.fromEntries(
      weekdays.map((day) => [day, amount({ least: 0, most: 16, unit: 'h', why: 'hours of work that day' }).optional()]),
    ),
  ),
  closed: z.array(z.string({ error: 'possible: days such as 2026-12-25, or 2026-12-24/2027-01-02' })).default([]),
  opens: amount({ least: 0, most: 24, why: 'hour of the day at which work begins' }).default(8),
});

/**
 * Works a calendar out, day by day.
 *
 * @param calendar  see {@link WorkingCalendar}
 * @param first  ISO day
 * @param days  how many
 * @throws ShopError  one line: the field, the value given, what is possible; a week without an hour of work; a last day
 *   before its first
 * @internal
 */
export function workingDays(calendar: WorkingCalendar, first: string, days: number): WorkingDays {
  const { hours: week, closed, opens } = readParameters(calendarFields, calendar);
  const ofWeek = weekdays.map((day) => week[day] ?? 0);
  if (ofWeek.every((hours) => hours === 0))
    throw new ShopError('hours: none on any day of the week given; possible: at least one day with some hours of work');
  const from = dayNumber(first);
  const hours = new Float64Array(days);
  for (let i = 0; i < days; i++) hours[i] = ofWeek[weekday(from + i)] as number;
  for (const span of closed) {
    const [start, end] = closedSpan(span);
    for (let day = Math.max(start, from); day <= Math.min(end, from + days - 1); day++) hours[day - from] = 0;
  }
  const before = new Float64Array(days + 1);
  for (let i = 0; i < days; i++) before[i + 1] = (before[i] as number) + (hours[i] as number);
  return { first: from, hours, before, opens };
}

function closedSpan(span: string): [number, number] {
  const ends = span.split('/');
  const problem = (why: string) =>
    new ShopError(`closed: "${span}" given; possible: a day such as 2026-12-25, or 2026-12-24/2027-01-02 (${why})`);
  if (ends.length > 2) throw problem('one first and one last day');
  const [start, end] = ends.map((iso) => {
    try {
      return dayNumber(iso.trim());
    } catch {
      throw problem('days that exist');
    }
  }) as [number, number?];
  const last = end ?? start;
  if (last < start) throw problem('the last day not before the first');
  return [start, last];
}

/** Hours of work on one day. */
export function hoursOn(calendar: WorkingCalendar, day: string): number {
  return workingDays(calendar, day, 1).hours[0] as number;
}

/**
 * Day, counted from the first, on which an hour of work falls. An hour at which a day ends belongs to that day where work
 * is `ending`, else to the next day that has work. One past the last day where there are not hours enough.
 *
 * @internal
 */
export function dayOfHour({ before }: WorkingDays, hour: number, ending: boolean): number {
  let low = 0;
  let high = before.length - 1;
  while (low < high) {
    const middle = (low + high) >> 1;
    const past = before[middle + 1] as number;
    if (ending ? past >= hour : past > hour) high = middle;
    else low = middle + 1;
  }
  return low;
}

/**
 * Day, counted from the first and with its fraction, on the clock when a wait is over that begins as this hour of work ends.
 *
 * @internal
 */
export function waitOver(days: WorkingDays, hour: number, wait: number): number {
  const day = dayOfHour(days, hour, true);
  return day + (days.opens + hour - (days.before[day] as number)) / 24 + wait;
}

/** First hour of work at or after a moment on the clock. @internal */
export function hourAt({ hours, before, opens }: WorkingDays, clock: number): number {
  const day = Math.floor(clock);
  if (day >= hours.length) return Infinity;
  const since = (clock - day) * 24 - opens;
  return (before[day] as number) + Math.min(Math.max(since, 0), hours[day] as number);
}
