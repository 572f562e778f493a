import * as z from 'zod';
import { oneOf, readParameters } from '../measure/parameters.js';
import type { Joint } from '../piece/brief.js';
import { type DovetailInput, type DovetailLayout, type JointPiece, layOutDovetails } from './dovetails.js';
import { type FingerInput, layOutFingers } from './finger-joint.js';
import type { FingerLayout } from './finger-layout.js';

/** A corner joint as it is set out. */
export type CornerLayout = DovetailLayout | FingerLayout;

/** Which boards carry the tails, or the finger at the lower edge. */
export type FirstBoards = 'front and back' | 'sides';

const firstBoardsField = z.strictObject({
  firstBoards: oneOf(['front and back', 'sides'], 'boards that carry the tails, or the finger at the lower edge'),
});

/**
 * The boards that carry the tails, or the finger at the lower edge, as they were typed.
 *
 * @throws ShopError  other words than those
 */
export function readFirstBoards(firstBoards: string): FirstBoards {
  return readParameters(firstBoardsField, { firstBoards }).firstBoards;
}

/** What both joints need to know of the boards. */
type Boards = Pick<DovetailInput, 'boardWidth' | 'stockThickness' | 'proud'>;

/**
 * Lays out the corner joint that was asked for.
 *
 * @param corner.joint  as in the brief
 * @param corner.boards  the boards at the corner
 * @param corner.lowered  thickness by which the front is lowered once its joint is cut: a sliding lid's
 * @param corner.dovetails, corner.fingers  what each of the two would be like
 * @throws ShopError  as {@link layOutDovetails} and {@link layOutFingers}
 */
export function layOutCorner(corner: {
  joint: Joint;
  boards: Boards;
  lowered: number;
  dovetails: Omit<DovetailInput, keyof Boards | 'lowered'>;
  fingers: Omit<FingerInput, keyof Boards>;
}): CornerLayout {
  const { joint, boards, lowered, dovetails, fingers } = corner;
  return joint === 'finger joint'
    ? layOutFingers({ ...boards, ...fingers })
    : layOutDovetails({ ...boards, ...dovetails, lowered });
}

/** What stands in a corner: the first boards' pieces, the second boards', and what they and their boards are called. */
export interface CornerPieces {
  first: JointPiece[];
  second: JointPiece[];
  /** What is cut out of the second boards for the first's pieces: at their outside face (`from`, `to`) and at their inside face. */
  sockets: JointPiece[];
  piece: { first: string; second: string };
  board: { first: string; second: string };
}

/** Tails and pins, or the fingers of either board: straight ones are as wide at the baseline as at the end. @internal */
export function cornerPieces(layout: CornerLayout): CornerPieces {
  const share = layout.proud / layout.gaugeSetting;
  const socket = ({ from, to, baselineFrom, baselineTo }: JointPiece): JointPiece => ({
    from: from + (baselineFrom - from) * share,
    to: to + (baselineTo - to) * share,
    baselineFrom,
    baselineTo,
  });
  if ('tails' in layout)
    return {
      first: layout.tails,
      second: layout.pins,
      sockets: layout.tails.map(socket),
      piece: { first: 'tail', second: 'pin' },
      board: { first: 'tail board', second: 'pin board' },
    };
  const straight = (board: 'first' | 'second') =>
    layout[board]
      .filter(({ kind }) => kind === 'finger')
      .map(({ from, to }) => ({ from, to, baselineFrom: from, baselineTo: to }));
  const first = straight('first');
  return {
    first,
    second: straight('second'),
    sockets: first.map(socket),
    piece: { first: 'finger', second: 'finger' },
    board: { first: 'board with the finger at its lower edge', second: 'board with the socket at its lower edge' },
  };
}
