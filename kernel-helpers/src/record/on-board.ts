import { ShopError } from '../measure/shop-error.js';
import type { Commission } from './commission.js';
import { type SheetNews, sheetNews } from './sheet-news.js';

/** What stands at the top of a sheet: news of its decisions so far, each of the last time it was made, or why one was refused. */
export interface SheetTop {
  news: readonly SheetNews[];
  /** Why the last decision was refused, in one line. */
  refused?: string;
}

/** Puts what a sheet has to say where its reader looks first; called again whenever that changes. */
export type Board = (top: SheetTop) => void;

/**
 * A commission's `decide` that keeps the board at the top of its sheet up to date.
 *
 * @param decide.furtherToo  whether decisions further on are told of: not where they are about to be run in any case
 * @internal
 */
export function decideOnBoard<D>(
  job: Commission<D>,
  board: Board,
  { furtherToo }: { furtherToo: boolean },
): Commission<D>['decide'] {
  const { decide, entries, drafts } = job;
  const stand = () => ({ entries: entries(), drafts: drafts() });
  const told = new Map<string, SheetNews>();
  board({ news: [] });
  return (what, decision) => {
    const before = stand();
    try {
      const decided = decide(what, decision);
      const news = sheetNews({ what, results: decision.results, decided }, before, stand());
      told.set(what, furtherToo ? news : { ...news, further: [] });
      board({ news: [...told.values()] });
      return decided;
    } catch (error) {
      if (error instanceof ShopError) board({ news: [...told.values()], refused: error.message });
      throw error;
    }
  };
}
