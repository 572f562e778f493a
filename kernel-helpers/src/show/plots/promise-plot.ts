import { dayNumber, isoDay } from '../../measure/day.js';
import { ofHundred } from '../../measure/of-hundred.js';
import type { Schedule } from '../../time/scheduled-steps.js';
import { dayAxis, longDay, utcDay } from '../kit/day-text.js';
import type { DisplayItem } from '../kit/display.js';
import { ink } from '../kit/svg.js';
import { plot } from './plot.js';

/**
 * How sure each day would be as a promise: of a hundred such pieces, how many are done by then.
 *
 * @param made  as `schedule` gives it
 */
export function promisePlot(made: Schedule): DisplayItem {
  const { readyBy, promised, odds, ready } = made;
  const first = dayNumber(readyBy[0]?.day as string);
  const last = dayNumber(readyBy.at(-1)?.day as string);
  const at = dayNumber(promised);
  const ends = [Math.min(first, at) - 3, Math.max(last, at) + 3] as const;
  const points = [
    { day: utcDay(isoDay(ends[0])), share: 0 },
    ...readyBy.map(({ day, share }) => ({ day: utcDay(day), share: 100 * share })),
    { day: utcDay(isoDay(ends[1])), share: 100 },
  ];
  const onTheRight = at > (ends[0] + ends[1]) / 2;
  return plot(
    (Plot) => ({
      height: 280,
      marginRight: 32,
      x: dayAxis(...ends, 10),
      y: { label: 'of a hundred pieces, done by then', domain: [0, 108], ticks: [0, 25, 50, 75, 100], grid: true },
      marks: [
        Plot.ruleX([utcDay(promised)], { stroke: ink, strokeDasharray: '5 4' }),
        Plot.line(points, { x: 'day', y: 'share', curve: 'step-after', stroke: ink, strokeWidth: 2 }),
        Plot.text([utcDay(promised)], {
          x: (day: Date) => day,
          y: 8,
          text: () => 'promised',
          dx: onTheRight ? -6 : 6,
          textAnchor: onTheRight ? 'end' : 'start',
          stroke: 'white',
          strokeWidth: 5,
          fill: ink,
        }),
      ],
    }),
    {
      alt: `Share of pieces done by each day: half by ${ready.p50}, eight in ten by ${ready.p80}, nineteen in twenty by ${ready.p95}; ${ofHundred(odds)} of a hundred by the promised day, ${promised}.`,
      caption: `Of a hundred such pieces, ${ofHundred(odds)} are done by the promised day, ${longDay(promised)} (broken line). Half are done by ${longDay(ready.p50)}, nineteen in twenty by ${longDay(ready.p95)}.`,
    },
  );
}
