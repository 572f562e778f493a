import type { Groove, SizedBox } from '../box/size-box.js';
import type { DovetailLayout } from './dovetails.js';

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
}

/** Which boards carry the tails. */
export type TailBoards = 'front and back' | 'sides';

/**
 * Where each groove of a box runs out and where it must stop.
 *
 * A groove that runs off a board's end comes out somewhere. On a tail board it shows where it meets a tail, and is hidden
 * behind a pin where it meets a socket; on a pin board the reverse. A stopped end still reaches its own depth past the
 * neighbour's inside face, so that the panel's corner has room. The lid's side grooves run out at the front, where the
 * lid goes in.
 *
 * @param grooves.box  the sized box
 * @param grooves.joints  the corner's layout, the same at all four, and which boards carry the tails
 * @returns one run for each kind of board and groove, in
 * @see common practice, no source
 */
export function grooveRuns(grooves: {
  box: SizedBox;
  joints: { layout: DovetailLayout; tailBoards: TailBoards };
}): GrooveRun[] {
  const { box, joints } = grooves;
  const { layout, tailBoards } = joints;
  return box.grooves.map((groove) => {
    const length = box.parts.find(({ name }) => name === groove.board)?.length ?? 0;
    const carriesTails = (tailBoards === 'sides') === (groove.board === 'side');
    const meets = whatItMeets(groove, layout);
    const hidden = meets === (carriesTails ? 'pin' : 'tail');
    const runsOut = groove.groove === 'lid' && groove.board === 'side';
    const end: GrooveEnd = hidden ? 'through' : 'stopped';
    const ends: [GrooveEnd, GrooveEnd] = [runsOut ? 'through' : end, end];
    const short = layout.gaugeSetting - groove.depth;
    return {
      ...groove,
      from: ends[0] === 'through' ? 0 : short,
      to: ends[1] === 'through' ? length : length - short,
      ends,
      why: reason(meets, carriesTails, runsOut),
      straddles: meets === 'both',
    };
  });
}

/** What stands at the groove's height in the corner: a tail, a pin, or the line between. */
function whatItMeets({ fromBottom, width }: Groove, layout: DovetailLayout): 'tail' | 'pin' | 'both' {
  const within = ({ from, to }: { from: number; to: number }) =>
    fromBottom >= from - 1e-9 && fromBottom + width <= to + 1e-9;
  // A pin is narrow on the tail board's end and wide at its baseline: the narrow place is what hides.
  if (layout.pins.some(within)) return 'pin';
  return layout.tails.some(({ baselineFrom, baselineTo }) => within({ from: baselineFrom, to: baselineTo }))
    ? 'tail'
    : 'both';
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
