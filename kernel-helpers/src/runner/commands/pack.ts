import { type Dirent, existsSync, readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { basename, join } from 'node:path';
import { strToU8, type Zippable, zipSync } from 'fflate';
import { diskError } from '../../disk/disk-error.js';
import { ShopError } from '../../measure/shop-error.js';
import type { Head } from '../../record/chain/entry.js';
import { sha256 } from '../../record/chain/sha256.js';
import { checkCommission } from '../../record/check/check.js';
import { draftsFolder } from '../../record/store/drafts-file.js';

/** The list in a packed commission: what is in it, so that a file that is missing or another shows. @internal */
export interface PackingList {
  /** The commission's folder, `2026-03-12-tea-chest`. */
  commission: string;
  /** Where its record ends. */
  head: Head;
  /** SHA-256 of each file, by name. */
  files: Record<string, string>;
}

/** @internal */
export const packingListName = 'packing-list.json';

/** A zip file's own times would make two packings of one commission differ. */
const always = new Date('2000-01-01T12:00:00');

/** What was packed. */
export interface Packed {
  file: string;
  files: string[];
  /** Files and folders of the commission that were left out, with the reason. */
  leftOut: string[];
}

/**
 * Packs a commission into one zip file: sheets, record, page, papers, and a list of them with their digests, so that another
 * machine can unpack and check it. The same commission gives the same file, byte for byte.
 *
 * @param folder  the commission's folder
 * @param into  the folder that the zip file goes to
 * @throws ShopError  no record, or a damaged one; a file of that name is there and holds something else
 */
export function packCommission(folder: string, into: string): Packed {
  const name = basename(folder);
  const { head, faults } = checkCommission(folder);
  if (faults[0]) throw new ShopError(`${name} is not packed: ${faults[0].problem}. ${faults[0].remedy}`);
  if (!head) throw new ShopError(`${name} is not packed: nothing is recorded in it yet. Run its sheets first.`);

  const entries = readdirSync(folder, { withFileTypes: true }).sort((a, b) => (a.name < b.name ? -1 : 1));
  const packed = entries.filter((entry) => entry.isFile() && isPlainName(entry.name));
  const leftOut = entries
    .filter((entry) => !packed.includes(entry) && !entry.name.startsWith('.'))
    .map((entry) => `${entry.name} (${reasonLeftOut(entry)})`);

  const contents: Zippable = {};
  const list: PackingList = { commission: name, head, files: {} };
  for (const entry of packed) {
    const bytes = readFile(join(folder, entry.name));
    contents[`${name}/${entry.name}`] = [bytes, { mtime: always, level: 6 }];
    list.files[entry.name] = sha256(bytes);
  }
  contents[`${name}/${packingListName}`] = [strToU8(`${JSON.stringify(list, null, 1)}\n`), { mtime: always }];

  const file = join(into, `${name}.zip`);
  const zip = zipSync(contents);
  writeNew(file, zip);
  return { file, files: packed.map((entry) => entry.name), leftOut };
}

function reasonLeftOut(entry: Dirent): string {
  if (entry.isFile()) return 'a name not possible everywhere';
  return entry.name === draftsFolder ? 'not decided' : 'not a file';
}

/**
 * Whether a name is that of a file in the commission's folder itself, on every system: no way into another folder, no drive,
 * no hidden file, none of the names that Windows keeps for devices.
 *
 * @internal
 */
export function isPlainName(name: string): boolean {
  return (
    // biome-ignore lint/suspicious/noControlCharactersInRegex: control characters are what is looked for
    !/[/\\:*?"<>|\u0000-\u001f\u007f]/.test(name) &&
    !/^\.|[. ]$/.test(name) &&
    !/^(?:con|prn|aux|nul|com\d|lpt\d)(?:\.|$)/i.test(name) &&
    name !== packingListName &&
    name.length > 0 &&
    name.length <= 150
  );
}

function readFile(path: string): Uint8Array {
  try {
    return readFileSync(path);
  } catch (error) {
    throw diskError(error, `${path} cannot be read`);
  }
}

function writeNew(file: string, bytes: Uint8Array): void {
  if (existsSync(file) && sha256(readFile(file)) === sha256(bytes)) return;
  try {
    writeFileSync(file, bytes, { flag: 'wx', flush: true });
  } catch (error) {
    if ((error as NodeJS.ErrnoException).code === 'EEXIST')
      throw new ShopError(`${file} is there already, holds something else, and stays as it is: move it first.`);
    throw diskError(error, `${file} cannot be written`);
  }
}
