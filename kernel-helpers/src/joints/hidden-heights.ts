import { rounding } from '../measure/verdict.js';
import type { DovetailLayout } from './dovetails.js';

/** Heights between which a groove is hidden, behind one tail or one pin. Inches from the lower edge. */
export interface HiddenPlace {
  behind: 'tail' | 'pin';
  from: number;
  to: number;
}

/** Where a groove can lie in a dovetailed corner without meeting a line between a tail and a pin. @internal */
export function hiddenHeights({ tails, pins }: DovetailLayout): HiddenPlace[] {
  // A pin is narrow on the tail board's end, a tail at its baseline: the narrow place is what hides.
  return [
    ...pins.map(({ from, to }): HiddenPlace => ({ behind: 'pin', from, to })),
    ...tails.map(
      ({ baselineFrom, baselineTo }): HiddenPlace => ({ behind: 'tail', from: baselineFrom, to: baselineTo }),
    ),
  ];
}

/**
 * Height of a groove's lower edge, nearest to the one given, at which the whole groove lies behind one tail or one pin.
 * To the 1/64 in, where the place is wide enough for that.
 *
 * @param groove.fromBottom, groove.width  in
 * @param groove.behind  only behind a tail, or only behind a pin; either unless told otherwise
 * @returns in; nothing where the groove is wider than every tail and pin
 */
export function nearestHiddenHeight(groove: {
  fromBottom: number;
  width: number;
  layout: DovetailLayout;
  behind?: HiddenPlace['behind'];
}): number | undefined {
  const { fromBottom, width, layout, behind } = groove;
  const heights = hiddenHeights(layout)
    .filter((place) => behind === undefined || place.behind === behind)
    .filter(({ from, to }) => to - from >= width - rounding)
    .map(({ from, to }) => {
      const nearest = Math.min(Math.max(fromBottom, from), to - width);
      const rounded = (fromBottom < from ? Math.ceil : Math.floor)(nearest * 64) / 64;
      return nearest === fromBottom || rounded < from || rounded > to - width ? nearest : rounded;
    });
  return heights.sort((a, b) => Math.abs(a - fromBottom) - Math.abs(b - fromBottom))[0];
}
