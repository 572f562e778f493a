import temml from 'temml';
import { escapeHtml } from '../kit/escape.js';
import { texWidth } from '../working/tex-width.js';
import { scrollable } from './scrollable-table.js';

/**
 * TeX as MathML, which browsers set themselves: no script, no font and no network. What cannot be read stays as it was written.
 *
 * @param display  on a line of its own, not within a sentence
 */
export function mathHtml(tex: string, display: boolean): string {
  try {
    // Not trusted: no links, pictures, classes or styles of the sheet's own.
    const math = temml.renderToString(tex, {
      displayMode: display,
      throwOnError: true,
      trust: false,
      maxSize: [20, 100],
      maxExpand: 500,
    });
    return display ? `<div class="math"${blockAttributes(widest(tex))}>${math}</div>` : math;
  } catch {
    return display ? `<pre class="math">${escapeHtml(tex)}</pre>` : `<code>${escapeHtml(tex)}</code>`;
  }
}

/** Widths that a line of the page has room for, by `texWidth` and the widest of the page's faces. */
const [fitsAtTwice, fits] = [50, 58];

/** A line too wide for the page is set smaller, so that it is whole; on a small screen it is moved sideways. */
function blockAttributes(width: number): string {
  const smaller = width > fits ? ` style="font-size: ${(fits / width).toFixed(2)}em"` : '';
  return width > fitsAtTwice ? `${smaller} ${scrollable('Formula')}` : smaller;
}

/** Width of its widest line. */
function widest(tex: string): number {
  return Math.max(...tex.split('\\\\').map((line) => texWidth(line.replace(/\\(?:begin|end)\{\w+\}/, ''))));
}

/** What a `text/latex` output holds, without the marks around it. */
export function withoutMathMarks(text: string): string {
  const trimmed = text.trim();
  const inside = /^\$\$([\s\S]*)\$\$$|^\\\[([\s\S]*)\\\]$|^\$([\s\S]*)\$$/.exec(trimmed);
  return inside ? (inside[1] ?? inside[2] ?? inside[3] ?? '').trim() : trimmed;
}
