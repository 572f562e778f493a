import { differenceText } from './chain/differences.js';
import type { Entry, Head } from './chain/entry.js';
import { contentDifferences } from './decision.js';
import { entryAt, latest, withdrawal } from './stale.js';

/** One line of the table of decisions. */
export interface DecisionRow {
  seq: number;
  /** Date on the maker's calendar, `2026-03-12`. */
  date: string;
  who: string;
  what: string;
  /** What is different from the decision before of the same kind: the first values by name and how many more. */
  changed: string;
  /** The first twelve characters of the entry's hash: enough to compare by eye. */
  hash: string;
}

/** The record as a table: who decided what on which day, and what that changed. */
export function decisionRows(entries: readonly Entry[]): DecisionRow[] {
  return entries.map((entry, index) => ({
    seq: entry.seq,
    date: entry.at.slice(0, 10),
    who: entry.who,
    what: entry.what,
    changed: changedText(entries.slice(0, index), entry) + withdrawnText(withdrawal(entries, entry)),
    hash: shortHash(entry.hash),
  }));
}

/** What an entry is known by outside of its record, `8:3fa4c0d19b2e`: its number and enough of its hash to compare by eye. */
export function referenceOf({ seq, hash }: Head): string {
  return `${seq}:${shortHash(hash)}`;
}

/** The first twelve characters of a hash. */
export function shortHash(hash: string): string {
  return hash.slice(0, 12);
}

const named = 3;

function withdrawnText(by: Entry | undefined): string {
  return by ? `; withdrawn in entry ${by.seq}` : '';
}

function changedText(earlier: readonly Entry[], entry: Entry): string {
  const before = latest(earlier, entry.what);
  if (entry.withdraws) {
    const stands = latest([...earlier, entry], entry.what);
    return `withdraws entry ${entry.withdraws.seq}; ${stands ? `entry ${stands.seq} stands again` : 'nothing stands in its place'}`;
  }
  if (!before) return 'first decision';
  const moved = contentDifferences(before, entry).map(differenceText);
  const anew = Object.entries(entry.needs)
    .filter(([what, need]) => before.needs[what]?.hash !== need.hash && entryAt(earlier, need))
    .map(([what, need]) => `rests on ${what} as of entry ${need.seq}`);
  const all = [...moved, ...anew];
  const more = all.length > named ? `; ${all.length - named} more` : '';
  return all.slice(0, named).join('; ') + more;
}
