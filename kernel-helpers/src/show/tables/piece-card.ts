import { formatLength } from '../../measure/length.js';
import { ofHundred } from '../../measure/of-hundred.js';
import { formatMoney } from '../../money/money.js';
import type { Decisions } from '../../record/decisions/decisions.js';
import type { DisplayItem } from '../kit/display.js';
import { table } from '../kit/table.js';

/** A piece on one card: sizes, lid, boards, hours, price and days, as they were decided. */
export function pieceCard(decided: {
  brief: Decisions['brief'];
  piece: Decisions['sizing'];
  lid?: Decisions['lid'] | undefined;
  stock: Decisions['stock'];
  offer: Decisions['quote'];
  days: Pick<Decisions['days'], 'start' | 'finish' | 'odds'>;
}): DisplayItem {
  const { brief, piece, lid, stock, offer, days } = decided;
  const size = (...sides: number[]) =>
    sides.map((inches) => formatLength(inches, { system: brief.units, denominator: 64 })).join(' x ');
  const { mean, low, high } = offer.hours;
  const { length, width, height } = piece.overall;
  return table({
    columns: ['', ''],
    rows: [
      ['Piece', `${brief.piece} for ${brief.client}, promised for ${brief.promised}`],
      ...piece.summary.map(({ what, sizes }) => [what, size(...sizes)]),
      ['Over everything', size(length, width, height)],
      ...(lid ? [['Lid planed to', `${size(lid.fittedWidth)} at ${lid.fittingMoisture} % moisture`]] : []),
      ['Boards', `${stock.bought.toFixed(2)} board feet bought, ${(100 * stock.yield).toFixed(0)} % in the piece`],
      ['Hours', `${mean.toFixed(1)}, eight times in ten ${low.toFixed(1)} to ${high.toFixed(1)}`],
      ['Price', `${formatMoney(offer.quote.price)}, valid until ${offer.quote.validUntil}`],
      ['Days', `begun ${days.start}, done ${days.finish}, in time ${ofHundred(days.odds)} times of a hundred`],
    ],
    caption: 'What was decided',
  });
}
