import { mkdirSync, readdirSync, readFileSync, statSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import { replaceFile } from '../../kernel-helpers/src/disk/replace-file.js';
import { testFolder } from '../runner/setting.js';

test('a file is written whole, and nothing else is left beside it', () => {
  const folder = testFolder();
  const path = join(folder, 'index.html');
  replaceFile(path, 'first');
  replaceFile(path, 'second ½');
  expect(readFileSync(path, 'utf8')).toBe('second ½');
  expect(readdirSync(folder)).toEqual(['index.html']);
});

test('a file that says the same already is not touched', () => {
  const path = join(testFolder(), 'index.html');
  writeFileSync(path, 'same');
  const before = statSync(path);
  replaceFile(path, 'same');
  expect(statSync(path).ino).toBe(before.ino);
  expect(statSync(path).mtimeMs).toBe(before.mtimeMs);
});

test('where it cannot be written, one message says so and nothing is left behind', () => {
  const folder = testFolder();
  mkdirSync(join(folder, 'index.html', 'in the way'), { recursive: true });
  expect(() => replaceFile(join(folder, 'index.html'), 'text')).toThrow(/index\.html cannot be written/);
  expect(readdirSync(folder)).toEqual(['index.html']);
});
