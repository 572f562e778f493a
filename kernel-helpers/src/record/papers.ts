import { ShopError } from '../measure/shop-error.js';
import type { Head } from './chain/entry.js';
import { referenceOf } from './decision-row.js';
import { isPaperName } from './drafts/paper-name.js';

/**
 * Refuses a name that a paper of a sheet (a template, a drawing for exchange) cannot have.
 *
 * @throws ShopError  the name given, and what is possible
 * @internal
 */
export function refusePaperName(file: string): void {
  if (!isPaperName(file))
    throw new ShopError(
      `file: "${file}" given; possible: a plain name such as joint-template.html or parts.dxf, but not index.html`,
    );
}

/** Stands in a paper where the reference of the entry it is kept with is to stand. */
export const referenceHere = '[reference]';

/** A paper with the reference of its entry put in. @internal */
export function signed(text: string, head: Head): string {
  return text.replaceAll(referenceHere, referenceOf(head));
}

/** A paper that is kept with no entry. @internal */
export function unsigned(text: string): string {
  return text.replaceAll(referenceHere, '(a draft has none)');
}

const mark = /\n?<aside data-behind(?:="withdrawn")? style.*?<\/aside>/gs;

/**
 * A paper as HTML with a mark across its head that says why it no longer holds; an earlier mark is taken out first.
 *
 * @param why  in a sentence
 * @param withdrawn  whether its decision was withdrawn: what stands instead did not make this paper
 * @internal
 */
export function markedBehind(html: string, why: string, withdrawn = false): string {
  const said = why.replaceAll('&', '&amp;').replaceAll('<', '&lt;');
  const aside = `<aside data-behind${withdrawn ? '="withdrawn"' : ''} style="border: 3px double #000; padding: 0.6em 1em; margin: 0 0 1em; font: bold 1rem/1.4 sans-serif">Behind: do not work from this paper. ${said} Run the sheets again.</aside>`;
  return unmarked(html).replace(/<body[^>]*>/, (body) => `${body}\n${aside}`);
}

/** The paper without that mark: what it rests on is again as it was. @internal */
export function unmarked(html: string): string {
  return html.replace(mark, '');
}

/** Whether a paper was marked when its decision was withdrawn. @internal */
export function isWithdrawn(html: string): boolean {
  return html.includes('<aside data-behind="withdrawn" style');
}
