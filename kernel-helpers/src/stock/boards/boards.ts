import * as z from 'zod';
import { amount, known, readParameters, size, words } from '../../measure/parameters.js';
import { ShopError } from '../../measure/shop-error.js';
import { tape } from '../../measure/verdict.js';
import { species } from '../../wood/species.js';
import type { Defect } from '../cut-plan/plan.js';
import { readDefect } from './defects.js';

/** A rough board in hand or at the yard, in; what was not measured is left out. */
export interface Board {
  /** Chalked on it, at the end that places are measured from. */
  mark: string;
  thickness: number;
  width: number;
  length: number;
  /** Per board foot, in whole currency units. */
  price: number;
  /** Lies in the shop, so that using it buys nothing. */
  inHand?: boolean;
  /** A sheet of plywood, or a piece of one. */
  plywood?: boolean;
  species?: string;
  /** By the meter, %. */
  moisture?: number;
  /** How far it is bent over its whole length, face down on something flat. */
  bow?: number;
  /** How hollow it is across its whole width. */
  cup?: number;
  /** How far its fourth corner stands up when three lie flat. */
  twist?: number;
  defects?: Defect[];
  /** Width of sapwood along the lower and along the upper edge, as it lies with the marked end to the left. */
  sapwoodLower?: number;
  sapwoodUpper?: number;
  note?: string;
}

/** A defect as it is typed: with lengths as text, or all in one: `knot at 12 in by 3 in size 2 in by 1 1/2 in`. */
export type TypedDefect = string | { [field in keyof Defect]: Defect[field] | string };

type LengthField = 'thickness' | 'width' | 'length' | 'bow' | 'cup' | 'twist' | 'sapwoodLower' | 'sapwoodUpper';

/** A board as it is typed: `{ mark: 'A', thickness: '4/4', width: '7 in', length: '8 ft', price: 14.5 }`. */
export type TypedBoard = Omit<Board, LengthField | 'defects'> & {
  [field in keyof Pick<Board, LengthField>]: Board[field] | string;
} & { defects?: TypedDefect[] };

const bend = (why: string) => size({ least: 0, most: 6, why }).optional();
const boardFields: z.ZodType<Board> = z.strictObject({
  mark: words('what is chalked on the board'),
  thickness: size({ least: 0.125, most: 6, why: 'measured thickness; rough 4/4 is 1 in' }),
  width: size({ least: 1, most: 60, why: 'width of the board or sheet' }),
  length: size({ least: 3, most: 240, why: 'length of the board' }),
  price: amount({ least: 0, most: 10000, why: 'price of a board foot' }),
  inHand: z.boolean({ error: 'possible: true or false (whether it lies in the shop)' }).optional(),
  plywood: z.boolean({ error: 'possible: true or false (whether it is plywood)' }).optional(),
  species: known(species, 'its wood').optional(),
  moisture: amount({ least: 2, most: 60, unit: '%', why: 'what the moisture meter reads' }).optional(),
  bow: bend('how far it is bent over its whole length'),
  cup: bend('how hollow it is across its whole width'),
  twist: bend('how far its fourth corner stands up when three lie flat'),
  defects: z.array(z.any().transform(defectHere), { error: 'possible: a list of defects' }).optional(),
  sapwoodLower: bend('sapwood along the lower edge'),
  sapwoodUpper: bend('sapwood along the upper edge'),
  note: z.string().max(2000).optional(),
});

function defectHere(typed: unknown, context: z.RefinementCtx): Defect {
  try {
    return readDefect(typed);
  } catch (error) {
    context.addIssue((error as Error).message);
    return z.NEVER;
  }
}

/**
 * Reads boards as they were typed.
 *
 * @throws ShopError  one line: which board, which field, the value given, what is possible; a mark used twice; a defect
 *   outside its board; sapwood wider than its board
 */
export function readBoards(typed: TypedBoard[]): Board[] {
  const boards = readParameters(z.array(boardFields), typed);
  const wrong = boardProblem(boards);
  if (wrong) throw new ShopError(wrong.what);
  return boards;
}

/** One board. @throws ShopError  as {@link readBoards} @internal */
export function readBoard(typed: unknown): Board {
  const board = readParameters(boardFields, typed);
  const wrong = boardProblem([board]);
  if (wrong) throw new ShopError(wrong.what);
  return board;
}

/** What makes boards impossible together or in themselves: the first such thing, and which board. @internal */
export function boardProblem(boards: readonly Board[]): { index: number; what: string } | undefined {
  const marks = boards.map(({ mark }) => mark);
  const twice = marks.findIndex((mark, index) => marks.indexOf(mark) !== index);
  if (twice >= 0)
    return { index: twice, what: `mark: "${marks[twice]}" stands on two boards; each needs a mark of its own` };
  for (const [index, board] of boards.entries()) {
    const { mark, length, width, sapwoodLower = 0, sapwoodUpper = 0, defects = [] } = board;
    if (sapwoodLower + sapwoodUpper >= width)
      return {
        index,
        what: `sapwood: ${tape(sapwoodLower + sapwoodUpper)} in all given on board ${mark}; possible: less than its ${tape(width)} of width`,
      };
    const outside = defects.find(
      (defect) => defect.fromEnd + defect.length > length + 1e-9 || defect.fromEdge + defect.width > width + 1e-9,
    );
    if (outside)
      return {
        index,
        what: `defects: ${outside.kind} reaches ${tape(outside.fromEnd + outside.length)} from the end and ${tape(outside.fromEdge + outside.width)} from the edge on board ${mark}; possible: inside its ${tape(length)} by ${tape(width)}`,
      };
  }
  return undefined;
}
