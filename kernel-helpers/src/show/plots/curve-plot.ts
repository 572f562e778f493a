import type { DisplayItem } from '../kit/display.js';
import type { FigureText } from '../kit/figure.js';
import { spreadApart } from '../kit/label-places.js';
import { fontSize, ink } from '../kit/svg.js';
import { plot } from './plot.js';

/** A curve with its name at its right end. */
export interface Curve {
  name: string;
  points: readonly { x: number; y: number }[];
  /** Dashes and gaps, `8 4`; the first curve is full, the next dashed and dotted, unless told otherwise. */
  dash?: string;
}

const margins = { marginTop: 34, marginRight: 200, marginBottom: 40 };
const height = 320;
const dashes = ['', '8 4', '2 4', '12 3 2 3'];

/**
 * A few curves over one axis, told apart by their dashes and named at their ends.
 *
 * @param content.curves  up to four
 * @param content.x  label with its unit; besides it, what Observable Plot knows of an axis: `domain`, `ticks`, `tickFormat`
 * @param content.y  label with its unit, and where the axis starts: 0 unless told otherwise
 * @param text  text alternative and caption
 * @example curvePlot({ curves: [{ name: 'flat-sawn', points }], x: { label: 'moisture, %' }, y: { label: 'wider, in' } },
 *   { alt: 'It rises evenly to 0.18 in at 14 %.', caption: 'Every per cent counts the same.' })
 */
export function curvePlot(
  content: { curves: readonly Curve[]; x: object; y: { label: string; from?: number } },
  text: FigureText,
): DisplayItem {
  const { curves, x } = content;
  const { label, from = 0 } = content.y;
  const highest = Math.max(...curves.flatMap(({ points }) => points.map(({ y }) => y)));
  const domain = [from, highest + 0.08 * (highest - from)] as const;
  const inner = height - margins.marginTop - margins.marginBottom;
  const pixel = (y: number) => margins.marginTop + ((domain[1] - y) / (domain[1] - domain[0])) * inner;
  const ends = curves.map(({ points }) => points.at(-1) as { x: number; y: number });
  const places = spreadApart(
    ends.map(({ y }) => pixel(y)),
    fontSize + 5,
    margins.marginTop,
    height - margins.marginBottom,
  );
  return plot(
    (Plot) => ({
      height,
      ...margins,
      x: { labelAnchor: 'center', labelArrow: 'none', ...x },
      y: { domain, label, labelArrow: 'none', ticks: 6, grid: true },
      marks: [
        curves.map(({ points, dash }, index) =>
          Plot.line(points, {
            x: 'x',
            y: 'y',
            stroke: ink,
            strokeWidth: 2,
            strokeDasharray: dash ?? dashes[index % 4],
          }),
        ),
        curves.map(({ name }, index) =>
          Plot.text([ends[index]], {
            x: 'x',
            y: 'y',
            dy: (places[index] as number) - pixel((ends[index] as { y: number }).y),
            dx: 8,
            text: () => name,
            textAnchor: 'start',
          }),
        ),
      ],
    }),
    text,
  );
}
