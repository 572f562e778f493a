import type { Entry, Versions } from './chain/entry.js';
import type { Schema } from './decision.js';
import type { Notices } from './notices.js';
import type { Store } from './store/store.js';

/** What a commission is opened with. @internal */
export interface Opening<D> {
  /** The folder it stands in, and that folder's name. */
  folder: string;
  name: string;
  store: Store;
  /** Where its decisions go when they are only to be compared. */
  rehearsal?: Store;
  /** Whether each decision is made, whatever its sheet says of `decided`. */
  decideAll?: boolean;
  /** In practice: the commission whose entries the store gives, or nothing where there is none. */
  practice?: { demonstration: string | undefined };
  schemas: { [What in keyof D]: Schema };
  versions: Versions;
  notices: Notices;
  /** When a decision is made, `2026-03-12T19:30:00-05:00`, and by whom. */
  signature: () => Pick<Entry, 'at' | 'who'>;
  /** The sheet that makes a decision, if there is one. */
  sheetOf: (what: string) => string | undefined;
}
