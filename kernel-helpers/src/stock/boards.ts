import { z } from 'zod';
import { amount, readParameters, size, words } from '../measure/parameters.js';
import { ShopError } from '../measure/shop-error.js';

/** A rough board in hand or at the yard, in. */
export interface Board {
  /** Chalked on it. */
  mark: string;
  thickness: number;
  width: number;
  length: number;
  /** Per board foot, in whole currency units. */
  price: number;
}

/** A board as it is typed: `{ mark: 'A', thickness: '4/4', width: '7 in', length: '8 ft', price: 14.5 }`. */
export interface TypedBoard {
  mark: string;
  thickness: number | string;
  width: number | string;
  length: number | string;
  price: number;
}

const boardFields: z.ZodType<Board> = z.strictObject({
  mark: words('what is chalked on the board'),
  thickness: size({ least: 0.25, most: 6, why: 'rough thickness; 4/4 is 1 in' }),
  width: size({ least: 1, most: 40, why: 'width of the board' }),
  length: size({ least: 6, most: 240, why: 'length of the board' }),
  price: amount({ least: 0, most: 10000, why: 'price of a board foot' }),
});

/**
 * Reads boards as they were typed.
 *
 * @throws ShopError  one line: which board, which field, the value given, what is possible; a mark used twice; no board
 */
export function readBoards(typed: TypedBoard[]): Board[] {
  const boards = readParameters(z.array(boardFields).min(1, 'possible: one board or more'), typed);
  const marks = boards.map(({ mark }) => mark);
  const twice = marks.find((mark, index) => marks.indexOf(mark) !== index);
  if (twice) throw new ShopError(`mark: "${twice}" stands on two boards; each needs a mark of its own`);
  return boards;
}
