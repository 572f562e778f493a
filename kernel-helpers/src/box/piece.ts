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
  /** Width it is milled and jointed at, where it is lowered afterwards: the front of a box with a sliding lid. */
  widthBefore?: number;
  note: string;
}

/** A piece with every size decided. Inches. */
export interface Piece {
  parts: PiecePart[];
  overall: { length: number; width: number; height: number };
  findings: Finding[];
}
