import { readdirSync } from 'node:fs';
import { basename, join } from 'node:path';
import { replaceFile } from '../../disk/replace-file.js';
import { pageName } from '../../record/page-behind.js';
import { readDrafts } from '../../record/store/drafts-file.js';
import { shopBook } from '../../shop/shop-book.js';
import { contentsPage, type LearningSheet } from '../../show/page/contents-page.js';
import type { Shelf } from '../../show/page/shelf.js';
import { type Notebook, readNotebook } from '../sheets/notebook.js';
import { type Renewed, renewPage } from './renew-page.js';

/**
 * Writes the page of all commissions and lessons, `index.html` beside the commissions' folders; commissions' own pages that are
 * behind first.
 *
 * @param commissions  the folder of commissions
 * @param worksheets  the folder of the sheets to learn from
 * @returns its path, how many of both it names, and the commissions' pages that were behind
 * @throws ShopError  when there is no such folder, a sheet cannot be read, or the page cannot be written
 */
export async function writeContents(
  commissions: string,
  worksheets: string,
): Promise<{ path: string; count: number; sheets: number; renewed: Renewed[] }> {
  const book = shopBook(commissions);
  const renewed: Renewed[] = [];
  for (const { name, head } of book.commissions) {
    const each = await renewPage(join(commissions, name), { head, quickly: true });
    if (each) renewed.push(each);
  }
  const names = [...book.commissions.map(({ name }) => name), ...book.empty];
  const shelves = new Map(names.map((name) => [name, shelfOf(join(commissions, name))]));
  const lessons = readdirSync(join(worksheets, 'lessons')).filter((file) => file.endsWith('.ipynb'));
  const files = ['start-here.ipynb', ...lessons.sort().map((file) => join('lessons', file)), 'glossary.ipynb'];
  const learning = files.map((file) => learningSheet(join(worksheets, file)));
  const path = join(commissions, 'index.html');
  replaceFile(path, contentsPage(book, shelves, learning));
  return { path, count: book.commissions.length, sheets: learning.length, renewed };
}

function shelfOf(folder: string): Shelf {
  const files = readdirSync(folder).sort();
  const isPaper = (file: string) => /\.(?:html|dxf|svg|csv)$/.test(file) && file !== pageName;
  return {
    page: files.includes(pageName),
    sheets: files.filter((file) => file.endsWith('.ipynb')).map((file) => basename(file, '.ipynb')),
    papers: files.filter(isPaper),
    drafts: readDrafts(folder).map(({ what }) => what),
  };
}

function learningSheet(path: string): LearningSheet {
  const text = firstProse(readNotebook(path));
  return {
    title: /^# (.+)$/m.exec(text)?.[1] ?? path,
    question: /^\*\*(.+)\*\*$/m.exec(text)?.[1] ?? '',
    opens: basename(path, '.ipynb'),
  };
}

const firstProse = ({ cells }: Notebook) => cells.find(({ cell_type }) => cell_type === 'markdown')?.source ?? '';
