import { spawnSync } from 'node:child_process';
import { cpSync, mkdirSync, mkdtempSync, readdirSync, readFileSync, rmSync } from 'node:fs';
import { join } from 'node:path';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { checkCommission } from '../../kernel-helpers/src/record/check/check.js';
import { root } from './setting.js';

let daybook: string;

/** A daybook of one's own: template sheets and the built commands, no commission. */
beforeAll(() => {
  mkdirSync(join(root, 'tests', '.work'), { recursive: true });
  daybook = mkdtempSync(join(root, 'tests', '.work', 'own-'));
  for (const part of ['worksheets', 'kernel-helpers/dist', 'kernel-helpers/package.json'])
    cpSync(join(root, part), join(daybook, part), { recursive: true });
});
afterAll(() => rmSync(daybook, { recursive: true, force: true, maxRetries: 5 }));

const command = (...args: string[]) =>
  spawnSync(process.execPath, [join(daybook, 'kernel-helpers', 'dist', 'command.js'), ...args], {
    cwd: daybook,
    encoding: 'utf8',
  });
const folderOf = (title: string) => {
  const commissions = join(daybook, 'data', 'commissions');
  return join(commissions, readdirSync(commissions).find((name) => name.endsWith(title)) as string);
};
const eightWeeks = new Date(Date.now() + 56 * 86_400_000).toISOString().slice(0, 10);

test('a box begun with the facts of its brief is worked to its record with nothing else typed', () => {
  const facts = { client: 'Ann Example', inside: '13 1/4 x 8 x 5 in', joint: 'dovetail', wood: 'white oak' };
  const more = { personal: 'plain', home: 'Denver', promised: eightWeeks };
  const options = Object.entries({ ...facts, ...more }).flatMap(([name, value]) => [`--${name}`, value]);
  expect(command('new', 'Recipe box', ...options).stdout).toContain('Its brief is whole');
  const { status, stdout } = command('work', 'recipe-box', '--decide');
  expect(stdout).toContain('Recorded: 10 new decisions.');
  expect(status).toBe(0);
  const folder = folderOf('recipe-box');
  const { entries, faults, stale } = checkCommission(folder);
  expect([faults, stale]).toEqual([[], []]);
  expect(entries[0]?.results).toMatchObject({ client: 'Ann Example', species: 'oak-white', home: 'boulder' });
  expect(entries.find(({ what }) => what === 'surface')?.results).toMatchObject({ text: '', letters: 0 });
  const page = readFileSync(join(folder, 'index.html'), 'utf8');
  expect(page).not.toMatch(/invented|R\. Example|TEA 2027/);
  expect(readFileSync(join(folder, 'bench-list.html'), 'utf8')).not.toMatch(/V-bit|letters:/);
}, 240_000);

test('a brief that is not whole says which of its facts are open, and is not decided', () => {
  command('new', 'Open box', '--client', 'Ann Example', '--wood', 'cherry');
  const { status, stdout } = command('work', 'open-box', '--decide');
  expect(status).toBe(1);
  expect(stdout).toContain(
    'still to be filled in among its parameters: promised, insideLength, insideWidth, insideDepth, joint, personal, home',
  );
  expect(() => checkCommission(folderOf('open-box'))).toThrow('There is no record');
}, 60_000);
