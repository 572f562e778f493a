import type { PiecePart, SizedPiece } from './piece.js';

/**
 * The parts of a piece, with its lid as wide as its own sheet settled.
 *
 * @param piece  the decision `sizing`
 * @param lid  the decision `lid`; nothing where the piece has none
 */
export function fittedParts(piece: Pick<SizedPiece, 'parts'>, lid?: { fittedWidth: number }): PiecePart[] {
  return piece.parts.map((part) => (part.name === 'lid' && lid ? { ...part, width: lid.fittedWidth } : part));
}
