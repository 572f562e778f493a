import { ShopError } from '../measure/shop-error.js';
import type { Entry, Head } from './chain/entry.js';
import { type Schema, schemaProblem } from './decision.js';
import type { Draft, Ground } from './drafts/draft.js';
import type { Opening } from './opening.js';
import { groundOf, latest, staleness, staleText, standing, standsFor } from './stale.js';

/** What a sheet's decisions rest on: what stands in the record and in drafts, and what of it the sheet took. @internal */
export interface GroundOfSheet<D> {
  /** Takes an earlier decision's results; what is decided after that rests on it. Undefined when there is none. */
  take<What extends keyof D & string>(what: What): Readonly<D[What]> | undefined;
  /** What a decision rests on, so far as the sheet took it. */
  needsOf(what: string): Record<string, Ground>;
  /** The same for the record. @throws ShopError names a draft among them */
  recordedNeedsOf(what: string): Record<string, Head>;
  /** Nothing is decided on what has been overtaken: the figures would be of two pieces. @throws ShopError names it */
  refuseBehind(what: string): void;
  drafts(): readonly Draft[];
  /** The draft of a decision, if there is one. */
  draftOf(what: string): Draft | undefined;
  /** What stands for each decision: a draft before the record's entry. */
  standing(): readonly (Entry | Draft)[];
  schemaOf(what: keyof D & string): Schema;
  /** The sheet that makes a decision, as a message names it. */
  sheetOf(what: string): string;
}

/** @internal */
export function groundIn<D>(opening: Opening<D>): GroundOfSheet<D> {
  const { name, store, rehearsal, practice, notices } = opening;
  const taken: Record<string, Entry | Draft> = {};
  // A rehearsal compares with the record: of drafts it knows its own only, of what was never decided. Practice keeps none.
  const drafts = () => (practice ? [] : (rehearsal ?? store).drafts());

  return {
    drafts,
    draftOf: (what) => drafts().find((draft) => draft.what === what),
    standing() {
      const tried = drafts();
      return [...standing(store.entries()).filter(({ what }) => !tried.some((draft) => draft.what === what)), ...tried];
    },

    take(what) {
      const schema = schemaOf(what);
      const entries = store.entries();
      const tried = drafts();
      const stands = (rehearsal && latest(rehearsal.entries(), what)) ?? standsFor(what, entries, tried);
      if (!stands) return undefined;
      const wrong = schemaProblem(schema, stands.results, 'results');
      if (wrong) throw new ShopError(`${notAsUsed(stands)}: ${wrong}. Run ${sheetOf(what)} again.`);
      if (practice) {
        notices.say(
          `Practice: nothing is kept, and earlier decisions are those of the demonstration commission ${practice.demonstration}.`,
        );
      }
      if (!isEntry(stands)) notices.say(`Draft: ${what} is worked out and not decided.`);
      const stale = practice || rehearsal ? undefined : staleness(entries, stands, tried);
      if (stale) notices.say(`${staleText(stale)} Run ${sheetOf(what)} again.`);
      taken[what] = stands;
      return stands.results as Readonly<D[typeof what]>;
    },

    needsOf: (what) => Object.fromEntries(others(what).map(([need, stands]) => [need, groundOf(stands)])),

    recordedNeedsOf(what) {
      const heads = others(what).map(([need, stands]) => {
        if (isEntry(stands)) return [need, { seq: stands.seq, hash: stands.hash }];
        throw new ShopError(
          `${what} is not recorded: it rests on ${need}, which is a draft. Set decided: true in ${sheetOf(need)} and run that first.`,
        );
      });
      return Object.fromEntries(heads);
    },

    refuseBehind(what) {
      const entries = store.entries();
      for (const [need, stands] of others(what)) {
        const stale = isEntry(stands) ? staleIn(entries, need) : staleness(entries, stands, drafts());
        if (stale) throw new ShopError(`${what} is not recorded: ${staleText(stale)} Run ${sheetOf(need)} first.`);
      }
    },

    schemaOf,
    sheetOf,
  };

  function others(what: string): [string, Entry | Draft][] {
    return Object.entries(taken).filter(([need]) => need !== what);
  }

  function notAsUsed(stands: Entry | Draft): string {
    if (!isEntry(stands)) return `The draft of ${stands.what} is not as these sheets use it`;
    return `${stands.what} in the record of ${practice?.demonstration ?? name} (entry ${stands.seq}) is not as these sheets use it`;
  }

  function schemaOf(what: keyof D & string): Schema {
    if (Object.hasOwn(opening.schemas, what)) return opening.schemas[what];
    throw new ShopError(`There is no decision '${what}'; there are ${Object.keys(opening.schemas).join(', ')}.`);
  }

  function sheetOf(what: string): string {
    return opening.sheetOf(what) ?? `the sheet that decides ${what}`;
  }
}

function staleIn(entries: readonly Entry[], what: string) {
  const entry = latest(entries, what);
  return entry && staleness(entries, entry);
}

const isEntry = (stands: Entry | Draft): stands is Entry => 'hash' in stands;
