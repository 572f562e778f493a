import { escapeHtml, wordsHtml } from '../kit/escape.js';
import { joined, type Lines, outputHtml, type SheetOutput } from './cell-outputs.js';
import type { PageGlossary } from './page-glossary.js';
import { parameterLines } from './parameter-lines.js';
import { proseHtml } from './prose.js';
import { scrollableTable } from './scrollable-table.js';

/** A notebook, executed: what the page needs of nbformat 4.5. */
export interface SheetNotebook {
  cells: SheetCell[];
}

/** A cell of a notebook. */
export interface SheetCell {
  cell_type: string;
  source: Lines;
  metadata?: { tags?: string[] };
  outputs?: SheetOutput[];
  attachments?: Record<string, Record<string, string>>;
}

/** A sheet's part of the page, and its line in the contents. */
export interface SheetSection {
  id: string;
  title: string;
  html: string;
}

/** A sheet's place on the page, by its name: `sheet-04-lid-through-the-year`. */
export function sheetId(name: string): string {
  return `sheet-${name.toLowerCase().replace(/[^a-z0-9]+/g, '-')}`;
}

/** A sheet as a section of the page: prose, parameters, what was shown, and the code folded away. */
export function sheetSection(name: string, notebook: SheetNotebook, words: PageGlossary): SheetSection {
  const id = sheetId(name);
  const headingId = `${id}-title`;
  const firstProse = notebook.cells.find(
    ({ cell_type, source }) => cell_type === 'markdown' && headingOf(joined(source)),
  );
  const title = firstProse ? headingOf(joined(firstProse.source)) : name;
  const heading = firstProse ? '' : `<h2 id="${headingId}">${escapeHtml(name)}</h2>`;
  const cells = notebook.cells.map((cell) => cellHtml(cell, words, cell === firstProse ? headingId : undefined));
  return {
    id,
    title,
    html: `<section class="sheet" id="${id}" aria-labelledby="${headingId}">${heading}${cells.join('\n')}</section>`,
  };
}

function cellHtml(cell: SheetCell, words: PageGlossary, headingId: string | undefined): string {
  const source = joined(cell.source);
  if (cell.cell_type === 'markdown') return proseHtml(source, { headingId, attachments: cell.attachments, words });
  if (cell.cell_type !== 'code') return `<pre>${escapeHtml(source)}</pre>`;
  const outputs = (cell.outputs ?? []).map(outputHtml).filter(Boolean);
  const shown = outputs.map((html) => `<div class="output"${scrollableTable(html)}>${html}</div>`).join('\n');
  const code = codeHtml(source);
  return cell.metadata?.tags?.includes('parameters') ? parametersHtml(source) + shown : shown + code;
}

function codeHtml(source: string): string {
  if (source.trim() === '') return '';
  return `<details class="code"><summary>Code</summary><pre><code>${escapeHtml(source)}</code></pre></details>`;
}

function parametersHtml(source: string): string {
  const lines = parameterLines(source);
  if (!lines) return `<pre><code>${escapeHtml(source)}</code></pre>`;
  const rows = lines.map(
    ({ name, value, note }) =>
      `<tr><th scope="row">${escapeHtml(inWords(name))}</th><td class="value">${wordsHtml(value)}</td><td>${wordsHtml(note)}</td></tr>`,
  );
  return (
    '<table class="parameters"><thead><tr><th scope="col">Given</th><th scope="col">Value</th><th scope="col">What it is</th></tr></thead>' +
    `<tbody>${rows.join('')}</tbody></table>`
  );
}

/** `insideLength` as "inside length"; a unit at the end, as in `shopTemperatureC`, keeps its capital. */
function inWords(name: string): string {
  return name
    .replace(/([a-z0-9])([A-Z])(?!$)/g, (_, before: string, capital: string) => `${before} ${capital.toLowerCase()}`)
    .replace(/([a-z])([A-Z])$/, '$1 $2');
}

/** A Markdown text's first heading, as plain words. */
function headingOf(text: string): string {
  const heading = /^ {0,3}#{1,6}\s+(.+?)\s*#*\s*$/m.exec(text)?.[1] ?? '';
  return heading.replace(/[*_`]/g, '');
}
