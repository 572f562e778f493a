import type { Entry, Head } from './chain/entry.js';
import type { Draft, Ground } from './drafts/draft.js';
import { signOf } from './drafts/handed-on.js';

/** A decision that rests on one that has changed since. */
export interface Stale {
  what: string;
  /** The stale decision's entry; none when it is a draft. */
  seq?: number;
  because: Moved[];
}

/** What changed under a decision. */
export interface Moved {
  what: string;
  /** The entry it rests on, directly or through others; none when that was a draft. */
  had?: number;
  /** The entry that stands in its place; none when that is a draft, or when nothing does. */
  now?: number;
  /** The entry that withdrew it. */
  withdrawn?: number;
  /** True when nothing stands in its place. */
  gone?: boolean;
}

/** The latest entry of one decision that was not withdrawn. */
export function latest(entries: readonly Entry[], what: string): Entry | undefined {
  return entries.findLast((entry) => entry.what === what && !entry.withdraws && !withdrawal(entries, entry));
}

/** Every standing decision, in the order of the entries: the latest one of each kind that was not withdrawn. */
export function standing(entries: readonly Entry[]): Entry[] {
  return entries.filter((entry) => latest(entries, entry.what) === entry);
}

/** The entry that withdraws another, if there is one. */
export function withdrawal(entries: readonly Entry[], { hash }: Head): Entry | undefined {
  return entries.find(({ withdraws }) => withdraws?.hash === hash);
}

/** What stands for a decision now: the draft of it, where there is one, else the record's entry. @internal */
export function standsFor(
  what: string,
  entries: readonly Entry[],
  drafts: readonly Draft[],
): Entry | Draft | undefined {
  return drafts.find((draft) => draft.what === what) ?? latest(entries, what);
}

/**
 * Whether a decision rests on one that has changed since, and on which; undefined when it does not. One that was decided again
 * and hands on what it did before has not changed.
 *
 * @param drafts  where drafts count too
 */
export function staleness(
  entries: readonly Entry[],
  decision: Entry | Draft,
  drafts: readonly Draft[] = [],
): Stale | undefined {
  const because = new Map<string, Moved>();
  const seen = new Set<Entry | Draft>();
  const follow = ({ needs }: Entry | Draft): void => {
    for (const [what, ground] of Object.entries<Ground>(needs)) {
      const stands = standsFor(what, entries, drafts);
      if (!isFor(entries, ground, stands)) because.set(what, moved(entries, what, ground, stands));
      if (!stands || seen.has(stands)) continue;
      seen.add(stands);
      follow(stands);
    }
  };
  follow(decision);
  if (because.size === 0) return undefined;
  return { what: decision.what, seq: seqOf(decision), because: [...because.values()] };
}

/** Whether two grounds hand on the same. @internal */
export function sameGround(entries: readonly Entry[], one: Ground, other: Ground): boolean {
  if ('hash' in one && 'hash' in other && one.hash === other.hash) return true;
  const sign = groundSign(entries, one);
  return sign !== undefined && sign === groundSign(entries, other);
}

/** What a decision that rests on this one keeps of it. @internal */
export function groundOf(decision: Entry | Draft): Ground {
  return 'hash' in decision ? { seq: decision.seq, hash: decision.hash } : { draft: signOf(decision) };
}

/** The entry that a need points at, if it is there as it was. */
export function entryAt(entries: readonly Entry[], { seq, hash }: Head): Entry | undefined {
  return entries.find((entry) => entry.seq === seq && entry.hash === hash);
}

/** `lid (entry 3) rests on sizing as of entry 2; sizing was decided again in entry 5.` */
export function staleText({ what, seq, because }: Stale): string {
  const whose = seq === undefined ? `the draft of ${what}` : `${what} (entry ${seq})`;
  const lines = because.map((each) => {
    const had = each.had === undefined ? 'as an earlier draft has it' : `as of entry ${each.had}`;
    return `${whose} rests on ${each.what} ${had}; ${movedText(each)}.`;
  });
  return lines.join(' ');
}

function movedText({ what, had, now, withdrawn, gone }: Moved): string {
  if (withdrawn !== undefined) return `entry ${had} was withdrawn in entry ${withdrawn}`;
  if (gone) return 'that is there no more';
  if (now === undefined) return `${what} is drafted anew`;
  return had === undefined ? `${what} was decided in entry ${now}` : `${what} was decided again in entry ${now}`;
}

function isFor(entries: readonly Entry[], ground: Ground, stands: Entry | Draft | undefined): boolean {
  // An entry that the record does not hold is a fault of the record: its check says so.
  if ('hash' in ground && !entryAt(entries, ground)) return true;
  return stands !== undefined && sameGround(entries, ground, groundOf(stands));
}

function moved(entries: readonly Entry[], what: string, ground: Ground, stands: Entry | Draft | undefined): Moved {
  const had = 'draft' in ground ? undefined : ground.seq;
  const withdrawn = 'draft' in ground ? undefined : withdrawal(entries, ground)?.seq;
  return { what, had, now: stands && seqOf(stands), withdrawn, gone: stands ? undefined : true };
}

function groundSign(entries: readonly Entry[], ground: Ground): string | undefined {
  if ('draft' in ground) return ground.draft;
  const entry = entryAt(entries, ground);
  return entry && signOf(entry);
}

function seqOf(decision: Entry | Draft): number | undefined {
  return 'seq' in decision ? decision.seq : undefined;
}
