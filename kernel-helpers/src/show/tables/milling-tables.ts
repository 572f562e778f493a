import type { MilledBlank } from '../../stock/milling/milled-blank.js';
import type { RoughCut } from '../../stock/milling/rough-cut.js';
import { type DrawingOptions, lengthText } from '../drawing/kit/lengths.js';
import type { DisplayItem } from '../kit/display.js';
import { right, table } from '../kit/table.js';

/** What is cut out of boards rough, and how thick each is planed. */
export function blankTable(cut: Pick<RoughCut, 'rough' | 'toCut'>, options: DrawingOptions = {}): DisplayItem {
  const show = lengthText(options);
  const called = [...new Set(cut.rough.map((part) => part.called))].join(' and ');
  return table({
    columns: ['Cut out rough', 'Parts in it', right('Length'), right('Width'), right('Planed to')],
    rows: cut.toCut.blanks.map(({ name, parts, length, width, thickness }) => [
      name,
      parts.join(', '),
      ...[length, width, thickness].map(show),
    ]),
    caption: `From ${called} stock. Longer and wider than finished, so that bow and cup are cut short before they are planed away; none shorter than the machines may be fed`,
  });
}

/** How thick each blank can still become on its board, and the planer's passes until then. */
export function reachTable(milled: readonly MilledBlank[], options: DrawingOptions = {}): DisplayItem {
  const show = lengthText(options);
  return table({
    columns: ['Blank', 'Parts', 'Board', right('Length'), right('Can reach'), right('Planed to'), right('Passes')],
    rows: milled.map(({ blank, board, reach, passes }) => [
      ...[blank.name, blank.parts.join(', '), board],
      ...[blank.length, reach, blank.thickness].map(show),
      `${passes.length}`,
    ]),
    caption: 'What flattening leaves of each blank; passes take the faces in turn, the last two light',
  });
}
