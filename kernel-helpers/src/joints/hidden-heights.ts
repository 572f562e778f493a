import { rounding } from '../measure/verdict.js';
import type { CornerLayout } from './corner.js';

/** Heights between which a groove is hidden, behind one tail, pin or finger. Inches from the lower edge. */
export interface HiddenPlace {
  /** Whose tail, pin or finger stands there: the first boards' or the second's. */
  of: 'first' | 'second';
  from: number;
  to: number;
}

/** Where a groove can lie in a corner without meeting a line between two pieces. @internal */
export function hiddenHeights(layout: CornerLayout): HiddenPlace[] {
  if ('tails' in layout)
    // A pin is narrow on the tail board's end, a tail at its baseline: the narrow place is what hides.
    return [
      ...layout.pins.map(({ from, to }): HiddenPlace => ({ of: 'second', from, to })),
      ...layout.tails.map(
        ({ baselineFrom, baselineTo }): HiddenPlace => ({ of: 'first', from: baselineFrom, to: baselineTo }),
      ),
    ];
  // Line to line: the hair of play beside each hides nothing and shows nothing.
  const { count, fingerWidth } = layout;
  return Array.from({ length: count }, (_, index) => ({
    of: index % 2 === 0 ? 'first' : 'second',
    from: index * fingerWidth,
    to: (index + 1) * fingerWidth,
  }));
}

/**
 * Height of a groove's lower edge, nearest to the one given, at which the whole groove lies behind one tail, pin or finger.
 * To the 1/64 in, where the place is wide enough for that.
 *
 * @param groove.fromBottom, groove.width  in
 * @param groove.of  only behind a piece of the first boards (a tail), or only behind one of the second (a pin); either
 *   unless told otherwise
 * @returns in; nothing where the groove is wider than every piece
 */
export function nearestHiddenHeight(groove: {
  fromBottom: number;
  width: number;
  layout: CornerLayout;
  of?: HiddenPlace['of'];
}): number | undefined {
  const { fromBottom, width, layout, of } = groove;
  const heights = hiddenHeights(layout)
    .filter((place) => of === undefined || place.of === of)
    .filter(({ from, to }) => to - from >= width - rounding)
    .map(({ from, to }) => {
      const nearest = Math.min(Math.max(fromBottom, from), to - width);
      const rounded = (fromBottom < from ? Math.ceil : Math.floor)(nearest * 64) / 64;
      return nearest === fromBottom || rounded < from || rounded > to - width ? nearest : rounded;
    });
  return heights.sort((a, b) => Math.abs(a - fromBottom) - Math.abs(b - fromBottom))[0];
}
