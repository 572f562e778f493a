import { closeSync, existsSync, fstatSync, fsyncSync, ftruncateSync, openSync, writeSync } from 'node:fs';
import { join } from 'node:path';
import { ShopError } from '../measure/shop-error.js';

/** Writes bytes in one go and waits for the disk; a failed or short write is taken back. @internal */
export function writeDurably(path: string, flag: 'a' | 'w', bytes: Uint8Array): void {
  const isNew = !existsSync(path);
  const fd = openSync(path, flag);
  try {
    const size = fstatSync(fd).size;
    try {
      if (writeSync(fd, bytes) < bytes.length) throw new ShopError(`${path} has no room: the disk is full.`);
      fsyncSync(fd);
    } catch (error) {
      ftruncateSync(fd, size);
      throw error;
    }
  } finally {
    closeSync(fd);
  }
  if (isNew) syncFolder(join(path, '..'));
}

// A new file's name is on the disk only when its folder is. Windows and some network drives see to that themselves and
// refuse to be asked.
function syncFolder(folder: string): void {
  try {
    const fd = openSync(folder, 'r');
    fsyncSync(fd);
    closeSync(fd);
  } catch {}
}
