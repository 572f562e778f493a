import * as Plot from '@observablehq/plot';
import type { DisplayItem } from '../kit/display.js';
import { type FigureText, figure } from '../kit/figure.js';
import { element, fontFamily, fontSize, ink } from '../kit/svg.js';
import { SvgDocument, type SvgElement } from '../kit/svg-document.js';

/** The marks and scales of Observable Plot, handed in so that a sheet need not import and type-check them. */
// biome-ignore lint/suspicious/noExplicitAny: Plot's own types would cost every cell a fifth of a second
export type PlotLibrary = Record<string, any>;

/** Room for axis labels in type of this size; Plot's own is for smaller type. */
const margins = { marginTop: 34, marginBottom: 46, marginLeft: 52 };

/** Attributes that hold places and sizes. */
const measured = /\b(d|transform|points|x|y|x1|x2|y1|y2|cx|cy|r|width|height)="([^"]*)"/g;

/**
 * A plot as a picture: drawn by Observable Plot on a small document of its own, on white, with type that is legible at
 * page width.
 *
 * @param build  given Plot, returns its options; label both axes, with units
 * @param text  text alternative and caption
 * @throws ShopError  when the options ask for a title, a caption or a legend: words stand beside what they name
 * @example plot((Plot) => ({ x: { label: 'day' }, y: { label: 'moisture, %' }, marks: [Plot.lineY(days, { x: 'day', y: 'mean' })] }),
 *   { alt: 'Moisture falls from 12 to 8 % in 30 days.', caption: 'The stack is ready after 30 days.' })
 */
export function plot(build: (plot: PlotLibrary) => object, text: FigureText): DisplayItem {
  const { svg, width } = plotSvg(build);
  return figure({ ...text, svg, width });
}

/** The picture alone. @internal */
export function plotSvg(build: (plot: PlotLibrary) => object): { svg: string; width: number } {
  const given = build(Plot) as Plot.PlotOptions & { style?: object };
  const { width = 720, height = 380 } = given;
  const style = { background: 'white', color: ink, fontFamily, fontSize: `${fontSize}px`, ...given.style };
  const options = { ...margins, ...given, width, height, style, document: new SvgDocument() };
  const drawn = Plot.plot(options as object) as unknown as SvgElement;
  const rounded = drawn.outerHTML.replace(
    measured,
    (_, name: string, value: string) =>
      `${name}="${value.replace(/-?\d+\.\d{3,}(e-?\d+)?/g, (n) => String(Math.round(Number(n) * 100) / 100 || 0))}"`,
  );
  const ground = element('rect', { width, height, fill: '#fff' });
  return { svg: rounded.replace('</style>', `</style>${ground}`), width };
}
