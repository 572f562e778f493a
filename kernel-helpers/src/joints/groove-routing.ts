import * as z from 'zod';
import type { Finding } from '../measure/finding.js';
import { oneOf, readParameters, size } from '../measure/parameters.js';
import { judge, rounding, tape } from '../measure/verdict.js';
import type { PiecePart } from '../piece/piece.js';
import type { GrooveRun } from './groove-runs.js';

/** What turns the bit, and who holds what. */
export type RouterKind = 'router table' | 'hand router' | 'carving machine';

/** How a groove is routed with one kind of router: the words for the bench. */
export interface RouterWords {
  /** Id of data/cautions.json. */
  caution: 'router-table' | 'hand-router' | 'carving-machine';
  /** Which way work or router goes. */
  direction: string;
  /** How a groove wider than the bit is widened. */
  widen: string;
  /** How one that is stopped at one end begins, and one that is stopped at both. */
  oneEnd: string;
  bothEnds: string;
  /** `fence 1/4 in from the near side of the bit; raise it to 1/16 in, then 1/8 in` */
  setting: (places: string, depths: string) => string;
}

/*
 * Directions from the turning: seen from above a bit in a table turns against the clock, one in the hand with it. The wood in front
 * of a table's bit is pushed to the right, so it is fed to the left; in a buried groove the leading side pushes it to the fence. A
 * hand router on the edge that faces its user is pushed to the left, so it is led to the right, and a guide on that edge is drawn in.
 */
const words: Record<RouterKind, RouterWords> = {
  'router table': {
    caution: 'router-table',
    direction: 'feed from right to left, the board against the fence behind the bit: the turning then holds it there',
    widen:
      'move the fence away from the bit for the next pass: the bit then cuts on the side away from it, against its turning',
    oneEnd:
      'stopped at one end: where the open end leads, feed in and end at a stop block; on the mirrored board, where the stopped end leads, begin as for both ends and run out',
    bothEnds:
      'stopped at both ends: a start block on the right and a stop block on the left; the right end firm against the start block, lower the board onto the turning bit, feed left to the stop block, switch off, and lift it once the bit stands; so for each depth',
    setting: (places, depths) => `fence ${places} from the near side of the bit; raise it to ${depths}`,
  },
  'hand router': {
    caution: 'hand-router',
    direction:
      'clamp the board; the edge guide runs on the edge that faces you, and the router goes from left to right: the turning then draws the guide in',
    widen:
      'set the guide further from the bit for the next pass: the bit then cuts on the side away from you, against its turning',
    oneEnd:
      'stopped at one end: begin at the open end where it lies at the left, else plunge at the stopped end and run out',
    bothEnds:
      'stopped at both ends: a block or a mark for the base at each end; set it down with the bit clear of the wood, switch on, plunge, go to the second block, raise the bit, let it stop, and lift off; a base that cannot plunge is not tipped in: bore the start first',
    setting: (places, depths) => `edge guide ${places} from the near side of the bit; lower it to ${depths}`,
  },
  'carving machine': {
    caution: 'carving-machine',
    direction: 'clamp or screw the board down; the file sets the way of the bit, and no hand is near it',
    widen: 'the passes side by side are in the file',
    oneEnd: 'stopped at one end: the file comes in from the open end',
    bothEnds:
      'stopped at both ends: the file ramps down along the groove over two or three diameters of the bit; straight down only with a bit that cuts at its middle',
    setting: (places, depths) => `near side of the bit ${places} from the lower edge, ${depths} deep`,
  },
};

const kinds = Object.keys(words) as [RouterKind, ...RouterKind[]];

/**
 * The words for one kind of router.
 *
 * @throws ShopError  a kind that is none
 * @see common practice, no source
 */
export function routerWords(kind: string): RouterWords {
  return words[readParameters(z.object({ machine: oneOf(kinds, 'what turns the bit') }), { machine: kind }).machine];
}

/** A router's figures as they are typed: lengths as text or inches. */
export interface TypedRouter {
  machine: string;
  /** Shortest and narrowest board that is fed by hand at a table. */
  leastLength?: number | string;
  leastWidth?: number | string;
}

const fields = z.strictObject({
  machine: oneOf(kinds, 'what turns the bit'),
  leastLength: size({ least: 1, most: 36, why: 'shortest board fed by hand at the router table' }).default(6),
  leastWidth: size({ least: 1 / 4, most: 12, why: 'narrowest board fed by hand at the router table' }).default(1.5),
});

/** How the grooves of a piece are routed. */
export interface GrooveRouting {
  machine: RouterKind;
  /** What is done at it, in order. */
  lines: string[];
  findings: Finding[];
}

/**
 * How grooves are routed: direction, widening, how stopped ones begin, and whether the boards may be fed by hand.
 *
 * @param work.runs  see `grooveRuns`
 * @param work.parts  the boards that carry them, finished; in
 * @param work.router  least sizes: 6 in long and 1 1/2 in wide unless told otherwise
 * @throws ShopError  a machine or a size that is not possible
 * @see common practice, no source; the machine's manual comes first
 */
export function grooveRouting(work: {
  runs: readonly Pick<GrooveRun, 'board' | 'ends'>[];
  parts: readonly Pick<PiecePart, 'name' | 'length' | 'width' | 'widthBefore'>[];
  wide?: boolean;
  router: TypedRouter;
}): GrooveRouting {
  const { runs, parts, wide = false } = work;
  const { machine, leastLength, leastWidth } = readParameters(fields, work.router);
  const { direction, widen, oneEnd, bothEnds } = words[machine];
  const stopped = (ends: number) => runs.some((run) => run.ends.filter((end) => end === 'stopped').length === ends);
  const lines = [
    direction,
    ...(wide ? [widen] : []),
    ...(stopped(1) ? [oneEnd] : []),
    ...(stopped(2) ? [bothEnds] : []),
  ];
  const boards = parts.filter(({ name }) => runs.some(({ board }) => board === name));
  const small = boards.filter(
    ({ length, width, widthBefore = width }) => length < leastLength - rounding || widthBefore < leastWidth - rounding,
  );
  const byHand = machine === 'router table';
  const sizes = (list: typeof boards) =>
    list.map(({ name, length, width }) => `${name} ${tape(length)} by ${tape(width)}`);
  return {
    machine,
    lines,
    findings: [
      {
        rule: 'boards large enough for the router table',
        verdict: judge(!byHand || small.length === 0, 'stop'),
        absolute: 'unsafe',
        figures: byHand
          ? `${sizes(small.length > 0 ? small : boards).join(', ')}; the table takes ${tape(leastLength)} by ${tape(leastWidth)} and more by hand`
          : `nothing is fed by hand: ${machine === 'hand router' ? 'the board is clamped and the router moves' : 'the board is held down'}`,
        reason: 'a small piece tips into the opening around the bit, and the hands are next to it',
        change: "machine: 'hand router' with the board clamped, or a jig that is itself large enough to hold",
      },
    ],
  };
}
