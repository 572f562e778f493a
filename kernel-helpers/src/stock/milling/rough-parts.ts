import * as z from 'zod';
import { readParameters, size } from '../../measure/parameters.js';
import { ShopError } from '../../measure/shop-error.js';
import type { PiecePart } from '../../piece/piece.js';
import { quarterThicknesses } from '../boards/lumber-data.js';
import type { Panel } from './panels.js';
import type { MillingAllowances, ReadAllowances, RoughPart } from './rough-part.js';

const allowanceFields = z.strictObject({
  length: size({ least: 0, most: 6, why: 'over length at the rough crosscut' }).default(0.75),
  width: size({ least: 0, most: 2, why: 'over width at the rough rip' }).default(0.25),
  thickness: size({ least: 0, most: 1, why: 'what flattening and thicknessing take off both faces together' }).default(
    0.1875,
  ),
  cleanFaces: size({ least: 0, most: 0.5, why: 'what clean faces cost a straight piece, both together' }).default(
    0.0625,
  ),
  panelWidth: size({ least: 0, most: 2, why: 'left on the width of a glued-up panel' }).default(0.25),
  panelThickness: size({ least: 0, most: 0.25, why: 'left on the thickness of a glued-up panel' }).default(0.0625),
  jointing: size({ least: 0, most: 0.5, why: 'what jointing takes off both edges of a joint together' }).default(0.125),
});

/** The allowances in inches. @throws ShopError  one that is not possible @internal */
export function readAllowances(typed: MillingAllowances = {}): ReadAllowances {
  return readParameters(allowanceFields, typed);
}

/**
 * Solid-wood parts as they are first cut from rough boards: longer, wider and thicker than finished.
 *
 * @param cut.parts  finished parts of a box or of any other piece; plywood is left out
 * @param cut.panels  see `panelsOf`: the parts that are glued up, each of whose boards is milled by itself
 * @param cut.allowances  3/4 in over length, 1/4 in over width, 3/16 in of thickness unless told otherwise
 * @returns one rough part per wooden part, or per kind of board in a panel, in
 * @throws ShopError  an allowance that is not possible; a part thicker than any board sold
 * @see over length 1/2 to 1 in, over width and thickness: common practice, no source; rough thicknesses: data/lumber.json
 */
export function roughParts(cut: {
  parts: readonly PiecePart[];
  panels?: readonly Panel[];
  allowances?: MillingAllowances;
}): RoughPart[] {
  const { panels = [] } = cut;
  const allowance = readAllowances(cut.allowances);
  return cut.parts
    .filter(({ material }) => material === 'wood')
    .map((part) => {
      const panel = panels.find((each) => each.part === part.name);
      const width = part.widthBefore ?? part.width;
      const finished = panel
        ? { length: panel.glued.length, width: panel.board.width, thickness: panel.glued.thickness }
        : { length: part.length, width, thickness: part.thickness };
      const needed = finished.thickness + allowance.thickness;
      const sold = quarterThicknesses.find(({ rough }) => rough >= needed);
      if (!sold)
        throw new ShopError(
          `${part.name}: ${needed} in rough is needed; boards are sold up to ${quarterThicknesses.at(-1)?.rough} in (glue it up from thinner ones)`,
        );
      return {
        name: panel?.board.name ?? part.name,
        count: part.count * (panel?.boards ?? 1),
        length: part.length + allowance.length,
        width: panel?.board.roughWidth ?? width + allowance.width,
        thickness: sold.rough,
        called: sold.quarters,
        finished,
        ...(panel ? { panel: panel.part } : {}),
      };
    });
}
