import { decisionSchemas } from '../decisions/decision-schemas.js';
import { keyFigures } from '../key-figures/key-figures.js';
import { type MovedFigure, movedFigures } from '../key-figures/moved.js';
import { shownBy } from '../key-figures/shown.js';
import type { Stand } from '../sheet-news.js';
import { standing, standsFor } from '../stale.js';

/** A decision whose key figures read otherwise than before. */
export interface MovedDecision {
  what: string;
  moved: MovedFigure[];
}

/**
 * What moved over a whole commission, in the order in which its decisions are made. One that was not there before has not moved.
 *
 * @internal
 */
export function whatMoved(before: Stand, now: Stand): MovedDecision[] {
  const shown = shownBy([...standing(now.entries), ...now.drafts]);
  return Object.keys(decisionSchemas).flatMap((what) => {
    const [had, has] = [before, now].map(({ entries, drafts }) => standsFor(what, entries, drafts));
    if (!had || !has || had === has) return [];
    const moved = movedFigures(keyFigures(what, had.results, shown), keyFigures(what, has.results, shown));
    return moved.length > 0 ? { what, moved } : [];
  });
}
