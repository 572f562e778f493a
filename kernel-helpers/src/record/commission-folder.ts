import { statSync } from 'node:fs';
import { basename, resolve } from 'node:path';
import { isCommission } from '../disk/daybook-folder.js';
import { ShopError } from '../measure/shop-error.js';
import { localTime, whoDecides } from './chain/who-and-when.js';
import { demonstration } from './demonstration.js';
import type { Opening } from './opening.js';
import { sheetLinks } from './sheets.js';
import { folderStore } from './store/folder-store.js';
import { stagedStore } from './store/staged-store.js';

/** What a folder says of the commission in it. @internal */
export interface CommissionFolder
  extends Pick<
    Opening<never>,
    'folder' | 'name' | 'store' | 'rehearsal' | 'practice' | 'decideAll' | 'signature' | 'sheetOf'
  > {
  /** Whether all its sheets are being worked, this one among them. */
  working?: boolean;
  /** Why it neither takes from the shop's stock nor gives to it, if so. */
  withoutStock?: string;
}

/**
 * The commission in a folder: one directly inside a folder named `commissions`; any other is practice.
 *
 * @throws ShopError  when there is no such folder
 * @internal
 */
export function commissionFolder(given: string): CommissionFolder {
  const folder = existingFolder(given);
  const store = folderStore(folder);
  // Where entries and papers wait until their sheet has run to its end: set by the runner for `work`.
  const waitingFolder = process.env.COMMISSION_WAITING;
  const shown = demonstration(folder);
  const place = {
    folder,
    name: basename(folder),
    signature: () => ({ at: localTime(new Date()), who: whoDecides() }),
    sheetOf: (what: string) => sheetLinks(folder).find((sheet) => sheet.decides.includes(what))?.file,
  };
  if (!isCommission(folder)) {
    return {
      ...place,
      store: { ...store, entries: () => (shown === undefined ? [] : folderStore(shown).entries()) },
      practice: { demonstration: shown && basename(shown) },
      withoutStock: 'Practice: no offcut goes back into the stock.',
    };
  }
  return {
    ...place,
    store: waitingFolder ? stagedStore(folder, waitingFolder) : store,
    rehearsal: rehearsalStore(),
    working: Boolean(waitingFolder),
    // Set by the runner for `work --decide`.
    decideAll: Boolean(process.env.COMMISSION_DECIDE),
    withoutStock:
      shown === folder ? 'The boards of the demonstration are invented: no offcut goes into your stock.' : undefined,
  };
}

function existingFolder(given: string): string {
  const folder = resolve(given);
  if (statSync(folder, { throwIfNoEntry: false })?.isDirectory()) return folder;
  throw new ShopError(`There is no folder ${folder}.`);
}

/** Where the decisions of a run that only compares go: set by the runner for `check`. */
function rehearsalStore() {
  const given = process.env.COMMISSION_REHEARSAL;
  return given ? folderStore(existingFolder(given)) : undefined;
}
