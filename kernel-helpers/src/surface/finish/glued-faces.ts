import * as z from 'zod';
import type { CornerLayout } from '../../joints/corner.js';
import { compareJoints } from '../../joints/joint-comparison.js';
import type { Finding, Verdict } from '../../measure/finding.js';
import { oneOf, readParameters } from '../../measure/parameters.js';

/** Which faces of a corner are spread with glue. */
export type GlueOn = 'long grain' | 'all faces' | 'inner third';

/** The faces of one corner that are spread. */
export interface GluedFaces {
  on: GlueOn;
  /** Square inches at one corner. */
  area: number;
  findings: Finding[];
}

const words: readonly GlueOn[] = ['long grain', 'all faces', 'inner third'];
const fields = z.strictObject({ glueOn: oneOf(words, 'which faces of the joint are spread with glue') });

/**
 * Which faces of a corner get glue, and how much area that is: all faces with long grain on both sides, or end grain too, or of
 * dovetails the inner third of their sides alone.
 *
 * The last is one maker's practice, not a rule: on a tight joint that stands proud nothing squeezes out at the ends.
 *
 * @param layout  the corner's layout
 * @param glueOn  `long grain`, `all faces` or `inner third`
 * @throws ShopError  other words than those
 * @see areas: {@link compareJoints}; where the glue goes: common practice, no source
 */
export function gluedFaces(layout: CornerLayout, glueOn: string): GluedFaces {
  const { glueOn: on } = readParameters(fields, { glueOn });
  const [corner] = compareJoints('tails' in layout ? { dovetails: layout } : { fingers: layout });
  const { longGrain = 0, endGrain = 0 } = corner ?? {};
  const area = { 'long grain': longGrain, 'all faces': longGrain + endGrain, 'inner third': longGrain / 3 }[on];
  const finding: Finding = {
    rule: 'faces that get glue',
    verdict: on === 'inner third' ? thirdVerdict(layout) : 'ok',
    figures: `${on}: ${area.toFixed(1)} square inches at a corner, of ${longGrain.toFixed(1)} with long grain on both sides`,
    reason:
      'dovetails that fit tight hold by their shape, and where they stand proud a third of the glue keeps their ends clean; fingers hold by glue alone, and on a flush joint what squeezes out is sanded off',
    change: 'glueOn: long grain',
  };
  return { on, area, findings: [finding] };
}

function thirdVerdict(layout: CornerLayout): Verdict {
  if (!('tails' in layout)) return 'stop';
  return layout.proud > 0 ? 'ok' : 'watch';
}
