import { randomBytes } from 'node:crypto';
import { closeSync, fsyncSync, openSync, readFileSync, renameSync, rmSync, statSync, writeFileSync } from 'node:fs';
import { basename, dirname, join } from 'node:path';
import { diskError } from './disk-error.js';
import { pause, syncFolder } from './durable.js';

/**
 * Writes a whole file or leaves the old one: a file of another name is finished and on the disk first, then takes the name.
 * A file that holds this already is not touched.
 *
 * @throws ShopError  when the disk refuses; the old file is then as it was
 */
export function replaceFile(path: string, text: string | Uint8Array): void {
  const next = join(dirname(path), `.${basename(path)}.${process.pid}-${randomBytes(4).toString('hex')}.next`);
  const bytes = Buffer.from(text);
  try {
    if (statSync(path, { throwIfNoEntry: false })?.isFile() && readFileSync(path).equals(bytes)) return;
    const file = openSync(next, 'w');
    try {
      writeFileSync(file, bytes);
      fsyncSync(file);
    } finally {
      closeSync(file);
    }
    rename(next, path);
    syncFolder(dirname(path));
  } catch (error) {
    rmSync(next, { force: true });
    throw diskError(error, `${path} cannot be written`);
  }
}

// Windows refuses while another program, such as a virus scanner, has the old file open: mostly for an instant.
function rename(from: string, to: string): void {
  for (let wait = 10; ; wait *= 2) {
    try {
      renameSync(from, to);
      return;
    } catch (error) {
      const code = (error as NodeJS.ErrnoException).code ?? '';
      if (!['EPERM', 'EACCES', 'EBUSY'].includes(code) || wait > 1000) throw error;
      pause(wait);
    }
  }
}
