import { type CornerLayout, cornerPieces } from '../../kernel-helpers/src/joints/corner.js';
import type { JointPiece } from '../../kernel-helpers/src/joints/dovetails.js';

/** A point on the face of the board that carries the tails: from its end, and from its lower edge. Inches. */
export type CornerPoint = readonly [fromEnd: number, fromEdge: number];

/** A tail, a pin or a finger as a solid: an outline on the first board's face, carried through from one depth to another. */
export interface CornerSolid {
  /** The first board carries the tails, or the finger at the lower edge. */
  board: 'first' | 'second';
  /** Convex, its corners in order. */
  outline: CornerPoint[];
  /** Along the second board, from its end: where the solid starts and stops. Inches. */
  from: number;
  to: number;
}

/**
 * The pieces of a glued corner, each in its place: from the first board's end, from the lower edge, from the second board's
 * end. A board's outside face lies `proud` from its neighbour's end.
 *
 * @param layout  dovetails or fingers
 * @returns solids that fill the corner; a finger joint leaves its play
 * @example cornerSolids(layOutFingers({ boardWidth: '5 in', stockThickness: '1/2 in', fingers: 10 })).length // 10
 */
export function cornerSolids(layout: CornerLayout): CornerSolid[] {
  const { gaugeSetting: gauge, proud } = layout;
  const { first, second } = cornerPieces(layout);
  return [
    ...first.map((piece) => solid('first', gauge, proud, piece)),
    ...second.map((piece) => solid('second', gauge, proud, piece)),
  ];
}

/** The first board's pieces reach their own end and lie behind its face; the second's the other way round. */
function solid(board: CornerSolid['board'], gauge: number, proud: number, piece: JointPiece): CornerSolid {
  const start = board === 'first' ? 0 : proud;
  const way = start / gauge;
  const between = (end: number, baseline: number) => end + (baseline - end) * way;
  return {
    board,
    outline: [
      [start, between(piece.from, piece.baselineFrom)],
      [gauge, piece.baselineFrom],
      [gauge, piece.baselineTo],
      [start, between(piece.to, piece.baselineTo)],
    ],
    from: board === 'first' ? proud : 0,
    to: gauge,
  };
}
