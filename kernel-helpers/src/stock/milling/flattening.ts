import { evaluate, type Formula } from '../../measure/formula.js';
import type { Board } from '../boards/boards.js';

const geometry = 'geometry of a shallow circular arc: its height goes with the square of its chord';

/** A board bent evenly over its length: a piece of it is bent with the square of its own length. */
export const bowFormula: Formula<'B' | 'l' | 'L'> = {
  name: 'Bow of a piece',
  result: { tex: 'b', meaning: 'bow of the piece', unit: 'in' },
  expression: 'B * (l / L)^2',
  symbols: {
    B: { meaning: 'bow of the whole board', unit: 'in', min: 0 },
    l: { meaning: 'length of the piece', unit: 'in', min: 0 },
    L: { meaning: 'length of the board', unit: 'in', min: 0 },
  },
  source: geometry,
};

/** A board hollow across its width: a strip of it is hollow with the square of its own width. */
export const cupFormula: Formula<'C' | 'w' | 'W'> = {
  name: 'Cup of a piece',
  result: { tex: 'c', meaning: 'cup of the piece', unit: 'in' },
  expression: 'C * (w / W)^2',
  symbols: {
    C: { meaning: 'cup of the whole board', unit: 'in', min: 0 },
    w: { meaning: 'width of the piece', unit: 'in', min: 0 },
    W: { meaning: 'width of the board', unit: 'in', min: 0 },
  },
  source: geometry,
};

/** A board turned evenly from end to end: a piece of it is in wind with its own length and width. */
export const twistFormula: Formula<'T' | 'l' | 'L' | 'w' | 'W'> = {
  name: 'Twist of a piece',
  result: { tex: 'v', meaning: 'height of its fourth corner when three lie flat', unit: 'in' },
  expression: 'T * l * w / (L * W)',
  symbols: {
    T: { meaning: 'twist of the whole board', unit: 'in', min: 0 },
    l: { meaning: 'length of the piece', unit: 'in', min: 0 },
    L: { meaning: 'length of the board', unit: 'in', min: 0 },
    w: { meaning: 'width of the piece', unit: 'in', min: 0 },
    W: { meaning: 'width of the board', unit: 'in', min: 0 },
  },
  source: 'geometry of an evenly turned surface, height = k x y',
};

/**
 * Thickness of the flat slab that lies inside a bent piece: bow and cup are taken off whole, of the twist half, since a piece
 * is laid so that two corners share it.
 */
export const reachFormula: Formula<'t' | 'b' | 'c' | 'v' | 's'> = {
  name: 'Thickness it can reach',
  result: { tex: 't_r', meaning: 'thickness it can reach', unit: 'in' },
  expression: 't - b - c - v / 2 - s',
  symbols: {
    t: { meaning: 'thickness of the board', unit: 'in', min: 0 },
    b: { meaning: 'bow of the piece', unit: 'in', min: 0 },
    c: { meaning: 'cup of the piece', unit: 'in', min: 0 },
    v: { meaning: 'twist of the piece', unit: 'in', min: 0 },
    s: { meaning: 'what clean faces cost where it is straight, both together', unit: 'in', min: 0 },
  },
  source: 'geometry: two parallel flat faces inside a bent slab; clean faces: common practice, no source',
};

/** What of its board's bends a piece keeps, and the thickness that is left once it is flat, in. */
export interface Flattened {
  bow: number;
  cup: number;
  twist: number;
  /** Whether bow, cup or twist were measured; where none was, the usual allowance is taken. */
  measured: boolean;
  /** Thickness both faces clean and flat. */
  reach: number;
}

/**
 * Thickness a piece can still reach once it is cut out of its board and flattened.
 *
 * A board of which neither bow, cup nor twist was measured loses the whole thickness allowance; a measured one loses what its
 * bends ask for, and `cleanFaces`. What was not measured on a measured board counts as straight.
 *
 * @param cut.board  the board, measured over its whole length and width
 * @param cut.piece  as cut out rough, grain along its length
 * @param cut.allowance  what flattening and thicknessing usually take, in
 * @param cut.cleanFaces  what clean faces cost a straight piece, in
 * @returns in
 */
export function flattened(cut: {
  board: Board;
  piece: { length: number; width: number };
  allowance: number;
  cleanFaces: number;
}): Flattened {
  const { board, piece } = cut;
  const measured = [board.bow, board.cup, board.twist].some((bend) => bend !== undefined);
  if (!measured) return { bow: 0, cup: 0, twist: 0, measured, reach: board.thickness - cut.allowance };
  const l = Math.min(piece.length, board.length);
  const w = Math.min(piece.width, board.width);
  const bow = evaluate(bowFormula, { B: board.bow ?? 0, l, L: board.length });
  const cup = evaluate(cupFormula, { C: board.cup ?? 0, w, W: board.width });
  const twist = evaluate(twistFormula, { T: board.twist ?? 0, l, L: board.length, w, W: board.width });
  const reach = evaluate(reachFormula, { t: board.thickness, b: bow, c: cup, v: twist, s: cut.cleanFaces });
  return { bow, cup, twist, measured, reach };
}
