import type { MonthOfMoisture } from '../../fit/seasonal-fit.js';
import { monthNames } from '../../wood/air/months.js';
import type { MoistureOnDay } from '../../wood/drying/drying.js';
import type { SwingFollowed } from '../../wood/drying/swing-followed.js';
import type { DisplayItem } from '../kit/display.js';
import { type Curve, curvePlot } from './curve-plot.js';

/**
 * Moisture through the year: wood outdoors, wood that followed the room at once, and the board that follows late.
 *
 * @param year.outdoors  moisture wood would come to outdoors, by month, %
 * @param year.follows  as `swingFollowed` gives it
 * @param year.what  what the board is, for the label: "the lid"
 */
export function moistureYearPlot(year: {
  outdoors: MonthOfMoisture[];
  follows: SwingFollowed;
  what: string;
}): DisplayItem {
  const { outdoors, follows, what } = year;
  const x = (day: number) => 0.5 + (12 * (day - 0.5)) / follows.days.length;
  const percent = (moisture: number) => `${moisture.toFixed(1)} %`;
  const range = ({ driest, wettest }: SwingFollowed['board']) =>
    `${percent(driest.moisture)} to ${percent(wettest.moisture)}`;
  const curves: Curve[] = [
    { name: 'wood outdoors', dash: '2 4', points: outdoors.map(({ month, moisture }) => ({ x: month, y: moisture })) },
    {
      name: 'wood that followed at once',
      dash: '8 4',
      points: follows.days.map(({ day, air }) => ({ x: x(day), y: air })),
    },
    { name: what, dash: '', points: follows.days.map(({ day, mean }) => ({ x: x(day), y: mean })) },
  ];
  const months = {
    domain: [0.5, 12.5],
    ticks: monthNames.map((_, index) => index + 1),
    tickFormat: (month: number) => monthNames[month - 1]?.slice(0, 3),
    label: null,
  };
  return curvePlot(
    { curves, x: months, y: { label: 'moisture, %' } },
    {
      alt: `Moisture through the year: ${what} goes from ${range(follows.board)}; wood that followed the room at once from ${range(follows.air)}.`,
      caption: `Once it has been there for some years, ${what} (full line) comes about ${follows.daysLate.toFixed(0)} days after the room (long dashes) and goes from ${range(follows.board)}; at once it would be ${range(follows.air)}. Dots: wood kept outdoors.`,
    },
  );
}

/**
 * A stack that settles: mean over the thickness, middle and face, day by day.
 *
 * @param drying  as `moistureThroughTime` gives it
 * @param settlesAt  %
 */
export function dryingPlot(drying: MoistureOnDay[], settlesAt: number): DisplayItem {
  const curve = (name: string, dash: string, of: 'mean' | 'core' | 'surface'): Curve => ({
    name,
    dash,
    points: drying.map((day) => ({ x: day.day, y: day[of] })),
  });
  const first = drying[0] as MoistureOnDay;
  const last = drying.at(-1) as MoistureOnDay;
  const curves = [
    curve('middle of the board', '8 4', 'core'),
    curve('mean over the thickness', '', 'mean'),
    curve('its faces', '2 4', 'surface'),
  ];
  const from = Math.min(settlesAt, first.mean) - 0.5;
  return curvePlot(
    { curves, x: { label: 'days in the shop' }, y: { label: 'moisture, %', from } },
    {
      alt: `From ${first.mean.toFixed(1)} % the board comes to ${last.mean.toFixed(1)} % in ${last.day} days; it settles at ${settlesAt.toFixed(1)} %.`,
      caption: `After ${last.day} days the board stands at ${last.mean.toFixed(1)} % in the mean and ${last.core.toFixed(1)} % in its middle; it settles at ${settlesAt.toFixed(1)} %.`,
    },
  );
}
