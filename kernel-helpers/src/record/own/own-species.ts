import { existsSync, readFileSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { readJsonFile } from '../../disk/json-file.js';
import { addSpecies, type Species } from '../../wood/species.js';
import { sha256 } from '../chain/sha256.js';

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
 * @throws ShopError  names the file, the line, and the entry and field at fault
 * @internal
 */
export function addOwnSpecies(folder: string): void {
  for (const place of [dirname(dirname(folder)), folder]) {
    readJsonFile(join(place, ownSpecies), {
      read: (woods) => addSpecies(woods as Species[]),
      possible: '[], a list of woods as in data/species.json',
    });
  }
}
