import { copyFileSync, existsSync, mkdirSync, readdirSync, readFileSync, rmSync } from 'node:fs';
import { basename, join } from 'node:path';
import { replaceFile } from '../../disk/replace-file.js';
import { appendStaged, recordName } from '../chain/record-file.js';
import { folderStore } from './folder-store.js';
import type { Store } from './store.js';

/**
 * A commission in its folder, whose new entries and papers wait in another until the sheet that makes them has run to its end:
 * {@link takeOver} puts them in their place, and what is left there when a sheet fails was never kept.
 *
 * @param folder  the commission's
 * @param waiting  a folder of nothing else
 * @internal
 */
export function stagedStore(folder: string, waiting: string): Store {
  const kept = folderStore(folder);
  const staged = folderStore(waiting);
  const record = join(waiting, recordName);
  return {
    ...kept,
    entries: () => (existsSync(record) ? staged : kept).entries(),
    append(compose) {
      mkdirSync(waiting, { recursive: true });
      if (!existsSync(record) && existsSync(join(folder, recordName))) copyFileSync(join(folder, recordName), record);
      return staged.append(compose);
    },
    has: (file) => staged.has(file) || kept.has(file),
    read: (file) => (staged.has(file) ? staged : kept).read(file),
    save(file, text) {
      mkdirSync(waiting, { recursive: true });
      staged.save(file, text);
    },
  };
}

/**
 * Takes over what waits: the entries in one write, then the papers.
 *
 * @throws ShopError  when the record was written to meanwhile, or the disk refuses; nothing that waits is kept then
 * @internal
 */
export function takeOver(folder: string, waiting: string): void {
  if (!existsSync(waiting)) return;
  try {
    const files = readdirSync(waiting);
    if (files.includes(recordName)) appendStaged(folder, readFileSync(join(waiting, recordName)));
    for (const file of files.filter((file) => !basename(file).startsWith(recordName)))
      replaceFile(join(folder, file), readFileSync(join(waiting, file)));
  } finally {
    rmSync(waiting, { recursive: true, force: true, maxRetries: 3 });
  }
}
