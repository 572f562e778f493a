import type { FitMonth, SeasonalFit } from './seasonal-fit.js';

/** Months, 1 to 12, in which a piece has less play than it needs. */
export interface BindingMonths {
  /** Of the middling board. */
  middling: number[];
  /** Of the board that one in twenty exceeds. */
  lively: number[];
}

/**
 * When a piece would bind if it were planed to another width on the same day.
 *
 * @param planed.fit  see {@link SeasonalFit}
 * @param planed.width  in
 * @returns months under the least play, in the order of the year; none where it runs all year
 * @see the piece grows in proportion to its width: {@link movement}
 */
export function bindingMonths(planed: { fit: SeasonalFit; width: number }): BindingMonths {
  const { fit, width } = planed;
  const { opening, fittedWidth, limits } = fit;
  const months = (play: (month: FitMonth) => number) =>
    fit.byMonth
      .filter((month) => opening - (width * (opening - play(month))) / fittedWidth < limits.leastClearance - 1e-9)
      .map(({ month }) => month);
  return { middling: months(({ clearance }) => clearance), lively: months(({ low }) => low) };
}
