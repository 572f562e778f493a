import type { Board } from '../boards/boards.js';
import type { Blank } from './blanks.js';
import type { Flattened } from './flattening.js';
import type { PlanerPass } from './planer.js';
import type { Resawing } from './resawing.js';
import type { RoughCut } from './rough-cut.js';

/** A blank and the board it comes out of: what flattening leaves of it, and how it is planed. In. */
export interface MilledBlank extends Flattened {
  blank: Blank;
  /** The board's mark. */
  board: string;
  /** How it is sawn from the board's thickness first, where planing alone would take more than half of it. */
  resawn?: Resawing;
  passes: PlanerPass[];
}

/** What the rules of milling judge. @internal */
export interface Judged {
  cut: RoughCut;
  boards: readonly Board[];
  milled: readonly MilledBlank[];
  plan?: object;
  service?: number;
  stackMoisture?: number | undefined;
}
