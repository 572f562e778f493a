import type { Entry } from './chain/entry.js';
import type { Draft } from './drafts/draft.js';
import { draftPaper } from './drafts/draft-paper.js';
import type { Opening } from './opening.js';
import { isWithdrawn, markedBehind, refusePaperName, signed, unmarked, unsigned } from './papers.js';
import { staleness, staleText, standing } from './stale.js';
import type { Store } from './store/store.js';

/** Papers that a sheet made and that wait for its next decision. @internal */
export interface HeldPapers {
  /** @throws ShopError  a name that is not possible */
  hold(file: string, text: string): void;
  /** Names of those that wait; undefined when none does. */
  names(): string[] | undefined;
  /** Writes them beside the record, for a decision that stands, and marks those of decisions that it leaves behind. */
  keepWith(entry: Entry): void;
  /** Keeps a draft, with them. */
  keepAsDraft(draft: Draft): void;
}

/** @internal */
export function heldPapers({
  store,
  rehearsal,
  practice,
  notices,
}: Pick<Opening<never>, 'store' | 'rehearsal' | 'practice' | 'notices'>): HeldPapers {
  const held = new Map<string, string>();
  return {
    hold(file, text) {
      refusePaperName(file);
      if (rehearsal) return;
      if (practice) return notices.say(`Practice: ${file} is not kept.`);
      held.set(file, text);
    },

    names: () => (held.size > 0 ? [...held.keys()] : undefined),

    keepWith(entry) {
      if (rehearsal) return;
      for (const [file, text] of held) {
        store.save(file, signed(text, entry));
        notices.say(`Kept in the commission's folder: ${file}`);
      }
      held.clear();
      markPapers(store);
    },

    keepAsDraft(draft) {
      (rehearsal ?? store).putDraft(
        draft,
        new Map([...held].map(([file, text]) => [file, draftPaper(file, unsigned(text), draft.what)])),
      );
      for (const file of held.keys()) notices.say(`Kept with the drafts: drafts/${file}`);
      held.clear();
    },
  };
}

/** Marks the papers of decisions that are behind, and takes the mark off those that are so no more. @internal */
export function markPapers(store: Store): void {
  const entries = store.entries();
  for (const entry of standing(entries)) {
    const stale = staleness(entries, entry);
    for (const { file, html } of pagesOf(entry, store)) {
      // What stands did not make it: only deciding again does.
      if (isWithdrawn(html)) continue;
      const marked = stale ? markedBehind(html, staleText(stale)) : unmarked(html);
      if (marked !== html) store.save(file, marked);
    }
  }
}

/** Marks the papers of a decision that was withdrawn. @internal */
export function markWithdrawn(store: Store, entry: Entry, by: Entry): void {
  for (const { file, html } of pagesOf(entry, store))
    store.save(file, markedBehind(html, `${entry.what} (entry ${entry.seq}) was withdrawn in entry ${by.seq}.`, true));
}

function pagesOf({ papers = [] }: Entry, store: Store): { file: string; html: string }[] {
  const pages = papers.filter((file) => file.endsWith('.html') && store.has(file));
  return pages.map((file) => ({ file, html: store.read(file).text }));
}
