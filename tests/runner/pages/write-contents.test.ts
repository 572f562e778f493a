import { existsSync, mkdirSync, mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { expect, onTestFinished, test } from 'vitest';
import { findSheet } from '../../../kernel-helpers/src/runner/find/find-sheet.js';
import { readGlossary } from '../../../kernel-helpers/src/runner/pages/glossary.js';
import { writeContents } from '../../../kernel-helpers/src/runner/pages/write-contents.js';
import { notebookText } from '../../../kernel-helpers/src/runner/sheets/notebook.js';
import { content, recordBytes } from '../../record/setting.js';
import { elementsOf } from '../../show/read-html.js';
import { notebook, testFolder } from '../setting.js';

const root = join(import.meta.dirname, '..', '..', '..');
const worksheets = join(root, 'worksheets');

test('the page of contents leads to the sheet to start with, to every lesson and to the glossary, each with what it asks', async () => {
  const commissions = mkdtempSync(join(tmpdir(), 'contents-'));
  onTestFinished(() => rmSync(commissions, { recursive: true }));
  const { path } = await writeContents(commissions, worksheets);
  const html = readFileSync(path, 'utf8');
  const items = elementsOf(html, 'main li').map(({ textContent }) => textContent);
  for (const item of items) expect(item).toMatch(/^[^:]+: .+[?.] npm run lab -- [\w-]+$/);
  const opened = items.map((item) =>
    findSheet(root, item.split('-- ')[1] ?? '', root)
      .split('/')
      .at(-1),
  );
  const lessons = readdirSync(join(worksheets, 'lessons')).filter((file) => file.endsWith('.ipynb'));
  expect(opened).toEqual(['start-here.ipynb', ...lessons.sort(), 'glossary.ipynb']);
});

test('a commission leads to its page, sheets and papers, and a page that was behind is written anew first', async () => {
  const commissions = join(testFolder(), 'data', 'commissions');
  const folder = join(commissions, '2026-03-12-blanket-box');
  mkdirSync(folder, { recursive: true });
  writeFileSync(join(folder, 'record.jsonl'), recordBytes([content({ what: 'answer' })]));
  writeFileSync(join(folder, '01-brief.ipynb'), notebookText(notebook('1')));
  writeFileSync(join(folder, 'quote.html'), '<!doctype html>');
  writeFileSync(join(folder, 'index.html'), '<!doctype html><html><body>of yesterday</body></html>');
  const { path, count, renewed } = await writeContents(commissions, worksheets);
  expect(count).toBe(1);
  expect(renewed).toEqual([{ folder }]);
  expect(readFileSync(join(folder, 'index.html'), 'utf8')).toContain('<section class="sheet" id="sheet-01-brief"');
  const links = elementsOf(readFileSync(path, 'utf8'), 'main a').map((link) => link.getAttribute('href') ?? '');
  expect(links).toEqual(
    ['index.html', 'index.html#sheet-01-brief', 'quote.html'].map((to) => `2026-03-12-blanket-box/${to}`),
  );
  for (const link of links) expect(existsSync(join(commissions, link.replace(/#.*/, ''))), link).toBe(true);
  expect((await writeContents(commissions, worksheets)).renewed).toEqual([]);
});

test('the glossary is read word by word', () => {
  expect(readGlossary().get('Kerf')).toBe('The width of the cut that a saw makes.');
});
