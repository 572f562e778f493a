import { ShopError } from '../measure/shop-error.js';
import { pertMoments, type ThreePoints } from '../money/pert.js';
import type { BenchStep } from './bench-steps.js';
import { dayOfHour, hourAt, type WorkingDays, waitOver } from './calendar.js';
import { criticalPath } from './critical-path.js';

/** One step when the whole is gone through once: hours of work since the first day of the calendar. */
export interface StepRun {
  step: BenchStep;
  /** Expected hours at work, and expected days of waiting afterwards. */
  hours: number;
  wait: number;
  from: number;
  to: number;
  /** Hour at which what rests on it can begin, and the same on the clock, in days. */
  ready: number;
  readyClock: number;
  /** What it had to wait for last: the hands that were at another step, or that step itself. */
  heldBy?: string;
}

type Expected = Pick<StepRun, 'step' | 'hours' | 'wait'>;

function expected(step: BenchStep): Expected {
  const mean = (points: ThreePoints) => pertMoments(points).mean;
  return { step, hours: mean(step.minutes) / 60, wait: step.wait ? mean(step.wait.days) : 0 };
}

/**
 * The order in which one pair of hands goes through the steps: whenever they are free they take, of what can be begun, what
 * has the longest way still to go behind it; so the lid is fitted while the glue of the box cures.
 *
 * @param start  hour of work to begin at
 * @throws ShopError  steps that wait for each other; more work than the calendar has room for
 * @internal
 */
export function workingOrder(steps: BenchStep[], days: WorkingDays, start: number): StepRun[] {
  const perDay = (days.before.at(-1) as number) / days.hours.length;
  const waiting = steps.map(expected);
  const { times } = criticalPath(
    waiting.map(({ step, hours, wait }) => ({ id: step.id, after: step.after, duration: hours / perDay + wait })),
  );
  const latestStarts = new Map(times.map(({ id, latestStart }) => [id, latestStart]));
  const urgencyOf = ({ step }: Expected) => latestStarts.get(step.id) as number;
  const runs = new Map<string, StepRun>();
  let last: StepRun | undefined;
  while (waiting.length > 0) {
    const free = last?.to ?? start;
    const possible = waiting
      .filter(({ step }) => step.after.every((id) => runs.has(id)))
      .map((next) => ({
        next,
        from: Math.max(free, ...next.step.after.map((id) => (runs.get(id) as StepRun).ready)),
      }));
    const soonest = Math.min(...possible.map(({ from }) => from));
    const { next } = possible
      .filter(({ from }) => from <= soonest)
      .reduce((a, b) => (urgencyOf(b.next) < urgencyOf(a.next) ? b : a));
    last = runOf(next, start, last, runs, days);
    runs.set(next.step.id, last);
    waiting.splice(waiting.indexOf(next), 1);
  }
  return [...runs.values()];
}

/** The same order gone through again from another hour. @internal */
export function runThrough(order: StepRun[], days: WorkingDays, start: number): StepRun[] {
  const runs = new Map<string, StepRun>();
  let last: StepRun | undefined;
  for (const next of order) {
    last = runOf(next, start, last, runs, days);
    runs.set(next.step.id, last);
  }
  return [...runs.values()];
}

function runOf(
  { step, hours, wait }: Expected,
  start: number,
  last: StepRun | undefined,
  runs: Map<string, StepRun>,
  days: WorkingDays,
): StepRun {
  let from = last?.to ?? start;
  let heldBy = last?.step.id;
  for (const id of step.after) {
    const { ready } = runs.get(id) as StepRun;
    if (ready <= from) continue;
    from = ready;
    heldBy = id;
  }
  const to = from + hours;
  if (!(to <= (days.before.at(-1) as number)))
    throw new ShopError(
      `operations: ${step.name} would end more than ten years after the start; possible: more hours a week, or less work`,
    );
  const readyClock = waitOver(days, to, wait);
  return { step, hours, wait, from, to, ready: step.wait ? hourAt(days, readyClock) : to, readyClock, heldBy };
}

/** Day, counted from the calendar's first, on which all is done and all waiting over. @internal */
export function lastDay(runs: StepRun[], days: WorkingDays): number {
  return Math.max(
    ...runs.map(({ step, to, readyClock }) => (step.wait ? Math.floor(readyClock) : dayOfHour(days, to, true))),
  );
}
