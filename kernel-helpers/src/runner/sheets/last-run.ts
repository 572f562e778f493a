import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import * as z from 'zod';
import { replaceFile } from '../../disk/replace-file.js';
import { sha256 } from '../../record/chain/sha256.js';
import type { Uses } from '../../record/uses/uses.js';
import type { Notebook } from './notebook.js';

/** A sheet as it was when it last ran to its end. */
export interface SheetRun {
  /** Digest of the source of its cells. */
  source: string;
  /** What it ran with: Node, the built helpers, woods of the maker's own. */
  with: string;
  /** Cells that showed something. */
  showing: number;
  /** What it looked at. */
  uses: Uses;
}

/** What is known of a commission's last runs, only so that what nothing has moved for can be left alone. */
export interface LastRun {
  sheets: Record<string, SheetRun | undefined>;
  /** What the page was written with, as `with` of a sheet. */
  page?: string;
}

/** Hidden, in the commission's folder; without it all runs again. */
export const lastRunName = '.last-run.json';

const shape = z.object({
  sheets: z.record(
    z.string(),
    z.object({ source: z.string(), with: z.string(), showing: z.number(), uses: z.record(z.string(), z.string()) }),
  ),
  page: z.string().optional(),
});

/** What is known of a commission's last runs; nothing where that was never written, or is damaged. */
export function readLastRun(folder: string): LastRun {
  try {
    return shape.parse(JSON.parse(readFileSync(join(folder, lastRunName), 'utf8')));
  } catch {
    return { sheets: {} };
  }
}

/** @throws ShopError  when the disk refuses */
export function writeLastRun(folder: string, run: LastRun): void {
  replaceFile(join(folder, lastRunName), `${JSON.stringify(run, null, 1)}\n`);
}

/** A digest of what a sheet's maker writes in it: its cells, not what they showed. */
export function sourceDigest(notebook: Notebook): string {
  return sha256(JSON.stringify(notebook.cells.map(({ cell_type, source }) => [cell_type, source]))).slice(0, 16);
}

/** Cells of a notebook that show something. */
export function showing(notebook: Notebook): number {
  return notebook.cells.filter(({ outputs }) => outputs && outputs.length > 0).length;
}

// Through these a sheet reads what nobody notes: other commissions, and whatever a module that is not ours may read.
const elsewhere = /\b(?:shopBook|searchCommissions|checkCommission|openLesson)\b|\bopenCommission\s*\(\s*[^\s)]/;
const foreign = /\b(?:import\s*(?:[\w\s{},*$]*\bfrom\s*|\(\s*)?|require\s*\(\s*)(['"`])(?!kernel-helpers\1)/;

/** Whether a sheet may look at things that are not noted: such a one always runs. */
export function looksElsewhere(notebook: Notebook): boolean {
  return notebook.cells.some(
    ({ cell_type, source }) => cell_type === 'code' && (elsewhere.test(source) || foreign.test(source)),
  );
}

/**
 * Whether a sheet can be left alone: it is as it was when it last ran to its end, and so is all that it looked at.
 *
 * @param now  what sheets run with, and a look at one thing as it is
 */
export function isUnchanged(
  notebook: Notebook,
  before: SheetRun | undefined,
  now: { with: string; lookAt: (thing: string) => string },
): boolean {
  return (
    before !== undefined &&
    before.with === now.with &&
    before.source === sourceDigest(notebook) &&
    showing(notebook) >= before.showing &&
    !looksElsewhere(notebook) &&
    Object.entries(before.uses).every(([thing, digest]) => now.lookAt(thing) === digest)
  );
}
