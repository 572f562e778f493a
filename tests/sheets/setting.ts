import { type SpawnSyncReturns, spawnSync } from 'node:child_process';
import { createHash } from 'node:crypto';
import { cpSync, existsSync, mkdirSync, mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { basename, dirname, join } from 'node:path';
import { inject } from 'vitest';
import { newCommission } from '../../kernel-helpers/src/record/new-commission.js';

export const root = join(import.meta.dirname, '..', '..');
const work = join(root, 'tests', '.work');

/** A new commission from the template sheets, in a daybook of its own under the repository's root; `remove` takes it away. */
export function templateCommission(): { folder: string; remove: () => void } {
  mkdirSync(work, { recursive: true });
  const daybook = mkdtempSync(join(work, 'daybook-'));
  const templates = join(root, 'worksheets', 'commission');
  const { folder } = newCommission({ root: daybook, title: 'Test chest', date: '2026-01-02', templates });
  return { folder, remove: () => rmSync(daybook, { recursive: true, force: true, maxRetries: 5 }) };
}

/** The template sheets worked once for all files of tests, as a copy of one's own in a daybook of its own. */
export function workedCommission(): { folder: string; remove: () => void } {
  const shared = inject('sharedDaybook');
  const commissions = join(shared, 'data', 'commissions');
  if (!existsSync(commissions)) {
    const { folder, remove } = templateCommission();
    const { status, stdout, stderr } = command('work', folder);
    if (status !== 0 || stderr) throw new Error(`The template sheets could not be worked:\n${stdout}${stderr}`);
    cpSync(join(folder, '..', '..', '..'), shared, { recursive: true });
    remove();
  }
  const daybook = mkdtempSync(join(work, 'daybook-'));
  cpSync(shared, daybook, { recursive: true });
  const [name] = readdirSync(commissions).filter((each) => each.endsWith('test-chest'));
  const folder = join(daybook, 'data', 'commissions', name as string);
  return { folder, remove: () => rmSync(daybook, { recursive: true, force: true, maxRetries: 5 }) };
}

/** What the template sheets decide, in the order in which they are worked. */
export const decided = ['brief', 'sizing', 'air', 'lid', 'joint', 'grooves', 'stock', 'surface', 'quote', 'days'];

/** A copy of a commission beside it. */
export function copyOf(folder: string, name: string): string {
  const copy = join(dirname(folder), `${basename(folder)}-${name}`);
  cpSync(folder, copy, { recursive: true });
  return copy;
}

/** Puts another text into the parameters of a sheet. */
export function changeParameter(folder: string, file: string, from: string, to: string): void {
  const path = join(folder, file);
  const sheet = JSON.parse(readFileSync(path, 'utf8'));
  const cell = sheet.cells.find((each: { metadata: { tags?: string[] } }) =>
    each.metadata.tags?.includes('parameters'),
  );
  const source = [cell.source].flat().join('');
  if (!source.includes(from)) throw new Error(`${file} has no parameter ${from}`);
  cell.source = source.replace(from, to);
  writeFileSync(path, JSON.stringify(sheet));
}

/** Runs one command of the daybook to its end. */
export function command(...args: string[]): SpawnSyncReturns<string> {
  return spawnSync(process.execPath, [join(root, 'kernel-helpers', 'dist', 'command.js'), ...args], {
    cwd: root,
    encoding: 'utf8',
  });
}

/** The digest of every file in a folder, by name. */
export function digests(folder: string): Record<string, string> {
  const digest = (file: string) =>
    createHash('sha256')
      .update(readFileSync(join(folder, file)))
      .digest('hex');
  return Object.fromEntries(
    readdirSync(folder)
      .sort()
      .map((file) => [file, digest(file)]),
  );
}
