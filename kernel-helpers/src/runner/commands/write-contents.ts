import { existsSync, readdirSync } from 'node:fs';
import { join, relative, sep } from 'node:path';
import { replaceFile } from '../../disk/replace-file.js';
import { shopBook } from '../../shop/shop-book.js';
import { contentsPage, type LearningSheet } from '../../show/page/contents-page.js';
import { type Notebook, readNotebook } from '../sheets/notebook.js';

/**
 * Writes the page of all commissions and lessons, `index.html` beside the commissions' folders.
 *
 * @param commissions  the folder of commissions
 * @param worksheets  the folder of the sheets to learn from
 * @returns its path, and how many of both it names
 * @throws ShopError  when there is no such folder, a sheet cannot be read, or the page cannot be written
 */
export async function writeContents(
  commissions: string,
  worksheets: string,
): Promise<{ path: string; count: number; sheets: number }> {
  const book = shopBook(commissions);
  const pages = book.commissions.filter(({ name }) => existsSync(join(commissions, name, 'index.html')));
  const lessons = readdirSync(join(worksheets, 'lessons')).filter((file) => file.endsWith('.ipynb'));
  const files = ['start-here.ipynb', ...lessons.sort().map((file) => join('lessons', file)), 'glossary.ipynb'];
  const learning = files.map((file) => learningSheet(commissions, join(worksheets, file)));
  const path = join(commissions, 'index.html');
  replaceFile(path, contentsPage(book, new Set(pages.map(({ name }) => name)), learning));
  return { path, count: book.commissions.length, sheets: learning.length };
}

function learningSheet(from: string, path: string): LearningSheet {
  const text = firstProse(readNotebook(path));
  return {
    title: /^# (.+)$/m.exec(text)?.[1] ?? path,
    question: /^\*\*(.+)\*\*$/m.exec(text)?.[1] ?? '',
    path: relative(from, path).replaceAll(sep, '/'),
  };
}

const firstProse = ({ cells }: Notebook) => cells.find(({ cell_type }) => cell_type === 'markdown')?.source ?? '';
