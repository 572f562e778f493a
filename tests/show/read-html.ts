import { parseHTML } from 'linkedom';
import type { DisplayItem } from '../../kernel-helpers/src/show/kit/display.js';

/** The part of a DOM element that these tests read; the project has no DOM types. */
export interface Read {
  localName: string;
  textContent: string;
  innerHTML: string;
  parentElement: Read | null;
  attributes: Iterable<{ name: string; value: string }>;
  getAttribute(name: string): string | null;
  querySelectorAll(selector: string): Iterable<Read>;
}

/** A whole page or a part of one, read as a person reads it: a space that no line breaks at is a space. */
export function readHtml(html: string): Read {
  const text = html.replaceAll('\u00a0', ' ');
  const whole = /^\s*<!doctype/i.test(text) ? text : `<!doctype html><html><body>${text}</body></html>`;
  return parseHTML(whole).document.documentElement as unknown as Read;
}

/** All elements that a selector finds. */
export function elementsOf(html: string, selector: string): Read[] {
  return [...readHtml(html).querySelectorAll(selector)];
}

/** The SVG inside a figure. */
export function svgOf(shown: DisplayItem): string {
  const address = elementsOf(shown.text, 'figure > img')[0]?.getAttribute('src') ?? '';
  const [kind, data = ''] = address.split(',');
  if (kind !== 'data:image/svg+xml;base64') throw new Error(`an SVG was expected, not ${kind}`);
  return Buffer.from(data, 'base64').toString('utf8');
}

/** What could run or load something: there must be none of it. */
export function dangerous(html: string): string[] {
  const found: string[] = [];
  for (const element of readHtml(html).querySelectorAll('*')) {
    if (
      /^(script|iframe|object|embed|form|input|button|link|base|svg|video|audio|source|style)$/.test(element.localName)
    )
      found.push(`<${element.localName}>`);
    for (const { name, value } of element.attributes) {
      if (/^on|^srcset$|^srcdoc$|^ping$|^background$|^action$/i.test(name)) found.push(`${name}="${value}"`);
      if (name === 'src' && !/^data:image\/(svg\+xml|png|jpeg|gif|webp);base64,/.test(value))
        found.push(`src="${value}"`);
      if (name === 'href' && !/^(#|https?:|mailto:)/.test(value)) found.push(`href="${value}"`);
      if (name === 'style' && /url|expression|position|@import/i.test(value)) found.push(`style="${value}"`);
    }
  }
  return found;
}

/** The texts of a table's body, row by row; a space that does not break is read as a space. */
export function tableRows(shown: DisplayItem): string[][] {
  return elementsOf(shown.text, 'tbody tr').map((row) =>
    [...row.querySelectorAll('td')].map(({ textContent }) => textContent.replaceAll('\u00a0', ' ')),
  );
}
