import type { Finding } from '../measure/finding.js';
import { judge } from '../measure/verdict.js';
import type { Schedule } from './schedule.js';

/** Odds from which a promise is taken to be safe, and from which it may be made at all; common practice, no source. */
const safe = 0.9;
const fair = 0.5;

/** What must be true of a promise. @internal */
export function scheduleFindings(scheduled: Omit<Schedule, 'findings'>, today: string, shopIsOpen: boolean): Finding[] {
  const { start, promised, finish, latestStart, odds, ready } = scheduled;
  const percent = `${(100 * odds).toFixed(0)} %`;
  return [
    {
      rule: 'days: the promise can be kept',
      verdict: odds >= safe ? 'ok' : odds >= fair ? 'watch' : 'stop',
      figures: `${percent} are done by ${promised}; nineteen in twenty by ${ready.p95}`,
      reason: `a date that is missed one time in ten is a fair promise, one that is missed every other time is none`,
      change: `promise ${ready.p95}, begin sooner, give it more hours a week, or shorten what waits`,
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
      rule: 'days: the shop is open on the promised day',
      verdict: judge(shopIsOpen, 'watch'),
      figures: `promised for ${promised}`,
      reason: 'someone has to be there to hand it over',
      change: 'promise a day that is not one of your days off',
    },
  ];
}
