import { type Cautions, type Choices, cautionsFor } from '../../surface/cautions.js';
import type { DisplayItem } from '../kit/display.js';
import { wordsHtml } from '../kit/escape.js';

/**
 * The usual cautions for the operations that a sheet sends someone to, as far as they hold for what was chosen: no oily rags with
 * shellac, and walnut's dust only with walnut.
 *
 * @param operations  ids of data/cautions.json: `table-saw`, `jointer`, `planer`, `router-table`, `hand-router`,
 *   `dovetail-saw-and-chisel`, `sanding`, `glue`, `oil-finish`, `dust` and so on; a wrong id names the nearest
 * @param choices  wood, finish, glue; what is not given may be any
 * @throws ShopError  for an id that is not in the list; names the nearest
 */
export function cautions(operations: readonly string[], choices: Choices = {}): DisplayItem {
  return { mime: 'text/html', text: cautionsFor(operations, choices).map(block).join('') };
}

function block({ operation, points, comesFirst, source }: Cautions): string {
  const list = points.map(
    (each) => `<li>${wordsHtml(each.say)}${each.source ? ` <small>(${wordsHtml(each.source)})</small>` : ''}</li>`,
  );
  return (
    `<div class="daybook-caution"><p><strong>▲ Caution: ${wordsHtml(operation)}</strong></p><ul>${list.join('')}</ul>` +
    `<p><strong>${wordsHtml(comesFirst)}</strong> <small>(${wordsHtml(source)})</small></p></div>`
  );
}
