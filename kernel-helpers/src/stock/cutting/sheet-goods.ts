import * as z from 'zod';
import { amount, readParameters, size, words } from '../../measure/parameters.js';
import { ShopError } from '../../measure/shop-error.js';
import type { PiecePart } from '../../piece/piece.js';
import type { Board } from '../boards/boards.js';
import type { CutPart } from '../cut-plan/plan.js';

/** How much thinner or thicker than the part a sheet may be: what a groove bears. In; common practice, no source. @internal */
export const sheetTolerance = 1 / 64;

/** A sheet as it is typed: its thickness measured, not nominal, and its whole price. */
export interface TypedSheet {
  mark: string;
  thickness: number | string;
  width: number | string;
  length: number | string;
  /** Of the whole sheet, in whole currency units. */
  price: number;
  inHand?: boolean;
}

const sheetFields = z.strictObject({
  mark: words('what is chalked on the sheet'),
  thickness: size({ least: 0.0625, most: 2, why: 'measured with a caliper, not nominal' }),
  width: size({ least: 2, most: 72, why: 'across the grain of its faces' }),
  length: size({ least: 2, most: 144, why: 'along the grain of its faces' }),
  price: amount({ least: 0, most: 100_000, why: 'price of the whole sheet' }),
  inHand: z.boolean({ error: 'possible: true or false (whether it lies in the shop)' }).optional(),
});

/**
 * Plywood sheets as boards, so that the cut plan takes them: the price is spread over their board feet.
 *
 * @throws ShopError  one line: which sheet, which field, the value given, what is possible; a mark used twice
 */
export function readSheets(typed: readonly TypedSheet[]): Board[] {
  const sheets = readParameters(z.array(sheetFields), typed);
  const marks = sheets.map(({ mark }) => mark);
  const twice = marks.find((mark, index) => marks.indexOf(mark) !== index);
  if (twice) throw new ShopError(`mark: "${twice}" stands on two sheets; each needs a mark of its own`);
  return sheets.map(({ price, inHand, ...sheet }) => ({
    ...sheet,
    plywood: true,
    // An inch or less counts as an inch: the board feet of a sheet are its square feet.
    price: (price * 144) / (Math.max(1, sheet.thickness) * sheet.width * sheet.length),
    ...(inHand === undefined ? {} : { inHand }),
  }));
}

/**
 * Plywood parts for the cut plan: nothing over, since a sheet is sawn to size at once. Each lies with its length along the sheet;
 * where the grain of the faces does not matter, a second list has all of them turned by a quarter, and the cheaper of the two
 * plans is taken. The bound of a plan then speaks for its own list only.
 *
 * @param cut.parts  finished parts of any piece; solid wood is left out; in
 * @param cut.grain  whether the grain of the faces runs along each part: then none is turned
 * @returns one list, or two
 * @throws ShopError  no plywood part
 */
export function sheetParts(cut: { parts: readonly PiecePart[]; grain?: boolean }): CutPart[][] {
  const { grain = false } = cut;
  const along = cut.parts
    .filter(({ material }) => material === 'plywood')
    .map(({ name, count, length, width, thickness }) => ({
      name,
      count,
      length,
      width,
      thickness: thickness - sheetTolerance,
    }));
  if (along.length === 0)
    throw new ShopError(
      `parts: no plywood among ${cut.parts.map(({ name }) => name).join(', ')}; possible: a part of plywood`,
    );
  const turned = along.map((part) => ({ ...part, length: part.width, width: part.length }));
  return grain ? [along] : [along, turned];
}
