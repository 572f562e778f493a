import { closeSync, fsyncSync, openSync } from 'node:fs';

/**
 * Waits until a folder's names are on the disk: a new file's name is only when its folder is. Windows and some network drives
 * see to that themselves and refuse to be asked.
 *
 * @internal
 */
export function syncFolder(folder: string): void {
  try {
    const fd = openSync(folder, 'r');
    fsyncSync(fd);
    closeSync(fd);
  } catch {}
}

/** Sleeps without spinning, ms. @internal */
export function pause(ms: number): void {
  Atomics.wait(new Int32Array(new SharedArrayBuffer(4)), 0, 0, ms);
}
