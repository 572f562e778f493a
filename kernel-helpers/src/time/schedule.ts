import * as z from 'zod';
import { dayNumber, isoDay } from '../measure/day.js';
import { amount, day, readParameters } from '../measure/parameters.js';
import { ShopError } from '../measure/shop-error.js';
import { simulationFields } from '../money/hours.js';
import type { BenchStep } from './bench-steps.js';
import { dayOfHour, type WorkingCalendar, workingDays } from './calendar.js';
import { finishDays } from './finish-days.js';
import { lastDay, runThrough, type StepRun, workingOrder } from './run-through.js';
import { scheduleFindings } from './schedule-findings.js';
import type { Schedule } from './scheduled-steps.js';

/** What a schedule is made from. Days are ISO days. */
export interface SchedulePlan {
  /** See {@link benchSteps}. */
  steps: BenchStep[];
  /** Hours of work for this piece on each day of the week, and days off. */
  calendar: WorkingCalendar;
  today: string;
  /** Today, unless told otherwise. */
  start?: string;
  promised: string;
  /** Scatter of the pace that all steps of a piece share, a part of the estimate; see {@link usualPace}. */
  pace?: number;
  simulations?: number;
  /** The same seed gives the same odds; 1 unless told otherwise. */
  seed?: number;
}

/** Ten years: the latest promise, and the longest work. */
const horizon = 3653;

const fields = z.object({
  today: day('today'),
  start: day('the day work begins'),
  promised: day('the day it is promised for'),
  ...simulationFields,
  simulations: amount({ least: 1000, most: 100_000, why: 'how many pieces are tried' }).default(10_000),
});

/**
 * Puts the steps of a piece on the calendar of a shop with one pair of hands: one step at a time, while glue, finish and
 * boards take theirs by themselves.
 *
 * Waiting runs on the clock of the shop's wall, night and Sunday included; a wait over a change of the clocks is off by that
 * hour, and no day is.
 *
 * The order of the steps is that of work begun today: it does not turn on the start, so that nothing begun later is done
 * sooner.
 *
 * @param plan  see {@link SchedulePlan}
 * @throws ShopError  one line: the field, the value given, what is possible, why; a promise in the past; steps that wait for
 *   each other, by name; a week without an hour of work
 * @see critical path: {@link criticalPath}; hours and waiting drawn as in {@link estimateHours}
 */
export function schedule(plan: SchedulePlan): Schedule {
  const read = readParameters(fields, { ...plan, start: plan.start ?? plan.today });
  const { today, start, promised, pace, simulations, seed } = read;
  if (promised < today)
    throw new ShopError(`promised: ${promised} given, and today is ${today}; possible: today or later`);
  if (start < today) throw new ShopError(`start: ${start} given, and today is ${today}; possible: today or later`);
  if (plan.steps.length === 0) throw new ShopError('steps: none given; possible: one step or more');

  const beginning = dayNumber(start) - dayNumber(today);
  const limit = dayNumber(promised) - dayNumber(today);
  if (Math.max(beginning, limit) >= horizon)
    throw new ShopError(`promised: ${promised} given, to begin on ${start}; possible: within ten years`);
  // Room for ten years of work from whichever day it is begun on.
  const days = workingDays(plan.calendar, today, Math.max(beginning, limit) + horizon);
  const hourOf = (index: number) => days.before[index] as number;
  const runs = runThrough(workingOrder(plan.steps, days, 0), days, hourOf(beginning));
  const done = finishDays({ order: runs, days, start: hourOf(beginning), pace, simulations, seed });
  const inTime = (index: number) => lastDay(runThrough(runs, days, hourOf(index)), days) <= limit;
  const latest = lastThat(inTime, limit);
  const isoOf = (index: number) => isoDay(days.first + index);
  const shareBy = (index: number) => (done.findLastIndex((one) => one <= index) + 1) / simulations;
  const by = (share: number) => isoOf(done[Math.ceil(share * simulations) - 1] as number);

  const path = criticalChain(runs, lastDay(runs, days), (run) => lastDay([run], days));
  const scheduled = {
    start,
    promised,
    steps: runs.map(({ step, from, to, readyClock }) => ({
      id: step.id,
      name: step.name,
      count: step.count,
      hours: to - from,
      start: isoOf(dayOfHour(days, from, false)),
      finish: isoOf(dayOfHour(days, to, true)),
      ...(step.wait ? { wait: { what: step.wait.what, until: isoOf(Math.floor(readyClock)) } } : {}),
      critical: path.includes(step.id),
      cautions: step.cautions ?? [],
    })),
    finish: isoOf(lastDay(runs, days)),
    ...(latest === undefined ? {} : { latestStart: isoOf(latest) }),
    criticalPath: path,
    odds: shareBy(limit),
    pace,
    ready: { p50: by(0.5), p80: by(0.8), p95: by(0.95) },
    readyBy: [...new Set(done)].map((index) => ({ day: isoOf(index), share: shareBy(index) })),
    simulations,
    seed,
  };
  // The first day from then on that has hours of work.
  const workedFrom = (index: number) => isoOf(dayOfHour(days, hourOf(index), false));
  const toPromise = workedFrom(dayNumber(scheduled.ready.p95) - days.first);
  return { ...scheduled, findings: scheduleFindings(scheduled, { today, toPromise, workedNext: workedFrom(limit) }) };
}

/** The largest whole number from 0 to `most` for which something holds that holds for all smaller ones, if for any. */
function lastThat(holds: (index: number) => boolean, most: number): number | undefined {
  let low = -1;
  let high = most;
  while (low < high) {
    const middle = Math.ceil((low + high) / 2);
    if (holds(middle)) low = middle;
    else high = middle - 1;
  }
  return low < 0 ? undefined : low;
}

/** From the step that is done last back through what held each. */
function criticalChain(runs: StepRun[], last: number, dayOf: (run: StepRun) => number): string[] {
  const byId = new Map(runs.map((run) => [run.step.id, run]));
  const path: string[] = [];
  let run = runs.findLast((one) => dayOf(one) === last);
  while (run) {
    path.unshift(run.step.id);
    run = run.heldBy === undefined ? undefined : byId.get(run.heldBy);
  }
  return path;
}
