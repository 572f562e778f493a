import { join } from 'node:path';
import { readNotebook } from '../../kernel-helpers/src/runner/sheets/notebook.js';

/** The lid's sheet in a commission's folder: the one with the most to look at. */
export function lidSheet(folder: string): string {
  return join(folder, '04-lid-through-the-year.ipynb');
}

/** How many pictures a sheet was saved with. */
export function savedPictures(sheet: string): number {
  const outputs = readNotebook(sheet).cells.flatMap((cell) => cell.outputs ?? []);
  const pages = outputs.map((output) => ('data' in output ? String(output.data['text/html'] ?? '') : ''));
  return pages.join('').match(/<img /g)?.length ?? 0;
}
