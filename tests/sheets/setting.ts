import { type SpawnSyncReturns, spawnSync } from 'node:child_process';
import { createHash } from 'node:crypto';
import { cpSync, existsSync, mkdirSync, mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { basename, dirname, join, relative } from 'node:path';
import { inject } from 'vitest';
import { withLock } from '../../kernel-helpers/src/disk/lock.js';
import { newCommission } from '../../kernel-helpers/src/record/new-commission.js';

export const root = join(import.meta.dirname, '..', '..');
const work = join(root, 'tests', '.work');

/** How a command ended, and what it said. */
type Worked = Pick<SpawnSyncReturns<string>, 'status' | 'stdout' | 'stderr'>;

/** A new commission from the template sheets, in a daybook of its own under the repository's root; `remove` takes it away. */
export function templateCommission(): { folder: string; remove: () => void } {
  mkdirSync(work, { recursive: true });
  const daybook = mkdtempSync(join(work, 'daybook-'));
  return { folder: newTestChest(daybook), remove: () => removeAll(daybook) };
}

function newTestChest(daybook: string): string {
  const templates = join(root, 'worksheets', 'commission');
  return newCommission({ root: daybook, title: 'Test chest', date: '2026-01-02', templates }).folder;
}

function removeAll(daybook: string): void {
  rmSync(daybook, { recursive: true, force: true, maxRetries: 5 });
}

/** The template sheets worked once, by "the maker", for all files of tests; what the command said. */
function workOnce(shared: string): { original: string; worked: Worked } {
  const said = join(shared, 'work.json');
  if (existsSync(said)) return JSON.parse(readFileSync(said, 'utf8'));
  const original = newTestChest(shared);
  const { status, stdout, stderr } = command('work', original, '--decide', '--who', 'the maker');
  const once = { original, worked: { status, stdout, stderr } };
  writeFileSync(said, JSON.stringify(once));
  return once;
}

/** A copy of that commission in a daybook of its own. */
export function workedCommission(): { original: string; worked: Worked; folder: string; remove: () => void } {
  const shared = inject('sharedDaybook');
  // Whoever asks first works it; others wait for that.
  const { original, worked } = withLock(join(shared, 'work.lock'), () => workOnce(shared), 240_000);
  if (worked.status !== 0 || worked.stderr) {
    throw new Error(`The template sheets could not be worked:\n${worked.stdout}${worked.stderr}`);
  }
  const daybook = mkdtempSync(join(work, 'daybook-'));
  cpSync(join(shared, 'data'), join(daybook, 'data'), { recursive: true });
  return { original, worked, folder: join(daybook, relative(shared, original)), remove: () => removeAll(daybook) };
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
