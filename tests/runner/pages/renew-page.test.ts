import { readFileSync, statSync, utimesSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { beforeEach, expect, it } from 'vitest';
import { readRecord } from '../../../kernel-helpers/src/record/chain/record-file.js';
import { isPageBehind } from '../../../kernel-helpers/src/runner/pages/page-ground.js';
import { renewedText, renewPage } from '../../../kernel-helpers/src/runner/pages/renew-page.js';
import { writePage } from '../../../kernel-helpers/src/runner/pages/write-page.js';
import { notebookText } from '../../../kernel-helpers/src/runner/sheets/notebook.js';
import { brief, commissionFolder, open, sizing } from '../../record/setting.js';
import { notebook } from '../setting.js';

let folder: string;
const page = () => readFileSync(join(folder, 'index.html'), 'utf8');

/** A sheet as JupyterLab saves it: with what it showed. */
function saveSheet(file: string, shown: string) {
  const { cells, ...sheet } = notebook("console.log('shown')");
  const outputs = [{ output_type: 'stream' as const, name: 'stdout' as const, text: shown }];
  writeFileSync(join(folder, file), notebookText({ ...sheet, cells: cells.map((cell) => ({ ...cell, outputs })) }));
}

beforeEach(async () => {
  folder = commissionFolder();
  saveSheet('01-brief.ipynb', '10 in inside');
  open(folder).decide('brief', brief);
  await writePage(folder, [{ file: '01-brief.ipynb', notebook: notebook("console.log('shown')") }]);
});

it('a page is not behind when it was just written, and stays as it is', async () => {
  const before = page();
  expect(isPageBehind(folder)).toBe(false);
  expect(isPageBehind(folder, { quickly: true })).toBe(false);
  expect(await renewPage(folder)).toBeUndefined();
  expect(page()).toBe(before);
});

it('after a decision it is behind, and is written anew from the sheets as they were saved', async () => {
  saveSheet('01-brief.ipynb', '12 in inside');
  open(folder).decide('brief', { ...brief, results: { inside: 12, wood: 'walnut-black' } });
  expect(isPageBehind(folder, { quickly: true })).toBe(true);
  expect(isPageBehind(folder, { head: readRecord(folder).head })).toBe(true);
  const renewed = await renewPage(folder);
  expect(renewed).toEqual({ folder });
  expect(renewedText({ folder })).toMatch(/^The page of 2026-03-12-blanket-box was behind; it was written anew/);
  expect(page()).toContain('12 in inside');
  expect(isPageBehind(folder)).toBe(false);
});

it('a sheet that was only saved, and a draft, put it behind too', async () => {
  saveSheet('01-brief.ipynb', '11 in inside');
  expect(isPageBehind(folder)).toBe(true);
  await renewPage(folder);
  expect(isPageBehind(folder)).toBe(false);
  open(folder).decide('brief', { ...brief, inputs: { decided: false }, results: { inside: 9, wood: 'walnut-black' } });
  expect(isPageBehind(folder, { quickly: true })).toBe(true);
  await renewPage(folder);
  expect(page()).toContain('Draft: brief. Worked out and not decided');
});

it('a look at the times alone passes over what is older than the page, and a copy with new times is not behind', () => {
  const { mtimeMs } = statSync(join(folder, 'index.html'));
  const at = (file: string, milliseconds: number) =>
    utimesSync(join(folder, file), milliseconds / 1000, milliseconds / 1000);
  at('01-brief.ipynb', mtimeMs + 5000);
  expect(isPageBehind(folder, { quickly: true })).toBe(false);
  saveSheet('01-brief.ipynb', 'another');
  at('01-brief.ipynb', mtimeMs - 5000);
  expect(isPageBehind(folder, { quickly: true })).toBe(false);
  expect(isPageBehind(folder)).toBe(true);
});

it('where there is no page none is made', async () => {
  const bare = commissionFolder();
  open(bare).decide('brief', brief);
  expect(isPageBehind(bare)).toBe(false);
  expect(await renewPage(bare)).toBeUndefined();
});

it('a sheet that cannot be read is named, and the page stays as it was', async () => {
  const job = open(folder);
  job.need('brief');
  job.decide('sizing', sizing);
  writeFileSync(join(folder, '02-sizing.ipynb'), '{ half a sheet');
  const before = page();
  const renewed = await renewPage(folder);
  expect(renewed?.problem).toContain('02-sizing.ipynb');
  expect(renewedText({ folder, problem: renewed?.problem })).toMatch(/is behind, and could not be written anew: /);
  expect(page()).toBe(before);
});
