import type { Finding } from '../../measure/finding.js';
import { judge } from '../../measure/verdict.js';
import type { CutPlan } from '../cut-plan/plan.js';

/**
 * What a cut plan says of itself: whether no plan of its kind costs less, or how far it may be from the best.
 *
 * @param plan  cost and bound in minor units of the currency
 */
export function planFindings(plan: Pick<CutPlan, 'cost' | 'bound' | 'proven' | 'bounds'>): Finding[] {
  const { cost, bound, proven, bounds } = plan;
  const gap = cost > 0 ? (100 * (cost - bound)) / cost : 0;
  const units = (minor: number) => (minor / 100).toFixed(2);
  return [
    {
      rule: 'no cheaper cut plan',
      verdict: judge(proven, 'watch'),
      figures: proven
        ? `boards for ${units(cost)}, and none of these plans costs less`
        : `boards for ${units(cost)}, none of these plans costs less than ${units(bound)}: at most ${gap.toFixed(1)} % to gain`,
      reason: `the bound speaks for: ${bounds}`,
      change: 'more effort looks longer, or try the other first cut',
    },
  ];
}
