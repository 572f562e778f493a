import { join } from 'node:path';
import { replaceFile } from '../disk/replace-file.js';
import { ShopError } from '../measure/shop-error.js';

/** Plain names only, of papers that a sheet makes: nothing that leads out of the folder or over a sheet or the record. */
const possible = /^[a-z0-9][a-z0-9-]*\.(?:html|dxf|svg|csv)$/;
const taken = ['index.html'];

/**
 * Keeps a paper that a sheet made (a template, a drawing for exchange) in the commission's folder, whole or not at all.
 *
 * @throws ShopError  a name that is not possible; a disk that refuses
 * @internal
 */
export function saveFile(folder: string, file: string, text: string): void {
  if (!possible.test(file) || taken.includes(file))
    throw new ShopError(
      `file: "${file}" given; possible: a plain name such as joint-template.html or parts.dxf, but not index.html`,
    );
  replaceFile(join(folder, file), text);
}
