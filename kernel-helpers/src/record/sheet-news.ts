import type { Entry } from './chain/entry.js';
import type { Decided } from './commission.js';
import { decisionSchemas } from './decisions/decision-schemas.js';
import type { Draft } from './drafts/draft.js';
import { keyFigures } from './key-figures/key-figures.js';
import { type MovedFigure, movedFigures } from './key-figures/moved.js';
import { shownBy } from './key-figures/shown.js';
import { latest, staleness, standing, standsFor } from './stale.js';

/** What a sheet that has decided says at its top: what the decision comes to, and what moved. */
export interface SheetNews {
  /** `lid` */
  what: string;
  /** `plane to 6.657 in`; empty where these helpers know no sentence for it. */
  sentence: string;
  outcome: Decided['outcome'];
  /** The entry that stands for it now. */
  entry?: Pick<Entry, 'seq' | 'at'>;
  /** What it is compared with: what the record says, else the draft before; nothing in a sheet that was never run before. */
  before?: { at: string; draft: boolean };
  moved: MovedFigure[];
  /** Decisions that rest on it and have something to say, in the order in which they are made. */
  further: FurtherOn[];
}

/** A decision further on: it was not run since, or its figures moved. */
export interface FurtherOn {
  what: string;
  /** What stands for it. */
  sentence: string;
  notRunSince: boolean;
  moved: MovedFigure[];
}

/** A commission's decisions at one moment. @internal */
export interface Stand {
  entries: readonly Entry[];
  drafts: readonly Draft[];
}

/**
 * What is to be said of a decision that was just made.
 *
 * @param made.results  what it hands on
 * @param made.decided  what became of it
 * @param before  what stood before
 * @param now  what stands with it
 * @internal
 */
export function sheetNews(
  made: { what: string; results: unknown; decided: Decided },
  before: Stand,
  now: Stand,
): SheetNews {
  const { what, results, decided } = made;
  const shown = shownBy([...standing(now.entries), ...now.drafts, { what, results }]);
  const figures = keyFigures(what, results, shown);
  const { entry, outcome } = decided;
  const stood =
    outcome === 'practice' ? undefined : (latest(before.entries, what) ?? standsFor(what, [], before.drafts));
  return {
    what,
    sentence: figures.sentence,
    outcome,
    ...(entry && { entry: { seq: entry.seq, at: entry.at } }),
    ...(stood && { before: { at: stood.at, draft: !('hash' in stood) } }),
    moved: stood ? movedFigures(keyFigures(what, stood.results, shown), figures) : [],
    further: outcome === 'practice' ? [] : furtherOn(what, now),
  };
}

/** Of the decisions that rest on one, directly or through others: those that were not run since, and drafts that moved. */
function furtherOn(what: string, now: Stand): FurtherOn[] {
  const { entries, drafts } = now;
  const shown = shownBy([...standing(entries), ...drafts]);
  return Object.keys(decisionSchemas).flatMap((later) => {
    const stands = standsFor(later, entries, drafts);
    if (!stands || later === what || !restOn(what, later, now)) return [];
    const figures = keyFigures(later, stands.results, shown);
    const notRunSince = Boolean(staleness(entries, stands, drafts)?.because.some((each) => each.what === what));
    const recorded = latest(entries, later);
    const moved =
      recorded && !notRunSince && recorded !== stands
        ? movedFigures(keyFigures(later, recorded.results, shown), figures)
        : [];
    return notRunSince || moved.length > 0 ? { what: later, sentence: figures.sentence, notRunSince, moved } : [];
  });
}

/** Whether what stands for a decision rests on another, directly or through others. */
function restOn(what: string, later: string, { entries, drafts }: Stand): boolean {
  const reached = new Set([later]);
  for (const each of reached)
    for (const need of Object.keys(standsFor(each, entries, drafts)?.needs ?? {})) reached.add(need);
  return reached.has(what);
}
