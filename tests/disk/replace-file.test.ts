import { mkdirSync, readdirSync, readFileSync, statSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import { writeFile } from '../../kernel-helpers/src/disk/replace-file.js';
import { testFolder } from '../runner/setting.js';

test('a file is written whole, and nothing else is left beside it', async () => {
  const folder = testFolder();
  const path = join(folder, 'index.html');
  await writeFile(path, 'first');
  await writeFile(path, 'second ½');
  expect(readFileSync(path, 'utf8')).toBe('second ½');
  expect(readdirSync(folder)).toEqual(['index.html']);
});

test('a file that says the same already is not touched', async () => {
  const path = join(testFolder(), 'index.html');
  writeFileSync(path, 'same');
  const before = statSync(path);
  await writeFile(path, 'same');
  expect(statSync(path).ino).toBe(before.ino);
  expect(statSync(path).mtimeMs).toBe(before.mtimeMs);
});

test('where it cannot be written, one message says so and nothing is left behind', async () => {
  const folder = testFolder();
  mkdirSync(join(folder, 'index.html', 'in the way'), { recursive: true });
  await expect(writeFile(join(folder, 'index.html'), 'text')).rejects.toThrow(/index\.html cannot be written/);
  expect(readdirSync(folder)).toEqual(['index.html']);
});
