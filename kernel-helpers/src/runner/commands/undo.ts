import { basename } from 'node:path';
import { ShopError } from '../../measure/shop-error.js';
import { dataVersions } from '../../record/chain/data-versions.js';
import type { Entry } from '../../record/chain/entry.js';
import { versionsInUse } from '../../record/chain/versions.js';
import { commissionFolder } from '../../record/commission-folder.js';
import { decisionRows } from '../../record/decision-row.js';
import { keyFigures } from '../../record/key-figures/key-figures.js';
import { shownBy } from '../../record/key-figures/shown.js';
import { noteHead } from '../../record/known-heads.js';
import { markPage } from '../../record/page-behind.js';
import { standing } from '../../record/stale.js';
import { stockBefore } from '../../record/undo/stock-before.js';
import { lastDecision, withdraw } from '../../record/undo/undo.js';
import { titleOf } from '../find/find-commission.js';

/** How a decision is withdrawn. */
export interface UndoOptions {
  folder: string;
  /** Asks for a yes; undefined where nobody can be asked, and nothing is withdrawn then. */
  ask?: (question: string) => Promise<string>;
  /** Withdraws it unasked. */
  yes: boolean;
  say: (line: string) => void;
}

/**
 * Withdraws the last decision of a commission, once it was shown and somebody said yes.
 *
 * @returns whether it was withdrawn
 * @throws ShopError  when nothing is decided, nobody can be asked, or the record cannot be read or written
 */
export async function undo({ folder, ask, yes, say }: UndoOptions): Promise<boolean> {
  const { store, signature, sheetOf, withoutStock, name } = commissionFolder(folder);
  const entries = store.entries();
  const last = lastDecision(entries);
  if (!last) throw new ShopError(`Nothing is decided in ${name}: there is nothing to withdraw.`);
  const { entry, before } = last;
  const { what, seq, papers } = entry;
  const row = decisionRows(entries)[entries.indexOf(entry)];
  say(`${titleOf(basename(folder))}: the last decision is ${told(entries, entry)}, by ${entry.who}.`);
  if (before && row) say(`It changed: ${row.changed}`);
  say(before ? `Without it, ${told(entries, before)} stands again.` : `Without it, ${what} is not decided.`);
  if (papers) say(`Its papers will say that it was withdrawn: ${papers.join(', ')}`);

  if (!yes) {
    if (!ask)
      throw new ShopError('Nothing is withdrawn: nobody can be asked here. With --yes behind it, it is done unasked.');
    if (!/^y(es)?$/i.test((await ask('Withdraw it? yes or no: ')).trim())) {
      say('Nothing is withdrawn.');
      return false;
    }
  }

  const made = withdraw({ store, signature, versions: versionsInUse(dataVersions()) }, entry);
  if (what === 'stock' && !withoutStock) stockBefore(store.stock, name, before);
  markPage(store, { entries: store.entries(), drafts: store.drafts() });
  noteHead(folder);
  say(`Withdrawn: ${what}, entry ${seq}, by entry ${made.seq}. Nothing is deleted: the record shows both.`);
  const sheet = sheetOf(what);
  if (sheet) say(`${sheet} decides it again when it runs, unless it says decided: false.`);
  return true;
}

/** `lid as of entry 4 (2026-11-27): plane to 6.657 in` */
function told(entries: readonly Entry[], { what, seq, at, results }: Entry): string {
  const { sentence } = keyFigures(what, results, shownBy(standing(entries)));
  return `${what} as of entry ${seq} (${at.slice(0, 10)})${sentence && `: ${sentence}`}`;
}
