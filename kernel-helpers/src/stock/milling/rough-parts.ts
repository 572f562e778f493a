import * as z from 'zod';
import { readParameters, size } from '../../measure/parameters.js';
import { ShopError } from '../../measure/shop-error.js';
import type { PiecePart } from '../../piece/piece.js';
import { quarterThicknesses } from '../boards/lumber-data.js';
import type { Panel } from './panels.js';

/** What is left on a part for milling. Lengths as text or inches. */
export interface MillingAllowances {
  /** Over length at the rough crosscut. */
  length?: number | string;
  /** Over width at the rough rip. */
  width?: number | string;
  /** Taken off both faces together between rough sawn and finished, where a board's bends were not measured. */
  thickness?: number | string;
  /** Taken off both faces together of a piece that is straight, where its board's bends were measured. */
  cleanFaces?: number | string;
  /** Left on the width of a glued-up panel, and on its thickness, until its glue has cured. */
  panelWidth?: number | string;
  panelThickness?: number | string;
  /** Taken off both edges together of each joint of a panel. */
  jointing?: number | string;
}

/** The same in inches. */
export type ReadAllowances = { [field in keyof Required<MillingAllowances>]: number };

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
  /**
   * What it is milled to; the width is that before it is lowered or tapered. A board of a panel is milled to what it is glued up
   * at: its edges jointed, its length and thickness still over.
   */
  finished: { length: number; width: number; thickness: number };
  /** The part that it is glued up into, where it is a board of a panel. */
  panel?: string;
  /** Narrower than the saw takes by hand: ripped off a wider blank, as the strip that falls away from the fence. */
  strip?: boolean;
}

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
