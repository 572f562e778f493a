import { ofHundred } from '../../measure/of-hundred.js';
import type { Schedule } from '../../time/scheduled-steps.js';
import { longDay, shortDay } from '../kit/day-text.js';
import type { DisplayItem } from '../kit/display.js';
import { right, table } from '../kit/table.js';

/**
 * What a later start costs.
 *
 * @param starts  as `laterStarts` returns them, the plan itself first
 */
export function laterStartTable(starts: readonly Schedule[]): DisplayItem {
  const latest = starts[0]?.latestStart;
  return table({
    columns: ['Begun on', 'Done, as expected', 'Nineteen in twenty by', right('In time, of a hundred')],
    rows: starts.map(({ start, finish, ready, odds }) => [
      ...[start, finish, ready.p95].map(shortDay),
      ofHundred(odds),
    ]),
    caption: `What a later start costs; last day to begin, as expected: ${latest ? longDay(latest) : 'past'}`,
  });
}

/** The steps at the bench with their days, and what passes by itself after each. */
export function stepTable(steps: Schedule['steps']): DisplayItem {
  return table({
    columns: ['Step', 'Counted', 'Begins', 'Ends', { head: 'Hours', decimals: 1 }, 'Then wait'],
    rows: steps.map(({ name, count, start, finish, hours, wait }) => [
      ...[name, count, shortDay(start), shortDay(finish)],
      hours,
      wait && `until ${shortDay(wait.until)}: ${wait.what}`,
    ]),
    caption: 'In working order',
  });
}
