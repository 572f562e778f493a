import { ShopError } from '../../measure/shop-error.js';
import type { SizedPiece } from '../piece.js';
import type { SizedBox } from './size-box.js';

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
