import { existsSync, mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { basename, join } from 'node:path';
import { replaceFile } from '../../disk/replace-file.js';
import { ShopError } from '../../measure/shop-error.js';
import { setAsideText } from '../../record/chain/entry.js';
import { appendEntry, soundEntries } from '../../record/chain/record-file.js';
import { runsWith } from '../../record/chain/versions.js';
import { whatMoved } from '../../record/check/what-moved.js';
import { isIn, knownHead, knownHeadsName, noteHead } from '../../record/known-heads.js';
import { ownSpeciesVersions } from '../../record/own/own-species.js';
import { markPage, pageName } from '../../record/page-behind.js';
import type { CardMove } from '../../record/shop-card/card-words.js';
import { takeCardAnew } from '../../record/shop-card/commission-card.js';
import { readDrafts } from '../../record/store/drafts-file.js';
import { folderStore } from '../../record/store/folder-store.js';
import { takeOver } from '../../record/store/staged-store.js';
import { keptUses } from '../../record/uses/kept-uses.js';
import { lookAt, ownDecisions, type Uses } from '../../record/uses/uses.js';
import { titleOf } from '../find/find-commission.js';
import { isPageBehind } from '../pages/page-ground.js';
import { isUnchanged, type LastRun, readLastRun, showing, sourceDigest, writeLastRun } from '../sheets/last-run.js';
import { notebookText } from '../sheets/notebook.js';
import { counted, failureText, sheetLine } from '../sheets/run-report.js';
import { runSheets } from '../sheets/run-sheets.js';
import { movedLines } from './moved-lines.js';
import { outcomeText } from './outcome.js';
import type { Progress } from './progress.js';

/** How a commission is worked. */
export interface WorkOptions {
  folder: string;
  /** Time limit of each cell. */
  seconds: number;
  /** Name for the record; the computer's user when left out. */
  who?: string;
  /** Decides what sheets only draft as well. */
  decide?: boolean;
  /** Takes the shop card as it is now in place of the commission's copy. */
  card?: boolean;
  /** Whether sheets for which nothing has moved run too. */
  all?: boolean;
  signal?: AbortSignal;
  progress: Progress;
}

/**
 * Runs those of a commission's sheets for which anything has moved since they ran last, saves each with what it showed, and
 * writes the page of the whole.
 *
 * @returns whether all of them ran
 * @throws ShopError  when the sheets or the record cannot be read, or no kernel starts
 */
export async function work({
  folder,
  seconds,
  who,
  decide,
  card,
  all = false,
  signal,
  progress,
}: WorkOptions): Promise<boolean> {
  const recordedBefore = soundEntries(folder);
  const head = knownHead(folder);
  if (head && !isIn(recordedBefore, head)) {
    throw new ShopError(
      `The record of ${basename(folder)} does not hold entry ${head.seq} as ${knownHeadsName} knows it: its end was cut off, or it was written anew. Put back a copy of record.jsonl (from a backup); to begin anew, take the line out of ${knownHeadsName}.`,
    );
  }
  const before = recordedBefore.length;
  let known = before;
  progress.line(`${titleOf(basename(folder))}, in ${folder}`);
  const { setAside } = appendEntry(folder, () => undefined);
  if (setAside) progress.line(setAsideText(setAside));
  const store = folderStore(folder);
  if (card) progress.line(cardText(takeCardAnew(store.shopCard)));
  const stand = () => ({ entries: soundEntries(folder), drafts: readDrafts(folder) });
  const stood = stand();
  const now = {
    with: JSON.stringify([runsWith(), ownSpeciesVersions(folder)]),
    lookAt: (thing: string) => lookAt(store, thing),
  };
  const last: LastRun = all ? { sheets: {} } : readLastRun(folder);
  const temporary = mkdtempSync(join(tmpdir(), 'sheet-'));
  const waiting = join(temporary, basename(folder));
  const used = join(temporary, 'used');
  let page: Promise<typeof import('../pages/write-page.js')> | undefined;
  const { finished, failure } = await runSheets({
    folder,
    seconds,
    signal,
    env: {
      ...(who && { COMMISSION_WHO: who }),
      ...(decide && { COMMISSION_DECIDE: '1' }),
      COMMISSION_WAITING: waiting,
      COMMISSION_USED: used,
    },
    isUnchanged: (file, notebook) =>
      isUnchanged(notebook, last.sheets[file], now) && !(decide && drafted(folder, last.sheets[file]?.uses)),
    onCell(...cell) {
      // Loads while the first sheet runs.
      page ??= import('../pages/write-page.js');
      progress.cell(...cell);
    },
    async onSheet(sheet) {
      const { file, notebook, kernel } = sheet;
      if (kernel === undefined) return progress.line(sheetLine(sheet, 'unchanged'));
      takeOver(folder, waiting);
      replaceFile(join(folder, file), notebookText(notebook));
      const uses = keptUses(used, kernel);
      // Its own decisions as they are now: papers of a draft were not in their place before.
      for (const what of ownDecisions(uses ?? {}))
        Object.assign(uses ?? {}, { [`own ${what}`]: now.lookAt(`own ${what}`) });
      const ran = uses && { source: sourceDigest(notebook), with: now.with, showing: showing(notebook), uses };
      last.sheets = { ...last.sheets, [file]: ran };
      writeLastRun(folder, last);
      const entries = soundEntries(folder);
      progress.line(
        sheetLine(sheet, outcomeText(ownDecisions(uses ?? {}), { entries, drafts: readDrafts(folder), known })),
      );
      known = entries.length;
    },
  }).finally(() => rmSync(temporary, { recursive: true, force: true, maxRetries: 3 }));
  const entries = soundEntries(folder).length;
  noteHead(folder);
  const recorded = entries === before ? 'nothing new' : counted(entries - before, 'new decision');
  if (failure) {
    markPage(store, stand());
    progress.line(failureText(failure));
    progress.line(
      `The record is whole: ${counted(entries, 'entry', 'entries')}, ${recorded}. Nothing of this sheet was kept.`,
    );
    return false;
  }
  const drafts = readDrafts(folder).map(({ what }) => what);
  if (entries > before) progress.line(`Recorded: ${recorded}.`);
  else if (finished.every(({ kernel }) => kernel === undefined))
    progress.line('Nothing has moved since these sheets ran last.');
  else if (drafts.length === 0) progress.line('Same: the record says all of this already.');
  if (drafts.length > 0)
    progress.line(`Drafts, not decided: ${drafts.join(', ')}. npm run work with --decide behind it decides them.`);
  for (const line of movedLines(whatMoved(stood, stand()))) progress.line(line);
  const path = join(folder, pageName);
  if (last.page !== now.with || !existsSync(path) || isPageBehind(folder)) {
    const { writePage } = await (page ?? import('../pages/write-page.js'));
    await writePage(folder, finished);
    writeLastRun(folder, { ...last, page: now.with });
  }
  progress.line(`The page to open or print: ${path}`);
  return true;
}

/** Whether a sheet made what is only a draft. */
function drafted(folder: string, uses: Uses = {}): boolean {
  const own = ownDecisions(uses);
  return readDrafts(folder).some(({ what }) => own.includes(what));
}

function cardText(moves: CardMove[]): string {
  const said = moves.map(({ field, before, now }) => `${field} ${now} (was ${before})`).join('; ');
  return said ? `The shop card is taken as it is now: ${said}.` : 'The shop card has not changed since it was taken.';
}
