import { ShopError } from '../../measure/shop-error.js';
import type { Entry } from '../chain/entry.js';
import { markPapers, markWithdrawn } from '../held-papers.js';
import type { Opening } from '../opening.js';
import { latest, withdrawal } from '../stale.js';

/** What an undo would withdraw. */
export interface Undoing {
  /** The last decision that stands. */
  entry: Entry;
  /** What stands again in its place; none when it was the first of its kind. */
  before?: Entry;
}

/**
 * The last decision of a record that was not withdrawn, and what stood before it. A withdrawal itself is none: to take that back,
 * decide again.
 *
 * @returns undefined where nothing stands
 */
export function lastDecision(entries: readonly Entry[]): Undoing | undefined {
  const entry = entries.findLast((each) => !each.withdraws && !withdrawal(entries, each));
  if (!entry) return undefined;
  return {
    entry,
    before: latest(
      entries.filter((each) => each !== entry),
      entry.what,
    ),
  };
}

/**
 * Withdraws the last decision by an entry that says so: nothing is deleted, what stood before it stands again, and its papers
 * say that it was withdrawn.
 *
 * @param entry  the decision, as it was shown
 * @returns the entry that withdraws it
 * @throws ShopError  when it is no longer the last one, or the record cannot be written; it is then as it was
 * @internal
 */
export function withdraw(
  { store, signature, versions }: Pick<Opening<never>, 'store' | 'signature' | 'versions'>,
  entry: Entry,
): Entry {
  const { what, seq, hash } = entry;
  const { entry: made } = store.append((entries) => {
    if (lastDecision(entries)?.entry.hash !== hash)
      throw new ShopError(
        `Nothing is withdrawn: ${what}, entry ${seq}, is no longer the last decision. Look again: npm run undo.`,
      );
    const nothing = { needs: {}, inputs: {}, results: {}, findings: [], overrides: {} };
    return { ...signature(), what, ...nothing, withdraws: { seq, hash }, versions };
  });
  markWithdrawn(store, entry, made as Entry);
  markPapers(store);
  return made as Entry;
}
