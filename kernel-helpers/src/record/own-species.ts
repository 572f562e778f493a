import { existsSync, readFileSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { diskError } from '../disk/disk-error.js';
import { ShopError } from '../measure/shop-error.js';
import { addSpecies, type Species } from '../wood/species.js';
import { sha256 } from './chain/sha256.js';

/** File of the maker's own woods: a list of entries as in data/species.json. */
const ownSpecies = 'own-species.json';

/** Digest of each file of own woods that counts for a commission: the shop's and its own. @internal */
export function ownSpeciesVersions(folder: string): Record<string, string> {
  const files = [
    [`the shop's ${ownSpecies}`, join(dirname(dirname(folder)), ownSpecies)],
    [ownSpecies, join(folder, ownSpecies)],
  ] as const;
  const there = files.filter(([, file]) => existsSync(file));
  return Object.fromEntries(there.map(([name, file]) => [name, sha256(readFileSync(file)).slice(0, 16)]));
}

/**
 * Adds the maker's own woods: the shop's, from data/ above the commissions, then the commission's own, which win.
 *
 * @param folder  the commission's folder
 * @throws ShopError  names the file, and the entry and field at fault
 * @internal
 */
export function addOwnSpecies(folder: string): void {
  for (const place of [dirname(dirname(folder)), folder]) {
    const file = join(place, ownSpecies);
    if (!existsSync(file)) continue;
    try {
      addSpecies(JSON.parse(readFileSync(file, 'utf8')) as Species[]);
    } catch (error) {
      if (error instanceof SyntaxError)
        throw new ShopError(`${file}: not JSON (${error.message}); a list of woods is possible`);
      if (error instanceof ShopError) throw new ShopError(`${file}: ${error.message}`);
      throw diskError(error, `${file} cannot be read`);
    }
  }
}
