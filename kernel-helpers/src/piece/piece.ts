import type { PieceFit } from '../fit/panel-fits.js';
import type { MovingPart } from '../fit/room-findings.js';
import type { Finding } from '../measure/finding.js';

/** A finished part of any piece. Inches. */
export interface PiecePart {
  name: string;
  count: number;
  /** Along the grain. */
  length: number;
  /** Across the grain. */
  width: number;
  thickness: number;
  material: 'wood' | 'plywood';
  /** Which way the grain runs in the piece as it stands; none in plywood. */
  grain: 'front to back' | 'side to side' | 'upright' | 'none';
  /** Width it is milled and jointed at, where it is lowered afterwards: the front of a box with a sliding lid. */
  widthBefore?: number;
  /** Boards that it is glued up from, where that is decided with its size. */
  boards?: number;
  note: string;
}

/** A piece with every size decided. Inches. */
export interface Piece {
  parts: PiecePart[];
  overall: { length: number; width: number; height: number };
  findings: Finding[];
}

/** What a commission can be. */
export type PieceKind = 'box' | 'drawer' | 'solid-top' | 'frame-and-panel' | 'bookcase';

/** A piece that a commission can be: what every later sheet may ask of it, whatever it is. Inches. */
export interface SizedPiece extends Piece {
  kind: PieceKind;
  /** The part that the year moves most, and its thickness. */
  moving: { part: string; thickness: number };
  /** What the hours count on it besides its parts and their faces; the length of all its grooves together, in. */
  counts: { corner: number; tail: number; groove: number; lid: number; tenon: number; grooveLength?: number };
  /** The figures to remember it by, for its card. */
  summary: { what: string; sizes: number[] }[];
  /** Solid parts sized to move in their places, to be held against the room that is decided later; none in older records. */
  moves?: MovingPart[];
  /** How the part that was fitted here moves in its place; a box's lid is fitted in a sheet of its own. */
  fit?: PieceFit;
}

/** Counts of nothing, to be filled with what a piece has. @internal */
export const noCounts: SizedPiece['counts'] = { corner: 0, tail: 0, groove: 0, lid: 0, tenon: 0 };
