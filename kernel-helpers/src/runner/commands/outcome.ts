import type { Entry } from '../../record/chain/entry.js';
import type { Draft } from '../../record/drafts/draft.js';
import { keyFigures } from '../../record/key-figures/key-figures.js';
import { shownBy } from '../../record/key-figures/shown.js';
import { standing, standsFor } from '../../record/stale.js';

/**
 * What a sheet came to, in a few words: `plane to 6.657 in (recorded, entry 4)`.
 *
 * @param own  the decisions that it made
 * @param after.entries  the record after it
 * @param after.drafts  the drafts after it
 * @param after.known  how many entries the record had before it
 */
export function outcomeText(
  own: readonly string[],
  { entries, drafts, known }: { entries: readonly Entry[]; drafts: readonly Draft[]; known: number },
): string {
  const shown = shownBy([...standing(entries), ...drafts]);
  const texts = own.flatMap((what) => {
    const stands = standsFor(what, entries, drafts);
    if (!stands) return [];
    const { sentence } = keyFigures(what, stands.results, shown);
    return [`${sentence || what} (${stateOf(stands, known)})`];
  });
  return texts.join('; ') || 'nothing to decide yet';
}

function stateOf(stands: Entry | Draft, known: number): string {
  if (!('seq' in stands)) return 'draft';
  return stands.seq > known ? `recorded, entry ${stands.seq}` : 'same';
}
