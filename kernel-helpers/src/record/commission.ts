import { ShopError } from '../measure/shop-error.js';
import { type Entry, type Head, setAsideText, type Versions } from './chain/entry.js';
import {
  contentDifferences,
  type Decision,
  type DecisionContent,
  decisionContent,
  type Schema,
  schemaProblem,
} from './decision.js';
import { type DecisionRow, decisionRows, shortHash } from './decision-row.js';
import type { Decisions } from './decisions/decisions.js';
import type { Notices } from './notices.js';
import { markedBehind, refusePaperName, signed } from './papers.js';
import { latest, staleness, staleText, standing } from './stale.js';
import type { Store } from './store/store.js';

/** What became of a decision. */
export interface Decided {
  /** `recorded`: appended; `same`: the record says so already; `practice`: nothing is kept here. */
  outcome: 'recorded' | 'same' | 'practice';
  /** The entry that now stands for it. */
  entry?: Entry;
  /** The same in one sentence. */
  note: string;
}

/** A commission as a sheet sees it: earlier decisions come out of its record, this one goes in. */
export interface Commission<D = Decisions> {
  /** The folder's name, `2026-03-12-tea-chest`. */
  readonly name: string;
  readonly folder: string;
  /** ISO day it was begun, as its folder's name says; empty where the name has no day. */
  readonly begun: string;
  /** ISO day that a decision made now carries. */
  readonly today: string;
  /** True in a folder that is no commission: everything computes, nothing is kept. */
  readonly practice: boolean;
  /** What the commission had to say so far, each thing once. */
  readonly notices: readonly string[];
  /**
   * The results of an earlier decision, as they were recorded; they cannot be changed.
   *
   * @throws ShopError  when it was not decided yet, naming the sheet to run first, or when the record is damaged
   */
  need<What extends keyof D & string>(what: What): Readonly<D[What]>;
  /**
   * The results of an earlier decision that not every piece has, such as the lid's; nothing when it was not decided. The sheet
   * is run after those that decide it.
   *
   * @throws ShopError  when the record is damaged
   */
  find<What extends keyof D & string>(what: What): Readonly<D[What]> | undefined;
  /**
   * Records a decision, unless the record says the same already.
   *
   * @throws ShopError  when a finding says `stop` and no override gives a reason, when a decision that it rests on is behind
   *                    others that changed, or when it cannot be kept; record and papers are then as they were
   */
  decide<What extends keyof D & string>(what: What, decision: Decision<D[What]>): Decided;
  /**
   * Keeps a paper that a sheet made (a template to print, a drawing for exchange) in the commission's folder once the sheet's
   * next decision stands: until then, and when the decision is refused, the paper before it stays as it was. In practice and
   * in a check it is not kept.
   *
   * @param file  a plain name such as `joint-template.html`
   * @param text  `[entry]` and `[fingerprint]` in it become the decision's own
   * @throws ShopError  a name that is not possible
   */
  save(file: string, text: string): void;
  /**
   * The text of a file that a sheet works from, such as a table of readings. The decisions after it hold the file's digest,
   * so that a check can say that it was the file that changed.
   *
   * @param file  its name in the commission's folder, or a path
   * @throws ShopError  when it cannot be read
   */
  read(file: string): string;
  /** Rules of thumb that standing decisions go against, each with its reason. */
  reasons(): { rule: string; reason: string }[];
  /** All entries, oldest first; in practice those of the demonstration commission. */
  entries(): readonly Entry[];
  /** The record as a table. */
  decisions(): DecisionRow[];
  /** Number and hash of the last entry, to be kept outside the record as well: with it, a record cut short shows. */
  head(): Head | undefined;
}

/** What a commission is opened with. @internal */
export interface Opening<D> {
  /** The folder it stands in, and that folder's name. */
  folder: string;
  name: string;
  store: Store;
  /** Where its decisions go when they are only to be compared. */
  rehearsal?: Store;
  /** In practice: the commission whose entries the store gives, or nothing where there is none. */
  practice?: { demonstration: string | undefined };
  schemas: { [What in keyof D]: Schema };
  versions: Versions;
  notices: Notices;
  /** When a decision is made, `2026-03-12T19:30:00-05:00`, and by whom. */
  signature: () => Pick<Entry, 'at' | 'who'>;
  /** The sheet that makes a decision, if there is one. */
  sheetOf: (what: string) => string | undefined;
}

/** Opens a commission that a store holds. @internal */
export function commissionIn<D>(opening: Opening<D>): Commission<D> {
  const { name, folder, store, rehearsal, practice, notices } = opening;
  const needs: Record<string, Head> = {};
  const files: Record<string, string> = {};
  /** Papers that wait for their decision. */
  const held = new Map<string, string>();
  const done = (outcome: Decided['outcome'], note: string, entry?: Entry): Decided =>
    printedAs({ outcome, entry, note }, entry ? `${note} Fingerprint ${shortHash(entry.hash)}.` : note);

  return {
    name,
    folder,
    begun: /^\d{4}-\d\d-\d\d(?=-)/.exec(name)?.[0] ?? '',
    get today() {
      return opening.signature().at.slice(0, 10);
    },
    practice: practice !== undefined,
    notices: notices.lines,
    entries: () => store.entries(),
    reasons: () =>
      standing(store.entries()).flatMap(({ overrides }) =>
        Object.entries(overrides).map(([rule, reason]) => ({ rule, reason })),
      ),
    decisions: () => decisionRows(store.entries()),
    head: () => {
      const last = store.entries().at(-1);
      return last && { seq: last.seq, hash: last.hash };
    },

    save(file, text) {
      refusePaperName(file);
      if (rehearsal) return;
      if (practice) return notices.say(`Practice: ${file} is not kept.`);
      held.set(file, text);
    },

    read(file) {
      const { text, digest } = store.read(file);
      files[file] = digest.slice(0, 16);
      return text;
    },

    need(what) {
      const results = found(what);
      if (results) return results;
      throw new ShopError(
        practice
          ? `Practice takes ${what} from the demonstration commission, which has none yet: run npm start once.`
          : `${what} is not decided yet in ${name}: run ${sheetOf(what)} first.`,
      );
    },

    find: found,

    decide(what, decision) {
      const content = decisionContent(what, decision, schemaOf(what));
      if (practice) return done('practice', `Practice: ${what} is worked out but not kept.`);
      const { [what]: _, ...restsOn } = needs;
      if (!rehearsal) refuseBehind(what, restsOn);
      const versions = { ...opening.versions, data: { ...opening.versions.data, ...files } };
      let same: Entry | undefined;
      const { entry, setAside } = (rehearsal ?? store).append((recorded) => {
        const before = latest(recorded, what);
        same = before && isSame(before, content, restsOn) ? before : undefined;
        const papers = held.size > 0 ? [...held.keys()] : undefined;
        return same ? undefined : { ...opening.signature(), what, needs: restsOn, versions, papers, ...content };
      });
      if (setAside) {
        notices.say(setAsideText(setAside));
      }
      const stands = same ?? entry;
      if (stands && !rehearsal) keepPapers(stands);
      if (same) {
        return done('same', `Same: ${what} is as recorded on ${same.at.slice(0, 10)}, entry ${same.seq}.`, same);
      }
      return done('recorded', `${rehearsal ? 'Rehearsed' : 'Recorded'}: ${what}, entry ${entry?.seq}.`, entry);
    },
  };

  function found<What extends keyof D & string>(what: What): Readonly<D[What]> | undefined {
    const schema = schemaOf(what);
    const entries = store.entries();
    const entry = (rehearsal && latest(rehearsal.entries(), what)) ?? latest(entries, what);
    if (!entry) return undefined;
    const wrong = schemaProblem(schema, entry.results, 'results');
    if (wrong) {
      throw new ShopError(
        `${what} in the record of ${practice?.demonstration ?? name} (entry ${entry.seq}) is not as these sheets use it: ${wrong}. Run ${sheetOf(what)} again.`,
      );
    }
    if (practice) {
      notices.say(
        `Practice: nothing is kept, and earlier decisions are those of the demonstration commission ${practice.demonstration}.`,
      );
    }
    const stale = practice || rehearsal ? undefined : staleness(entries, entry);
    if (stale) notices.say(`${staleText(stale)} Run ${sheetOf(what)} again.`);
    needs[what] = { seq: entry.seq, hash: entry.hash };
    return entry.results as Readonly<D[What]>;
  }

  /** Nothing is decided on what has been overtaken: the figures would be of two pieces. */
  function refuseBehind(what: string, restsOn: Record<string, Head>): void {
    const entries = store.entries();
    for (const need of Object.keys(restsOn)) {
      const entry = latest(entries, need);
      const stale = entry && staleness(entries, entry);
      if (stale) throw new ShopError(`${what} is not recorded: ${staleText(stale)} Run ${sheetOf(need)} first.`);
    }
  }

  /** Writes the papers of a decision that stands, and marks those of decisions that it leaves behind. */
  function keepPapers(entry: Entry): void {
    for (const [file, text] of held) {
      store.save(file, signed(text, entry));
      notices.say(`Kept in the commission's folder: ${file}`);
    }
    held.clear();
    const entries = store.entries();
    for (const other of standing(entries)) {
      const stale = staleness(entries, other);
      if (!stale) continue;
      for (const paper of (other.papers ?? []).filter((file) => file.endsWith('.html') && store.has(file)))
        store.save(paper, markedBehind(store.read(paper).text, staleText(stale)));
    }
  }

  function schemaOf(what: keyof D & string): Schema {
    if (Object.hasOwn(opening.schemas, what)) return opening.schemas[what];
    throw new ShopError(`There is no decision '${what}'; there are ${Object.keys(opening.schemas).join(', ')}.`);
  }

  function sheetOf(what: string): string {
    return opening.sheetOf(what) ?? `the sheet that decides ${what}`;
  }
}

/** Whether a decision says what an entry says already; other versions alone are no change. */
function isSame(entry: Entry, content: DecisionContent, needs: Record<string, Head>): boolean {
  const sameNeeds =
    Object.keys(needs).length === Object.keys(entry.needs).length &&
    Object.entries(needs).every(([what, need]) => entry.needs[what]?.hash === need.hash);
  return sameNeeds && contentDifferences(entry, content).length === 0;
}

// A cell's last value is printed: without this, that would be the whole entry.
function printedAs(decided: Decided, text: string): Decided {
  return Object.defineProperty(decided, Symbol.for('nodejs.util.inspect.custom'), { value: () => text });
}
