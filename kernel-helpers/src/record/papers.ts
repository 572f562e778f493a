import { ShopError } from '../measure/shop-error.js';
import type { Head } from './chain/entry.js';
import { shortHash } from './decision-row.js';

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

/** Stand in a paper where the number and the fingerprint of the entry it is kept with are to stand. */
export const entryHere = '[entry]';
export const fingerprintHere = '[fingerprint]';

/** A paper with the number and the fingerprint of its entry put in. @internal */
export function signed(text: string, { seq, hash }: Head): string {
  return text.replaceAll(entryHere, String(seq)).replaceAll(fingerprintHere, shortHash(hash));
}

const mark = /<aside data-behind[^>]*>.*?<\/aside>\n?/gs;

/**
 * A paper as HTML with a mark across its head that says why it no longer holds; an earlier mark is taken out first.
 *
 * @param why  in a sentence
 * @internal
 */
export function markedBehind(html: string, why: string): string {
  const said = why.replaceAll('&', '&amp;').replaceAll('<', '&lt;');
  const aside = `<aside data-behind style="border: 3px double #000; padding: 0.6em 1em; margin: 0 0 1em; font: bold 1rem/1.4 sans-serif">Behind: do not work from this paper. ${said} Run the sheets again.</aside>`;
  return html.replace(mark, '').replace(/<body[^>]*>/, (body) => `${body}\n${aside}`);
}
