import type { SizedPiece } from '../../piece/piece.js';
import { type DrawingOptions, lengthText } from '../drawing/kit/lengths.js';
import type { DisplayItem } from '../kit/display.js';
import { right, table } from '../kit/table.js';

/**
 * The parts of a piece in their finished sizes.
 *
 * @param options.caption  at which moisture, or on which day, the sizes hold
 */
export function sizesTable(parts: SizedPiece['parts'], options: DrawingOptions & { caption: string }): DisplayItem {
  const show = lengthText(options);
  return table({
    columns: ['Part', 'How many', right('Length'), right('Width'), right('Thickness'), 'Grain', 'Note'],
    rows: parts.map(({ name, count, length, width, thickness, grain, note }) => [
      ...[name, count],
      ...[length, width, thickness].map(show),
      ...[grain, note],
    ]),
    caption: options.caption,
  });
}
