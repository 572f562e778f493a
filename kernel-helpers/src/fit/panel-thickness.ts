import type { Finding } from '../measure/finding.js';
import { caliper, judge, rounding } from '../measure/verdict.js';
import { movement } from '../wood/movement.js';
import type { MonthOfMoisture } from './seasonal-fit.js';

/** Play that a panel's thickness wants in its groove, 0.1 to 0.3 mm: common practice, no source. In. */
const wanted = { least: 0.1 / 25.4, most: 0.3 / 25.4 };

/** Play that a groove is given unless told otherwise, in: near the middle of what is wanted. @internal */
export const usualGroovePlay = 0.006;

/**
 * Whether a panel slides into its groove by hand, does not rattle there, and stays loose when it is wettest: a solid panel
 * swells in thickness too, across its growth rings where its width lies along them.
 *
 * @param fitted.part  what goes in, for the words: `bottom`
 * @param fitted.panel, fitted.groove  thickness of the one, width of the other, in
 * @param fitted.solid  wood, ring angle of the panel's face, meter reading and year of a solid panel; none for plywood
 * @see common practice, no source; swelling: {@link movement}
 */
export function panelThicknessFinding(fitted: {
  part: string;
  panel: number;
  groove: number;
  solid?: { species: string; ringAngle: number; fittingMoisture: number; moistures: MonthOfMoisture[] };
}): Finding {
  const { part, panel, groove, solid } = fitted;
  const play = groove - panel;
  const swelling = solid
    ? movement({
        across: panel,
        species: solid.species,
        ringAngle: 90 - solid.ringAngle,
        fromMoisture: solid.fittingMoisture,
        toMoisture: Math.max(solid.fittingMoisture, ...solid.moistures.map(({ moisture }) => moisture)),
      }).high
    : 0;
  const slides = play >= wanted.least - rounding && play <= wanted.most + rounding;
  const tooThick = play < -rounding;
  return {
    rule: `${part}: play of its thickness in the groove`,
    verdict: tooThick ? 'stop' : judge(slides && play > swelling, 'watch'),
    ...(tooThick && { absolute: 'impossible' as const }),
    figures: `${part} ${caliper(panel)}, groove ${caliper(groove)}${solid ? `; it swells by ${caliper(swelling)} until it is wettest` : ''}`,
    reason: tooThick
      ? 'a panel thicker than its groove does not go in, or splits the board when it is forced'
      : 'it must slide in by hand, not rattle, and not jam or push the groove open when it swells',
    change: `a groove from ${caliper(panel + Math.max(wanted.least, swelling))} to ${caliper(panel + Math.max(wanted.most, swelling + wanted.least))} wide, or plane or sand the ${part} thinner`,
  };
}
