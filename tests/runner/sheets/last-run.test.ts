import { readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import {
  isUnchanged,
  lastRunName,
  looksElsewhere,
  readLastRun,
  showing,
  sourceDigest,
  writeLastRun,
} from '../../../kernel-helpers/src/runner/sheets/last-run.js';
import type { Notebook } from '../../../kernel-helpers/src/runner/sheets/notebook.js';
import { notebook, testFolder } from '../setting.js';

const open = "import { openCommission } from 'kernel-helpers';\nconst job = openCommission();";
const sheet = shown(notebook('const parameters = { proud: 0 };', open));
const things: Record<string, string> = { 'decision brief': 'b1', 'file room.csv': 'r1' };
const now = { with: 'build 1', lookAt: (thing: string) => things[thing] ?? 'nothing' };
const before = { source: sourceDigest(sheet), with: 'build 1', showing: showing(sheet), uses: { ...things } };

function shown(of: Notebook): Notebook {
  const cells = of.cells.map((cell) => ({
    ...cell,
    outputs: [{ output_type: 'stream' as const, name: 'stdout' as const, text: '1\n' }],
  }));
  return { ...of, cells };
}

test('a sheet that is as it was, like all that it looked at, is left alone', () => {
  expect(isUnchanged(sheet, before, now)).toBe(true);
  expect(isUnchanged(sheet, undefined, now)).toBe(false);
});

test.each([
  ['a parameter was changed', shown(notebook('const parameters = { proud: 1 };', open)), now],
  ['its outputs were cleared', notebook('const parameters = { proud: 0 };', open), now],
  ['the helpers were built anew', sheet, { ...now, with: 'build 2' }],
  ['an earlier decision hands on something else', sheet, { ...now, lookAt: () => 'another' }],
])('it runs when %s', (_, movedSheet, movedNow) => {
  expect(isUnchanged(movedSheet, before, movedNow)).toBe(false);
});

test('opened and run in JupyterLab, which shows other things and counts otherwise, it is as it was', () => {
  const cells = sheet.cells.map((cell) => ({ ...cell, execution_count: 7, metadata: { trusted: true } }));
  expect(isUnchanged({ ...sheet, cells }, before, now)).toBe(true);
});

test.each([
  ["import fs from 'node:fs';", true],
  ["import { rate } from './my-rates';", true],
  ["const Plot: any = require('@observablehq/plot');", true],
  ["const { readFile } = await import('node:fs/promises');", true],
  ["import {\n  lidFit,\n  shopBook,\n} from 'kernel-helpers';\nshopBook('data/commissions');", true],
  ["const other = openCommission({ folder: '../2026-01-02-footstool' });", true],
  ["import {\n  lidFit,\n  show,\n} from 'kernel-helpers';", false],
  ["import { openCommission } from 'kernel-helpers';\nconst job = openCommission();", false],
  ['show(\'a board from "our" stack\');', false],
])('a sheet that can look at what nobody notes always runs: %s %s', (source, always) => {
  expect(looksElsewhere(notebook(source))).toBe(always);
});

test('what is known of the last runs is kept, and a damaged or missing file is as none', () => {
  const folder = testFolder();
  expect(readLastRun(folder)).toEqual({ sheets: {} });
  writeLastRun(folder, { sheets: { '01-brief.ipynb': before }, page: 'p' });
  expect(readLastRun(folder)).toEqual({ sheets: { '01-brief.ipynb': before }, page: 'p' });
  const file = join(folder, lastRunName);
  writeFileSync(file, readFileSync(file, 'utf8').slice(0, 40));
  expect(readLastRun(folder)).toEqual({ sheets: {} });
  writeFileSync(file, '{"sheets": {"01-brief.ipynb": {"source": 3}}}');
  expect(readLastRun(folder)).toEqual({ sheets: {} });
});
