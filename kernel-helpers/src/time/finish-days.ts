import { randomLcg } from 'd3-random';
import { drawnPaces } from '../money/pace.js';
import { pertQuantile } from '../money/pert.js';
import { dayOfHour, hourAt, type WorkingDays, waitOver } from './calendar.js';
import type { StepRun } from './run-through.js';

/**
 * Days on which as many pieces would be done, if each went through the same order with hours and waiting of its own, drawn
 * from PERT's beta distribution. Hours share the pace of their piece; glue and finish have none. The draws of a piece do not
 * depend on its start, so that pieces begun on different days can be compared.
 *
 * @param draw.order  see {@link workingOrder}
 * @param draw.start  hour of work to begin at
 * @returns days counted from the calendar's first, sorted; one past the last day where the calendar ends before the work
 * @internal
 */
export function finishDays(draw: {
  order: StepRun[];
  days: WorkingDays;
  start: number;
  pace: number;
  simulations: number;
  seed: number;
}): Float64Array {
  const { order, days, start, pace, simulations, seed } = draw;
  const random = randomLcg(seed);
  const paces = drawnPaces(simulations, pace, random);
  const end = days.hours.length;
  const free = new Float64Array(simulations).fill(start);
  const done = new Float64Array(simulations);
  const ready = new Map<string, Float64Array>();
  const restedOn = new Set(order.flatMap(({ step }) => step.after));

  // Step by step, all pieces at once: the table of one step stays at hand while it is read ten thousand times.
  for (const { step } of order) {
    const hours = pertQuantile(step.minutes);
    const wait = step.wait && pertQuantile(step.wait.days);
    const before = step.after.map((id) => ready.get(id) as Float64Array);
    const own = new Float64Array(simulations);
    const isLast = !restedOn.has(step.id);
    for (let i = 0; i < simulations; i++) {
      let from = free[i] as number;
      for (const other of before) if ((other[i] as number) > from) from = other[i] as number;
      const to = from + (hours(random()) / 60) * (paces[i] as number);
      free[i] = to;
      own[i] = to;
      if (wait) {
        // Drawn in any case: the next draw is then the same one, whenever the piece was begun.
        const waited = wait(random());
        const over = to < Infinity ? waitOver(days, to, waited) : Infinity;
        own[i] = hourAt(days, over);
        if (isLast) done[i] = Math.max(done[i] as number, Math.min(Math.floor(over), end));
      } else if (isLast) done[i] = Math.max(done[i] as number, dayOfHour(days, to, true));
    }
    ready.set(step.id, own);
  }
  return done.sort();
}
