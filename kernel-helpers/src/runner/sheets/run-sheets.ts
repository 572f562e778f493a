import { join } from 'node:path';
import { ShopError } from '../../measure/shop-error.js';
import { soundEntries } from '../../record/chain/record-file.js';
import { type SheetLinks, sheetLinks } from '../../record/sheets.js';
import { standing } from '../../record/stale.js';
import { kernelQueue } from '../kernel/kernel-queue.js';
import { type Notebook, readNotebook } from './notebook.js';
import { sheetOrder } from './order.js';
import { runSheet, type SheetFailure } from './run-sheet.js';

/** A sheet that ran from its first cell to its last, or was left alone. */
export interface FinishedSheet {
  /** `04-lid-through-the-year.ipynb` */
  file: string;
  /** With what it showed: just now, or when it ran last. */
  notebook: Notebook;
  /** From the end of the sheet before; nothing for a sheet that was left alone. */
  seconds?: number;
  /** The process it ran in. */
  kernel?: number;
}

/** How the sheets of a commission are run. */
export interface SheetsOptions {
  folder: string;
  /** Environment variables for the sheets, besides the runner's own. */
  env?: Record<string, string | undefined>;
  /** Time limit of each cell. */
  seconds: number;
  /** Stops the run. */
  signal?: AbortSignal;
  /** Whether a sheet need not run, asked when all it rests on has; each runs when left out. */
  isUnchanged?: (file: string, notebook: Notebook) => boolean;
  /** Called before each cell. */
  onCell?: (file: string, cell: number, cells: number) => void;
  /** Called after each sheet, and waited for. */
  onSheet?: (sheet: FinishedSheet) => Promise<void> | void;
}

/** What became of a run: the sheets that finished, and why the next one did not. */
export interface SheetsRun {
  finished: FinishedSheet[];
  failure?: SheetFailure & { file: string };
}

/**
 * Runs a commission's sheets, each in a fresh kernel, in the order their needs give, until one fails.
 *
 * @throws ShopError  when a sheet cannot be read or the sheets have no order, before anything has run; or when no kernel
 *   starts
 */
export async function runSheets(options: SheetsOptions): Promise<SheetsRun> {
  const { folder, env, seconds, signal, isUnchanged = () => false, onCell, onSheet } = options;
  const recorded = new Set(standing(soundEntries(folder)).map((entry) => entry.what));
  const sheets = sheetOrder(sheetLinks(folder), recorded).map((links) => ({
    ...links,
    notebook: readNotebook(join(folder, links.file)),
  }));
  if (sheets.length === 0) throw new ShopError(`there are no sheets in ${folder}`);

  const kernels = kernelQueue({ cwd: folder, env, signal });
  const finished: FinishedSheet[] = [];
  const endings: Promise<void>[] = [];
  try {
    for (const [index, sheet] of sheets.entries()) {
      const { file, notebook } = sheet;
      const began = performance.now();
      const finish = async (done: FinishedSheet) => {
        finished.push(done);
        await onSheet?.(done);
      };
      if (isUnchanged(file, notebook)) {
        await finish({ file, notebook });
        continue;
      }
      const ahead = sheets
        .slice(index + 1)
        .some((later) => mayMove(sheet, later) || !isUnchanged(later.file, later.notebook));
      const kernel = await kernels.next(ahead).catch((error) => {
        if (!signal?.aborted) throw error;
      });
      if (!kernel)
        return { finished, failure: { file, cell: 0, cells: 0, status: 'stopped', plain: false, message: 'stopped' } };
      const hear = (cell: number, cells: number) => onCell?.(file, cell, cells);
      const { executed, failure } = await runSheet(kernel, notebook, { seconds, signal, onCell: hear });
      endings.push(kernel.shutdown());
      if (failure) return { finished, failure: { file, ...failure } };
      const took = (performance.now() - began) / 1000;
      await finish({ file, notebook: executed, seconds: took, kernel: kernel.process.pid });
    }
    return { finished };
  } finally {
    kernels.close();
    await Promise.all(endings);
  }
}

/** Whether what one sheet decides may be what another looks at. */
function mayMove({ decides }: SheetLinks, { needs, finds, looksBack }: SheetLinks): boolean {
  return decides.length > 0 && (looksBack || decides.some((what) => needs.includes(what) || finds.includes(what)));
}
