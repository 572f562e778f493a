import { ShopError } from '../measure/shop-error.js';

/** Plain names only: nothing that leads out of the folder or over a sheet or the record. */
const possible = /^[a-z0-9][a-z0-9-]*\.(?:html|dxf|svg|csv)$/;
const taken = ['index.html'];

/**
 * Refuses a name that a paper of a sheet (a template, a drawing for exchange) cannot have.
 *
 * @throws ShopError  the name given, and what is possible
 * @internal
 */
export function refusePaperName(file: string): void {
  if (!possible.test(file) || taken.includes(file))
    throw new ShopError(
      `file: "${file}" given; possible: a plain name such as joint-template.html or parts.dxf, but not index.html`,
    );
}
