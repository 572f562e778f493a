import { passDepth as bitPassDepth, passDepthFinding } from '../../joints/pass-depth.js';
import type { Finding } from '../../measure/finding.js';
import { judge, rounding, tape } from '../../measure/verdict.js';
import { leastUnder } from '../lettering/lettering-findings.js';
import type { Extent } from '../lettering/outline.js';
import type { Handle } from './laid-out-handle.js';

/** A fingertip's room: across it, along it, and how deep or high it needs to hold. In; common practice, no source: measure the hand. */
const finger = { across: 0.625, along: 0.75, hold: 3 / 16, pull: 3 / 8 };

/**
 * What must be true of a handle: the wood under it, room for a finger, clear of lettering and grooves, a cut the bit bears.
 *
 * @param limits.margin  wood wanted between the handle and what is near, in
 * @param limits.passDepth  depth of one pass, in
 * @param limits.milled  thickness the lid is milled to first, in; not judged unless given
 * @param limits.lettering  what the lettering takes up
 * @see common practice, no source
 */
export function handleFindings(
  handle: Omit<Handle, 'findings'>,
  limits: { margin: number; passDepth: number; milled?: number | undefined; lettering?: Extent | undefined },
): Finding[] {
  const { kind, extent, field, bitDiameter, remaining, depth, height, chord, lidStock } = handle;
  const { margin, passDepth, milled = lidStock, lettering } = limits;
  const raised = kind === 'raised pull';
  const width = extent.right - extent.left;
  const grip = raised ? height - bitDiameter / 2 : depth;
  const needed = raised ? finger.pull - 1 / 8 : finger.hold;
  const roomy = raised
    ? width - bitDiameter >= finger.along - rounding
    : chord >= finger.across - rounding && (kind === 'thumb notch' || width >= finger.along - rounding);
  const edge = Math.min(extent.left, field.width - extent.right, extent.front, field.length - extent.back);
  const findings: Finding[] = [
    {
      rule: 'wood under the handle',
      verdict: remaining <= rounding ? 'stop' : judge(remaining >= leastUnder - rounding, 'watch'),
      absolute: 'impossible',
      figures: raised
        ? `the lid keeps its ${tape(remaining)}; it is milled at ${tape(lidStock)} first`
        : `${tape(depth)} deep in a lid of ${tape(field.thickness)}, ${remaining > 0 ? `${tape(remaining)} left` : 'nothing left'}`,
      reason: 'a thumb presses just where the lid is thinnest',
      change: `depth at most ${tape(Math.max(1 / 32, field.thickness - leastUnder))}`,
    },
    {
      rule: 'room for a finger',
      verdict: judge(roomy && grip >= needed - rounding, 'watch'),
      figures: raised
        ? `${tape(width - bitDiameter)} wide, ${tape(grip)} of upright wall over its cove`
        : `${tape(chord)} ${kind === 'scoop' ? 'front to back' : 'side to side'} and ${tape(depth)} deep, its wall leans at ${handle.wallAngle.toFixed(0)} degrees`,
      reason: 'a fingertip needs something to push against; a shallow, flat hollow lets it slip',
      change: raised
        ? `height at least ${tape(bitDiameter / 2 + finger.pull - 1 / 8)}, width at least ${tape(finger.along)}`
        : `at least ${tape(finger.across)} across and ${tape(finger.hold)} deep: a larger bit, or deeper`,
    },
    {
      rule: 'handle clear of the grooves',
      verdict: edge < -rounding ? 'stop' : judge(edge >= Math.min(margin, 1 / 8) - rounding, 'watch'),
      figures: `${tape(Math.max(0, edge))} from the nearest shoulder of the tongue or end of the lid`,
      reason: 'beyond the shoulder there is only the tongue, and the groove that holds it',
      change: 'make it smaller, or move it toward the middle',
    },
    passDepthFinding({
      rule: 'depth of one pass of the core-box bit',
      step: passDepth,
      bit: bitPassDepth(bitDiameter, 'pointed'),
      field: 'passDepth',
      passes: handle.passes,
    }),
  ];
  if (lettering) {
    const gap = between(extent, lettering);
    findings.push({
      rule: 'handle clear of the lettering',
      verdict: gap <= rounding ? 'stop' : judge(gap >= margin - rounding, 'watch'),
      figures: gap > 0 ? `${tape(gap)} between them` : 'they overlap',
      reason: 'one cuts into the other, or leaves a strip too thin to stand',
      change: 'move the handle or the text, or make one smaller',
    });
  }
  if (raised)
    findings.push({
      rule: 'pull milled from the lid',
      verdict: milled < lidStock - rounding ? 'stop' : 'watch',
      absolute: 'impossible',
      figures: `stock of ${tape(lidStock)}, ${tape(height)} above the sides${milled < lidStock - rounding ? `; the lid is milled to ${tape(milled)}` : ''}`,
      reason:
        'the whole lid is thicknessed around it: more wood, more time, and the lid no longer lies flush for a planer',
      change: `take a scoop or a notch where flush matters; else set lidStock in sheet 07 to ${tape(lidStock)}`,
    });
  return findings;
}

/** Distance between two upright rectangles; 0 where they touch or overlap. */
function between(one: Extent, other: Extent): number {
  const across = Math.max(one.left - other.right, other.left - one.right, 0);
  const along = Math.max(one.front - other.back, other.front - one.back, 0);
  return Math.hypot(across, along);
}
