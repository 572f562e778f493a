import { basename, join } from 'node:path';
import { soundEntries } from '../record/record-file.js';
import { titleOf } from './find-commission.js';
import { notebookText } from './notebook.js';
import type { Progress } from './progress.js';
import { failureText, sheetLine } from './run-report.js';
import { runSheets } from './run-sheets.js';
import { writeFile } from './write-file.js';

/** How a commission is worked. */
export interface WorkOptions {
  folder: string;
  /** Time limit of each cell. */
  seconds: number;
  /** Name for the record; the computer's user when left out. */
  who?: string;
  signal?: AbortSignal;
  progress: Progress;
}

/**
 * Runs a commission's sheets, and saves each with what it showed.
 *
 * @returns whether all of them ran
 * @throws ShopError  when the sheets or the record cannot be read, or no kernel starts
 */
export async function work({ folder, seconds, who, signal, progress }: WorkOptions): Promise<boolean> {
  const before = soundEntries(folder).length;
  let known = before;
  progress.line(`${titleOf(basename(folder))}, in ${folder}`);
  const { failure } = await runSheets({
    folder,
    seconds,
    signal,
    env: who ? { COMMISSION_WHO: who } : {},
    onCell: progress.cell,
    async onSheet(sheet) {
      await writeFile(join(folder, sheet.file), notebookText(sheet.executed));
      const entries = soundEntries(folder);
      const added = entries.slice(known).map(({ what, seq }) => `${what}, entry ${seq}`);
      known = entries.length;
      progress.line(sheetLine(sheet, added.length > 0 ? `recorded ${added.join('; ')}` : 'same'));
    },
  });
  if (failure) {
    progress.line(failureText(failure));
    const kept = `The record is whole and holds ${soundEntries(folder).length} entries, ${known - before} of them new`;
    progress.line(`${kept}; of this sheet nothing was saved.`);
    return false;
  }
  progress.line(
    known === before ? 'Same: the record says all of this already.' : `Recorded ${known - before} decisions.`,
  );
  return true;
}
