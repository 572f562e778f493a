import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { basename, join } from 'node:path';
import { replaceFile } from '../../disk/replace-file.js';
import { ShopError } from '../../measure/shop-error.js';
import { setAsideText } from '../../record/chain/entry.js';
import { appendEntry, soundEntries } from '../../record/chain/record-file.js';
import { isIn, knownHead, knownHeadsName, noteHead } from '../../record/known-heads.js';
import { readDrafts } from '../../record/store/drafts-file.js';
import { takeOver } from '../../record/store/staged-store.js';
import { notebookText } from '../sheets/notebook.js';
import { counted, failureText, sheetLine } from '../sheets/run-report.js';
import { runSheets } from '../sheets/run-sheets.js';
import { titleOf } from './find-commission.js';
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
  signal?: AbortSignal;
  progress: Progress;
}

/**
 * Runs a commission's sheets, saves each with what it showed, and writes the page of the whole.
 *
 * @returns whether all of them ran
 * @throws ShopError  when the sheets or the record cannot be read, or no kernel starts
 */
export async function work({ folder, seconds, who, decide, signal, progress }: WorkOptions): Promise<boolean> {
  const recordedBefore = soundEntries(folder);
  const head = knownHead(folder);
  if (head && !isIn(recordedBefore, head)) {
    throw new ShopError(
      `The record of ${basename(folder)} does not hold entry ${head.seq} as ${knownHeadsName} knows it: its end was cut off, or it was written anew. Put back a copy of record.jsonl (from git or a backup); to begin anew, take the line out of ${knownHeadsName}.`,
    );
  }
  const before = recordedBefore.length;
  let known = before;
  progress.line(`${titleOf(basename(folder))}, in ${folder}`);
  const { setAside } = appendEntry(folder, () => undefined);
  if (setAside) progress.line(setAsideText(setAside));
  // Loads while the first kernel starts.
  const page = import('./write-page.js');
  const temporary = mkdtempSync(join(tmpdir(), 'sheet-'));
  const waiting = join(temporary, basename(folder));
  const { finished, failure } = await runSheets({
    folder,
    seconds,
    signal,
    env: {
      ...(who && { COMMISSION_WHO: who }),
      ...(decide && { COMMISSION_DECIDE: '1' }),
      COMMISSION_WAITING: waiting,
    },
    onCell: progress.cell,
    async onSheet(sheet) {
      takeOver(folder, waiting);
      replaceFile(join(folder, sheet.file), notebookText(sheet.executed));
      const entries = soundEntries(folder);
      const added = entries.slice(known).map(({ what, seq }) => `${what}, entry ${seq}`);
      known = entries.length;
      progress.line(sheetLine(sheet, added.length > 0 ? `recorded ${added.join('; ')}` : 'same'));
    },
  }).finally(() => rmSync(temporary, { recursive: true, force: true, maxRetries: 3 }));
  const entries = soundEntries(folder).length;
  noteHead(folder);
  const recorded = entries === before ? 'nothing new' : counted(entries - before, 'new decision');
  if (failure) {
    progress.line(failureText(failure));
    progress.line(
      `The record is whole: ${counted(entries, 'entry', 'entries')}, ${recorded}. Nothing of this sheet was kept.`,
    );
    return false;
  }
  const { writePage } = await page;
  const drafts = readDrafts(folder).map(({ what }) => what);
  if (entries > before) progress.line(`Recorded: ${recorded}.`);
  else if (drafts.length === 0) progress.line('Same: the record says all of this already.');
  if (drafts.length > 0)
    progress.line(`Drafts, not decided: ${drafts.join(', ')}. npm run work with --decide behind it decides them.`);
  progress.line(`The page to open or print: ${await writePage(folder, finished)}`);
  return true;
}
