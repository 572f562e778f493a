import { mkdirSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import { findSheet } from '../../../kernel-helpers/src/runner/find/find-sheet.js';
import { testFolder } from '../setting.js';

function daybook(): string {
  const root = testFolder();
  for (const folder of ['worksheets/lessons', 'data/commissions/2026-11-27-recipe-box'])
    mkdirSync(join(root, folder), { recursive: true });
  for (const file of ['glossary', 'lessons/01-reading-a-tape', 'lessons/02-recipe-box'])
    writeFileSync(join(root, 'worksheets', `${file}.ipynb`), '{}');
  return root;
}

test('a lesson is opened by its name, with its number or without, and the glossary by its own', () => {
  const root = daybook();
  for (const given of ['01-reading-a-tape', 'reading-a-tape', 'Reading a tape', 'reading-a-tape.ipynb'])
    expect(findSheet(root, given, root), given).toBe('worksheets/lessons/01-reading-a-tape.ipynb');
  expect(findSheet(root, 'glossary', '/')).toBe('worksheets/glossary.ipynb');
});

test('a commission is opened by its folder, a sheet of it by its path', () => {
  const root = daybook();
  const commission = 'data/commissions/2026-11-27-recipe-box';
  expect(findSheet(root, '2026-11-27-recipe-box', root)).toBe(commission);
  writeFileSync(join(root, commission, '01-brief.ipynb'), '{}');
  expect(findSheet(root, `${commission}/01-brief.ipynb`, root)).toBe(`${commission}/01-brief.ipynb`);
  expect(findSheet(root, '01-brief.ipynb', join(root, commission))).toBe(`${commission}/01-brief.ipynb`);
  expect(findSheet(root, `${commission}/`, root)).toBe(commission);
});

test('a name of two is asked back, a wrong one gives the nearest', () => {
  const root = daybook();
  expect(() => findSheet(root, 'recipe-box', root)).toThrow(
    /^"recipe-box" is the name of 2; give the path of one: worksheets\/lessons\/02-recipe-box\.ipynb, data\/commissions/,
  );
  expect(() => findSheet(root, 'glosary', root)).toThrow(
    'there is no sheet and no commission "glosary"; nearest: glossary',
  );
});

test('nothing outside of the daybook is opened', () => {
  const root = daybook();
  writeFileSync(join(root, '..', 'stranger.ipynb'), '{}');
  expect(() => findSheet(join(root, '.'), '../stranger.ipynb', root)).toThrow(/^there is no sheet/);
});
