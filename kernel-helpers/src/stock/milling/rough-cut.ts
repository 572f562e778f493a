import * as z from 'zod';
import { readParameters, size } from '../../measure/parameters.js';
import { rounding } from '../../measure/verdict.js';
import type { PiecePart } from '../../piece/piece.js';
import { blanksOf, type PartsToCut } from './blanks.js';
import {
  type Jointer,
  readJointer,
  readTableSaw,
  type TableSaw,
  type TypedJointer,
  type TypedTableSaw,
} from './hand-fed.js';
import { type Planer, readPlaner, type TypedPlaner } from './planer.js';
import {
  type MillingAllowances,
  type ReadAllowances,
  type RoughPart,
  readAllowances,
  roughParts,
} from './rough-parts.js';

/** What a rough cut is worked out from. */
export interface RoughCutInput {
  /** Finished parts of a box or of any other piece; plywood is left out. */
  parts: readonly PiecePart[];
  allowances?: MillingAllowances;
  planer?: TypedPlaner;
  jointer?: TypedJointer;
  tableSaw?: TypedTableSaw;
  /** Of the saw that cuts blanks apart; 1/8 in unless told otherwise. */
  kerf?: number | string;
  /** Parts in the order in which the figure runs on: `[['side', 'front', 'side', 'back']]`. */
  sequences?: readonly (readonly string[])[];
}

/** What is cut out of boards before any is planed, and with what it is planed then. Inches. */
export interface RoughCut {
  /** Finished parts. */
  parts: readonly PiecePart[];
  rough: RoughPart[];
  /** Parts as the cut plan takes them, and the blanks they are planed and ripped in. */
  toCut: PartsToCut;
  planer: Planer;
  jointer: Jointer;
  tableSaw: TableSaw;
  kerf: number;
  allowances: ReadAllowances;
}

const sawFields = z.strictObject({
  kerf: size({ least: 0, most: 0.5, why: "width of the saw's cut" }).default(1 / 8),
});

/**
 * What to cut out of boards rough, before it is known which boards: parts with what milling takes, those that run on in one
 * figure together in one blank, and so those too short for the jointer, the planer or the table saw. A blank stays whole until it
 * is planed and ripped: nothing shorter or narrower than a machine takes is ever fed to it alone.
 *
 * @param input  see {@link RoughCutInput}
 * @throws ShopError  an allowance, a machine's figure or a sequence that is not possible
 * @see order of milling: common practice, no source
 */
export function roughCut(input: RoughCutInput): RoughCut {
  const { parts, sequences = [] } = input;
  const planer = readPlaner(input.planer);
  const jointer = readJointer(input.jointer);
  const tableSaw = readTableSaw(input.tableSaw);
  const { kerf } = readParameters(sawFields, { kerf: input.kerf });
  const rough = roughParts(input).map((part) => wideEnough(part, { planer, tableSaw, kerf }));
  const leastLength = Math.max(planer.leastLength, jointer.leastLength, tableSaw.leastLength);
  const toCut = blanksOf({ rough, leastLength, kerf, sequences });
  return { parts, rough, toCut, planer, jointer, tableSaw, kerf, allowances: readAllowances(input.allowances) };
}

/** A part with so much width left on that the planer takes it, and that the saw has a piece to hold beside it. */
function wideEnough(
  part: RoughPart,
  { planer, tableSaw, kerf }: Pick<RoughCut, 'planer' | 'tableSaw' | 'kerf'>,
): RoughPart {
  const strip = part.finished.width < tableSaw.leastWidth - rounding;
  const width = Math.max(part.width + (strip ? kerf + tableSaw.leastWidth : 0), planer.leastWidth);
  return { ...part, width, ...(strip ? { strip } : {}) };
}
