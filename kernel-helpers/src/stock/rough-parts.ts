import { z } from 'zod';
import data from '../../../data/lumber.json';
import type { PiecePart } from '../box/piece.js';
import { readParameters, size } from '../measure/parameters.js';
import { ShopError } from '../measure/shop-error.js';

/** What is left on a part for milling. Lengths as text or inches. */
export interface MillingAllowances {
  /** Over length at the rough crosscut. */
  length?: number | string;
  /** Over width at the rough rip. */
  width?: number | string;
  /** Taken off both faces together between rough sawn and finished. */
  thickness?: number | string;
}

/** A part as it is first cut out of a rough board, in. */
export interface RoughPart {
  name: string;
  count: number;
  length: number;
  width: number;
  /** Thinnest rough thickness sold that still gives the part. */
  thickness: number;
  /** As the yard calls it, in quarters of an inch: 4/4. */
  called: string;
}

const allowanceFields = z.strictObject({
  length: size({ least: 0, most: 6, why: 'over length at the rough crosscut' }).default(0.75),
  width: size({ least: 0, most: 2, why: 'over width at the rough rip' }).default(0.25),
  thickness: size({ least: 0, most: 1, why: 'what flattening and thicknessing take off both faces together' }).default(
    0.1875,
  ),
});

// Yards sell hardwood from 4/4 up; thinner stock is resawn or planed away.
const roughThicknesses = z
  .object({ thicknesses: z.array(z.object({ rough: z.number().positive(), quarters: z.string().nullable() })) })
  .parse(data)
  .thicknesses.flatMap(({ rough, quarters }) => (quarters ? [{ rough, quarters }] : []));

/**
 * Solid-wood parts as they are first cut from rough boards: longer, wider and thicker than finished.
 *
 * @param cut.parts  finished parts; plywood is left out
 * @param cut.allowances  3/4 in over length, 1/4 in over width, 3/16 in of thickness unless told otherwise
 * @returns one rough part per wooden part, in
 * @throws ShopError  an allowance that is not possible; a part thicker than any board sold
 * @see over length 1/2 to 1 in, over width and thickness: common practice, no source; rough thicknesses: data/lumber.json
 */
export function roughParts(cut: { parts: readonly PiecePart[]; allowances?: MillingAllowances }): RoughPart[] {
  const allowance = readParameters(allowanceFields, cut.allowances ?? {});
  return cut.parts
    .filter(({ material }) => material === 'wood')
    .map((part) => {
      const needed = part.thickness + allowance.thickness;
      const sold = roughThicknesses.find(({ rough }) => rough >= needed);
      if (!sold)
        throw new ShopError(
          `${part.name}: ${needed} in rough is needed; boards are sold up to ${roughThicknesses.at(-1)?.rough} in (glue it up from thinner ones)`,
        );
      return {
        name: part.name,
        count: part.count,
        length: part.length + allowance.length,
        width: (part.widthBefore ?? part.width) + allowance.width,
        thickness: sold.rough,
        called: sold.quarters,
      };
    });
}
