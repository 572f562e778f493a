/**
 * Where a continuous function changes its sign between two ends: the ends are halved until they meet.
 *
 * @param f  the function; its sign differs at the two ends
 * @param low, high  the ends
 * @param tolerance  how far from the crossing the answer may be, in the unit of the ends
 * @throws RangeError  when the sign is the same at both ends
 * @internal
 */
export function bisect(f: (x: number) => number, low: number, high: number, tolerance: number): number {
  const rising = f(high) > 0;
  if (f(low) > 0 === rising) throw new RangeError(`the sign is the same at ${low} and at ${high}`);
  let [below, above] = [low, high];
  for (;;) {
    const middle = (below + above) / 2;
    if (above - below <= 2 * tolerance || middle === below || middle === above) return middle;
    if (f(middle) > 0 === rising) above = middle;
    else below = middle;
  }
}
