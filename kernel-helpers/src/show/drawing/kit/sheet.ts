import { svgPicture } from '../../kit/svg.js';
import { type PlacedView, placeView, type View } from './view.js';

export const pageWidth = 720;

/** Views of one picture, in rows: those in a column share their left edge, those in a row their lower one. */
export type Rows = readonly (readonly View[])[];

/** Air around a view. */
const gap = 14;
const mostScale = 150;

/**
 * Puts views on a picture at the largest scale at which they fit, all at the same.
 *
 * @param rows  views
 * @param limits.height  most height, pixels
 * @returns a whole `<svg>`, its width in pixels, and its scale in pixels an inch
 */
export function drawRows(rows: Rows, limits: { height: number }): { svg: string; width: number; scale: number } {
  let scale = mostScale;
  let laid = layOut(rows, scale);
  // Texts keep their size, so that there is no closed form: halve the doubt until it is under a hundredth.
  if (!fits(laid, limits)) {
    let low = leastScale(rows);
    let high = scale;
    while (high / low > 1.005) {
      const middle = Math.sqrt(low * high);
      if (fits(layOut(rows, middle), limits)) low = middle;
      else high = middle;
    }
    scale = low;
    laid = layOut(rows, scale);
  }
  const drawn = laid.views.map(({ view, x, y }) => view.draw(x, y));
  const content = [...drawn.map(({ lines }) => lines), ...drawn.map(({ texts }) => texts)];
  return { svg: svgPicture(laid.width, laid.height, content), width: laid.width, scale };
}

/** Where a view is too small to be seen for its texts, the picture grows instead. */
function leastScale(rows: Rows): number {
  const largest = Math.max(...rows.flat().flatMap(({ width, height }) => [width, height]));
  return 160 / largest;
}

function fits({ width, height }: { width: number; height: number }, limits: { height: number }): boolean {
  return width <= pageWidth && height <= limits.height;
}

function layOut(rows: Rows, scale: number) {
  const placed = rows.map((row) => row.map((view) => placeView(view, scale, pageWidth * 0.6)));
  const most = (views: (PlacedView | undefined)[], reach: 'left' | 'right' | 'above' | 'below') =>
    Math.max(0, ...views.map((view) => view?.[reach] ?? 0));
  const columns = Array.from({ length: Math.max(...rows.map((row) => row.length)) }, (_, i) =>
    placed.map((row) => row[i]),
  );
  let width = gap;
  const lefts = columns.map((column) => {
    const left = width + most(column, 'left');
    width = left + most(column, 'right') + gap;
    return left;
  });
  let height = gap;
  const views = placed.flatMap((row) => {
    const foot = height + most(row, 'above');
    height = foot + most(row, 'below') + gap;
    return row.map((view, i) => ({ view, x: lefts[i] as number, y: foot }));
  });
  return { views, width, height };
}
