import { spawnSync } from 'node:child_process';
import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import type { TestProject } from 'vitest/node';
import { newCommission } from '../../kernel-helpers/src/record/new-commission.js';
import { notebookText, readNotebook } from '../../kernel-helpers/src/runner/sheets/notebook.js';

/** A client's name as someone up to no good would write it. */
export const hostileClient = '<script>document.title = "taken"</script>';

/** Before the browser tests: a commission worked by the real command, for a client of that name, apart from the maker's own. */
export default function workedCommission(project: TestProject): () => void {
  const { root } = project.config;
  const reports = join(root, 'tests', 'reports');
  mkdirSync(reports, { recursive: true });
  const daybook = mkdtempSync(join(reports, 'daybook-'));
  const templates = join(root, 'worksheets', 'commission');
  const { folder } = newCommission({ root: daybook, title: 'Browser test', date: '2026-03-02', templates });
  const brief = join(folder, '01-brief.ipynb');
  writeFileSync(brief, withHostileClient(brief));
  const command = join(root, 'kernel-helpers', 'dist', 'command.js');
  const work = spawnSync(process.execPath, [command, 'work', folder, '--decide'], { cwd: root, encoding: 'utf8' });
  if (work.status !== 0) throw new Error(`The commission could not be worked:\n${work.stdout}${work.stderr}`);
  project.provide('commission', folder);
  return () => rmSync(daybook, { recursive: true, force: true });
}

function withHostileClient(path: string): string {
  const sheet = readNotebook(path);
  for (const cell of sheet.cells.filter((each) => each.metadata.tags?.includes('parameters'))) {
    cell.source = cell.source.replace(/client: '[^']*'/, () => `client: '${hostileClient}'`);
  }
  return notebookText(sheet);
}

declare module 'vitest' {
  interface ProvidedContext {
    /** Folder of the commission that was worked for the browser tests. */
    commission: string;
  }
}
