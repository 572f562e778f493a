import type { Attempt } from '../../lesson/progress-file.js';
import type { DisplayItem } from '../kit/display.js';
import { table } from '../kit/table.js';

/**
 * What an apprentice tried in a lesson, with the day.
 *
 * @param tried  as a lesson's `progress()` gives it
 */
export function progressTable(tried: readonly Attempt[]): DisplayItem {
  const hits = tried.filter(({ hit }) => hit).length;
  return table({
    columns: ['Day', 'Who', 'How it came out'],
    rows: tried.map(({ at, who, note }) => [at.slice(0, 10), who, note]),
    caption: tried.length === 0 ? 'Nothing tried yet' : `What you tried: ${hits} of ${tried.length} a hit`,
  });
}
