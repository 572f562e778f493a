import type { Entry, Head } from './chain/entry.js';

/** A standing decision that rests on one that has changed since. */
export interface Stale {
  what: string;
  /** The stale decision's entry. */
  seq: number;
  /** What changed: the entry it rests on, directly or through others, and the one that took its place. */
  because: { what: string; had: number; now: number }[];
}

/** The latest entry of one decision. */
export function latest(entries: readonly Entry[], what: string): Entry | undefined {
  return entries.findLast((entry) => entry.what === what);
}

/** Every standing decision, in the order of the entries: the latest one of each kind. */
export function standing(entries: readonly Entry[]): Entry[] {
  return entries.filter((entry) => latest(entries, entry.what) === entry);
}

/** Whether a decision rests on one that has changed since, and on which; undefined when it does not. */
export function staleness(entries: readonly Entry[], entry: Entry): Stale | undefined {
  const because = new Map<string, Stale['because'][number]>();
  const seen = new Set<number>();
  const follow = ({ needs }: Entry): void => {
    for (const [what, need] of Object.entries(needs)) {
      const had = entryAt(entries, need);
      const now = latest(entries, what);
      if (!had || seen.has(had.seq)) continue;
      seen.add(had.seq);
      if (now && now.seq !== had.seq) because.set(what, { what, had: had.seq, now: now.seq });
      follow(had);
    }
  };
  follow(entry);
  return because.size > 0 ? { what: entry.what, seq: entry.seq, because: [...because.values()] } : undefined;
}

/** The entry that a need points at, if it is there as it was. */
export function entryAt(entries: readonly Entry[], { seq, hash }: Head): Entry | undefined {
  return entries.find((entry) => entry.seq === seq && entry.hash === hash);
}

/** `lid (entry 3) rests on sizing as of entry 2; sizing was decided again in entry 5.` */
export function staleText({ what, seq, because }: Stale): string {
  return because
    .map(
      (b) =>
        `${what} (entry ${seq}) rests on ${b.what} as of entry ${b.had}; ${b.what} was decided again in entry ${b.now}.`,
    )
    .join(' ');
}
