import type { Finding, Verdict } from '../measure/finding.js';
import { caliper } from '../measure/verdict.js';
import type { MonthOfAir } from '../wood/air/air.js';
import { monthNames } from '../wood/air/months.js';
import { readingFindings } from '../wood/drying/stack-findings.js';
import type { StackPlan } from '../wood/drying/stack-plan.js';
import { moistureByMonth, swingFollowed } from '../wood/drying/swing-followed.js';
import {
  equilibriumByMonth,
  type FitMonth,
  type MonthOfMoisture,
  type SeasonalFit,
  seasonalFit,
  verdictsOf,
} from './seasonal-fit.js';

/** A solid part that was sized to move in its place, with all that is needed to hold it against another year. Inches. */
export interface MovingPart extends Pick<SeasonalFit, 'opening' | 'fittedWidth' | 'limits' | 'fittingMoisture'> {
  /** Such as `bottom`. */
  part: string;
  species: string;
  ringAngle: number;
  /** What the seasons creep through. */
  thickness: number;
}

/**
 * Whether the parts that were sized for a usual room also fit the room that was decided: at once, or at least late and less,
 * under the finish.
 *
 * @param room.moves  of the sized piece; older records have none
 * @param room.air  the decided year
 * @param room.finish  id of finish and coats; none for bare wood
 * @param room.stack  what they were fitted at is held against what this settles at
 * @returns a finding for each part, and for each reading
 * @see {@link seasonalFit}, {@link swingFollowed}
 */
export function roomFindings(room: {
  moves: readonly MovingPart[] | undefined;
  air: MonthOfAir[];
  finish?: string | undefined;
  stack?: Pick<StackPlan, 'settlesAt'>;
}): Finding[] {
  const { moves = [], air, finish, stack } = room;
  const fits = moves.map((moving) => {
    const atOnce = inYear(moving, equilibriumByMonth(air));
    if (atOnce.verdict === 'ok') return roomFinding(moving, atOnce, 'ok', 'as soon as the air changes');
    const { thickness, species } = moving;
    const late = inYear(moving, moistureByMonth(swingFollowed({ thickness, species, finish, air }).days));
    const verdict = late.verdict === 'ok' ? 'watch' : late.verdict;
    return roomFinding(moving, late, verdict, finish ? 'late, under its finish' : 'late, bare');
  });
  const readings = moves.flatMap(({ part, fittingMoisture: reading }) => readingFindings({ part, reading, stack }));
  return [...fits, ...readings];
}

function inYear(moving: MovingPart, moistures: MonthOfMoisture[]): { year: SeasonalFit; verdict: Verdict } {
  const { limits, fittedWidth, ...piece } = moving;
  const year = seasonalFit({ ...piece, ...limits, moistures, width: fittedWidth, cuttingTolerance: 1 / 64 });
  const verdicts = Object.values(verdictsOf(year));
  return { year, verdict: (['stop', 'watch'] as const).find((one) => verdicts.includes(one)) ?? 'ok' };
}

function roomFinding(
  { part, fittedWidth }: MovingPart,
  { year }: { year: SeasonalFit },
  verdict: Verdict,
  how: string,
): Finding {
  const { window, limits } = year;
  const in_ = (month: number, bound: 'low' | 'high') => {
    const at = year.byMonth.find((other) => other.month === month) as FitMonth;
    return `${monthNames[month - 1]} ${caliper(at[bound])} of play at ${at.moisture.toFixed(1)} %`;
  };
  return {
    rule: `${part}: fits the room decided here`,
    verdict,
    figures: `sized ${caliper(fittedWidth)} across its grain; it follows ${how}: ${in_(year.wettest, 'low')}, ${in_(year.driest, 'high')}, nine boards in ten within (least ${caliper(limits.leastClearance)}, most ${caliper(limits.mostClearance)})`,
    reason: 'sheet 02 sized it before this room was decided, and a part that moves must fit the room it goes to',
    change:
      window.narrowest > window.widest
        ? 'nothing fits this room: type this room in sheet 02 and size again with a deeper groove, quarter-sawn or calmer wood, or hold the room nearer'
        : `size again: type this room in sheet 02 and run it, for ${caliper(window.narrowest)} to ${caliper(window.widest)} across its grain`,
  };
}
