import { tape } from '../../measure/verdict.js';
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
 * @param feed.thicknesses  what each piece is planed to, in: only pieces of one thickness can follow each other
 * @param feed.overLength  what each has over its final length, in: part of the dip falls in it
 * @returns two remedies, or three where pieces share a thickness; in
 * @see common practice, no source
 */
export function snipeRemedies(feed: {
  thicknesses: readonly number[];
  overLength: number;
  planer: Pick<Planer, 'snipeLength' | 'leastLength'>;
}): SnipeRemedy[] {
  const { thicknesses, overLength, planer } = feed;
  const feeds = new Set(thicknesses).size;
  const missing = Math.max(0, 2 * planer.snipeLength - overLength);
  const dip = tape(planer.snipeLength);
  // A lead piece goes between the rollers like any other: it may be no shorter than the planer allows.
  const lead = tape(Math.max(planer.leastLength, planer.snipeLength));
  const endToEnd: SnipeRemedy = {
    remedy: 'end to end',
    how: `pieces of one thickness follow each other without a gap, and the first is fed once more behind the last; only the outer ends dip, ${dip} each`,
    costs: feeds * missing,
  };
  return [
    {
      remedy: 'extra length',
      how: `each piece ${dip} longer at both ends, cut off after planing`,
      costs: thicknesses.length * missing,
    },
    ...(feeds < thicknesses.length ? [endToEnd] : []),
    {
      remedy: 'lead and tail pieces',
      how: `a scrap as thick as the piece and at least ${lead} long, the shortest that the planer may be fed, goes in right before the first and one right after the last, and takes the dips`,
      costs: 0,
    },
  ];
}
