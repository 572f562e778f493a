import { existsSync, mkdirSync, readdirSync, readFileSync, renameSync, rmSync, statSync, writeFileSync } from 'node:fs';
import { basename, join } from 'node:path';
import { strFromU8, unzipSync } from 'fflate';
import * as z from 'zod';
import { diskError, isSystemError } from '../../disk/disk-error.js';
import { ShopError } from '../../measure/shop-error.js';
import { readChain } from '../../record/chain/chain.js';
import { recordName } from '../../record/chain/record-file.js';
import { sha256 } from '../../record/chain/sha256.js';
import { noteHead } from '../../record/known-heads.js';
import { isPlainName, type PackingList, packingListName } from './pack.js';

const MOST_BYTES = 500e6;
const MOST_FILES = 2000;
const commissionName = /^\d{4}-\d\d-\d\d-[\p{L}\p{M}\p{N}-]{1,80}$/u;

const listShape: z.ZodType<PackingList> = z.strictObject({
  commission: z.string().regex(commissionName),
  head: z.strictObject({ seq: z.int().positive(), hash: z.string().regex(/^[0-9a-f]{64}$/) }),
  files: z.record(z.string(), z.string().regex(/^[0-9a-f]{64}$/)),
});

/** What became of a packed commission. */
export interface Unpacked {
  folder: string;
  /** `here`: it was here already, with the same record. */
  outcome: 'unpacked' | 'here';
}

/**
 * Unpacks a commission into the folder of commissions, whole or not at all. Nothing that is there is ever written over.
 *
 * @param file  a zip file that `packCommission` made
 * @param commissions  the folder of commissions
 * @throws ShopError  a file that is no such zip, is not whole, was changed, or holds names that lead elsewhere; a commission
 *   of that name, or the same one under another name, is here already
 */
export function unpackCommission(file: string, commissions: string): Unpacked {
  const contents = readZip(file);
  const list = readList(file, contents);
  const folder = join(commissions, list.commission);
  const record = contents.get(recordName) as Uint8Array;
  if (existsSync(folder)) return sameOrRefused(folder, record, file);
  refuseTwin(commissions, record, file);

  let next: string | undefined;
  try {
    mkdirSync(commissions, { recursive: true });
    next = join(commissions, `.unpack-${process.pid}-${Date.now()}`);
    mkdirSync(next);
    for (const [name, bytes] of contents)
      if (name !== packingListName) writeFileSync(join(next, name), bytes, { flag: 'wx', flush: true });
    renameSync(next, folder);
  } catch (error) {
    if (next) rmSync(next, { recursive: true, force: true });
    throw diskError(error, `${folder} cannot be made`);
  }
  noteHead(folder);
  return { folder, outcome: 'unpacked' };
}

/** The files of a zip by their plain names. */
function readZip(file: string): Map<string, Uint8Array> {
  let bytes: Uint8Array;
  try {
    bytes = readFileSync(file);
  } catch (error) {
    if (isSystemError(error) && error.code === 'ENOENT') throw new ShopError(`There is no file ${file}.`);
    throw diskError(error, `${file} cannot be read`);
  }
  const names: string[] = [];
  let total = 0;
  let unzipped: Record<string, Uint8Array>;
  try {
    unzipped = unzipSync(bytes, {
      filter({ name, originalSize }) {
        total += originalSize;
        names.push(name);
        if (total > MOST_BYTES || names.length > MOST_FILES)
          throw new ShopError(
            `${file} is not unpacked: it holds more than ${MOST_FILES} files or ${MOST_BYTES / 1e6} MB, which no commission has.`,
          );
        return true;
      },
    });
  } catch (error) {
    if (error instanceof ShopError) throw error;
    throw new ShopError(
      `${file} is not a whole zip file: it was copied or sent by half, or is something else. Get it again; nothing was unpacked.`,
    );
  }
  const contents = new Map<string, Uint8Array>();
  const top = names[0]?.split('/')[0] ?? '';
  const lowercase = new Set<string>();
  for (const name of names) {
    const own = name.slice(top.length + 1);
    const possible = name === `${top}/${own}` && (isPlainName(own) || own === packingListName);
    if (!possible || !commissionName.test(top))
      throw new ShopError(
        `${file} is not unpacked: it holds "${name.replace(/\p{C}/gu, '?')}", and only plain files in one commission's folder are possible. It may be meant to write elsewhere on this computer.`,
      );
    if (lowercase.has(own.toLowerCase()))
      throw new ShopError(`${file} is not unpacked: it holds "${own}" twice, or in two spellings.`);
    lowercase.add(own.toLowerCase());
    contents.set(own, unzipped[name] as Uint8Array);
  }
  return contents;
}

/** The packing list, held against the files and the record. */
function readList(file: string, contents: Map<string, Uint8Array>): PackingList {
  const given = contents.get(packingListName);
  if (!given)
    throw new ShopError(`${file} is not unpacked: it has no ${packingListName}, so it is no packed commission.`);
  let list: PackingList;
  try {
    list = listShape.parse(JSON.parse(strFromU8(given)));
  } catch {
    throw new ShopError(`${file} is not unpacked: its ${packingListName} is not as the daybook writes it.`);
  }
  const refuse = (problem: string) =>
    new ShopError(`${file} is not unpacked: ${problem}. Ask for it to be packed again.`);
  for (const [name, digest] of Object.entries(list.files)) {
    const bytes = contents.get(name);
    if (!bytes) throw refuse(`${name} is missing`);
    if (sha256(bytes) !== digest) throw refuse(`${name} was changed after it was packed`);
  }
  const stranger = [...contents.keys()].find((name) => name !== packingListName && !Object.hasOwn(list.files, name));
  if (stranger) throw refuse(`${stranger} was put in after it was packed`);
  const record = contents.get(recordName);
  if (!record) throw refuse('it holds no record');
  const { head, faults } = readChain(record);
  if (faults[0]) throw refuse(faults[0].problem);
  if (head?.hash !== list.head.hash) throw refuse('its record does not end where its list says');
  return list;
}

function sameOrRefused(folder: string, record: Uint8Array, file: string): Unpacked {
  const here = recordOf(folder);
  if (here && sha256(here) === sha256(record)) return { folder, outcome: 'here' };
  const [ours, theirs] = [firstOf(here), firstOf(record)];
  throw new ShopError(
    ours && ours === theirs
      ? `${file} is not unpacked: ${basename(folder)} is here already, and its record is not the same. Which of the two goes on? Rename the folder here to keep both.`
      : `${file} is not unpacked: another commission named ${basename(folder)} is here already. Rename the folder here to keep both.`,
  );
}

/** The same commission must not stand here twice under two names. */
function refuseTwin(commissions: string, record: Uint8Array, file: string): void {
  if (!existsSync(commissions)) return;
  const first = firstOf(record);
  for (const name of readdirSync(commissions)) {
    const folder = join(commissions, name);
    if (name.startsWith('.') || !statSync(folder).isDirectory()) continue;
    if (firstOf(recordOf(folder)) === first)
      throw new ShopError(
        `${file} is not unpacked: the same commission is here already as ${name}. Take that folder away first if this one is to replace it.`,
      );
  }
}

function recordOf(folder: string): Uint8Array | undefined {
  try {
    return readFileSync(join(folder, recordName));
  } catch {
    return undefined;
  }
}

/** Digest of a record's first line: the same for copies of one commission, however far each has gone. */
function firstOf(record: Uint8Array | undefined): string | undefined {
  const end = record?.indexOf(0x0a) ?? -1;
  return record && end > 0 ? sha256(record.subarray(0, end)) : undefined;
}
