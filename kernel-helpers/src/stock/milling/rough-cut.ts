import * as z from 'zod';
import { oneOf, readParameters, size } from '../../measure/parameters.js';
import type { PiecePart } from '../../piece/piece.js';
import { blanksOf, type PartsToCut } from './blanks.js';
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
  /** Of the saw that cuts blanks apart; 1/8 in unless told otherwise. */
  kerf?: number | string;
  /** Parts in the order in which the figure runs on: `[['side', 'front', 'side', 'back']]`. */
  sequences?: readonly (readonly string[])[];
  /** How pieces too short for the planer are fed: in longer blanks unless told otherwise. */
  shortPieces?: string;
}

/** What is cut out of boards before any is planed, and with what it is planed then. Inches. */
export interface RoughCut {
  /** Finished parts. */
  parts: readonly PiecePart[];
  rough: RoughPart[];
  /** Parts as the cut plan takes them, and the blanks they are planed in. */
  toCut: PartsToCut;
  /** The same with no piece shorter than the planer allows. */
  inBlanks: PartsToCut;
  /** Whether pieces too short for the planer are fed alone all the same. */
  fedAlone: boolean;
  planer: Planer;
  allowances: ReadAllowances;
}

const machineFields = z.strictObject({
  kerf: size({ least: 0, most: 0.5, why: "width of the saw's cut" }).default(1 / 8),
  shortPieces: oneOf(['in blanks', 'alone'], 'how pieces too short for the planer are fed').default('in blanks'),
});

/**
 * What to cut out of boards rough, before it is known which boards: parts with what milling takes, those that run on in one
 * figure or are too short for the planer together in one blank.
 *
 * @param input  see {@link RoughCutInput}
 * @throws ShopError  an allowance, a machine's figure, a way to feed or a sequence that is not possible
 * @see order of milling: common practice, no source
 */
export function roughCut(input: RoughCutInput): RoughCut {
  const { parts, sequences = [] } = input;
  const planer = readPlaner(input.planer);
  const rough = roughParts(input);
  const { kerf, shortPieces } = readParameters(machineFields, { kerf: input.kerf, shortPieces: input.shortPieces });
  const inBlanks = blanksOf({ rough, leastLength: planer.leastLength, kerf, sequences });
  const fedAlone = shortPieces === 'alone';
  const toCut = fedAlone ? blanksOf({ rough, leastLength: 0, kerf, sequences }) : inBlanks;
  return { parts, rough, toCut, inBlanks, fedAlone, planer, allowances: readAllowances(input.allowances) };
}
