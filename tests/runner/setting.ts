import { mkdirSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { onTestFinished } from 'vitest';
import type { Cell, Notebook } from '../../kernel-helpers/src/runner/sheets/notebook.js';
import { notebookText } from '../../kernel-helpers/src/runner/sheets/notebook.js';

const work = join(import.meta.dirname, '..', '.work');

/** A folder under the repository's root, so that a sheet in it finds kernel-helpers; removed after the test. */
export function testFolder(): string {
  mkdirSync(work, { recursive: true });
  const folder = mkdtempSync(join(work, 'test-'));
  onTestFinished(() => rmSync(folder, { recursive: true, force: true, maxRetries: 5 }));
  return folder;
}

/** A notebook of these code cells. */
export function notebook(...sources: string[]): Notebook {
  const cells = sources.map(
    (source, i): Cell => ({
      cell_type: 'code',
      id: `cell-${i}`,
      metadata: {},
      source,
      outputs: [],
      execution_count: null,
    }),
  );
  return { cells, metadata: {}, nbformat: 4, nbformat_minor: 5 };
}

/** A commission of these sheets, each given by its code cells. */
export function commission(sheets: Record<string, string[]>): string {
  const folder = join(testFolder(), 'commissions', '2026-01-02-footstool');
  mkdirSync(folder, { recursive: true });
  for (const [file, cells] of Object.entries(sheets)) {
    writeFileSync(join(folder, file), notebookText(notebook(...cells)));
  }
  return folder;
}

/** The pid that a sheet wrote to a file in its folder; undefined until it has. */
export function pidIn(folder: string): number | undefined {
  try {
    return Number(readFileSync(join(folder, 'pid'), 'utf8')) || undefined;
  } catch {
    return undefined;
  }
}

/** A cell that writes its kernel's pid to that file. */
export const writePid = `import fs from 'node:fs';
import process from 'node:process';
fs.writeFileSync('pid', String(process.pid));
`;

/** Whether a process runs; one that has ended and waits to be collected by its parent does not. */
export function runs(pid: number): boolean {
  try {
    process.kill(pid, 0);
  } catch {
    return false;
  }
  try {
    return !/^State:\s+Z/m.test(readFileSync(`/proc/${pid}/status`, 'utf8'));
  } catch {
    return process.platform !== 'linux';
  }
}
