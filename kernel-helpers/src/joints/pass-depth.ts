import type { Finding } from '../measure/finding.js';
import { evaluate, type Formula } from '../measure/formula.js';
import { judge, rounding, tape } from '../measure/verdict.js';

/** Deepest cut of a router bit in one pass: a share of its diameter, and however large the bit never more than a limit. */
export const passDepthFormula: Formula<'d' | 's' | 'm'> = {
  name: 'Depth of one pass',
  result: { tex: 'h', meaning: 'deepest cut in one pass', unit: 'in' },
  expression: 'min(s * d, m)',
  symbols: {
    d: { meaning: 'diameter of the bit', unit: 'in', min: 1 / 64 },
    s: {
      meaning: 'share of the diameter: 1, or 1/2 for a bit of 1/8 in and under, a round or a V-bit',
      unit: '',
      max: 1,
    },
    m: { meaning: 'most in one pass, however large the bit', unit: 'in', min: 0 },
  },
  source: "common practice, no source; the bit maker's own table comes first",
};

/** Most in one pass, however large the bit; up to this diameter only half of it is cut at once. In. */
const most = 1 / 4;
const slender = 1 / 8;

/** Deepest pass of a bit with what it comes from: values for {@link passDepthFormula}. In. */
export interface PassDepth {
  d: number;
  s: number;
  m: number;
  deepest: number;
}

/**
 * Deepest pass of a router bit.
 *
 * @param diameter  in
 * @param shape  `pointed` for round and V-bits, which cut with their whole side
 * @returns in
 * @see {@link passDepthFormula}
 */
export function passDepth(diameter: number, shape: 'straight' | 'pointed' = 'straight'): PassDepth {
  const s = shape === 'pointed' || diameter <= slender + rounding ? 1 / 2 : 1;
  const values = { d: diameter, s, m: most };
  return { ...values, deepest: evaluate(passDepthFormula, values) };
}

/**
 * Whether a pass is no deeper than its bit bears: a deeper one is a `stop`.
 *
 * @param cut.rule  its name where it is found
 * @param cut.step  depth of the pass, in
 * @param cut.passes  how many there are, where it is known
 */
export function passDepthFinding(cut: {
  rule: string;
  step: number;
  bit: PassDepth;
  field: string;
  passes?: number;
}): Finding {
  const { rule, step, bit, field, passes } = cut;
  const share = bit.s === 1 ? 'its diameter' : 'half its diameter';
  return {
    rule,
    verdict: judge(step <= bit.deepest + rounding, 'stop'),
    absolute: 'unsafe',
    figures: `${tape(step)} in one pass with a bit of ${tape(bit.d)}${passes === undefined ? '' : `, ${passes} passes`}; possible: ${share}, ${tape(bit.s * bit.d)}, and never over ${tape(bit.m)}`,
    reason:
      'cut deeper at once, a bit pulls itself in, tears the grain, snaps, or takes work or router out of the hands',
    change: `${field} at most ${tape(bit.deepest)}`,
  };
}
