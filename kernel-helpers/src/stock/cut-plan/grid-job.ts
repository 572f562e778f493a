import type { FirstCut } from './plan.js';

/** A defect on the grid: a part that begins before `x2` and ends after `x1`, and likewise across, lies on it. */
export interface GridDefect {
  x1: number;
  x2: number;
  y1: number;
  y2: number;
}

/** A board on the grid; length and width are larger by one kerf, since no cut is needed at the board's ends. */
export interface GridBoard {
  length: number;
  width: number;
  cost: number;
  /** Of the real board, in any unit that is a whole number; decides between plans of one cost. */
  area: number;
  defects: GridDefect[];
  /** Whether each part may come from it: thick enough. */
  takes: boolean[];
}

/** Alike parts on the grid, each larger by one kerf than the real part. */
export interface GridPart {
  length: number;
  width: number;
  count: number;
}

/**
 * A cutting job in whole numbers. Kerf is already inside the sizes, so that parts may touch: parts are larger by it, boards
 * too, and defects lose it on their low sides.
 */
export interface GridJob {
  boards: GridBoard[];
  parts: GridPart[];
  firstCut: FirstCut;
}

/** Where a part lies on the grid: its low corner. */
export interface GridPlace {
  part: number;
  x: number;
  y: number;
}

/** A strip between two rips of a section, and its parts from left to right. */
export interface GridStrip {
  y1: number;
  y2: number;
  places: GridPlace[];
}

/** A stretch of a board between two crosscuts, its strips from the lower edge up. */
export interface GridSection {
  x1: number;
  x2: number;
  strips: GridStrip[];
}

/** How one board is cut. Rip first is one section over the whole board. */
export interface GridCutting {
  board: number;
  sections: GridSection[];
}
