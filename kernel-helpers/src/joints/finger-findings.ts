import type { Finding } from '../measure/finding.js';
import { caliper, judge, rounding, tape } from '../measure/verdict.js';
import type { FingerLayout } from './finger-layout.js';

/** What must be true of a finger joint. Limits are common practice, no source. @internal */
export function fingerFindings(layout: Omit<FingerLayout, 'findings'>, cutter: number): Finding[] {
  const { fingerWidth, stockThickness, count, play, boardWidth, setUp } = layout;
  const times = fingerWidth / stockThickness;
  // Each socket is set off from the one before: a key that is off by 0.001 in is off by so much at the far edge.
  const sockets = Math.floor(count / 2);
  // Fingers as wide as the cutter: of use where the edges stay as they are and the fingers strong enough.
  const asWide = Math.max(2, Math.round(boardWidth / (cutter - play / 2)));
  const ofUse = asWide % 2 === count % 2 && boardWidth / asWide >= stockThickness / 3;
  return [
    {
      rule: 'fingers about as wide as the stock',
      verdict: judge(times >= 1 / 3 && times <= 2, 'watch'),
      figures: `${count} fingers of ${tape(fingerWidth)} in ${tape(stockThickness)} stock`,
      reason: 'very thin fingers break before they are glued; very wide ones leave few faces to glue',
      change: `fingers from ${Math.max(2, Math.ceil(boardWidth / (2 * stockThickness)))} to ${Math.max(2, Math.floor((3 * boardWidth) / stockThickness))}`,
    },
    {
      rule: 'room for glue between the fingers',
      verdict: judge(play >= 0.002 - rounding && play <= 0.01 + rounding, 'watch'),
      figures: `${caliper(play)} in each socket`,
      reason: 'a dry fit that needs the mallet swells shut when the glue goes on; a loose one shows gaps and is weak',
      change: 'play from 0.002 to 0.010 in; cut a test piece',
    },
    {
      rule: 'socket made by whole settings of the cutter',
      verdict: judge(setUp.passes === 1, 'watch'),
      figures: `cutter ${tape(cutter)}, socket ${caliper(fingerWidth + play / 2)}: ${setUp.passes} ${setUp.passes === 1 ? 'pass' : 'passes'} for each`,
      reason: 'every second setting is one more thing that can be off',
      change: `a cutter of ${caliper(fingerWidth + play / 2)}${ofUse ? `, or ${asWide} fingers` : ''}`,
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
