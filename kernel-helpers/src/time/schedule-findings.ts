import type { Finding } from '../measure/finding.js';
import { ofHundred } from '../measure/of-hundred.js';
import { judge } from '../measure/verdict.js';
import type { Schedule } from './scheduled-steps.js';

/** Odds from which a promise is taken to be safe, and from which it may be made at all; common practice, no source. */
const safe = 0.9;
const fair = 0.5;

/**
 * What must be true of a promise.
 *
 * @param days.toPromise  first day of work by which nineteen in twenty are done
 * @param days.workedNext  first day of work from the promised day on
 * @internal
 */
export function scheduleFindings(
  scheduled: Omit<Schedule, 'findings'>,
  days: { today: string; toPromise: string; workedNext: string },
): Finding[] {
  const { today, toPromise, workedNext } = days;
  const { start, promised, finish, latestStart, odds, ready } = scheduled;
  return [
    {
      rule: 'days: the promise can be kept',
      verdict: odds >= safe ? 'ok' : odds >= fair ? 'watch' : 'stop',
      figures: `${ofHundred(odds)} in a hundred are done by ${promised}; nineteen in twenty by ${ready.p95}`,
      reason: `a date that is missed one time in ten is a fair promise, one that is missed every other time is none`,
      change: `promise ${toPromise}, begin sooner, give it more hours a week, or shorten what waits`,
    },
    {
      rule: 'days: begun in time',
      verdict: judge(latestStart !== undefined && start <= latestStart, 'stop'),
      figures: latestStart
        ? `begins ${start}, last day to begin ${latestStart}, done ${finish}`
        : `begins ${start}, done ${finish}, and even begun today, ${today}, it would be late`,
      reason: 'the last day to begin leaves nothing for a bad day',
      change: 'a later promise, or more hours a week',
    },
    {
      rule: 'days: the promised day is a day of work',
      verdict: judge(workedNext === promised, 'watch'),
      figures: `promised for ${promised}${workedNext === promised ? '' : ', a day without hours of work'}`,
      reason: 'someone has to be there to hand it over',
      change: `promise ${workedNext}, the next day with hours of work, or agree with the client on who hands it over`,
    },
  ];
}
