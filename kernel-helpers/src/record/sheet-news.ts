import type { Entry } from './chain/entry.js';
import type { Decided } from './commission.js';
import { decisionSchemas } from './decisions/decision-schemas.js';
import { keyFigures } from './key-figures/key-figures.js';
import { type MovedFigure, movedFigures } from './key-figures/moved.js';
import { shownBy } from './key-figures/shown.js';
import { latest, staleness, standing } from './stale.js';

/** What a sheet that has decided says at its top: what the decision comes to, and what moved. */
export interface SheetNews {
  /** `lid` */
  what: string;
  /** `plane to 6.657 in`; empty where these helpers know no sentence for it. */
  sentence: string;
  outcome: Decided['outcome'];
  /** The entry that stands for it now. */
  entry?: Pick<Entry, 'seq' | 'at'>;
  /** What it is compared with; nothing in a sheet that was never run before. */
  before?: Pick<Entry, 'at'>;
  moved: MovedFigure[];
  /** Decisions that rest on it and have something to say, in the order in which they are made. */
  further: FurtherOn[];
}

/** A decision further on: it was not run since, or its figures moved. */
export interface FurtherOn {
  what: string;
  /** What the record says of it. */
  sentence: string;
  notRunSince: boolean;
  moved: MovedFigure[];
}

/**
 * What is to be said of a decision that was just made.
 *
 * @param made.results  what it hands on
 * @param made.decided  what became of it
 * @param before  the entries as they stood before
 * @param now  as they stand with it
 * @internal
 */
export function sheetNews(
  made: { what: string; results: unknown; decided: Decided },
  before: readonly Entry[],
  now: readonly Entry[],
): SheetNews {
  const { what, results, decided } = made;
  const shown = shownBy([...standing(now), { what, results }]);
  const figures = keyFigures(what, results, shown);
  const stood = decided.outcome === 'practice' ? undefined : latest(before, what);
  return {
    what,
    sentence: figures.sentence,
    outcome: decided.outcome,
    ...(decided.entry && { entry: { seq: decided.entry.seq, at: decided.entry.at } }),
    ...(stood && { before: { at: stood.at } }),
    moved: stood ? movedFigures(keyFigures(what, stood.results, shown), figures) : [],
    further: decided.outcome === 'practice' ? [] : furtherOn(what, now),
  };
}

/** The decisions that rest on one, directly or through others, and are behind. */
function furtherOn(what: string, entries: readonly Entry[]): FurtherOn[] {
  const shown = shownBy(standing(entries));
  return Object.keys(decisionSchemas).flatMap((later) => {
    const entry = latest(entries, later);
    if (!entry || !staleness(entries, entry)?.because.some((each) => each.what === what)) return [];
    return { what: later, sentence: keyFigures(later, entry.results, shown).sentence, notRunSince: true, moved: [] };
  });
}
