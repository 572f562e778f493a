import { existsSync } from 'node:fs';
import { join } from 'node:path';
import { shopBook } from '../record/shop-book.js';
import { contentsPage } from '../show/page/contents-page.js';
import { writeFile } from './write-file.js';

/**
 * Writes the page of all commissions, `index.html` beside their folders.
 *
 * @param commissions  the folder of commissions
 * @returns its path, and how many it names
 * @throws ShopError  when there is no such folder, or the page cannot be written
 */
export async function writeContents(commissions: string): Promise<{ path: string; count: number }> {
  const book = shopBook(commissions);
  const pages = book.commissions.filter(({ name }) => existsSync(join(commissions, name, 'index.html')));
  const path = join(commissions, 'index.html');
  await writeFile(path, contentsPage(book, new Set(pages.map(({ name }) => name))));
  return { path, count: book.commissions.length };
}
