import type { Finding } from '../../measure/finding.js';
import { judge, tape } from '../../measure/verdict.js';
import type { SizedBox } from './sized-box.js';

/** What the findings are about. */
type BoxSizes = Pick<SizedBox, 'design' | 'parts' | 'overall' | 'grooves' | 'markingGauge'>;

/** What must be true of a sized box. Limits are common practice, no source, unless said otherwise. @internal */
export function boxFindings(box: BoxSizes): Finding[] {
  const { design } = box;
  const half = design.stockThickness / 2;
  const overGroove = design.lidThickness - design.tongueThickness;
  const leastFoot = design.stockThickness < 1 / 2 ? 1 / 8 : 3 / 16;
  const engagement = design.lidGrooveDepth - design.lidClearance;

  const grooveAtMostHalf = (rule: string, field: string, depth: number): Finding => ({
    rule,
    verdict: judge(depth <= half, 'stop'),
    figures: `groove ${tape(depth)} deep in ${tape(design.stockThickness)} stock`,
    reason: 'a groove deeper than half the board leaves a wall that splits along the grain',
    change: `${field} at most ${tape(half)}, or thicker stock`,
  });

  const findings: Finding[] = [
    grooveAtMostHalf('bottom groove at most half the board', 'bottomGrooveDepth', design.bottomGrooveDepth),
    grooveAtMostHalf('lid groove at most half the board', 'lidGrooveDepth', design.lidGrooveDepth),
    {
      rule: 'foot under the bottom groove',
      verdict: judge(design.foot >= leastFoot, 'stop'),
      figures: `${tape(design.foot)} of wood under the groove, in ${tape(design.stockThickness)} stock`,
      reason: 'the strip under the groove carries the bottom and all that lies on it',
      change: `foot at least ${tape(leastFoot)}, usually about a third of the stock`,
    },
    {
      rule: 'wood over the lid groove',
      verdict: judge(overGroove >= 1 / 8, 'watch'),
      figures: `${tape(overGroove)} of the side stands over the groove`,
      reason: 'a thin lip over the groove breaks off when the lid is lifted',
      change: 'a thicker lid or a thinner tongue, so that 1/8 in stays',
    },
    {
      rule: 'lid held by its grooves',
      verdict: judge(engagement >= design.lidGrooveDepth / 2, 'watch'),
      figures: `tongue reaches ${tape(engagement)} into a groove ${tape(design.lidGrooveDepth)} deep`,
      reason: 'at least half the groove should hold the lid on the day it is fitted',
      change: 'less clearance or a deeper groove',
    },
    {
      rule: 'joint proud of the face',
      verdict: judge(design.proud <= 3 / 16, 'watch'),
      figures: `stands ${tape(design.proud)} past the face; gauge set to ${tape(box.markingGauge)}`,
      reason: 'ends that stand far out are knocked off before they are admired',
      change: 'proud at most 3/16 in',
    },
  ];
  if (design.bottom === 'plywood')
    findings.push({
      rule: 'play of the plywood bottom',
      verdict: judge(design.bottomClearance >= 1 / 32 && design.bottomClearance <= 1 / 16, 'watch'),
      figures: `${tape(design.bottomClearance)} in all`,
      reason: 'less and the box will not close at glue-up; more and the bottom rattles',
      change: 'bottomClearance from 1/32 to 1/16 in',
    });
  if (design.bottom === 'plywood' && design.bottomThickness === 0.25)
    findings.push({
      rule: 'plywood measured, not nominal',
      verdict: 'watch',
      figures: 'bottomThickness is 1/4 in to the hair',
      reason: 'a sheet sold as a quarter inch is often 0.19 to 0.21 in: the groove would be loose',
      change: 'measure the sheet with a caliper and give that',
    });
  return findings;
}
