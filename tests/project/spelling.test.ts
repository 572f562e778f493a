import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import dictionary from 'dictionary-en-gb';
import nspell from 'nspell';
import { expect, test } from 'vitest';
import { readNotebook } from '../../kernel-helpers/src/runner/sheets/notebook.js';
import { notebooks, proseOf, root, withoutCode } from './markdown-of.js';

const spelling = nspell(dictionary);
const own = readFileSync(join(import.meta.dirname, 'words.txt'), 'utf8')
  .split('\n')
  .filter(Boolean);
for (const word of own) spelling.add(word);

/** Words of prose: without link targets, HTML, file names, numbers with units. */
function wordsOf(text: string): string[] {
  const plain = withoutCode(text)
    .replace(/\]\([^)]*\)/g, ']')
    .replace(/https?:\S+|<[^>]+>|\$\{[^}]*\}|\S*[/\\_@]\S*|\S+\.(?:md|ts|ipynb|jsonl|json|html|dxf|svg)\b/g, ' ');
  return [...plain.matchAll(/(?<![\p{L}\d])\p{L}[\p{L}'\u2019]*/gu)].map((match) =>
    match[0].replaceAll('\u2019', "'").replace(/'$/, ''),
  );
}

/** What an apprentice is told when a figure is wrong, and what stands beside a parameter. */
function wordsInCode(file: string): string[] {
  if (!file.endsWith('.ipynb')) return [];
  const code = readNotebook(join(root, file)).cells.filter(({ cell_type }) => cell_type === 'code');
  const told = code.flatMap(({ source }) => [
    ...[...source.matchAll(/step: '([^'\n]*)'|(?:alt|caption): '([^'\n]*)'/g)].map(
      (match) => match[1] ?? match[2] ?? '',
    ),
    ...[...source.matchAll(/ \/\/ (.*)$/gm)].map((match) => (match[1] ?? '').replace(/\{.*\}/, ' ')),
  ]);
  return told.flatMap(wordsOf);
}

const misspelt = (file: string) => [
  ...new Set([...wordsOf(proseOf(file)), ...wordsInCode(file)].filter((word) => !spelling.correct(word))),
];

test.each([...notebooks, 'README.md', 'DEVELOPERS.md'])('%s is spelt right', (file) => {
  expect(misspelt(file)).toEqual([]);
});

test('a word spelt wrong is found', () => {
  expect(spelling.correct('planner')).toBe(true);
  expect(
    wordsOf('The **dovetial** is 5/8 in [wide](glossary.ipynb#Tail).').filter((word) => !spelling.correct(word)),
  ).toEqual(['dovetial']);
});

test('the list of our own words is sorted and holds none that the dictionary knows', () => {
  const plain = nspell(dictionary);
  expect(own).toEqual([...new Set(own)].sort());
  expect(own.filter((word) => plain.correct(word))).toEqual([]);
});
