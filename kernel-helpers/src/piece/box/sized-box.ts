import { ShopError } from '../../measure/shop-error.js';
import type { Joint } from '../brief.js';
import type { PiecePart, SizedPiece } from '../piece.js';

/** All that decides a sliding-lid box. Lengths in inches, meant at the moisture the piece will live at. */
export interface BoxDesign {
  insideLength: number;
  insideWidth: number;
  insideDepth: number;
  species: string;
  joint: Joint;
  /** Thickness of the four boards. */
  stockThickness: number;
  /** How far the joint stands past the face. */
  proud: number;
  /** Solid wood under the bottom's groove. */
  foot: number;
  lidThickness: number;
  /** Thickness of the lid's tongue: the height of its grooves. */
  tongueThickness: number;
  lidGrooveDepth: number;
  /** Between tongue and groove floor, each side. */
  lidClearance: number;
  bottom: 'plywood' | 'solid';
  /** Measured, not nominal. */
  bottomThickness: number;
  bottomGrooveDepth: number;
  /** Plywood: play in all, both ways. Solid: along the grain. */
  bottomClearance: number;
  /** What the bottom's groove is wider than the bottom is thick; nothing in older records. */
  bottomGroovePlay?: number;
  /** Solid bottom: meter reading on the day it is fitted, %; ring angle, degrees. */
  bottomMoisture: number;
  bottomRingAngle: number;
}

/** A finished part: what is cut, and which way its grain runs. */
export interface Part extends PiecePart {
  name: 'side' | 'front' | 'back' | 'lid' | 'bottom';
  /** Where the grain runs; plywood has its length from front to back, boards on edge have their height as width. */
  grain: 'front to back' | 'side to side' | 'none';
}

/** A groove along the inside face of a board. */
export interface Groove {
  board: 'side' | 'front' | 'back';
  groove: 'lid' | 'bottom';
  /** From the board's lower edge to the groove's lower edge, in. */
  fromBottom: number;
  /** Height of the groove: what fits in it, in. */
  width: number;
  depth: number;
}

/** A box with every size decided. */
export interface SizedBox extends SizedPiece {
  kind: 'box';
  design: BoxDesign;
  parts: Part[];
  grooves: Groove[];
  /** Stock thickness plus how proud the joint stands, in. */
  markingGauge: number;
}

/**
 * The sized piece as a box, for sheets that only a box has.
 *
 * @param piece  the decision `sizing`
 * @throws ShopError  when it is another piece
 */
export function sizedBox(piece: SizedPiece): SizedBox {
  if (piece.kind === 'box') return piece as SizedBox;
  throw new ShopError(`This sheet is for a box, and the piece is sized as ${piece.kind}: leave this sheet out.`);
}
