/**
 * A share of cases that were tried, as odds of a hundred: `93`. Not one of the cases tried is no proof that there is none, so
 * `over 99` and `under 1` stand at the ends, never 100 or 0.
 *
 * @param share  0 to 1, of a thousand cases or more
 */
export function ofHundred(share: number): string {
  if (share >= 0.995) return 'over 99';
  if (share < 0.005) return 'under 1';
  return (100 * share).toFixed(0);
}
