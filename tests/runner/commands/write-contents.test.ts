import { existsSync, mkdtempSync, readdirSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { expect, onTestFinished, test } from 'vitest';
import { readGlossary } from '../../../kernel-helpers/src/runner/commands/glossary.js';
import { writeContents } from '../../../kernel-helpers/src/runner/commands/write-contents.js';
import { elementsOf } from '../../show/read-html.js';

const worksheets = join(import.meta.dirname, '..', '..', '..', 'worksheets');

test('the page of contents leads to the sheet to start with, to every lesson and to the glossary, each with what it asks', async () => {
  const commissions = mkdtempSync(join(tmpdir(), 'contents-'));
  onTestFinished(() => rmSync(commissions, { recursive: true }));
  const { path } = await writeContents(commissions, worksheets);
  const html = readFileSync(path, 'utf8');
  const addresses = elementsOf(html, 'main li a').map((link) => decodeURI(link.getAttribute('href') ?? ''));
  for (const address of addresses) expect(existsSync(join(commissions, address)), address).toBe(true);
  const files = addresses.map((address) => address.split('/').at(-1));
  const lessons = readdirSync(join(worksheets, 'lessons')).filter((file) => file.endsWith('.ipynb'));
  expect(files).toEqual(['start-here.ipynb', ...lessons.sort(), 'glossary.ipynb']);
  for (const { textContent } of elementsOf(html, 'main li')) expect(textContent).toMatch(/^[^:]+: .+[?.]$/);
});

test('the glossary is read word by word', () => {
  expect(readGlossary().get('Kerf')).toBe('The width of the cut that a saw makes.');
});
