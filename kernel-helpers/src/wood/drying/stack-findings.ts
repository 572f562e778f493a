import type { Finding } from '../../measure/finding.js';
import type { DaysToSettle } from './days-to-settle.js';
import type { SwingFollowed } from './swing-followed.js';

/**
 * What must be true of a stack before it is milled for a piece.
 *
 * @param stack.moisture  meter reading today, %
 * @param stack.wait  how long it must wait in the shop
 * @param stack.follows  the later year of what will be made of it
 * @see common practice, no source
 */
export function stackFindings(stack: { moisture: number; wait: DaysToSettle; follows: SwingFollowed }): Finding[] {
  const { moisture, wait, follows } = stack;
  const { driest, wettest } = follows.board;
  const middle = (driest.moisture + wettest.moisture) / 2;
  const percent = (value: number) => `${value.toFixed(1)} %`;
  return [
    {
      rule: 'stack: settled before milling',
      verdict: wait.days === 0 ? 'ok' : 'watch',
      figures: `${percent(moisture)} today, settles at ${percent(wait.settlesAt)}: ${wait.days} days to wait`,
      reason: 'wood planed before it has settled goes on moving, and flat faces do not stay flat',
      change: 'sticker the stack in the shop and wait; keep these days free in the schedule',
    },
    {
      rule: 'stack: near the middle of its later year',
      verdict: Math.abs(wait.settlesAt - middle) <= 2 ? 'ok' : 'watch',
      figures: `shop ${percent(wait.settlesAt)}, later ${percent(driest.moisture)} to ${percent(wettest.moisture)}`,
      reason: 'a piece made far from the middle of its year has to move farther one way than the other',
      change: 'bring the shop nearer, or fit what must fit in a better month',
    },
  ];
}
