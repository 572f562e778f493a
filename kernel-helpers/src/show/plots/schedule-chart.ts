import { dayNumber, isoDay } from '../../measure/day.js';
import { hoursOn, type WorkingCalendar } from '../../time/calendar.js';
import type { Schedule } from '../../time/scheduled-steps.js';
import { dayAxis, longDay, utcDay } from '../kit/day-text.js';
import type { DisplayItem } from '../kit/display.js';
import { ink } from '../kit/svg.js';
import { plot } from './plot.js';

/**
 * The steps over the days: work as bars, what passes by itself as thin lines behind it, closed days as stripes, the promise
 * as a broken line.
 *
 * @param made  as `schedule` gives it
 * @param calendar  the one it was made with
 */
export function scheduleChart(made: Schedule, calendar: WorkingCalendar): DisplayItem {
  const { steps, promised, finish } = made;
  const next = (iso: string) => utcDay(isoDay(dayNumber(iso) + 1));
  const bars = steps.map(({ name, start, finish, critical }) => ({
    name,
    from: utcDay(start),
    to: next(finish),
    critical,
  }));
  const waits = steps.flatMap(({ name, finish, wait }) =>
    wait && dayNumber(wait.until) > dayNumber(finish)
      ? [{ name, from: next(finish), to: utcDay(wait.until), what: wait.what }]
      : [],
  );
  const first = dayNumber(steps[0]?.start as string);
  const last = Math.max(...[promised, finish].map(dayNumber));
  const closed = Array.from({ length: last - first + 1 }, (_, i) => isoDay(first + i)).filter(
    (day) => hoursOn(calendar, day) === 0,
  );
  return plot(
    (Plot) => ({
      height: 100 + 22 * steps.length,
      marginLeft: 300,
      marginRight: 30,
      x: dayAxis(first, last + 2, 6),
      y: { domain: steps.map(({ name }) => name), label: null, padding: 0.3 },
      marks: [
        Plot.rectX(closed, { x1: (day: string) => utcDay(day), x2: next, fill: '#eeeeee' }),
        Plot.ruleY(waits, { y: 'name', x1: 'from', x2: 'to', stroke: ink, strokeWidth: 1.5, strokeDasharray: '2 3' }),
        Plot.barX(bars, {
          x1: 'from',
          x2: 'to',
          y: 'name',
          // Full on the chain that decides the finish, hollow beside it.
          fill: (bar: { critical: boolean }) => (bar.critical ? ink : 'white'),
          stroke: ink,
        }),
        Plot.ruleX([next(promised)], { stroke: ink, strokeDasharray: '5 4' }),
        Plot.text([next(promised)], {
          x: (day: Date) => day,
          frameAnchor: 'top',
          dy: -14,
          dx: -4,
          textAnchor: 'end',
          text: () => 'promised',
        }),
      ],
    }),
    {
      alt: `Steps over the days, from ${longDay(isoDay(first))} to ${longDay(finish)}: ${steps.map(({ name, start, finish: end, critical }) => `${name} ${start === end ? start : `${start} to ${end}`}${critical ? '' : ' (fits in between)'}`).join(', ')}. Promised for ${promised}.`,
      caption: `Bars are days with work on the step, dotted lines what passes by itself, grey stripes days without work. Full bars decide the finish, ${longDay(finish)}: each begins when the one above it lets it. Hollow bars fit in between. The broken line is the end of the promised day, ${longDay(promised)}.`,
    },
  );
}
