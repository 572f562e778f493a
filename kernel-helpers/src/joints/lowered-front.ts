import type { Finding, Verdict } from '../measure/finding.js';
import { rounding, tape } from '../measure/verdict.js';
import { type CornerLayout, cornerPieces, type FirstBoards } from './corner.js';
import { hiddenHeights } from './hidden-heights.js';

/**
 * What must be true of a front that is lowered for a sliding lid once its joint is cut: the wood beside the lid belongs to
 * the sides, or a hole is left there.
 *
 * @param front.layout  the corner's layout
 * @param front.firstBoards  which boards carry the tails, or the finger at the lower edge
 * @param front.lowered  the lid's thickness, in
 * @see common practice, no source
 */
export function loweredFrontFinding(front: {
  layout: CornerLayout;
  firstBoards: FirstBoards;
  lowered: number;
}): Finding {
  const { layout, firstBoards, lowered } = front;
  const sides = firstBoards === 'sides' ? 'first' : 'second';
  const top = hiddenHeights(layout).reduce((a, b) => (b.to > a.to ? b : a));
  const piece = cornerPieces(layout).piece[top.of];
  const covered = top.to - top.from;
  const ofTheFront: Verdict = top.of === sides ? 'ok' : 'stop';
  const fingers = 'count' in layout;
  return {
    rule: 'wood of the sides beside the lid',
    verdict: ofTheFront === 'stop' || lowered <= covered + rounding ? ofTheFront : fingers ? 'watch' : 'stop',
    figures: `the ${piece} at the upper edge is of the ${top.of === sides ? 'sides' : 'front'}, ${tape(covered)} high; the lid ${tape(lowered)}`,
    reason:
      'the front is lowered by the lid: where its own piece stood at the upper edge, an open socket is left in the side; a lid thicker than the piece of the side cuts into the next one down',
    change: fingers
      ? fingersThatKeepIt(firstBoards, Math.min(layout.count, Math.floor(layout.boardWidth / lowered)), ofTheFront)
      : `tails on the front and back, topHalfPin at least ${tape(lowered)}`,
  };
}

/**
 * The most fingers, each as wide as the lid is thick, with which the sides have the one at the upper edge: no more than now, which
 * the cutter can cut. To turn the boards about helps only where the front has it.
 */
function fingersThatKeepIt(firstBoards: FirstBoards, most: number, now: Verdict): string {
  const odd = firstBoards === 'sides' ? 1 : 0;
  const count = most % 2 === odd ? most : most - 1;
  const turned = now === 'stop' ? 'turn firstBoards about' : '';
  const fewer = `fingers: ${count}${count > 3 ? ', or fewer by an even number' : ''}`;
  const thinner = 'a thinner lid: it is thicker than a finger of the sides can be high';
  return [count < 2 ? thinner : fewer, turned].filter(Boolean).join(count < 2 ? ', and ' : '; or ');
}
