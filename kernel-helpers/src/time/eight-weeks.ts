import { dayNumber, isoDay } from '../measure/day.js';
import { type WorkingCalendar, workingDays } from './calendar.js';

/** Days of a usual week. */
const usual: WorkingCalendar = { hours: { monday: 8, tuesday: 8, wednesday: 8, thursday: 8, friday: 8 } };

/**
 * The day that is offered for a promise: eight weeks on, or the next day after it on which the shop works.
 *
 * @param begun  ISO day
 * @param calendar  when the shop works; Monday to Friday when left out
 * @returns ISO day
 */
export function eightWeeksOn(begun: string, calendar: WorkingCalendar = usual): string {
  const first = isoDay(dayNumber(begun) + 56);
  const working = workingDays(calendar, first, 366).hours.findIndex((hours) => hours > 0);
  return isoDay(dayNumber(first) + Math.max(0, working));
}
