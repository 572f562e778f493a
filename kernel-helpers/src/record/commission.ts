import { readFileSync, statSync } from 'node:fs';
import { basename, resolve } from 'node:path';
import { diskError, isSystemError } from '../disk/disk-error.js';
import { ShopError } from '../measure/shop-error.js';
import type { StockOffered } from '../stock/boards/shop-stock.js';
import { sha256 } from './chain/chain.js';
import type { Entry, Head, Versions } from './chain/entry.js';
import { appendEntry, soundEntries } from './chain/record-file.js';
import { localTime, whoDecides } from './chain/who-and-when.js';
import {
  contentDifferences,
  type Decision,
  type DecisionContent,
  decisionContent,
  type Shape,
  shapeProblem,
} from './decision.js';
import { type DecisionRow, decisionRows, shortHash } from './decision-row.js';
import type { Decisions } from './decisions.js';
import { demonstration, isCommission } from './demonstration.js';
import { saveFile } from './output-file.js';
import { sheetLinks } from './sheets.js';
import { type StockTaken, stockOffered, turnStock } from './shop-stock-file.js';
import { latest, staleness, staleText } from './stale.js';

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
   * @throws ShopError  when a finding says `stop` and no override gives a reason, or when the decision cannot be kept;
   *                    the record is then as it was
   */
  decide<What extends keyof D & string>(what: What, decision: Decision<D[What]>): Decided;
  /**
   * Keeps a paper that a sheet made (a template to print, a drawing for exchange) in the commission's folder; in practice
   * and in a check it is not kept.
   *
   * @param file  a plain name such as `joint-template.html`
   * @throws ShopError  a name that is not possible; a disk that refuses
   */
  save(file: string, text: string): void;
  /**
   * Boards that lie in the shop, from `stock.json` beside the commissions' folder: the maker's own and the offcuts of other
   * commissions. Once `stock` is decided, what the commission saw when it was planned, so that it can be run again years later.
   * In practice and in the demonstration there are none.
   *
   * @param options.today  what lies there today, whatever it was planned with
   * @throws ShopError  a file that cannot be read, naming the board and the field at fault
   */
  stock(options?: { today?: boolean }): StockOffered;
  /**
   * Writes into the shop's stock what the standing `stock` decision uses of it and the offcuts it gives back; done twice, it
   * counts once. In practice, in the demonstration and in a check nothing is written.
   *
   * @throws ShopError  when stock is not decided yet; a file that cannot be read or written: it is then as it was
   */
  keepOffcuts(): void;
  /**
   * The text of a file that a sheet works from, such as a table of readings. The decisions after it hold the file's digest,
   * so that a check can say that it was the file that changed.
   *
   * @param file  its name in the commission's folder, or a path
   * @throws ShopError  when it cannot be read
   */
  read(file: string): string;
  /** All entries, oldest first; in practice those of the demonstration commission. */
  entries(): readonly Entry[];
  /** The record as a table. */
  decisions(): DecisionRow[];
  /** Number and hash of the last entry, to be kept outside the record as well: with it, a record cut short shows. */
  head(): Head | undefined;
}

/** What a commission is opened with. @internal */
export interface Opening<D> {
  folder: string;
  shapes: { [What in keyof D]: Shape };
  versions: Versions;
  /** Where notices go besides `notices`. */
  notify: (line: string) => void;
}

/** Opens the commission in a folder. @internal */
export function commissionIn<D>(opening: Opening<D>): Commission<D> {
  const folder = existingFolder(opening.folder);
  const name = basename(folder);
  const practice = !isCommission(folder);
  const rehearsal = practice ? undefined : rehearsalFolder();
  const source = practice ? demonstration(folder) : folder;
  const invented = !practice && demonstration(folder) === folder;
  const needs: Record<string, Head> = {};
  const files: Record<string, string> = {};
  const notices: string[] = [];
  let offered: StockOffered | undefined;

  const notify = (line: string): void => {
    if (notices.includes(line)) return;
    notices.push(line);
    opening.notify(line);
  };
  const entries = (): Entry[] => (source === undefined ? [] : soundEntries(source));
  const done = (outcome: Decided['outcome'], note: string, entry?: Entry): Decided =>
    printedAs({ outcome, entry, note }, entry ? `${note} Fingerprint ${shortHash(entry.hash)}.` : note);

  return {
    name,
    folder,
    begun: /^\d{4}-\d\d-\d\d(?=-)/.exec(name)?.[0] ?? '',
    practice,
    notices,
    entries,
    decisions: () => decisionRows(entries()),
    head: () => {
      const last = entries().at(-1);
      return last && { seq: last.seq, hash: last.hash };
    },

    save(file, text) {
      if (rehearsal) return;
      if (practice) return notify(`Practice: ${file} is not kept.`);
      saveFile(folder, file, text);
      notify(`Kept in the commission's folder: ${file}`);
    },

    stock({ today = false } = {}) {
      if (practice || invented) return { boards: [], marks: [] };
      const planned = latest(entries(), 'stock')?.inputs as { offered?: StockOffered } | undefined;
      offered = (today ? undefined : planned?.offered) ?? stockOffered(folder, rehearsal !== undefined);
      return offered;
    },

    keepOffcuts() {
      if (rehearsal) return;
      if (practice) return notify('Practice: no offcut goes back into the stock.');
      if (invented) return notify('The boards of the demonstration are invented: no offcut goes into your stock.');
      const decided = latest(entries(), 'stock')?.results as StockTaken | undefined;
      if (!decided) throw new ShopError(`stock is not decided yet in ${name}: run ${sheetFor('stock')} first.`);
      for (const line of turnStock(folder, decided, offered)) notify(line);
    },

    read(file) {
      const path = resolve(folder, file);
      try {
        const bytes = readFileSync(path);
        files[file] = sha256(bytes).slice(0, 16);
        return bytes.toString('utf8');
      } catch (error) {
        if (isSystemError(error) && error.code === 'ENOENT') throw new ShopError(`There is no file ${path}.`);
        throw diskError(error, `${path} cannot be read`);
      }
    },

    need(what) {
      const results = found(what);
      if (results) return results;
      throw new ShopError(
        practice
          ? `Practice takes ${what} from the demonstration commission, which has none yet: run npm start once.`
          : `${what} is not decided yet in ${name}: run ${sheetFor(what)} first.`,
      );
    },

    find: found,

    decide(what, decision) {
      const content = decisionContent(what, decision, shapeOf(what));
      if (practice) return done('practice', `Practice: ${what} is worked out but not kept.`);
      const { [what]: _, ...restsOn } = needs;
      const versions = { ...opening.versions, data: { ...opening.versions.data, ...files } };
      let standing: Entry | undefined;
      const { entry, setAside } = appendEntry(rehearsal ?? folder, (recorded) => {
        const before = latest(recorded, what);
        standing = before && isSame(before, content, restsOn) ? before : undefined;
        const made = { at: localTime(new Date()), who: whoDecides(), what, needs: restsOn, versions };
        return standing ? undefined : { ...made, ...content };
      });
      if (setAside) {
        notify(
          `The last line of the record was never finished (the power failed, most likely), so it does not count. It is kept in ${setAside}.`,
        );
      }
      if (standing) {
        return done(
          'same',
          `Same: ${what} is as recorded on ${standing.at.slice(0, 10)}, entry ${standing.seq}.`,
          standing,
        );
      }
      return done('recorded', `${rehearsal ? 'Rehearsed' : 'Recorded'}: ${what}, entry ${entry?.seq}.`, entry);
    },
  };

  function found<What extends keyof D & string>(what: What): Readonly<D[What]> | undefined {
    const shape = shapeOf(what);
    const real = entries();
    const entry = (rehearsal && latest(soundEntries(rehearsal), what)) ?? latest(real, what);
    if (!entry) return undefined;
    const wrong = shapeProblem(shape, entry.results, 'results');
    if (wrong) {
      throw new ShopError(
        `${what} in the record of ${basename(source ?? folder)} (entry ${entry.seq}) is not as these sheets use it: ${wrong}. Run ${sheetFor(what)} again.`,
      );
    }
    if (practice) {
      notify(
        `Practice: nothing is kept, and earlier decisions are those of the demonstration commission ${basename(source ?? '')}.`,
      );
    }
    const stale = practice || rehearsal ? undefined : staleness(real, entry);
    if (stale) notify(`${staleText(stale)} Run ${sheetFor(what)} again.`);
    needs[what] = { seq: entry.seq, hash: entry.hash };
    return entry.results as Readonly<D[What]>;
  }

  function shapeOf(what: keyof D & string): Shape {
    if (Object.hasOwn(opening.shapes, what)) return opening.shapes[what];
    throw new ShopError(`There is no decision '${what}'; there are ${Object.keys(opening.shapes).join(', ')}.`);
  }

  function sheetFor(what: string): string {
    return sheetLinks(folder).find((sheet) => sheet.decides.includes(what))?.file ?? `the sheet that decides ${what}`;
  }
}

/** Whether a decision says what an entry says already; other versions alone are no change. */
function isSame(entry: Entry, content: DecisionContent, needs: Record<string, Head>): boolean {
  const sameNeeds =
    Object.keys(needs).length === Object.keys(entry.needs).length &&
    Object.entries(needs).every(([what, need]) => entry.needs[what]?.hash === need.hash);
  return sameNeeds && contentDifferences(entry, content).length === 0;
}

function existingFolder(given: string): string {
  const folder = resolve(given);
  if (statSync(folder, { throwIfNoEntry: false })?.isDirectory()) return folder;
  throw new ShopError(`There is no folder ${folder}.`);
}

/** Where the decisions of a run that only compares go: set by the runner for `check`. */
function rehearsalFolder(): string | undefined {
  const given = process.env.COMMISSION_REHEARSAL;
  return given ? existingFolder(given) : undefined;
}

// A cell's last value is printed: without this, that would be the whole entry.
function printedAs(decided: Decided, text: string): Decided {
  return Object.defineProperty(decided, Symbol.for('nodejs.util.inspect.custom'), { value: () => text });
}
