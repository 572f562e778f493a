import { z } from 'zod';
import type { Groove, SizedBox } from '../box/size-box.js';
import { readParameters, size } from '../measure/parameters.js';
import { rounding } from '../measure/verdict.js';
import type { DovetailLayout } from './dovetails.js';
import { hiddenHeights } from './hidden-heights.js';

/** Where one end of a groove meets the corner joint. */
export type GrooveEnd = 'through' | 'stopped';

/** A groove on one board: where it starts and ends, and why. Inches along the board from its front (sides) or left end. */
export interface GrooveRun {
  board: Groove['board'];
  groove: Groove['groove'];
  /** From the board's lower edge, and its height. */
  fromBottom: number;
  width: number;
  depth: number;
  from: number;
  to: number;
  ends: [GrooveEnd, GrooveEnd];
  why: string;
  /** Neither board hides it: the groove lies across the line between a tail and a pin. */
  straddles: boolean;
  /** Radius that a round cutter leaves at a stopped end; the groove is full only that far inside `from` and `to`. */
  roundEnd?: number;
  /** The maker runs it out at both ends, though it shows there. */
  shows?: boolean;
}

const cutterField = z.object({
  roundCutter: z.optional(size({ least: 1 / 64, most: 1, why: 'diameter of the cutter' })).default(0),
});

/** Which boards carry the tails. */
export type TailBoards = 'front and back' | 'sides';

/**
 * Where each groove of a box runs out and where it must stop.
 *
 * A groove that runs off a board's end comes out somewhere. On a tail board it shows where it meets a tail, and is hidden
 * behind a pin where it meets a socket; on a pin board the reverse. A stopped end still reaches its own depth past the
 * neighbour's inside face, so that the panel's corner has room; a round cutter goes on by its radius, so that the groove
 * is full there. The lid's side grooves run out at the front, where the lid goes in.
 *
 * @param grooves.box  the sized box
 * @param grooves.joints  the corner's layout, the same at all four, and which boards carry the tails
 * @param grooves.roundCutter  diameter of a cutter that leaves round ends; text or in; ends are square without it
 * @param grooves.endToEnd  boards whose grooves are run out at both ends whatever is there: on a saw that cannot stop
 * @returns one run for each kind of board and groove, in
 * @throws ShopError  a cutter that is not possible
 * @see common practice, no source
 */
export function grooveRuns(grooves: {
  box: SizedBox;
  joints: { layout: DovetailLayout; tailBoards: TailBoards };
  roundCutter?: number | string;
  endToEnd?: Groove['board'][];
}): GrooveRun[] {
  const { box, joints, endToEnd = [] } = grooves;
  const { layout, tailBoards } = joints;
  const { roundCutter } = readParameters(cutterField, { roundCutter: grooves.roundCutter });
  const roundEnd = roundCutter / 2;
  return box.grooves.map((groove) => {
    const length = box.parts.find(({ name }) => name === groove.board)?.length ?? 0;
    const carriesTails = (tailBoards === 'sides') === (groove.board === 'side');
    const meets = whatItMeets(groove, layout);
    const hidden = meets === (carriesTails ? 'pin' : 'tail');
    const runsOut = groove.groove === 'lid' && groove.board === 'side';
    const forced = !hidden && endToEnd.includes(groove.board);
    const end: GrooveEnd = hidden || forced ? 'through' : 'stopped';
    const ends: [GrooveEnd, GrooveEnd] = [runsOut ? 'through' : end, end];
    const short = layout.gaugeSetting - groove.depth - roundEnd;
    const run: GrooveRun = {
      ...groove,
      from: ends[0] === 'through' ? 0 : short,
      to: ends[1] === 'through' ? length : length - short,
      ends,
      why: `${reason(meets, carriesTails, runsOut)}${forced ? '; run out all the same' : ''}`,
      straddles: meets === 'both',
    };
    if (roundEnd > 0 && ends.includes('stopped')) run.roundEnd = roundEnd;
    if (forced) run.shows = true;
    return run;
  });
}

/** What stands at the groove's height in the corner: a tail, a pin, or the line between. */
function whatItMeets({ fromBottom, width }: Groove, layout: DovetailLayout): 'tail' | 'pin' | 'both' {
  const place = hiddenHeights(layout).find(
    ({ from, to }) => fromBottom >= from - rounding && fromBottom + width <= to + rounding,
  );
  return place?.behind ?? 'both';
}

function reason(meets: 'tail' | 'pin' | 'both', carriesTails: boolean, runsOut: boolean): string {
  const entry = runsOut ? 'runs out at the front, where the lid goes in; at the back it ' : '';
  if (meets === 'both') return `${entry}lies across the line between a tail and a pin: stopped on both boards`;
  if (carriesTails)
    return meets === 'pin'
      ? `${entry}meets a socket: its end is hidden behind the pin`
      : `${entry}meets a tail: it would show on the tail's end`;
  return meets === 'tail'
    ? `${entry}meets a socket: its end is hidden behind the tail`
    : `${entry}meets a pin: it would show on the pin's end`;
}
