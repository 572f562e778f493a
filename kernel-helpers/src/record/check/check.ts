import { existsSync, readdirSync } from 'node:fs';
import { basename, join, resolve } from 'node:path';
import { ShopError } from '../../measure/shop-error.js';
import { type Fault, fault } from '../chain/chain.js';
import type { Entry, Head } from '../chain/entry.js';
import { readRecord, recordName } from '../chain/record-file.js';
import { referenceOf } from '../decision-row.js';
import { knownHead } from '../known-heads.js';
import { entryAt, type Stale, staleness, standing } from '../stale.js';

/** What a check of a commission's record found. */
export interface CommissionCheck {
  /** The folder's name. */
  name: string;
  /** The entries that can be read and were not changed. */
  entries: readonly Entry[];
  /** Number and hash of the last entry. */
  head?: Head;
  /** Lines that were changed, removed or moved, and entries that rest on something the record does not hold. */
  faults: Fault[];
  /** Standing decisions that rest on one that has changed since. */
  stale: Stale[];
  /** Length in bytes of a last line that was never finished; it does not count, and the next decision moves it aside. */
  incomplete?: number;
  /** Files that unfinished lines were moved to. */
  setAside: string[];
}

/**
 * Checks a commission's record: every line as it was written, in its place, resting on entries that are there.
 *
 * A record alone cannot show that whole lines were cut off its end, or that all of it was written anew. A head kept
 * elsewhere can: the shop's own book beside the commissions is asked, and one from a quote or receipt is given as `head`.
 *
 * @param folder  the commission's folder
 * @param head  an entry's number and hash from elsewhere; the hash's first twelve characters are enough
 * @throws ShopError  when there is no such folder or no record in it, or the hash is too short to tell anything
 */
export function checkCommission(folder: string, { head }: { head?: Head } = {}): CommissionCheck {
  const place = resolve(folder);
  if (!existsSync(place)) throw new ShopError(`There is no folder ${place}.`);
  if (!existsSync(join(place, recordName))) {
    throw new ShopError(`There is no record in ${place} yet: run its sheets first.`);
  }
  if (head && !/^[0-9a-f]{12,64}$/.test(head.hash)) {
    throw new ShopError(
      `The reference is ${head.seq}:${head.hash}; possible: an entry's number and at least 12 of its 64 letters, 0-9 and a-f, such as 8:3fa4c0d19b2e.`,
    );
  }
  const chain = readRecord(place);
  const faults = chain.faults.length > 0 ? chain.faults : contentFaults(chain.entries, [head, knownHead(place)]);
  return {
    name: basename(place),
    entries: chain.entries,
    head: chain.head,
    faults,
    stale: standing(chain.entries).flatMap((entry) => staleness(chain.entries, entry) ?? []),
    incomplete: chain.incomplete?.length,
    setAside: readdirSync(place).filter((name) => /^record-incomplete-[0-9a-f]+\.txt$/.test(name)),
  };
}

/** What is wrong with a record whose every line is as it was written. */
function contentFaults(entries: readonly Entry[], heads: readonly (Head | undefined)[]): Fault[] {
  const faults = entries.flatMap((entry) => [...needFaults(entries, entry), ...withdrawalFaults(entries, entry)]);
  for (const fault of heads.flatMap((head) => (head ? headFaults(entries, head) : [])))
    if (!faults.some(({ problem }) => problem === fault.problem)) faults.push(fault);
  return faults;
}

function needFaults(entries: readonly Entry[], entry: Entry): Fault[] {
  return Object.entries(entry.needs).flatMap(([what, need]) => {
    const found = entryAt(entries, need);
    if (found && found.what === what && found.seq < entry.seq) return [];
    return fault(
      entry.seq,
      `line ${entry.seq} (${entry.what}) rests on ${what} as of entry ${need.seq}, which is not in this record as it was then`,
    );
  });
}

function withdrawalFaults(entries: readonly Entry[], { seq, what, withdraws }: Entry): Fault[] {
  if (!withdraws) return [];
  const found = entryAt(entries, withdraws);
  if (found && found.what === what && found.seq < seq && !found.withdraws) return [];
  return [
    fault(seq, `line ${seq} withdraws ${what}, entry ${withdraws.seq}, which is not in this record as it was then`),
  ];
}

function headFaults(entries: readonly Entry[], { seq, hash }: Head): Fault[] {
  const there = entries.find((entry) => entry.seq === seq);
  if (!there) return [fault(seq, `entry ${seq}, known from elsewhere, is missing: the end of the record was cut off`)];
  if (there.hash.startsWith(hash)) return [];
  return [
    fault(
      seq,
      `entry ${seq} is not the one whose reference is ${referenceOf({ seq, hash })}: the record was written anew`,
    ),
  ];
}
