import { ShopError } from '../../measure/shop-error.js';
import { toBase64 } from './base64.js';
import type { DisplayItem } from './display.js';
import { escapeHtml, wordsHtml } from './escape.js';

/** What goes with every picture. */
export interface FigureText {
  /** For someone who cannot see the picture: what it shows, with the figures that matter. */
  alt: string;
  /** What to see in it. */
  caption: string;
}

/**
 * A picture as every reader can show it: an image of the SVG inside HTML. So it stays visible in a sheet that is not
 * trusted yet, in an export and in print, and can run nothing and load nothing.
 *
 * @param svg  a whole `<svg>` with its own ground, colours and fonts: an image inherits none
 * @param width  as shown, CSS pixels; never wider than the page
 * @throws ShopError  when a text alternative or a caption is missing
 */
export function figure(content: FigureText & { svg: string; width?: number }): DisplayItem {
  const { svg, alt, caption, width = 720 } = content;
  for (const [field, text] of Object.entries({ alt, caption }))
    if (!text?.trim()) throw new ShopError(`${field}: nothing given; every picture needs words for what it shows`);
  const data = toBase64(svg);
  const text =
    `<figure class="daybook-figure" style="margin: 12px 0">` +
    `<img alt="${escapeHtml(alt)}" width="${Math.round(width)}" style="max-width: 100%; height: auto" src="data:image/svg+xml;base64,${data}">` +
    `<figcaption>${wordsHtml(caption)}</figcaption></figure>`;
  return { mime: 'text/html', text };
}
