import { existsSync, readdirSync } from 'node:fs';
import { basename, dirname, join } from 'node:path';
import { ShopError } from '../measure/shop-error.js';

/** Sheets of a box that serve every piece. */
const shared = [
  '03-wood-and-air.ipynb',
  '07-stock-and-cutting.ipynb',
  '09-hours-cost-quote.ipynb',
  '10-days-and-record.ipynb',
  '11-closing.ipynb',
];

/**
 * The template sheets that a commission is made of, by the names they get in its folder: for a box, all in the folder of
 * templates; for another piece, those in `pieces/` beside it and in `pieces/<piece>/`, and the box's that serve every piece.
 *
 * @param templates  the folder of a box's sheets
 * @param piece  `box`, or the name of a folder in `pieces/`
 * @returns paths, sorted by the sheet's name
 * @throws ShopError  a piece that there is none of
 * @internal
 */
export function templateSheets(templates: string, piece: string): string[] {
  const pieces = join(dirname(templates), 'pieces');
  const kinds = foldersIn(pieces);
  if (piece !== 'box' && !kinds.includes(piece))
    throw new ShopError(`piece: "${piece}" given; possible: ${['box', ...kinds].join(', ')}`);
  const ofBox = sheetsIn(templates);
  const paths =
    piece === 'box'
      ? ofBox
      : [...sheetsIn(pieces), ...sheetsIn(pieces, piece), ...ofBox.filter((path) => shared.includes(basename(path)))];
  return paths.sort((a, b) => (basename(a) < basename(b) ? -1 : 1));
}

function sheetsIn(...path: string[]): string[] {
  const folder = join(...path);
  if (!existsSync(folder)) return [];
  const sheets = readdirSync(folder).filter((file) => file.endsWith('.ipynb'));
  return sheets.map((file) => join(folder, file));
}

function foldersIn(folder: string): string[] {
  if (!existsSync(folder)) return [];
  const entries = readdirSync(folder, { withFileTypes: true });
  return entries
    .filter((entry) => entry.isDirectory() && sheetsIn(folder, entry.name).length > 0)
    .map(({ name }) => name);
}
