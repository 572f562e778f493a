import * as z from 'zod';
import { readParameters, size } from '../../measure/parameters.js';
import { rounding } from '../../measure/verdict.js';
import type { PiecePart } from '../../piece/piece.js';
import type { Board } from '../boards/boards.js';
import { blanksOf, type PartsToCut } from './blanks.js';
import { type Figure, figureRows } from './figure.js';
import {
  type Jointer,
  readJointer,
  readTableSaw,
  type TableSaw,
  type TypedJointer,
  type TypedTableSaw,
} from './hand-fed.js';
import { type Panel, panelsOf } from './panels.js';
import { type Planer, readPlaner, type TypedPlaner } from './planer.js';
import type { MillingAllowances, ReadAllowances, RoughPart } from './rough-part.js';
import { readAllowances, roughParts } from './rough-parts.js';

/** What a rough cut is worked out from. */
export interface RoughCutInput {
  /** Finished parts of a box or of any other piece; plywood is left out. */
  parts: readonly PiecePart[];
  /** Widest part cut from one board, text or in: wider ones are glued up. */
  widestBoard?: number | string;
  /** In hand or to be had: none of them is wider than what is cut from it. */
  boards?: readonly Board[];
  allowances?: MillingAllowances;
  planer?: TypedPlaner;
  jointer?: TypedJointer;
  tableSaw?: TypedTableSaw;
  /** Of the saw that cuts blanks apart; 1/8 in unless told otherwise. */
  kerf?: number | string;
  sequences?: Figure;
}

/** What is cut out of boards before any is planed, and with what it is planed then. Inches. */
export interface RoughCut {
  /** Finished parts. */
  parts: readonly PiecePart[];
  /** Those of them that are glued up from several boards. */
  panels: Panel[];
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
  kerf: size({ least: 1 / 64, most: 0.5, why: 'the saw takes something: measure a cut' }).default(1 / 8),
});

/**
 * What to cut out of boards rough, before it is known which boards: parts with what milling takes, wide ones as the boards they
 * are glued up from, those that run on in one figure together in one blank, and so those too short for the jointer, the planer or
 * the table saw. A blank stays whole until it is planed and ripped: nothing shorter or narrower than a machine takes is ever fed
 * to it alone.
 *
 * @param input  see {@link RoughCutInput}
 * @throws ShopError  an allowance, a machine's figure or a sequence that is not possible
 * @see order of milling: common practice, no source
 */
export function roughCut(input: RoughCutInput): RoughCut {
  const { parts } = input;
  const planer = readPlaner(input.planer);
  const jointer = readJointer(input.jointer);
  const tableSaw = readTableSaw(input.tableSaw);
  const { kerf } = readParameters(sawFields, { kerf: input.kerf });
  const allowances = readAllowances(input.allowances);
  const panels = panelsOf({ ...input, allowances, planer });
  const rough = roughParts({ ...input, panels }).map((part) => wideEnough(part, { planer, tableSaw, kerf }));
  const leastLength = Math.max(planer.leastLength, jointer.leastLength, tableSaw.leastLength);
  const sequences = figureRows(input.sequences ?? [], parts, panels);
  const toCut = blanksOf({ rough, leastLength, kerf, sequences });
  return { parts, panels, rough, toCut, planer, jointer, tableSaw, kerf, allowances };
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
