import { ShopError } from '../measure/shop-error.js';

/** How often something happened, and the band that its true share lies in. */
export interface Proportion {
  count: number;
  of: number;
  /** 0 to 1; not a number to rely on when `of` is small: see the band. */
  share: number;
  low: number;
  high: number;
}

/**
 * A share with its interval by Wilson's score, which holds for few cases and for none or all of them too.
 *
 * @param count  how many times, of how many
 * @param z  standard deviations of the band: 1.2816 for eight in ten, unless told otherwise
 * @returns undefined when there was no case
 * @throws ShopError  counts that are no counts
 * @see Wilson 1927, Journal of the American Statistical Association 22:209-212 (from memory); compared with seven methods in
 *   Newcombe 1998, Statistics in Medicine 17:857-872, method 3
 */
export function proportion(count: number, of: number, z = 1.2816): Proportion | undefined {
  if (!(Number.isInteger(count) && Number.isInteger(of) && count >= 0 && count <= of))
    throw new ShopError(`${count} of ${of} given; possible: whole numbers, the first no more than the second`);
  if (of === 0) return undefined;
  const share = count / of;
  const middle = share + z ** 2 / (2 * of);
  const half = z * Math.sqrt((share * (1 - share)) / of + z ** 2 / (4 * of ** 2));
  const whole = 1 + z ** 2 / of;
  return {
    count,
    of,
    share,
    low: Math.max(0, (middle - half) / whole),
    high: Math.min(1, (middle + half) / whole),
  };
}
