import type { Board } from '../boards/boards.js';
import type { Blank } from './blanks.js';

/** A blank sawn from the thickness of its board before it is planed, in. */
export interface Resawing {
  /** What it is sawn to, planing left on. */
  thickness: number;
  /** Pieces of it that the board's thickness gives. */
  gives: number;
}

/** Most of a board's thickness that is planed away in one go, as a share of it: common practice, no source. */
const mostPlanedAway = 1 / 2;

/** Whether planing takes so much that what is left bends anew. */
export const takesTooMuch = (board: Pick<Board, 'thickness'>, blank: Pick<Blank, 'thickness'>): boolean =>
  board.thickness - blank.thickness > mostPlanedAway * board.thickness + 1e-9;

/**
 * Where planing would take more than half of the board: sawn from its thickness first, left to settle, then planed. What is sawn
 * off is wood, not shavings.
 *
 * @param saw.reach  thickness left once one face is flat: the face that lies against the saw's fence
 * @param saw.allowance  left on for planing, both faces together
 * @param saw.kerf  of the saw
 * @returns nothing where little is planed away, or the board is too thin for the saw
 * @see common practice, no source
 */
export function resawn(saw: {
  board: Pick<Board, 'thickness'>;
  blank: Pick<Blank, 'thickness'>;
  reach: number;
  allowance: number;
  kerf: number;
}): Resawing | undefined {
  const { board, blank, reach, allowance, kerf } = saw;
  const thickness = blank.thickness + allowance;
  if (!takesTooMuch(board, blank) || thickness + kerf > reach) return undefined;
  return { thickness, gives: Math.floor((reach + kerf) / (thickness + kerf) + 1e-9) };
}
