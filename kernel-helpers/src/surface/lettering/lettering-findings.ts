import { passDepth as bitPassDepth, passDepthFinding } from '../../joints/pass-depth.js';
import type { Finding } from '../../measure/finding.js';
import { evaluate } from '../../measure/formula.js';
import { judge, rounding, tape } from '../../measure/verdict.js';
import type { Lettering } from './laid-out-lettering.js';
import { vWidthFormula } from './v-groove.js';

/** Least wood under lettering or a handle, in: common practice, no source. */
export const leastUnder = 1 / 8;

/**
 * What must be true of lettering: the wood under it, a bit that is wide enough, a pass the bit bears, cuts that survive sanding.
 *
 * @param lettering  as laid out
 * @param passDepth  depth of one pass, in
 * @see common practice, no source
 */
export function letteringFindings(
  lettering: Omit<Lettering, 'findings'>,
  { passDepth }: { passDepth: number },
): Finding[] {
  const { deepest, remaining, field, bitAngle, bitDiameter, floorArea, depthLimit } = lettering;
  const width = evaluate(vWidthFormula, { d: deepest.depth, b: bitAngle });
  const aboveTongue = field.thickness - field.tongueThickness - deepest.depth;
  const findings: Finding[] = [
    {
      rule: 'wood under the lettering',
      verdict: remaining <= rounding ? 'stop' : judge(remaining >= leastUnder - rounding, 'watch'),
      absolute: 'impossible',
      figures: `deepest ${tape(deepest.depth)} in a lid of ${tape(field.thickness)}, ${remaining > 0 ? `${tape(remaining)} left` : 'nothing left'}; its deepest place lies ${tape(Math.abs(aboveTongue))} ${aboveTongue >= 0 ? 'above' : 'below'} the top of the tongue`,
      reason: 'under 1/8 in a lid breaks along the strokes that run with the grain, and dents show through',
      change: `set depthLimit to at most ${tape(Math.max(1 / 64, field.thickness - leastUnder))}, take smaller letters, a finer face or a blunter bit`,
    },
    {
      rule: 'bit wide enough',
      verdict: judge(width <= bitDiameter + rounding, 'stop'),
      absolute: 'unsafe',
      figures: `the widest groove is ${tape(width)}, the bit ${tape(bitDiameter)}`,
      reason: 'a bit sunk past its cutting edges rubs with its shank: it burns, and can snap or kick',
      change: `take a bit of at least ${tape(Math.ceil(width * 8) / 8)}, or set a depth limit`,
    },
    passDepthFinding({
      rule: 'depth of one pass',
      step: passDepth,
      bit: bitPassDepth(bitDiameter, 'pointed'),
      field: 'passDepth',
    }),
    {
      rule: 'strokes that survive sanding',
      verdict: judge(lettering.area / lettering.pathLength >= 1 / 64, 'watch'),
      figures: `strokes are ${tape(lettering.area / lettering.pathLength)} wide on average`,
      reason: 'sanding after the cut takes as much off every groove; hairlines vanish first',
      change: 'take larger letters, a bolder face or a sharper bit, and sand the lid before you cut',
    },
  ];
  if (depthLimit !== undefined && floorArea > 0)
    findings.push({
      rule: 'flat bottom',
      verdict: 'ok',
      figures: `${floorArea.toFixed(2)} sq in lie flat at ${tape(depthLimit)}`,
      reason:
        'the limit ends the V; the floor is cleared in passes side by side and shows their ridges unless a flat cutter cleans it',
    });
  return findings;
}
