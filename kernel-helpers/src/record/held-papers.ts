import type { Entry } from './chain/entry.js';
import type { Draft } from './drafts/draft.js';
import type { Opening } from './opening.js';
import { draftPaper, markedBehind, refusePaperName, signed } from './papers.js';
import { staleness, staleText, standing } from './stale.js';

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
      markLeftBehind();
    },

    keepAsDraft(draft) {
      store.putDraft(draft, new Map([...held].map(([file, text]) => [file, draftPaper(file, text, draft.what)])));
      for (const file of held.keys()) notices.say(`Kept with the drafts: drafts/${file}`);
      held.clear();
    },
  };

  function markLeftBehind(): void {
    const entries = store.entries();
    for (const other of standing(entries)) {
      const stale = staleness(entries, other);
      if (!stale) continue;
      for (const paper of (other.papers ?? []).filter((file) => file.endsWith('.html') && store.has(file)))
        store.save(paper, markedBehind(store.read(paper).text, staleText(stale)));
    }
  }
}
