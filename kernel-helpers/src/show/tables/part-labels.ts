import type { BoardLayout } from '../../stock/cutting/board-layouts.js';
import type { ChalkMark } from '../../stock/cutting/chalk-marks.js';
import type { PartsToCut } from '../../stock/milling/blanks.js';
import type { RoughPart } from '../../stock/milling/rough-part.js';
import { type DrawingOptions, lengthText } from '../drawing/kit/lengths.js';
import { escapeHtml } from '../kit/escape.js';
import { htmlPage } from '../kit/html-page.js';
import { fontFamily, ink } from '../kit/svg.js';

/**
 * Labels for the parts of a cut plan, to print, cut apart and lay on the pieces; or to chalk from.
 *
 * @param layouts  as `boardLayouts` returns them; inches
 * @param cut  as `roughCut` returns it: for the finished sizes; inches
 * @param options.marks  what else is chalked on, by the part's name in the plan; see `chalkMarks`
 * @param options  how sizes are shown
 * @returns a whole HTML document to print on A4 or Letter; it loads nothing
 */
export function partLabels(
  layouts: readonly BoardLayout[],
  cut: { rough: readonly RoughPart[]; toCut: Pick<PartsToCut, 'partOf'> },
  options: DrawingOptions & { marks?: Record<string, ChalkMark> } = {},
): string {
  const show = lengthText(options);
  const parts = layouts.flatMap(({ board, parts }) => parts.map((part) => ({ ...part, mark: board.mark })));
  const labels = parts.map(({ number, name, mark, length, width }) => {
    const finished = cut.rough.find((part) => part.name === cut.toCut.partOf[name])?.finished;
    const size = finished
      ? `${show(finished.length)} x ${show(finished.width)} x ${show(finished.thickness)}`
      : `${show(length)} x ${show(width)}`;
    const chalked = options.marks?.[name];
    return (
      `<li><strong>${number} ${escapeHtml(name)}</strong><span>board ${escapeHtml(mark)}</span>` +
      `<span>rough ${escapeHtml(`${show(length)} x ${show(width)}`)}</span><span>sawn to ${escapeHtml(size)}</span>` +
      `<span>${escapeHtml(chalked?.words ?? '')}</span><span>⟷ grain${chalked?.upright ? '; lower edge here' : ''}</span></li>`
    );
  });
  const hint =
    '<h1>Part labels</h1><p>Cut apart and lay each on the outside face of its part, the arrow along the grain; where one says so, its last line lies at the lower edge.</p>';
  return htmlPage({ title: 'Part labels', style, body: `<main>${hint}<ul>${labels.join('')}</ul></main>` });
}

const style = `@page { margin: 12mm; }
body { margin: 0; background: #fff; color: ${ink}; font: 9pt/1.35 ${fontFamily}; }
h1 { font-size: 13pt; margin: 0; }
ul { margin: 0; padding: 0; list-style: none; display: grid; grid-template-columns: repeat(auto-fill, 60mm); gap: 2mm; }
li { border: 1px dashed ${ink}; padding: 2mm; min-height: 26mm; break-inside: avoid; overflow-wrap: anywhere; }
strong { display: block; font-size: 13pt; }
span { display: block; }
@media screen { body { margin: 12mm; } }`;
