import { readdirSync, readFileSync, statSync } from 'node:fs';
import { join } from 'node:path';
import { diskError } from '../disk/disk-error.js';
import { replaceFile } from '../disk/replace-file.js';
import { ShopError } from '../measure/shop-error.js';
import type { Head } from '../record/chain/entry.js';
import { readRecord, recordName } from '../record/chain/record-file.js';
import { isIn, knownHeads } from '../record/known-heads.js';
import { type CommissionCard, commissionCard } from './commission-card.js';

/** What is known of one commission's record: its card, or what is wrong with it. */
interface Leaf {
  /** Size and time of the record when it was read: another size or time, and it is read again. */
  size: number;
  time: number;
  /** Hash of the head that it was held against, from the shop's own book. */
  against?: string;
  card?: CommissionCard;
  problem?: string;
}

/** A commission that the shop book cannot count, and why. */
export interface CommissionProblem {
  name: string;
  problem: string;
}

/** All that the folder of commissions holds. @internal */
export interface ShopIndex {
  cards: CommissionCard[];
  problems: CommissionProblem[];
  /** Folders with nothing recorded yet. */
  empty: string[];
}

/** A short cut, made anew whenever it is missing or of another layout; not part of any record. */
const indexName = '.shop-index.json';
const layout = 2;

/**
 * The cards of all commissions in a folder. A record is read only when its size or time is another than last time; what
 * was read is kept in a file beside the commissions. A damaged record is named and passed over.
 *
 * @throws ShopError  when there is no such folder, or the shop's own book of heads is spoilt
 * @internal
 */
export function shopIndex(commissions: string): ShopIndex {
  const before = readIndex(commissions);
  const heads = knownHeads(commissions);
  const leaves: Record<string, Leaf> = {};
  const empty: string[] = [];
  let changed = false;
  for (const name of foldersIn(commissions)) {
    const stat = statSync(join(commissions, name, recordName), { throwIfNoEntry: false });
    if (!stat?.isFile()) {
      empty.push(name);
      continue;
    }
    const known = before[name];
    if (known && known.size === stat.size && known.time === stat.mtimeMs && known.against === heads[name]?.hash) {
      leaves[name] = known;
    } else {
      const head = heads[name];
      leaves[name] = { size: stat.size, time: stat.mtimeMs, against: head?.hash, ...readLeaf(commissions, name, head) };
      changed = true;
    }
  }
  if (changed || Object.keys(before).length !== Object.keys(leaves).length) writeIndex(commissions, leaves);
  return { ...withoutCopies(leaves), empty };
}

function foldersIn(commissions: string): string[] {
  try {
    return readdirSync(commissions, { withFileTypes: true })
      .filter((entry) => entry.isDirectory() && !entry.name.startsWith('.'))
      .map((entry) => entry.name)
      .sort();
  } catch (error) {
    if ((error as NodeJS.ErrnoException).code === 'ENOENT') throw new ShopError(`There is no folder ${commissions}.`);
    throw diskError(error, `${commissions} cannot be read`);
  }
}

function readLeaf(commissions: string, name: string, head: Head | undefined): Pick<Leaf, 'card' | 'problem'> {
  try {
    const { entries, faults } = readRecord(join(commissions, name));
    if (faults[0]) return { problem: `its record is damaged: ${faults[0].problem}` };
    if (head && !isIn(entries, head))
      return {
        problem: `its record does not hold entry ${head.seq} as it was: its end was cut off, or it was written anew`,
      };
    if (entries.length === 0) return { problem: 'its record holds no whole entry' };
    return { card: commissionCard(name, entries) };
  } catch (error) {
    return { problem: (error as Error).message };
  }
}

/** A folder copied by hand is counted once: the copy whose record goes furthest, the first by name where they are alike. */
function withoutCopies(leaves: Record<string, Leaf>): Pick<ShopIndex, 'cards' | 'problems'> {
  const problems: CommissionProblem[] = [];
  const byFirst = new Map<string, CommissionCard>();
  const copy = (name: string, of: string) =>
    problems.push({ name, problem: `it is a copy of ${of} made by hand; counted once` });
  for (const [name, { card, problem }] of Object.entries(leaves)) {
    if (!card) {
      problems.push({ name, problem: problem ?? 'it cannot be read' });
      continue;
    }
    const other = byFirst.get(card.first);
    if (other && other.head.seq >= card.head.seq) copy(name, other.name);
    else {
      if (other) copy(other.name, name);
      byFirst.set(card.first, card);
    }
  }
  const cards = [...byFirst.values()].sort((a, b) => (a.name < b.name ? -1 : 1));
  return { cards, problems };
}

function readIndex(commissions: string): Record<string, Leaf> {
  try {
    const index = JSON.parse(readFileSync(join(commissions, indexName), 'utf8'));
    return index.layout === layout ? index.leaves : {};
  } catch {
    return {};
  }
}

function writeIndex(commissions: string, leaves: Record<string, Leaf>): void {
  try {
    replaceFile(join(commissions, indexName), JSON.stringify({ layout, leaves }));
  } catch {
    // Where nothing may be written the book is only slower to open.
  }
}
