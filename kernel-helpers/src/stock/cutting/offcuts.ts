import { evaluate } from '../../measure/formula.js';
import type { Board } from '../boards/boards.js';
import type { Defect, Offcut } from '../cut-plan/plan.js';
import { bowFormula, cupFormula, twistFormula } from '../milling/flattening.js';
import type { BoardLayout } from './board-layouts.js';

/**
 * The offcuts of a plan as boards of the shop's stock: in hand, with the price, moisture and wood of the board they come from,
 * its bends as far as they go over the piece, and a mark of their own: `A-1` is the first offcut of board A.
 *
 * @param offcuts.layouts  see `boardLayouts`; in
 * @param offcuts.taken  marks that are in use already
 * @param offcuts.species  wood of boards that do not say
 * @returns boards, in
 */
export function offcutBoards(offcuts: {
  layouts: readonly BoardLayout[];
  taken: readonly string[];
  species?: string;
}): Board[] {
  const taken = new Set([...offcuts.taken, ...offcuts.layouts.map(({ board }) => board.mark)]);
  const freeMark = (mark: string) => {
    let next = 1;
    while (taken.has(`${mark}-${next}`)) next++;
    taken.add(`${mark}-${next}`);
    return `${mark}-${next}`;
  };
  return offcuts.layouts.flatMap(({ board, offcuts: pieces }) =>
    pieces.map((piece) => {
      const wood = board.plywood ? undefined : (board.species ?? offcuts.species);
      const defects = defectsOn(piece, board.defects ?? []);
      return {
        mark: freeMark(board.mark),
        thickness: board.thickness,
        width: piece.width,
        length: piece.length,
        price: board.price,
        inHand: true,
        ...(board.plywood ? { plywood: true } : {}),
        ...(wood === undefined ? {} : { species: wood }),
        ...(board.moisture === undefined ? {} : { moisture: board.moisture }),
        ...bendsOf(board, piece),
        ...(defects.length > 0 ? { defects } : {}),
        note: `offcut of board ${board.mark}`,
      };
    }),
  );
}

function bendsOf(board: Board, { length: l, width: w }: Offcut): Pick<Board, 'bow' | 'cup' | 'twist'> {
  const { bow: B, cup: C, twist: T, length: L, width: W } = board;
  return {
    ...(B === undefined ? {} : { bow: evaluate(bowFormula, { B, l, L }) }),
    ...(C === undefined ? {} : { cup: evaluate(cupFormula, { C, w, W }) }),
    ...(T === undefined ? {} : { twist: evaluate(twistFormula, { T, l, L, w, W }) }),
  };
}

/** What of a board's defects lies on a piece of it, measured from the piece's own corner. */
function defectsOn(piece: Offcut, defects: readonly Defect[]): Defect[] {
  return defects.flatMap(({ kind, fromEnd, fromEdge, length, width }) => {
    const from = Math.max(0, fromEnd - piece.fromEnd);
    const low = Math.max(0, fromEdge - piece.fromEdge);
    const to = Math.min(piece.length, fromEnd + length - piece.fromEnd);
    const high = Math.min(piece.width, fromEdge + width - piece.fromEdge);
    return to > from && high > low
      ? [{ kind, fromEnd: from, fromEdge: low, length: to - from, width: high - low }]
      : [];
  });
}
