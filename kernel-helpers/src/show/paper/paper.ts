import { htmlPage } from '../kit/html-page.js';

/**
 * A whole document to print on A4 or Letter, in black on white; it loads and runs nothing.
 *
 * @param title  plain text
 * @param body  HTML, its texts escaped
 * @param style  rules of its own
 */
export function paper(title: string, body: string, style = ''): string {
  return htmlPage({ title, style: common + style, body: `<main>${body}</main>` });
}

const common = `@page { margin: 17mm 18mm; }
* { box-sizing: border-box; }
html { background: #fff; color: #1f1b16; }
body { margin: 0 auto; padding: 2rem 1.25rem; max-width: 46rem; overflow-wrap: break-word; font: 1rem/1.5 "Iowan Old Style", Palatino, "Palatino Linotype", P052, Georgia, "Liberation Serif", serif; }
h1 { font-size: 1.9rem; line-height: 1.15; margin: 0 0 0.3em; font-weight: 600; }
h2 { font-size: 1.1rem; line-height: 1.2; margin: 1.5em 0 0.4em; font-weight: 600; break-after: avoid; }
p, ul, ol, table { margin: 0 0 0.8em; }
ul { padding-left: 1.2em; }
table { border-collapse: collapse; width: 100%; font-variant-numeric: lining-nums tabular-nums; }
th, td { text-align: left; vertical-align: baseline; font-weight: normal; padding: 0.3em 1em 0.3em 0; border-bottom: 1px solid #cfc8bc; }
tr, li { break-inside: avoid; }
.quiet { color: #5d554b; }
.number { text-align: right; padding-right: 0; white-space: nowrap; }
@media print { body { padding: 0; max-width: none; font-size: 10.5pt; line-height: 1.4; } }
`;
