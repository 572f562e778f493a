import { closeSync, existsSync, fstatSync, fsyncSync, ftruncateSync, openSync, readFileSync } from 'node:fs';
import { basename, join } from 'node:path';
import { appendLine } from '../../disk/append-line.js';
import { diskError, isSystemError } from '../../disk/disk-error.js';
import { sweepLock, withLock } from '../../disk/lock.js';
import { replaceFile } from '../../disk/replace-file.js';
import { ShopError } from '../../measure/shop-error.js';
import { type Chain, nextLine, readChain, refuseDamaged } from './chain.js';
import type { Appended, Entry, EntryContent } from './entry.js';
import { sha256 } from './sha256.js';

/** The record's file name in a commission's folder. @internal */
export const recordName = 'record.jsonl';

// A sheet asks for the record a dozen times, and to verify it takes a hundred times as long as to see that it is the same.
let last: { bytes: Buffer; chain: Chain } | undefined;

/** Reads and verifies the record in a folder; a folder without one reads as an empty record. @internal */
export function readRecord(folder: string): Chain {
  try {
    const bytes = readFileSync(join(folder, recordName));
    if (!last?.bytes.equals(bytes)) last = { bytes, chain: readChain(bytes) };
    return last.chain;
  } catch (error) {
    if (isSystemError(error) && error.code === 'ENOENT') return readChain(new Uint8Array());
    throw diskError(error, `The record in ${folder} cannot be read`);
  }
}

/** The entries of the record in a folder. @throws ShopError when the record is damaged @internal */
export function soundEntries(folder: string): Entry[] {
  const { entries, faults } = readRecord(folder);
  refuseDamaged(basename(folder), faults);
  return entries;
}

/**
 * Appends one entry: one whole line in a single write, on the disk before this returns, with no other writer between
 * reading the record and writing to it.
 *
 * @param compose  gives the new entry from the record as it stands, or undefined for none
 * @throws ShopError  when the record is damaged, locked or cannot be written; it is then as it was
 * @internal
 */
export function appendEntry(
  folder: string,
  compose: (entries: Entry[]) => EntryContent | undefined,
  wait?: number,
): Appended {
  return locked(folder, () => appendLocked(folder, compose), wait);
}

/**
 * Appends the entries by which a copy of the record has grown, in a single write.
 *
 * @param grown  the record's bytes and the new lines after them
 * @throws ShopError  when the record is no longer as it was copied, or cannot be written; it is then as it was
 * @internal
 */
export function appendStaged(folder: string, grown: Uint8Array): void {
  locked(folder, () => {
    const path = join(folder, recordName);
    const record = existsSync(path) ? readFileSync(path) : Buffer.alloc(0);
    if (!record.equals(grown.subarray(0, record.length)))
      throw new ShopError(
        `The record of ${basename(folder)} was written to while a sheet ran, perhaps by a sheet that is open: nothing of that run is kept. Run the sheets again.`,
      );
    if (grown.length > record.length) appendLine(path, grown.subarray(record.length));
  });
}

function locked<T>(folder: string, work: () => T, wait?: number): T {
  const lock = join(folder, `${recordName}.lock`);
  try {
    return withLock(
      lock,
      () => {
        sweepLock(lock);
        return work();
      },
      wait,
    );
  } catch (error) {
    throw diskError(error, `The record in ${folder} cannot be written`);
  }
}

function appendLocked(folder: string, compose: (entries: Entry[]) => EntryContent | undefined): Appended {
  const chain = readRecord(folder);
  refuseDamaged(basename(folder), chain.faults);
  const setAside = chain.incomplete && moveAside(folder, chain.incomplete);
  const content = compose(chain.entries);
  if (!content) return { setAside };
  const line = nextLine(chain.head, content);
  const lead = chain.unterminated ? '\n' : '';
  appendLine(join(folder, recordName), Buffer.concat([Buffer.from(lead), line, Buffer.from('\n')]));
  return { entry: readRecord(folder).entries.at(-1), setAside };
}

/** Keeps the bytes of an incomplete last line in a file of their own, then cuts them off the record. */
function moveAside(folder: string, incomplete: Uint8Array): string {
  // Named by its content, so doing this again after another power cut writes the same file.
  const name = `record-incomplete-${sha256(incomplete).slice(0, 12)}.txt`;
  replaceFile(join(folder, name), incomplete);
  const fd = openSync(join(folder, recordName), 'r+');
  try {
    ftruncateSync(fd, fstatSync(fd).size - incomplete.length);
    fsyncSync(fd);
  } finally {
    closeSync(fd);
  }
  return name;
}
