/** A rectangle of a board that no part may touch: a knot, a check, a wane or sapwood edge. In. */
export interface Defect {
  /** What it is: `knot`. */
  kind: string;
  /** From the marked end to its near side. */
  fromEnd: number;
  /** From the board's lower edge, as it lies with the marked end to the left, to its near side. */
  fromEdge: number;
  /** Along the grain. */
  length: number;
  /** Across the grain. */
  width: number;
}

/** A board that parts may be cut from, in. */
export interface CutBoard {
  mark: string;
  thickness: number;
  width: number;
  length: number;
  /** What using it costs, in minor units of a currency; 0 for a board that is in hand. */
  cost: number;
  defects: Defect[];
}

/** Rough parts to be cut, all alike, grain along the length. In. */
export interface CutPart {
  name: string;
  count: number;
  length: number;
  width: number;
  /** Least thickness its board must have. */
  thickness: number;
  /** Parts that name the same sequence come one after the other, in the order given, off one strip, so that the figure runs on. */
  sequence?: string;
}

/** Which cut comes first: across the board into sections, or along the whole board into strips. */
export type FirstCut = 'crosscut' | 'rip';

/** A part where it lies on its board, in. */
export interface PlacedPart {
  name: string;
  fromEnd: number;
  fromEdge: number;
  length: number;
  width: number;
}

/** One cut: along the grain (`rip`) or across it (`crosscut`), in the order in which the cuts are made. */
export interface Cut {
  kind: 'crosscut' | 'rip';
  /** Where the saw's near side stands: from the marked end for a crosscut, from the lower edge for a rip; a little outside its piece where less than a kerf is taken off. In. */
  at: number;
  /** Where the cut begins and ends on the other axis, in. */
  from: number;
  to: number;
}

/** A rectangle left over that is large enough to keep, in. */
export interface Offcut {
  fromEnd: number;
  fromEdge: number;
  length: number;
  width: number;
  /** Defects in it, measured from its own end and edge. */
  defects?: Defect[];
}

/** A board that is used and what comes out of it. */
export interface CutBoardPlan {
  board: CutBoard;
  parts: PlacedPart[];
  cuts: Cut[];
  offcuts: Offcut[];
}

/** Which boards to use, and how each is cut. */
export interface CutPlan {
  boards: CutBoardPlan[];
  /** Minor units for all boards used. */
  cost: number;
  /** Area of parts over area of the boards used, 0 to 1. */
  yield: number;
  /** No plan of the class costs less than this, minor units. */
  bound: number;
  /** Whether the bound meets the plan. */
  proven: boolean;
  /** Whether no plan of this cost uses boards of less area in all. */
  leastArea?: boolean;
  /** Work that was done, in steps. */
  steps?: number;
  /** The plans that the bound speaks for, in words. */
  bounds: string;
}
