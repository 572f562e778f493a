import { readdirSync, statSync } from 'node:fs';
import { basename, dirname, join, resolve } from 'node:path';
import { ShopError } from '../../measure/shop-error.js';
import { slug } from '../../record/new-commission.js';
import { undated } from './find-commission.js';

/**
 * The zip file of a packed commission.
 *
 * @param given  a path to it, or what `work` takes: its name with or without the date, the title; `.zip` may stand behind it
 * @param from  the folder that a path starts from, where `pack` puts its files
 * @returns a path; that of what was given where there is no such file
 * @throws ShopError  when the name is that of more than one
 */
export function findPacked(given: string, from: string): string {
  const path = resolve(from, given);
  if (statSync(path, { throwIfNoEntry: false })?.isFile()) return path;
  const folder = dirname(path);
  const wanted = slug(basename(path).replace(/\.zip$/i, ''));
  const found = zipsIn(folder).filter((file) => [file, undated(file)].some((name) => name === `${wanted}.zip`));
  if (found.length > 1)
    throw new ShopError(`"${given}" is the name of ${found.length} files; give it with its date: ${found.join(', ')}`);
  return found[0] === undefined ? path : join(folder, found[0]);
}

function zipsIn(folder: string): string[] {
  try {
    return readdirSync(folder).filter((file) => file.endsWith('.zip'));
  } catch {
    return [];
  }
}
