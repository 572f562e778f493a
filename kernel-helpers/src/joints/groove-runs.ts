import * as z from 'zod';
import { readParameters, size } from '../measure/parameters.js';
import { rounding } from '../measure/verdict.js';
import type { Groove, SizedBox } from '../piece/box/sized-box.js';
import { type CornerLayout, cornerPieces, type FirstBoards } from './corner.js';
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
  /** Neither board hides it: the groove lies across the line between a tail and a pin, or two fingers. */
  straddles: boolean;
  /** Radius that a round cutter leaves at a stopped end; the groove is full only that far inside `from` and `to`. */
  roundEnd?: number;
  /** The maker runs it out at both ends, though it shows there. */
  shows?: boolean;
}

const cutterField = z.object({
  roundCutter: z.optional(size({ least: 1 / 64, most: 1, why: 'diameter of the cutter' })).default(0),
});

/**
 * Where each groove of a box runs out and where it must stop.
 *
 * A groove that runs off a board's end comes out somewhere. On a tail board it shows where it meets a tail, and is hidden
 * behind a pin where it meets a socket; on a pin board the reverse; fingers do the same to one another. A stopped end still reaches its own depth past the
 * neighbour's inside face, so that the panel's corner has room; a round cutter goes on by its radius, so that the groove
 * is full there. The lid's side grooves run out at the front, where the lid goes in.
 *
 * @param grooves.box  the sized box
 * @param grooves.joints  the corner's layout, the same at all four, and which boards carry the tails, or the finger at the lower edge
 * @param grooves.roundCutter  diameter of a cutter that leaves round ends; text or in; ends are square without it
 * @param grooves.endToEnd  boards whose grooves are run out at both ends whatever is there: on a saw that cannot stop
 * @returns one run for each kind of board and groove, in
 * @throws ShopError  a cutter that is not possible
 * @see common practice, no source
 */
export function grooveRuns(grooves: {
  box: SizedBox;
  joints: { layout: CornerLayout; firstBoards: FirstBoards };
  roundCutter?: number | string;
  endToEnd?: Groove['board'][];
}): GrooveRun[] {
  const { box, joints, endToEnd = [] } = grooves;
  const { layout, firstBoards } = joints;
  const { piece } = cornerPieces(layout);
  const { roundCutter } = readParameters(cutterField, { roundCutter: grooves.roundCutter });
  const roundEnd = roundCutter / 2;
  return box.grooves.map((groove) => {
    const length = box.parts.find(({ name }) => name === groove.board)?.length ?? 0;
    const [own, other] = (firstBoards === 'sides') === (groove.board === 'side') ? firstThenSecond : secondThenFirst;
    const meets = whatItMeets(groove, layout);
    const hidden = meets === other;
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
      why: `${reason({ meets, own, words: { own: piece[own], other: piece[other] }, runsOut })}${forced ? '; run out all the same' : ''}`,
      straddles: meets === 'both',
    };
    if (roundEnd > 0 && ends.includes('stopped')) run.roundEnd = roundEnd;
    if (forced) run.shows = true;
    return run;
  });
}

type Whose = 'first' | 'second';
const firstThenSecond: [Whose, Whose] = ['first', 'second'];
const secondThenFirst: [Whose, Whose] = ['second', 'first'];

/** Whose piece stands at the groove's height in the corner: one board's, or both where it lies across a line. */
function whatItMeets({ fromBottom, width }: Groove, layout: CornerLayout): Whose | 'both' {
  const place = hiddenHeights(layout).find(
    ({ from, to }) => fromBottom >= from - rounding && fromBottom + width <= to + rounding,
  );
  return place?.of ?? 'both';
}

function reason(groove: {
  meets: Whose | 'both';
  own: Whose;
  words: { own: string; other: string };
  runsOut: boolean;
}): string {
  const { meets, own, words, runsOut } = groove;
  const entry = runsOut ? 'runs out at the front, where the lid goes in; at the back it ' : '';
  if (meets === 'both') {
    const line = words.own === words.other ? `two ${words.own}s` : `a ${words.own} and a ${words.other}`;
    return `${entry}lies across the line between ${line}: stopped on both boards`;
  }
  return meets === own
    ? `${entry}meets a ${words.own}: it would show on the ${words.own}'s end`
    : `${entry}meets a socket: its end is hidden behind the ${words.other}`;
}
