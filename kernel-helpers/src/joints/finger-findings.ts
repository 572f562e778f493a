import type { Finding } from '../measure/finding.js';
import { caliper, judge, rounding, tape } from '../measure/verdict.js';
import type { FingerLayout } from './finger-layout.js';

/** A cutter is named to a thousandth of an inch: a socket wider by less than that is cut in one pass. @internal */
export const hair = 0.001;

/** In; no saw or router takes a wider one. @internal */
export const widestCutter = 2;

/** A cutter that goes into a socket, to the thousandth below. */
const toHair = (width: number) => caliper(Math.floor(width / hair + rounding) * hair);

/** What must be true of a finger joint. Limits are common practice, no source. @internal */
export function fingerFindings(layout: Omit<FingerLayout, 'findings'>, cutter: number): Finding[] {
  const { fingerWidth, stockThickness, count, play, boardWidth, setUp } = layout;
  const times = fingerWidth / stockThickness;
  // Each socket is set off from the one before: a key that is off by 0.001 in is off by so much at the far edge.
  const sockets = Math.floor(count / 2);
  const socket = fingerWidth + play / 2;
  // Fingers as wide as the cutter: of use where one pass makes the socket, the edges stay as they are and the fingers strong enough.
  const asWide = Math.max(2, Math.floor(boardWidth / (cutter - play / 2) + rounding));
  const spare = boardWidth / asWide + play / 2 - cutter;
  const onePass = spare > -rounding && spare < hair;
  const ofUse = onePass && asWide % 2 === count % 2 && boardWidth / asWide >= stockThickness / 3;
  const oneSetting = [
    socket <= widestCutter ? `a cutter of ${toHair(socket)}` : '',
    ofUse ? `${asWide} fingers` : '',
  ].filter(Boolean);
  return [
    {
      rule: 'fingers about as wide as the stock',
      verdict: judge(times >= 1 / 3 && times <= 2, 'watch'),
      figures: `${count} fingers of ${tape(fingerWidth)} in ${tape(stockThickness)} stock`,
      reason: 'very thin fingers break before they are glued; very wide ones leave few faces to glue',
      change: strongFingers(layout, cutter),
    },
    {
      rule: 'room for glue between the fingers',
      verdict: judge(play >= 0.002 - rounding && play <= 0.01 + rounding, 'watch'),
      figures: `${caliper(play)} in each socket`,
      reason: 'a dry fit that needs the mallet swells shut when the glue goes on; a loose one shows gaps and is weak',
      change: playThatFits(fingerWidth, cutter),
    },
    {
      rule: 'socket made by whole settings of the cutter',
      verdict: judge(setUp.passes === 1, 'watch'),
      figures: `cutter ${tape(cutter)}, socket ${caliper(socket)}: ${setUp.passes} ${setUp.passes === 1 ? 'pass' : 'passes'} for each`,
      reason: 'every second setting is one more thing that can be off',
      change: oneSetting.join(', or ') || 'a stop for each setting, so that all sockets come out alike',
    },
    {
      rule: 'jig adds up over the width',
      verdict: judge(sockets * 0.001 <= play + rounding, 'watch'),
      figures: `${sockets} sockets: a key that is off by 0.001 in is off by ${caliper(sockets * 0.001)} at the far edge`,
      reason: 'each socket is set off from the one before, so that a small error in the key adds up',
      change: 'try the jig on scrap as wide as the boards; move the key by the error over the count',
    },
  ];
}

/** Counts that make fingers neither too thin nor too wide, that leave the edges as they are and that the cutter can cut. */
function strongFingers(layout: Omit<FingerLayout, 'findings'>, cutter: number): string {
  const { boardWidth, stockThickness, count, play } = layout;
  const narrowest = Math.max(cutter - play / 2, stockThickness / 3);
  const sameEdges = (whole: number, step: 1 | -1) => whole + (whole % 2 === count % 2 ? 0 : step);
  const least = sameEdges(Math.max(2, Math.ceil(boardWidth / (2 * stockThickness) - rounding)), 1);
  const most = sameEdges(Math.floor(boardWidth / narrowest + rounding), -1);
  if (most < least)
    return 'boards of another width: no count that leaves the edges as they are makes fingers as wide as that and the cutter';
  const kept = count % 2 === 1 ? 'odd' : 'even';
  return least === most
    ? `fingers: ${least}`
    : `fingers from ${least} to ${most}, an ${kept} count as now: the edges stay as they are`;
}

function playThatFits(fingerWidth: number, cutter: number): string {
  const least = Math.max(0.002, Math.ceil((2 * (cutter - fingerWidth)) / hair - rounding) * hair);
  return least > 0.01 + rounding
    ? `a cutter of at most ${toHair(fingerWidth + 0.001)}, and then play from 0.002 to 0.010 in`
    : `play from ${least.toFixed(3)} to 0.010 in; cut a test piece`;
}
