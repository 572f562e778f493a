import { ShopError } from '../measure/shop-error.js';
import { type Entry, type Head, setAsideText } from './chain/entry.js';
import { contentDifferences, type Decision, type DecisionContent, decisionContent } from './decision.js';
import { type DecisionRow, decisionRows, referenceOf } from './decision-row.js';
import type { Decisions } from './decisions/decisions.js';
import type { Draft, Ground } from './drafts/draft.js';
import { groundIn } from './ground.js';
import { heldPapers } from './held-papers.js';
import type { Opening } from './opening.js';
import { commissionCard } from './shop-card/commission-card.js';
import type { ShopCard } from './shop-card/shop-card.js';
import { latest, sameGround } from './stale.js';

/** What became of a decision. */
export interface Decided {
  /** `recorded`: appended; `same`: the record says so already; `draft`: not decided; `practice`: nothing is kept here. */
  outcome: 'recorded' | 'same' | 'draft' | 'practice';
  /** The entry that now stands for it. */
  entry?: Entry;
  /** The draft that it makes. */
  draft?: Draft;
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
   * The results of an earlier decision, as they were recorded, or of the draft of it where there is one; they cannot be changed.
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
   * Records a decision, unless the record says the same already. With `decided: false` among its inputs it makes a draft, which
   * takes the place of the one before and leaves record and papers as they are; `decided` itself is not kept.
   *
   * @throws ShopError  when a finding says `stop` and no override gives a reason, when it is to be decided and a decision that it
   *                    rests on is a draft, or behind others that changed, or when it cannot be kept; record, drafts and papers
   *                    are then as they were
   */
  decide<What extends keyof D & string>(what: What, decision: Decision<D[What]>): Decided;
  /**
   * Keeps a paper that a sheet made (a template to print, a drawing for exchange) in the commission's folder once the sheet's
   * next decision stands: until then, and when the decision is refused, the paper before it stays as it was. One of a draft goes
   * into the folder `drafts` with DRAFT across it. In practice and in a check it is not kept.
   *
   * @param file  a plain name such as `joint-template.html`
   * @param text  `[reference]` in it becomes the decision's own
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
  /**
   * What this sheet works with of the shop card; the decisions after it keep these values among their inputs, as `shop`. Says in
   * one line what was taken.
   *
   * @param own  other values for this commission alone, in the card's own fields
   * @param fields  of the card
   * @throws ShopError  a field or a value that is not possible; a card that cannot be read
   */
  shop<Field extends keyof ShopCard>(own: object, fields: readonly Field[]): Pick<ShopCard, Field>;
  /** Rules of thumb that standing decisions go against, each with its reason. */
  reasons(): { rule: string; reason: string }[];
  /** What is worked out and not decided, in the order in which it was drafted. */
  drafts(): readonly Draft[];
  /** All entries, oldest first; in practice those of the demonstration commission. */
  entries(): readonly Entry[];
  /** The record as a table. */
  decisions(): DecisionRow[];
  /** Number and hash of the last entry, to be kept outside the record as well: with it, a record cut short shows. */
  head(): Head | undefined;
}

/** Opens a commission that a store holds. @internal */
export function commissionIn<D>(opening: Opening<D>): Commission<D> {
  const { name, folder, store, rehearsal, practice, notices } = opening;
  const ground = groundIn(opening);
  const files: Record<string, string> = {};
  const papers = heldPapers(opening);
  const card = commissionCard({ store: store.shopCard, name, keep: !practice && !rehearsal, say: notices.say });

  return {
    name,
    folder,
    begun: /^\d{4}-\d\d-\d\d(?=-)/.exec(name)?.[0] ?? '',
    get today() {
      return opening.signature().at.slice(0, 10);
    },
    practice: practice !== undefined,
    notices: notices.lines,
    drafts: ground.drafts,
    entries: () => store.entries(),
    reasons: () => ground.standing().flatMap(({ overrides }) => reasonsIn(overrides)),
    decisions: () => decisionRows(store.entries()),
    head: () => {
      const last = store.entries().at(-1);
      return last && { seq: last.seq, hash: last.hash };
    },
    save: papers.hold,

    shop: card.take,

    read(file) {
      const { text, digest } = store.read(file);
      files[file] = digest.slice(0, 16);
      return text;
    },

    need(what) {
      const results = ground.take(what);
      if (results) return results;
      throw new ShopError(
        practice
          ? `Practice takes ${what} from the demonstration commission, which is not here: put back data/commissions/2026-11-25-tea-chest, as the daybook came.`
          : `${what} is not decided yet in ${name}: run ${ground.sheetOf(what)} first.`,
      );
    },

    find: ground.take,

    decide(what, decision) {
      const { decided, inputs: typed } = withoutDecided(decision.inputs);
      const shop = card.taken();
      const inputs = Object.keys(shop).length > 0 ? { ...typed, shop } : typed;
      const content = decisionContent(what, { ...decision, inputs }, ground.schemaOf(what));
      if (practice) return outcome('practice', `Practice: ${what} is worked out but not kept.`);
      const needs = ground.needsOf(what);
      const draft = ground.draftOf(what);
      // A rehearsal compares with the record: what that holds is made anew, whatever its sheet tries now.
      const tried = !decided && !opening.decideAll && !(rehearsal && latest(store.entries(), what));
      if (tried) return drafted(what, content, needs, draft);

      if (!rehearsal) ground.refuseBehind(what);
      const versions = { ...opening.versions, data: { ...opening.versions.data, ...files } };
      let same: Entry | undefined;
      const { entry, setAside } = (rehearsal ?? store).append((recorded) => {
        same = sameAs(recorded, what, content, needs);
        if (same) return undefined;
        return {
          ...opening.signature(),
          ...{ what, needs: ground.recordedNeedsOf(what), versions, papers: papers.names(), ...content },
        };
      });
      if (setAside) notices.say(setAsideText(setAside));
      if (draft) store.removeDraft(draft);
      if (same) return stands(same);
      if (entry) papers.keepWith(entry);
      return outcome('recorded', `${rehearsal ? 'Rehearsed' : 'Recorded'}: ${what}, entry ${entry?.seq}.`, { entry });
    },
  };

  function drafted(
    what: string,
    content: DecisionContent,
    needs: Record<string, Ground>,
    before: Draft | undefined,
  ): Decided {
    const entries = store.entries();
    const same = sameAs(entries, what, content, needs);
    if (same) {
      if (before) store.removeDraft(before);
      return stands(same);
    }
    const made: Draft = { ...opening.signature(), what, needs, ...content, papers: papers.names() };
    const draft = before && isSame(entries, before, made, needs) ? { ...before, papers: made.papers } : made;
    papers.keepAsDraft(draft);
    const sheet = name.replace(/^\d{4}-\d\d-\d\d-/, '');
    const note = `Draft: ${what} is worked out and not decided. Set decided: true and run the sheet again, or npm run work -- ${sheet} --decide.`;
    return outcome('draft', note, { draft });
  }

  function stands(entry: Entry): Decided {
    papers.keepWith(entry);
    const { what, at, seq } = entry;
    return outcome('same', `Same: ${what} is as recorded on ${at.slice(0, 10)}, entry ${seq}.`, { entry });
  }
}

/** A sheet's inputs without `decided`, and whether it is decided: it is where that is not said. */
function withoutDecided(inputs: object): { decided: boolean; inputs: object } {
  const { decided = true, ...others } = inputs as { decided?: unknown };
  if (typeof decided === 'boolean') return { decided, inputs: others };
  throw new ShopError(`decided: ${JSON.stringify(decided)} given; possible: true, or false to try it first`);
}

/** The standing entry, when it says what is decided now already; other versions alone are no change. */
function sameAs(
  entries: readonly Entry[],
  what: string,
  content: DecisionContent,
  needs: Record<string, Ground>,
): Entry | undefined {
  const before = latest(entries, what);
  return before && isSame(entries, before, content, needs) ? before : undefined;
}

function isSame(
  entries: readonly Entry[],
  before: Entry | Draft,
  content: DecisionContent,
  needs: Record<string, Ground>,
): boolean {
  const had: Record<string, Ground> = before.needs;
  const sameNeeds =
    Object.keys(needs).length === Object.keys(had).length &&
    Object.entries(needs).every(([what, now]) => had[what] && sameGround(entries, had[what], now));
  return sameNeeds && contentDifferences(before, content).length === 0;
}

function reasonsIn(overrides: Record<string, string>): { rule: string; reason: string }[] {
  return Object.entries(overrides).map(([rule, reason]) => ({ rule, reason }));
}

function outcome(is: Decided['outcome'], note: string, made: Pick<Decided, 'entry' | 'draft'> = {}): Decided {
  const text = made.entry ? `${note} Reference ${referenceOf(made.entry)}.` : note;
  // A cell's last value is printed: without this, that would be the whole entry.
  return Object.defineProperty({ outcome: is, ...made, note }, Symbol.for('nodejs.util.inspect.custom'), {
    value: () => text,
  });
}
