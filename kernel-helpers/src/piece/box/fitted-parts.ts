import * as z from 'zod';
import { readParameters, size } from '../../measure/parameters.js';
import type { PiecePart, SizedPiece } from '../piece.js';
import type { SizedBox } from './sized-box.js';

/** Left on a lid's width at the saw, to be planed off when it is fitted: common practice, no source. In. */
const overWidth = 1 / 16;

/** Width a lid is sawn to, to the mark of a tape: in. @internal */
export function sawnLidWidth({ fittedWidth }: { fittedWidth: number }): number {
  return Math.round((fittedWidth + overWidth) * 64) / 64;
}

const fields = z.object({
  lidStock: size({ least: 1 / 8, most: 6, why: 'thickness the lid is milled to before its handle' }).optional(),
});

/**
 * The parts of a piece as they are cut: its lid 1/16 in wider than its own sheet settled, to be planed off when it is fitted, and
 * as thick as its handle needs.
 *
 * @param cut.piece  the decision `sizing`
 * @param cut.lid  the decision `lid`; nothing where the piece has none
 * @param cut.lidStock  thickness the lid is milled to, text or in; as sized unless told otherwise
 * @returns finished sizes, in
 * @throws ShopError  a thickness that is not possible
 */
export function fittedParts(cut: {
  piece: Pick<SizedPiece, 'parts'>;
  lid?: { fittedWidth: number } | undefined;
  lidStock?: number | string | undefined;
}): PiecePart[] {
  const { piece, lid, ...typed } = cut;
  const { lidStock } = readParameters(fields, typed);
  return piece.parts
    .map((part) => (part.name === 'lid' && lid ? { ...part, width: sawnLidWidth(lid) } : part))
    .map((part) => (part.name === 'lid' && lidStock ? { ...part, thickness: lidStock } : part));
}

/** A box with its lid as wide, and its tongue as thick, as the lid's own sheet settled them: for what is cut into the lid. */
export function withFittedLid(box: SizedBox, lid: { fittedWidth: number; fittedTongue: number }): SizedBox {
  const parts = box.parts.map((part) => (part.name === 'lid' ? { ...part, width: lid.fittedWidth } : part));
  return { ...box, design: { ...box.design, tongueThickness: lid.fittedTongue }, parts };
}
