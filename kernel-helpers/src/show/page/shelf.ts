import { escapeHtml } from '../kit/escape.js';
import { sheetId } from './sheet-section.js';

/** What stands in a commission's folder to be opened. */
export interface Shelf {
  /** Whether it has a page. */
  page: boolean;
  /** Its sheets by name, in order: `04-lid-through-the-year`. They are on its page. */
  sheets: readonly string[];
  /** Papers to print or hand on: `quote.html`. */
  papers: readonly string[];
  /** Decisions that are only drafted. */
  drafts: readonly string[];
}

/** Nothing to open. */
export const bareShelf: Shelf = { page: false, sheets: [], papers: [], drafts: [] };

/** A commission's title as the link to its page, and below it, folded, links to each of its sheets and papers. */
export function shelfHtml(folder: string, title: string, { page, sheets, papers }: Shelf): string {
  const place = escapeHtml(encodeURIComponent(folder));
  const link = (address: string, text: string) => `<a href="${place}/${escapeHtml(address)}">${escapeHtml(text)}</a>`;
  const items = [
    ...(page ? sheets.map((name) => link(`index.html#${sheetId(name)}`, asWords(name))) : []),
    ...papers.map((file) => link(encodeURIComponent(file), paperName(file))),
  ];
  const within =
    items.length > 0
      ? `<details><summary>Sheets and papers</summary><ul>${items.map((item) => `<li>${item}</li>`).join('')}</ul></details>`
      : '';
  return `${page ? link('index.html', title) : escapeHtml(title)}${within}`;
}

/** `bench list`, `lettering (dxf)`. */
function paperName(file: string): string {
  const [, name = file, kind = ''] = /^(.*)\.(\w+)$/.exec(file) ?? [];
  return kind === 'html' ? asWords(name) : `${asWords(name)} (${kind})`;
}

const asWords = (name: string) => name.replaceAll('-', ' ');
