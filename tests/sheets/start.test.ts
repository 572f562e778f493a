import { spawnSync } from 'node:child_process';
import { cpSync, existsSync, mkdirSync, mkdtempSync, readdirSync, readFileSync, rmSync } from 'node:fs';
import { join } from 'node:path';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { checkCommission } from '../../kernel-helpers/src/record/check/check.js';
import { root } from './setting.js';

let daybook: string;

/** A daybook as a newcomer has it: template sheets and the built commands, no commission. */
beforeAll(() => {
  mkdirSync(join(root, 'tests', '.work'), { recursive: true });
  daybook = mkdtempSync(join(root, 'tests', '.work', 'newcomer-'));
  for (const part of ['worksheets', 'kernel-helpers/dist', 'kernel-helpers/package.json']) {
    cpSync(join(root, part), join(daybook, part), { recursive: true });
  }
});
afterAll(() => rmSync(daybook, { recursive: true, force: true, maxRetries: 5 }));

const command = (...args: string[]) =>
  spawnSync(process.execPath, [join(daybook, 'kernel-helpers', 'dist', 'command.js'), ...args], {
    cwd: daybook,
    encoding: 'utf8',
  });
const commissions = (...of: string[]) =>
  readdirSync(join(daybook, ...of, 'data', 'commissions'), { withFileTypes: true })
    .filter((entry) => entry.isDirectory())
    .map(({ name }) => name);

test('npm start works a first piece before a newcomer, decision after decision, and ends with the page to open', () => {
  const { status, stdout, stderr } = command('start');
  expect(stderr).toBe('');
  expect(status).toBe(0);
  expect(commissions('first-piece')).toEqual([expect.stringMatching(/^\d{4}-\d\d-\d\d-tea-chest$/)]);
  const folder = join(daybook, 'first-piece', 'data', 'commissions', commissions('first-piece')[0] as string);
  const recorded = [...stdout.matchAll(/\(recorded, entry (\d+)\)$/gm)].map(([, entry]) => Number(entry));
  expect(recorded).toEqual([1, 2, 3, 4, 5, 6, 7, 8, 9, 10]);
  expect(stdout.trimEnd().split('\n').at(-1)).toBe(`The page to open or print: ${join(folder, 'index.html')}`);
  expect(existsSync(join(folder, 'index.html'))).toBe(true);
  expect(checkCommission(folder).entries[0]).toMatchObject({ what: 'brief', who: 'maker' });
});

test('the shop itself has no commission by that, and its stock nothing of it', () => {
  expect(existsSync(join(daybook, 'data'))).toBe(false);
  expect(existsSync(join(daybook, 'first-piece', 'data', 'stock.json'))).toBe(false);
});

test('npm start again leaves each sheet alone', () => {
  const before = commissions('first-piece');
  const { status, stdout } = command('start');
  expect(status).toBe(0);
  expect(stdout.match(/unchanged$/gm)).toHaveLength(11);
  expect(stdout).toContain('Nothing has moved since these sheets ran last.');
  expect(commissions('first-piece')).toEqual(before);
});

test('a new commission has the template sheets with a brief of its own, named by day and title, and told what is open', () => {
  const { status, stdout } = command('new', 'Blanket', 'box for A. Sample', '--wood', 'cherry');
  expect(status).toBe(0);
  const name = commissions().find((each) => each.endsWith('-blanket-box-for-a-sample')) as string;
  const folder = join(daybook, 'data', 'commissions', name);
  const sheets = (of: string) => readdirSync(of).filter((file) => file.endsWith('.ipynb'));
  expect(sheets(folder)).toEqual(sheets(join(daybook, 'worksheets', 'commission')));
  const brief = readFileSync(join(folder, '01-brief.ipynb'), 'utf8');
  expect(brief).toContain("species: 'cherry',");
  expect(brief).toContain("client: '',");
  expect(stdout).toContain(folder);
  expect(stdout).toMatch(/Open 01-brief\.ipynb.* still open: who it is for; the day it is promised for;/);
  expect(stdout).toContain('npm run work -- "Blanket box for A. Sample"');

  const again = command('new', 'Blanket box for A. Sample');
  expect(again.status).toBe(1);
  expect(again.stderr).toMatch(/is there already and stays as it is/);
});
