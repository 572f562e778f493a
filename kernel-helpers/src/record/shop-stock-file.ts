import { existsSync, readFileSync } from 'node:fs';
import { basename, dirname, join } from 'node:path';
import { diskError } from '../disk/disk-error.js';
import { sweepLock, withLock } from '../disk/lock.js';
import { replaceFile } from '../disk/replace-file.js';
import { ShopError } from '../measure/shop-error.js';
import type { Board } from '../stock/boards/boards.js';
import { readShopStock, type ShopStock, type StockOffered, stockAfter, stockFor } from '../stock/boards/shop-stock.js';

/** The shop's stock, in data/ above the commissions. */
const stockName = 'stock.json';

/** What a stock decision says of the shop's boards. @internal */
export interface StockTaken {
  boards: Board[];
  offcuts?: Board[];
}

/**
 * What the shop's stock holds for a commission.
 *
 * @param folder  the commission's
 * @param asPlanned  what it held when the commission was planned, where the stock says so
 * @throws ShopError  names the file, and the board and field at fault
 * @internal
 */
export function stockOffered(folder: string, asPlanned: boolean): StockOffered {
  const stock = readStock(fileFor(folder));
  const name = basename(folder);
  return (asPlanned ? stock.commissions[name]?.offered : undefined) ?? stockFor(stock, name);
}

/**
 * Writes what a commission takes from the stock and gives back, whole or not at all, with no other writer between reading and
 * writing.
 *
 * @param folder  the commission's
 * @param offered  what it was planned from; what the stock holds now when left out
 * @returns notices, a line each
 * @throws ShopError  a file that cannot be read or written; it is then as it was
 * @internal
 */
export function turnStock(folder: string, { boards, offcuts = [] }: StockTaken, offered?: StockOffered): string[] {
  const path = fileFor(folder);
  const name = basename(folder);
  const lock = `${path}.lock`;
  try {
    return withLock(lock, () => {
      sweepLock(lock);
      const before = readStock(path);
      const turn = {
        offered: offered ?? stockFor(before, name),
        used: boards.map(({ mark }) => mark),
        offcuts: [...offcuts],
      };
      const { stock, notices } = stockAfter(before, name, turn);
      // The maker's own boards stay as they were typed.
      const written = existsSync(path) ? JSON.parse(readFileSync(path, 'utf8')) : {};
      const next = { boards: [], ...written, commissions: stock.commissions };
      // Read as it will be read next time, before anything is written: a stock that cannot be read would lock every sheet out.
      readShopStock(next);
      const text = `${JSON.stringify(next, null, 2)}\n`;
      if (!existsSync(path) || readFileSync(path, 'utf8') !== text) replaceFile(path, text);
      const kept = stock.commissions[name]?.offcuts.map(({ mark }) => mark).join(', ');
      return [`In the shop's stock: ${kept ? `offcuts ${kept}` : 'no offcut from this plan'}.`, ...notices];
    });
  } catch (error) {
    throw diskError(error, `${path} cannot be written`);
  }
}

const fileFor = (folder: string): string => join(dirname(dirname(folder)), stockName);

function readStock(path: string): ShopStock {
  if (!existsSync(path)) return readShopStock(undefined);
  try {
    return readShopStock(JSON.parse(readFileSync(path, 'utf8')));
  } catch (error) {
    if (error instanceof SyntaxError)
      throw new ShopError(`${path}: not JSON (${error.message}); { "boards": [] } is possible`);
    if (error instanceof ShopError) throw new ShopError(`${path}: ${error.message}`);
    throw diskError(error, `${path} cannot be read`);
  }
}
