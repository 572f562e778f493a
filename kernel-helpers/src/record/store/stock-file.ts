import { existsSync, readFileSync } from 'node:fs';
import { diskError } from '../../disk/disk-error.js';
import { sweepLock, withLock } from '../../disk/lock.js';
import { replaceFile } from '../../disk/replace-file.js';
import { ShopError } from '../../measure/shop-error.js';
import type { StockStore } from './store.js';

/** The shop's stock in a JSON file; it need not be there yet. @internal */
export function stockFile(path: string): StockStore {
  return {
    place: path,
    read: () => parsed(path, readText(path)),
    change(next) {
      const lock = `${path}.lock`;
      try {
        withLock(lock, () => {
          sweepLock(lock);
          const before = readText(path);
          const text = `${JSON.stringify(next(parsed(path, before)), null, 2)}\n`;
          if (text !== before) replaceFile(path, text);
        });
      } catch (error) {
        throw diskError(error, `${path} cannot be written`);
      }
    },
  };
}

function readText(path: string): string | undefined {
  try {
    return existsSync(path) ? readFileSync(path, 'utf8') : undefined;
  } catch (error) {
    throw diskError(error, `${path} cannot be read`);
  }
}

function parsed(path: string, text: string | undefined): unknown {
  if (text === undefined) return undefined;
  try {
    return JSON.parse(text);
  } catch (error) {
    throw new ShopError(`${path}: not JSON (${(error as Error).message}); { "boards": [] } is possible`);
  }
}
