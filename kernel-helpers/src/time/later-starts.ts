import { dayNumber, isoDay } from '../measure/day.js';
import { type SchedulePlan, schedule } from './schedule.js';
import type { Schedule } from './scheduled-steps.js';

/**
 * The same plan begun now, a week later, two weeks later, as long as that is not after the promised day: what waiting costs.
 * The same pieces are drawn for each start, in the same order of steps.
 *
 * @param plan  as for {@link schedule}
 * @param weeks  how many starts, at most; 5 unless told otherwise
 * @throws ShopError  as {@link schedule}
 */
export function laterStarts(plan: SchedulePlan, weeks = 5): Schedule[] {
  const first = dayNumber(plan.start ?? plan.today);
  return Array.from({ length: weeks }, (_, week) => isoDay(first + 7 * week))
    .filter((start, week) => week === 0 || start <= plan.promised)
    .map((start) => schedule({ ...plan, start }));
}
