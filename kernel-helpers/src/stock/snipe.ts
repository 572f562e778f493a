import { formatLength } from '../measure/length.js';
import type { Planer } from './planer.js';

/** One way to keep the dips at the ends of a feed off the parts, and the wood it costs, in. */
export interface SnipeRemedy {
  remedy: 'extra length' | 'end to end' | 'lead and tail pieces';
  how: string;
  /** Length of good wood that it costs, over all pieces. */
  costs: number;
}

/**
 * Ways to keep snipe off the parts, the dearest in wood first.
 *
 * The dip is as long and as deep as the machine makes it: measure it on a test board.
 *
 * @param feed.pieces  how many pieces are planed to one thickness
 * @param feed.overLength  what each has over its final length, in: part of the dip falls in it
 * @returns three remedies; in
 * @see common practice, no source
 */
export function snipeRemedies(feed: {
  pieces: number;
  overLength: number;
  planer: Pick<Planer, 'snipeLength'>;
}): SnipeRemedy[] {
  const { pieces, overLength, planer } = feed;
  const missing = Math.max(0, 2 * planer.snipeLength - overLength);
  const dip = formatLength(planer.snipeLength, { system: 'tape' });
  return [
    {
      remedy: 'extra length',
      how: `each piece ${dip} longer at both ends, cut off after planing`,
      costs: pieces * missing,
    },
    {
      remedy: 'end to end',
      how: `one piece follows the other without a gap, and the first is fed once more behind the last; only the outer ends dip, ${dip} each`,
      costs: missing,
    },
    {
      remedy: 'lead and tail pieces',
      how: `a scrap of the same thickness, longer than ${dip}, is fed before the first and after the last piece and takes the dips`,
      costs: 0,
    },
  ];
}
