import { closeSync, fsyncSync, openSync, readFileSync, renameSync, rmSync, statSync, writeFileSync } from 'node:fs';
import { basename, dirname, join } from 'node:path';
import { setTimeout as after } from 'node:timers/promises';
import { diskError } from './disk-error.js';

/**
 * Writes a whole file or leaves the old one: a file of another name is finished first, then takes the name.
 * A file that holds this text already is not touched.
 *
 * @throws ShopError  when the disk refuses; the old file is then as it was
 */
export async function writeFile(path: string, text: string): Promise<void> {
  const next = join(dirname(path), `.${basename(path)}.next`);
  try {
    if (statSync(path, { throwIfNoEntry: false })?.isFile() && readFileSync(path, 'utf8') === text) return;
    writeThrough(next, text);
    await rename(next, path);
  } catch (error) {
    rmSync(next, { force: true });
    throw diskError(error, `${path} cannot be written`);
  }
}

function writeThrough(path: string, text: string): void {
  const file = openSync(path, 'w');
  try {
    writeFileSync(file, text);
    fsyncSync(file);
  } finally {
    closeSync(file);
  }
}

// Windows refuses while another program, such as a virus scanner, has the old file open: mostly for an instant.
async function rename(from: string, to: string): Promise<void> {
  for (let wait = 10; ; wait *= 2) {
    try {
      return renameSync(from, to);
    } catch (error) {
      const code = (error as NodeJS.ErrnoException).code ?? '';
      if (!['EPERM', 'EACCES', 'EBUSY'].includes(code) || wait > 1000) throw error;
      await after(wait);
    }
  }
}
