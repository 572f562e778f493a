import { mkdirSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import { findPacked } from '../../../kernel-helpers/src/runner/find/find-packed.js';
import { testFolder } from '../setting.js';

function folderWith(...files: string[]): string {
  const folder = testFolder();
  for (const file of files) writeFileSync(join(folder, file), '');
  return folder;
}

test('what pack made is found by its name, with the date or without, by its title, or by a path', () => {
  const folder = folderWith('2026-11-27-recipe-box.zip', '2026-11-27-tea-chest.zip', 'photos.zip');
  const packed = join(folder, '2026-11-27-recipe-box.zip');
  for (const given of [
    'recipe-box.zip',
    'recipe-box',
    'Recipe box',
    '2026-11-27-recipe-box',
    '2026-11-27-recipe-box.zip',
    packed,
  ])
    expect(findPacked(given, folder), given).toBe(packed);
  expect(findPacked(join(folder, 'recipe-box.zip'), '/elsewhere')).toBe(packed);
});

test('a file of just that name comes first', () => {
  const folder = folderWith('2026-11-27-recipe-box.zip', 'recipe-box.zip');
  expect(findPacked('recipe-box.zip', folder)).toBe(join(folder, 'recipe-box.zip'));
});

test('a name of two is asked back', () => {
  const folder = folderWith('2026-11-27-recipe-box.zip', '2026-12-01-recipe-box.zip');
  expect(() => findPacked('recipe-box.zip', folder)).toThrow(
    '"recipe-box.zip" is the name of 2 files; give it with its date: 2026-11-27-recipe-box.zip, 2026-12-01-recipe-box.zip',
  );
});

test('where there is none, what was given is what is missing', () => {
  const folder = folderWith('2026-11-27-tea-chest.zip');
  mkdirSync(join(folder, 'recipe-box'));
  expect(findPacked('recipe-box', folder)).toBe(join(folder, 'recipe-box'));
  expect(findPacked('no-folder/recipe-box.zip', folder)).toBe(join(folder, 'no-folder', 'recipe-box.zip'));
});
