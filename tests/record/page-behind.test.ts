import { existsSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { beforeEach, expect, it } from 'vitest';
import type { Head } from '../../kernel-helpers/src/record/chain/entry.js';
import { entryOfPage, markingPage, pageMark } from '../../kernel-helpers/src/record/page-behind.js';
import { folderStore } from '../../kernel-helpers/src/record/store/folder-store.js';
import { commissionPage } from '../../kernel-helpers/src/show/page/commission-page.js';
import { elementsOf } from '../show/read-html.js';
import { brief, commissionFolder, must, open, sizing } from './setting.js';

let folder: string;
const page = () => readFileSync(join(folder, 'index.html'), 'utf8');
const marks = () => elementsOf(page(), '[data-page-behind]').map(({ textContent }) => textContent);

/** A sheet in JupyterLab. */
function sheet() {
  const job = open(folder);
  return Object.assign(job, { decide: markingPage(job, folderStore(folder)) });
}

/** The page as `work` writes it. */
function writePage() {
  const entries = open(folder).entries();
  const head: Head | undefined = open(folder).head();
  const html = commissionPage({ title: 'Blanket box', sheets: [], record: { entries, head, problems: [] } });
  writeFileSync(join(folder, 'index.html'), html);
}

beforeEach(() => {
  folder = commissionFolder();
  sheet().decide('brief', brief);
});

it('a commission without a page gets none by deciding', () => {
  expect(existsSync(join(folder, 'index.html'))).toBe(false);
});

it('a decision puts at the head of the page what it is behind by, and the next one adds itself', () => {
  writePage();
  expect(entryOfPage(page())).toEqual(must(open(folder).head()));
  const job = sheet();
  job.need('brief');
  job.decide('sizing', sizing);
  expect(marks()).toEqual([
    'This page is behind. It shows what was decided up to entry 1. Since then: sizing, entry 2. The next npm run work, pack or contents writes it anew.',
  ]);
  sheet().decide('brief', { ...brief, results: { inside: 12, wood: 'cherry-black' } });
  expect(marks()).toHaveLength(1);
  expect(marks()[0]).toContain('Since then: sizing, entry 2; brief, entry 3.');
  writePage();
  expect(marks()).toEqual([]);
});

it('a decision that changes nothing leaves the page as it is', () => {
  writePage();
  const before = page();
  sheet().decide('brief', brief);
  expect(page()).toBe(before);
});

it('a page from before such marks shows nothing that counts', () => {
  writeFileSync(join(folder, 'index.html'), '<!doctype html><html><body class="old"><h1>Old</h1></body></html>');
  sheet().decide('brief', { ...brief, results: { inside: 12, wood: 'cherry-black' } });
  expect(marks()[0]).toMatch(
    /^This page is behind. It shows nothing that was decided. Since then: brief, entry 1; brief, entry 2\./,
  );
});

it('what is written in a sheet is not taken for the mark of the page', () => {
  const false_ = `<header ${pageMark({ seq: 99, hash: 'a'.repeat(64) })}>`;
  const notebook = {
    cells: [
      { cell_type: 'markdown', source: false_ },
      { cell_type: 'code', source: false_ },
    ],
  };
  const record = { entries: [], head: { seq: 3, hash: 'b'.repeat(64) }, problems: [] };
  const html = commissionPage({ title: false_, sheets: [{ name: '01', notebook }], record });
  expect(entryOfPage(html)?.seq).toBe(3);
  expect(
    entryOfPage(
      commissionPage({ title: 'x', sheets: [{ name: '01', notebook }], record: { ...record, head: undefined } }),
    ),
  ).toBeUndefined();
});
