import { evaluate, type Formula } from '../../measure/formula.js';

/** Lumber is sold by the board foot: a foot square and an inch thick. */
export const boardFootFormula: Formula<'T' | 'W' | 'L'> = {
  name: 'Board feet',
  result: { tex: 'B', meaning: 'board feet', unit: 'bd ft' },
  expression: 'max(T, 1) * W * L / 144',
  symbols: {
    T: { meaning: 'rough thickness; under an inch counts as an inch', unit: 'in', min: 0 },
    W: { meaning: 'width', unit: 'in', min: 0 },
    L: { meaning: 'length', unit: 'in', min: 0 },
  },
  source:
    'board-foot rule of the hardwood trade (National Hardwood Lumber Association), as given in a public engineering reference table',
};

/**
 * Board feet of a rough board.
 *
 * @param board.thickness  rough, in (4/4 is 1); under 1 counts as 1, as the hardwood trade does
 * @param board.width, board.length  in
 * @returns board feet, unrounded
 * @throws ShopError  a size below zero
 * @example boardFeet({ thickness: 1, width: 6, length: 96 }) // 4
 */
export function boardFeet(board: { thickness: number; width: number; length: number }): number {
  return evaluate(boardFootFormula, { T: board.thickness, W: board.width, L: board.length });
}
