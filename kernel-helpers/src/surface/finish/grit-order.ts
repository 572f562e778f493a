import { ShopError } from '../../measure/shop-error.js';
import { type Grit, grit } from './grits.js';

/** One grade of the order, and how much finer it is than the one before. */
export interface GritStep extends Grit {
  /** Grain of the grade before over this one's; nothing for the first. */
  ratio?: number;
}

/** "At most about 1.6" (common practice, no source): what rounds to 1.6. */
export const mostGritStep = 1.65;

/**
 * The fewest grades from a coarse one to a fine one whose grains shrink by about 1.6 or less at each step.
 *
 * @param order.kept  ids of the grades in the shop
 * @param order.from, order.to  first and last; of those kept
 * @returns from coarse to fine; a step that is too large stands in it where no kept grade lies between
 * @throws ShopError  a grade that is not kept or not known; a last grade coarser than the first
 */
export function gritOrder(order: { kept: readonly string[]; from: string; to: string }): GritStep[] {
  const kept = order.kept.map(grit).sort((a, b) => b.microns - a.microns);
  const find = (field: 'from' | 'to') => {
    const place = kept.findIndex(({ id }) => id === order[field]);
    if (place < 0)
      throw new ShopError(
        `${field}: "${order[field]}" given; possible: ${kept.map(({ id }) => id).join(', ')} (the grades you keep)`,
      );
    return place;
  };
  const [first, last] = [find('from'), find('to')];
  if (last < first)
    throw new ShopError(`to: "${order.to}" given; possible: ${order.from} or finer (sanding goes from coarse to fine)`);
  const steps: GritStep[] = [kept[first] as Grit];
  for (let at = first; at < last; ) {
    const here = kept[at] as Grit;
    let onward = at + 1;
    while (onward < last && here.microns / (kept[onward + 1] as Grit).microns < mostGritStep) onward++;
    const next = kept[onward] as Grit;
    steps.push({ ...next, ratio: here.microns / next.microns });
    at = onward;
  }
  return steps;
}
