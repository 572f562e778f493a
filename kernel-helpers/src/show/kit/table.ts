import { ShopError } from '../../measure/shop-error.js';
import type { DisplayItem } from './display.js';
import { wordsHtml } from './escape.js';
import { numberText } from './number-text.js';

/** A column of a table. */
export interface Column {
  head: string;
  /** DisplayItem once, in the head: `in`, `%`, `h`. */
  unit?: string;
  /** Decimal places of the numbers; as many as the column needs, unless told otherwise. */
  decimals?: number;
  /** Numbers stand right, words left, unless told otherwise. */
  align?: 'left' | 'right';
}

/** A column of texts that stand right as numbers do, such as lengths in fractions. */
export function right(head: string): Column {
  return { head, align: 'right' };
}

/** What stands in a cell; nothing where there is nothing to say. */
export type Cell = string | number | null | undefined;

/**
 * A table. Numbers of a column share their decimal places and stand right, units are in the heads, all text is escaped.
 *
 * @param columns  heads, left to right; all of them empty for a plain list of names and values
 * @param rows  one list of cells a row, as long as `columns`
 * @param caption  what to see in it
 * @throws ShopError  when a row is longer or shorter than the heads, or a number is not finite
 * @example table({ columns: ['Part', { head: 'Length', unit: 'in' }], rows: [['side', 12]], caption: 'Finished sizes' })
 */
export function table(content: {
  columns: readonly (string | Column)[];
  rows: readonly (readonly Cell[])[];
  caption: string;
}): DisplayItem {
  const { rows, caption } = content;
  const columns = content.columns.map((column) => (typeof column === 'string' ? { head: column } : column));
  for (const [i, row] of rows.entries())
    if (row.length !== columns.length)
      throw new ShopError(`rows: row ${i + 1} of "${caption}" has ${row.length} cells; ${columns.length} are possible`);

  const texts = columns.map((column, i) =>
    columnTexts(
      column,
      rows.map((row) => row[i]),
      caption,
    ),
  );
  const styles = columns.map(({ align }, i) => {
    const numbers = rows.length > 0 && rows.every((row) => row[i] == null || typeof row[i] === 'number');
    return `style="text-align: ${align ?? (numbers ? 'right' : 'left')}"`;
  });
  const head = columns.map(({ head, unit }, i) =>
    // A column without a name has no head: an empty one would be read out as one.
    head === '' ? '<td></td>' : `<th scope="col" ${styles[i]}>${wordsHtml(unit ? `${head}, ${unit}` : head)}</th>`,
  );
  const body = rows.map(
    (_, r) => `<tr>${columns.map((_, c) => `<td ${styles[c]}>${texts[c]?.[r]}</td>`).join('')}</tr>`,
  );
  const named = columns.some(({ head }) => head !== '');
  const text =
    `<table class="daybook-table"><caption style="text-align: left">${wordsHtml(caption)}</caption>` +
    `${named ? `<thead><tr>${head.join('')}</tr></thead>` : ''}<tbody>${body.join('')}</tbody></table>`;
  return { mime: 'text/html', text };
}

function columnTexts(column: Column, cells: Cell[], caption: string): string[] {
  const numbers = cells.filter((cell): cell is number => typeof cell === 'number');
  const wrong = numbers.find((number) => !Number.isFinite(number));
  if (wrong !== undefined)
    throw new ShopError(`rows: ${column.head} in "${caption}" is ${wrong}; a finite number is possible`);
  const needed = numbers.map((number) => numberText(number).split('.')[1]?.replace(/e.*/, '').length ?? 0);
  const decimals = column.decimals ?? Math.max(0, ...needed);
  return cells.map((cell) =>
    typeof cell === 'number'
      ? (Math.round(cell * 10 ** decimals) / 10 ** decimals || 0).toFixed(decimals)
      : wordsHtml(cell ?? ''),
  );
}
