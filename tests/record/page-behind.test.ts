import { existsSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { beforeEach, expect, it } from 'vitest';
import { markingPage, markPage, pageMark, pageShows } from '../../kernel-helpers/src/record/page-behind.js';
import { folderStore } from '../../kernel-helpers/src/record/store/folder-store.js';
import { withdraw } from '../../kernel-helpers/src/record/undo/undo.js';
import { commissionPage } from '../../kernel-helpers/src/show/page/commission-page.js';
import { elementsOf } from '../show/read-html.js';
import { brief, commissionFolder, must, open, sizing, versions } from './setting.js';

let folder: string;
const page = () => readFileSync(join(folder, 'index.html'), 'utf8');
const marks = () => elementsOf(page(), '[data-page-behind]').map(({ textContent }) => textContent);

const tried = (decision: typeof brief) => ({ ...decision, inputs: { ...decision.inputs, decided: false } });
const wider = { ...brief, results: { inside: 12, wood: 'cherry-black' } };

/** A sheet in JupyterLab. */
function sheet() {
  const job = open(folder);
  return Object.assign(job, { decide: markingPage(job, folderStore(folder)) });
}

/** The page as `work` writes it. */
function writePage() {
  const job = open(folder);
  const record = { entries: job.entries(), head: job.head(), drafts: job.drafts(), problems: [] };
  writeFileSync(join(folder, 'index.html'), commissionPage({ title: 'Blanket box', sheets: [], record }));
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
  const job = sheet();
  job.need('brief');
  job.decide('sizing', sizing);
  expect(marks()).toEqual([
    'This page is behind. It shows what was decided up to entry 1. Since then: sizing, entry 2. The next npm run work, pack or contents writes it anew.',
  ]);
  sheet().decide('brief', wider);
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

it('a decision that was withdrawn is named as that', () => {
  sheet().decide('brief', wider);
  writePage();
  const job = open(folder);
  const store = folderStore(folder);
  const signature = () => ({ at: '2026-03-13T08:00:00Z', who: 'maker' });
  withdraw({ store, signature, versions }, must(job.entries().at(-1)));
  markPage(store, { entries: store.entries(), drafts: [] });
  expect(marks()[0]).toContain('It shows what was decided up to entry 2. Since then: brief, entry 2, withdrawn.');
});

it('a draft is named too, for as long as it is one', () => {
  writePage();
  const before = page();
  sheet().decide('brief', tried(wider));
  expect(marks()).toEqual([
    'This page is behind. It shows what was decided up to entry 1. Drafts, not decided: brief. The next npm run work, pack or contents writes it anew.',
  ]);
  sheet().decide('brief', brief);
  expect(page()).toBe(before);
});

it('a page that shows the draft says DRAFT across it, and is not behind', () => {
  sheet().decide('brief', tried(wider));
  writePage();
  expect(elementsOf(page(), 'aside[data-draft]').map(({ textContent }) => textContent)).toEqual([
    'Draft: brief. Worked out and not decided: promise nothing from this page, and do not work from it.',
  ]);
  sheet().decide('brief', tried(wider));
  expect(marks()).toEqual([]);
  sheet().decide('brief', brief);
  writePage();
  expect(page()).not.toContain('data-draft ');
});

it('a page from before such marks shows nothing that counts', () => {
  writeFileSync(join(folder, 'index.html'), '<!doctype html><html><body class="old"><h1>Old</h1></body></html>');
  sheet().decide('brief', wider);
  expect(marks()[0]).toMatch(
    /^This page is behind. It shows what was decided up to entry 0. Since then: brief, entry 1; brief, entry 2\./,
  );
});

it('what is written in a sheet is not taken for the mark of the page', () => {
  const written = `<header ${pageMark({ seq: 99, hash: 'a'.repeat(64) }, [])}>`;
  const notebook = { cells: ['markdown', 'code'].map((cell_type) => ({ cell_type, source: written })) };
  const head = { seq: 3, hash: 'b'.repeat(64) };
  const html = commissionPage({
    title: written,
    sheets: [{ name: '01', notebook }],
    record: { entries: [], head, problems: [] },
  });
  expect(pageShows(html, head, [])).toEqual({ seq: 3, all: true });
  expect(pageShows(html, { ...head, seq: 4 }, [])).toEqual({ seq: 3, all: false });
});
