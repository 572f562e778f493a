import { closeSync, existsSync, fstatSync, fsyncSync, ftruncateSync, openSync, writeSync } from 'node:fs';
import { dirname } from 'node:path';
import { ShopError } from '../measure/shop-error.js';
import { syncFolder } from './durable.js';

/** Appends bytes in one go and waits for the disk; a failed or short write is taken back. @internal */
export function appendLine(path: string, bytes: Uint8Array): void {
  const isNew = !existsSync(path);
  const fd = openSync(path, 'a');
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
  if (isNew) syncFolder(dirname(path));
}
