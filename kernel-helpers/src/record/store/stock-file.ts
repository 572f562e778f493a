import { diskError } from '../../disk/disk-error.js';
import { parseJson, placeInJson, readText } from '../../disk/json-file.js';
import { sweepLock, withLock } from '../../disk/lock.js';
import { replaceFile } from '../../disk/replace-file.js';
import type { StockStore } from './store.js';

/** The shop's stock in a JSON file; it need not be there yet. @internal */
export function stockFile(path: string): StockStore {
  return {
    placeOf: (error) => placeInJson(path, readText(path) ?? '{}', error),
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

function parsed(path: string, text: string | undefined): unknown {
  return text === undefined ? undefined : parseJson(path, text, '{ "boards": [] }');
}
