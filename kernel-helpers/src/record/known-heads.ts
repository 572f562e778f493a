import { existsSync, readFileSync } from 'node:fs';
import { basename, dirname, join } from 'node:path';
import * as z from 'zod';
import { isCommission } from '../disk/daybook-folder.js';
import { diskError } from '../disk/disk-error.js';
import { withLock } from '../disk/lock.js';
import { replaceFile } from '../disk/replace-file.js';
import { ShopError } from '../measure/shop-error.js';
import type { Entry, Head } from './chain/entry.js';
import { soundEntries } from './chain/record-file.js';

/** The shop's own book of where each record ended when it was last seen: beside the commissions' folders, not in them. */
export const knownHeadsName = 'last-entries.json';

/** What it was called at first: read until the book is written anew. */
const firstName = 'known-heads.json';

const shape = z.record(z.string(), z.object({ seq: z.int().positive(), hash: z.string().regex(/^[0-9a-f]{64}$/) }));

/**
 * Number and hash of the last entry of a commission's record when it was last worked, checked or unpacked here. With it a
 * record that was cut short or written anew since can be told from the true one: tamper-evident, not proof, since whoever
 * may write here may write there too. The quote and the receipt carry the same figures out of the house.
 *
 * @param folder  the commission's folder
 * @returns undefined for one that was never seen, and outside of `commissions`
 * @throws ShopError  when the book cannot be read
 */
export function knownHead(folder: string): Head | undefined {
  return isCommission(folder) ? read(bookOf(folder))[basename(folder)] : undefined;
}

/** All of the book, by the commissions' names. @internal */
export function knownHeads(commissions: string): Record<string, Head> {
  return read(join(commissions, knownHeadsName));
}

/**
 * Writes down where a commission's record ends now; a record that does not go on from where it was known to end is not
 * written down.
 *
 * @returns whether the book says now what the record says
 * @throws ShopError  when the record is damaged, or the book cannot be read or written
 * @internal
 */
export function noteHead(folder: string): boolean {
  if (!isCommission(folder)) return false;
  const book = bookOf(folder);
  return withLock(`${book}.lock`, () => {
    const heads = read(book);
    const entries = soundEntries(folder);
    const last = entries.at(-1);
    const known = heads[basename(folder)];
    if (!last || (known && !isIn(entries, known))) return false;
    if (known?.hash === last.hash) return true;
    write(book, { ...heads, [basename(folder)]: { seq: last.seq, hash: last.hash } });
    return true;
  });
}

/** Whether a record holds the entry that a head names. @internal */
export function isIn(entries: readonly Entry[], { seq, hash }: Head): boolean {
  return entries[seq - 1]?.hash === hash;
}

function bookOf(folder: string): string {
  return join(dirname(folder), knownHeadsName);
}

function read(named: string): Record<string, Head> {
  const book = [named, join(dirname(named), firstName)].find((each) => existsSync(each));
  if (!book) return {};
  let text: string;
  try {
    text = readFileSync(book, 'utf8');
  } catch (error) {
    throw diskError(error, `${book} cannot be read`);
  }
  try {
    return shape.parse(JSON.parse(text));
  } catch {
    throw new ShopError(
      `${book}: it is not as the daybook wrote it. Put back a copy from before the change (from a backup); without one, give the damaged file another name and keep it: a new one is begun.`,
    );
  }
}

function write(book: string, heads: Record<string, Head>): void {
  const lines = Object.keys(heads)
    .sort()
    .map((name) => `${JSON.stringify(name)}: ${JSON.stringify(heads[name])}`);
  replaceFile(book, `{\n${lines.join(',\n')}\n}\n`);
}
