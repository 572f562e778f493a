import type { Entry, Head } from '../chain/entry.js';

/** What a draft rests on: an entry of the record, or another draft by the sign of what it hands on. */
export type Ground = Head | { draft: string };

/** A decision that is worked out and not decided: it is in no record, and the next draft of the same takes its place. */
export interface Draft extends Pick<Entry, 'at' | 'who' | 'what' | 'inputs' | 'results' | 'findings' | 'overrides'> {
  seed?: number;
  /** What it rests on, by what that decides. */
  needs: Record<string, Ground>;
  /** Its papers, by their names in the folder of drafts. */
  papers?: string[];
}

/** The drafts with one more: it takes the place of one of the same decision. @internal */
export function withDraft(drafts: readonly Draft[], draft: Draft): Draft[] {
  return [...drafts.filter(({ what }) => what !== draft.what), draft];
}

/** The drafts without one, unless another took its place since it was read. @internal */
export function withoutDraft(drafts: readonly Draft[], draft: Draft): Draft[] {
  const text = JSON.stringify(draft);
  return drafts.filter((other) => JSON.stringify(other) !== text);
}
