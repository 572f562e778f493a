import { existsSync, readdirSync, statSync } from 'node:fs';
import { basename, join, relative, resolve, sep } from 'node:path';
import { closest } from 'fastest-levenshtein';
import { ShopError } from '../../measure/shop-error.js';
import { slug } from '../../record/new-commission.js';
import { commissionNames, undated } from './find-commission.js';

/**
 * What JupyterLab is to open: a sheet to learn from, or a commission's folder.
 *
 * @param root  the daybook's folder
 * @param given  a sheet's name, with or without its number (`glossary`, `reading-a-tape`); a commission, as `work` takes it; or a
 *   path to either
 * @param from  the folder that a path starts from
 * @returns its path from `root`, parted by `/`
 * @throws ShopError  when there is none, naming the nearest, or more than one
 */
export function findSheet(root: string, given: string, from: string): string {
  const path = resolve(from, given);
  const within = relative(root, path).split(sep);
  if (given.includes('/') || given.includes(sep) || given.endsWith('.ipynb')) {
    const opens = path.endsWith('.ipynb') || statSync(path, { throwIfNoEntry: false })?.isDirectory();
    if (existsSync(path) && opens && within[0] !== '..') return within.join('/');
  }
  const wanted = slug(given.replace(/\.ipynb$/, ''));
  const places = placesIn(root);
  const found = [...places].filter(([, names]) => names.includes(wanted)).map(([place]) => place);
  if (found.length > 1)
    throw new ShopError(`"${given}" is the name of ${found.length}; give the path of one: ${found.join(', ')}`);
  if (found[0]) return found[0];
  const nearest = closest(wanted, [...places.values()].flat());
  throw new ShopError(`there is no sheet and no commission "${given}"; nearest: ${nearest}`);
}

/** What can be opened by a name, and its names. */
function placesIn(root: string): Map<string, readonly string[]> {
  const sheets = ['worksheets', 'worksheets/lessons'].flatMap((folder) =>
    readdirSync(join(root, folder))
      .filter((file) => file.endsWith('.ipynb'))
      .map((file) => [`${folder}/${file}`, basename(file, '.ipynb')] as const),
  );
  return new Map<string, readonly string[]>([
    ...sheets.map(([place, name]) => [place, [name, name.replace(/^\d+-/, '')]] as const),
    ...commissionNames(root).map((name) => [`data/commissions/${name}`, [name, undated(name)]] as const),
  ]);
}
