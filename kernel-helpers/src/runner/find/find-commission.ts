import { existsSync, readdirSync, statSync } from 'node:fs';
import { basename, join, resolve } from 'node:path';
import { distance } from 'fastest-levenshtein';
import { isCommission } from '../../disk/daybook-folder.js';
import { ShopError } from '../../measure/shop-error.js';
import { slug } from '../../record/new-commission.js';

/** The names of the commissions in a daybook, `2026-03-12-tea-chest`, oldest first. */
export function commissionNames(root: string): string[] {
  const commissions = join(root, 'data', 'commissions');
  if (!existsSync(commissions)) return [];
  return readdirSync(commissions, { withFileTypes: true })
    .filter((entry) => entry.isDirectory() && !entry.name.startsWith('.'))
    .map((entry) => entry.name)
    .sort();
}

/**
 * The folder of a commission.
 *
 * @param root   the daybook's folder
 * @param given  the folder's name, the name without its date, the title, or a path
 * @param from   the folder that a path starts from
 * @throws ShopError  when there is none, naming the nearest, or more than one
 */
export function findCommission(root: string, given: string, from: string): string {
  const path = resolve(from, given);
  if (statSync(path, { throwIfNoEntry: false })?.isDirectory()) {
    if (isCommission(path)) return path;
    if (basename(given) !== given) {
      throw new ShopError(
        `${path} is no commission: those stand in data/commissions. Sheets elsewhere are practice, for npm run lab.`,
      );
    }
  }
  const names = commissionNames(root);
  const wanted = slug(given);
  const found = names.filter((name) => name === given || name === wanted || undated(name) === wanted);
  if (found.length === 1) return join(root, 'data', 'commissions', found[0] as string);
  if (found.length > 1) {
    throw new ShopError(
      `"${given}" is the name of ${found.length} commissions; give it with its date: ${found.join(', ')}`,
    );
  }
  if (names.length === 0) {
    throw new ShopError(`there is no commission "${given}", nor any other yet: npm run new -- "${given}" starts one`);
  }
  const nearest = [...names].sort((a, b) => distance(undated(a), wanted) - distance(undated(b), wanted)).slice(0, 3);
  throw new ShopError(`there is no commission "${given}"; nearest: ${nearest.join(', ')}`);
}

/** A commission's title as far as its folder tells: `2026-03-12-tea-chest` is "Tea chest". */
export function titleOf(name: string): string {
  const words = undated(name).replaceAll('-', ' ');
  return words.slice(0, 1).toUpperCase() + words.slice(1);
}

/** The name without its date: `tea-chest`. */
export function undated(name: string): string {
  return name.replace(/^\d{4}-\d\d-\d\d-/, '');
}
