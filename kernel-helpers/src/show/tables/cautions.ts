import * as z from 'zod';
import cautionData from '../../../../data/cautions.json';
import { type DataTable, dataTable } from '../../measure/data-file.js';
import type { DisplayItem } from '../kit/display.js';
import { wordsHtml } from '../kit/escape.js';

/** The usual cautions for one operation. */
export interface Cautions {
  id: string;
  /** "Table saw" */
  operation: string;
  points: string[];
  /** What comes before these lines: the manual, local codes, qualified people. */
  comesFirst: string;
  source: string;
}

const words = z.string({ error: 'some words are needed' }).trim().min(1, 'some words are needed');

const entry: z.ZodType<Cautions> = z.strictObject({
  id: words,
  operation: words,
  points: z.array(words).min(1, 'at least one caution is needed'),
  comesFirst: words,
  source: words,
});

/** The entries of data/cautions.json. @internal */
export function cautionTable(data: object): DataTable<Cautions> {
  return dataTable('cautions.json', data, { list: 'cautions', what: 'cautions', entry });
}

const known = cautionTable(cautionData);

/**
 * The usual cautions for the operations that a sheet sends someone to.
 *
 * @param operations  ids of data/cautions.json: `table-saw`, `jointer`, `planer`, `router-table`, `hand-router`,
 *   `dovetail-saw-and-chisel`, `sanding`, `glue`, `oil-finish`, `dust` and so on; a wrong id names the nearest
 * @throws ShopError  for an id that is not in the list; names the nearest
 */
export function cautions(...operations: string[]): DisplayItem {
  return { mime: 'text/html', text: operations.map((id) => block(known.entry(id))).join('') };
}

function block({ operation, points, comesFirst, source }: Cautions): string {
  const list = points.map((point) => `<li>${wordsHtml(point)}</li>`).join('');
  return (
    `<div class="daybook-caution"><p><strong>▲ Caution: ${wordsHtml(operation)}</strong></p><ul>${list}</ul>` +
    `<p><strong>${wordsHtml(comesFirst)}</strong> <small>(${wordsHtml(source)})</small></p></div>`
  );
}
