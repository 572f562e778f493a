import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { differenceText } from '../../record/chain/differences.js';
import type { Head } from '../../record/chain/entry.js';
import { soundEntries } from '../../record/chain/record-file.js';
import { checkCommission } from '../../record/check/check.js';
import { type Compared, compareRecords, origins } from '../../record/check/compare.js';
import { referenceOf } from '../../record/decision-row.js';
import { noteHead } from '../../record/known-heads.js';
import { staleText } from '../../record/stale.js';
import { readDrafts } from '../../record/store/drafts-file.js';
import { counted, failureText, sheetLine } from '../sheets/run-report.js';
import { runSheets } from '../sheets/run-sheets.js';
import type { Progress } from './progress.js';

/** How a commission is checked. */
export interface CheckOptions {
  folder: string;
  /** Number and hash of an entry, from a quote or a receipt; the shop's own book is asked besides. */
  head?: Head;
  /** Time limit of each cell. */
  seconds: number;
  signal?: AbortSignal;
  progress: Progress;
}

/**
 * Verifies a commission's record line by line, runs its sheets again and compares what they decide with what the record
 * says. Nothing in the folder changes: the run's own decisions go to a folder for the moment. Where the record ends is
 * compared with the shop's own book, and written down there when all is well.
 *
 * @returns whether everything is as recorded
 * @throws ShopError  when there is no record, the sheets cannot be read, or no kernel starts
 */
export async function check({ folder, head: given, seconds, signal, progress }: CheckOptions): Promise<boolean> {
  const { name, entries, head, faults, stale, incomplete } = checkCommission(folder, { head: given });
  progress.line(`Checking ${name}`);
  for (const { problem, remedy } of faults) progress.line(`The record: ${problem}. ${remedy}`);
  if (faults.length > 0) return false;
  if (incomplete) progress.line('The record ends in a line that was never finished; it does not count.');
  for (const each of stale) progress.line(staleText(each));

  const rehearsal = mkdtempSync(join(tmpdir(), 'rehearsal-'));
  try {
    const { failure } = await runSheets({
      folder,
      seconds,
      signal,
      env: { COMMISSION_REHEARSAL: rehearsal },
      onCell: progress.cell,
      onSheet: (sheet) => progress.line(sheetLine(sheet, '')),
    });
    if (failure) {
      progress.line(failureText(failure));
      return false;
    }
    const compared = compareRecords(entries, soundEntries(rehearsal));
    const different = compared.filter(({ outcome }) => outcome !== 'same');
    for (const each of different) progress.line(comparisonText(each));
    for (const { what, why } of origins(compared)) progress.line(`It began with ${what}: ${why.join('; ')}.`);
    const tried = readDrafts(rehearsal).map(({ what }) => what);
    if (tried.length > 0) progress.line(`Not decided yet, so not compared: ${tried.join(', ')}.`);
    if (different.length > 0) return false;
    progress.line(`Same: ${counted(compared.length, 'decision')} as recorded, and the record as it was written.`);
    if (head) progress.line(`The reference of its last entry is ${referenceOf(head)}`);
    noteHead(folder);
    return true;
  } finally {
    rmSync(rehearsal, { recursive: true, force: true, maxRetries: 3 });
  }
}

function comparisonText({ what, outcome, moved, why }: Compared): string {
  if (outcome === 'new') return `${what}: a sheet decides it, and the record does not hold it yet`;
  if (outcome === 'missing') return `${what}: the record holds it, and no sheet decides it any more`;
  const figures = moved.map((difference) => `  ${differenceText(difference)}`);
  return [`${what} moved:`, ...figures, ...why.map((reason) => `  because ${reason}`)].join('\n');
}
