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

/** A commission's title, as the link to its page where it has one. */
export function titleHtml(folder: string, title: string, { page }: Shelf): string {
  return page ? link(folder, 'index.html', title) : escapeHtml(title);
}

/** Links to each of a commission's sheets and papers, folded; nothing where there is none to open. */
export function shelfHtml(folder: string, { page, sheets, papers }: Shelf): string {
  const items = [
    ...(page ? sheets.map((name) => link(folder, `index.html#${sheetId(name)}`, asWords(name))) : []),
    ...papers.map((file) => link(folder, encodeURIComponent(file), paperName(file))),
  ];
  if (items.length === 0) return '';
  return `<details><summary>Sheets and papers</summary><ul class="shelf">${items.map((item) => `<li>${item}</li>`).join('')}</ul></details>`;
}

function link(folder: string, address: string, text: string): string {
  return `<a href="${escapeHtml(encodeURIComponent(folder))}/${escapeHtml(address)}">${escapeHtml(text)}</a>`;
}

/** `bench list`, `lettering (dxf)`. */
function paperName(file: string): string {
  const [, name = file, kind = ''] = /^(.*)\.(\w+)$/.exec(file) ?? [];
  return kind === 'html' ? asWords(name) : `${asWords(name)} (${kind})`;
}

const asWords = (name: string) => name.replaceAll('-', ' ');
