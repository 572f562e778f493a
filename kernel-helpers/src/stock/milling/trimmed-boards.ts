import * as z from 'zod';
import { amount, readParameters, size } from '../../measure/parameters.js';
import { ShopError } from '../../measure/shop-error.js';
import { boardFeet } from '../boards/board-feet.js';
import type { Board } from '../boards/boards.js';
import type { CutBoard, Defect } from '../cut-plan/plan.js';
import type { Blank } from './blanks.js';
import { flattened } from './flattening.js';
import type { MillingAllowances } from './rough-part.js';
import { readAllowances } from './rough-parts.js';

/** What is cut off a board before parts are laid out, in. */
export interface Trim {
  /** At the marked end and at the other. */
  start: number;
  end: number;
  /** Along the lower and along the upper edge. */
  lower: number;
  upper: number;
}

/** A board with what is trimmed off it, and the rest as the cut plan takes it. */
export interface TrimmedBoard {
  board: Board;
  trim: Trim;
  cut: CutBoard;
}

const fields = z.object({
  ends: size({ least: 0, most: 12, why: 'cut off both ends of each board' }).default(0),
  edges: size({ least: 0, most: 6, why: 'cut off both edges of each board' }).default(0),
  minorPerUnit: amount({ least: 1, most: 1000, why: 'cents in a unit of the currency' }).default(100),
});

/**
 * Boards as the cut plan takes them: sapwood, and defects that run along a whole edge or across a whole end, are trimmed off;
 * a board that lies in the shop costs nothing; its thickness is what may be counted on.
 *
 * The plan knows one thickness a board, but a long or wide blank reaches less of it than a short one. So a board is entered at
 * its own thickness where every blank can reach its size from it, else just under the thinnest blank that cannot: no plan then
 * asks a board for what flattening would not leave.
 *
 * @param trim.boards  in
 * @param trim.blanks  see `blanksOf`; none for sheet goods, which are not planed
 * @param trim.allowances  see {@link MillingAllowances}
 * @param trim.ends  cut off both ends for checks; nothing unless told otherwise
 * @param trim.edges  cut off both edges: the factory edge of a sheet; nothing unless told otherwise
 * @param trim.minorPerUnit  cents in a unit of the currency; 100 unless told otherwise
 * @returns one for each board, in
 * @throws ShopError  a trim that leaves nothing of a board
 */
export function trimmedBoards(trim: {
  boards: readonly Board[];
  blanks?: readonly Blank[];
  allowances?: MillingAllowances;
  ends?: number | string;
  edges?: number | string;
  minorPerUnit?: number;
}): TrimmedBoard[] {
  const { boards, blanks = [] } = trim;
  const { ends, edges, minorPerUnit } = readParameters(fields, { ...trim });
  const allowances = readAllowances(trim.allowances);
  return boards.map((board) => {
    const off = trimOf(board, ends, edges);
    const length = board.length - off.start - off.end;
    const width = board.width - off.lower - off.upper;
    if (length <= 0 || width <= 0)
      throw new ShopError(`board ${board.mark}: nothing is left of it once ends, edges and sapwood are trimmed off`);
    const cut: CutBoard = {
      mark: board.mark,
      thickness: dependable(board, blanks, allowances),
      width,
      length,
      cost: board.inHand ? 0 : Math.round(boardFeet(board) * board.price * minorPerUnit),
      defects: (board.defects ?? []).flatMap((defect) => clipped(defect, off, length, width)),
    };
    return { board, trim: off, cut };
  });
}

/** Sapwood and edges, then whatever runs along a whole edge or across a whole end of what is left. */
function trimOf(board: Board, ends: number, edges: number): Trim {
  const off: Trim = {
    start: ends,
    end: ends,
    lower: Math.max(edges, board.sapwoodLower ?? 0),
    upper: Math.max(edges, board.sapwoodUpper ?? 0),
  };
  for (let again = true; again; ) {
    again = false;
    for (const { fromEnd, fromEdge, length, width } of board.defects ?? []) {
      const [toEnd, toEdge] = [board.length - fromEnd - length, board.width - fromEdge - width];
      const along = fromEnd <= off.start && toEnd <= off.end;
      const across = fromEdge <= off.lower && toEdge <= off.upper;
      const grow = (side: keyof Trim, touches: boolean, to: number) => {
        if (!touches || to <= off[side]) return;
        off[side] = to;
        again = true;
      };
      grow('lower', along && fromEdge <= off.lower, fromEdge + width);
      grow('upper', along && toEdge <= off.upper, toEdge + width);
      grow('start', across && fromEnd <= off.start, fromEnd + length);
      grow('end', across && toEnd <= off.end, toEnd + length);
    }
  }
  return off;
}

/** What of a defect lies on the trimmed board, from its own corner; a sliver counts as 1/64 in. */
function clipped(defect: Defect, off: Trim, length: number, width: number): Defect[] {
  const from = Math.max(0, defect.fromEnd - off.start);
  const low = Math.max(0, defect.fromEdge - off.lower);
  const to = Math.min(length, defect.fromEnd + defect.length - off.start);
  const high = Math.min(width, defect.fromEdge + defect.width - off.lower);
  if (to <= from || high <= low) return [];
  const extent = { length: Math.max(1 / 64, to - from), width: Math.max(1 / 64, high - low) };
  const place = { fromEnd: Math.min(from, length - extent.length), fromEdge: Math.min(low, width - extent.width) };
  return [{ kind: defect.kind, ...place, ...extent }];
}

function dependable(
  board: Board,
  blanks: readonly Blank[],
  { thickness: allowance, cleanFaces }: { thickness: number; cleanFaces: number },
): number {
  const reachOf = (blank: Blank) => flattened({ board, piece: blank, allowance, cleanFaces }).reach;
  const failing = blanks.filter((blank) => reachOf(blank) < blank.thickness - 1e-9);
  if (failing.length === 0) return board.thickness;
  const thinnest = Math.min(...failing.map(({ thickness }) => thickness));
  const thinner = blanks.map(({ thickness }) => thickness).filter((thickness) => thickness < thinnest);
  return Math.max(...thinner, 1 / 16, Math.min(...failing.map(reachOf)));
}
