import { readFileSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { expect, test } from 'vitest';

const declarations = join(import.meta.dirname, '..', '..', 'kernel-helpers', 'dist', 'index.d.ts');

/** The declarations that a sheet's import makes the kernel read, each with the modules it names. */
function reachable(file: string, seen = new Map<string, string[]>()): Map<string, string[]> {
  if (seen.has(file)) return seen;
  const text = readFileSync(file, 'utf8');
  const named = [...text.matchAll(/\b(?:from|import)\s*\(?\s*['"]([^'"]+)['"]/g)].map((match) => match[1] as string);
  seen.set(file, named);
  for (const path of named.filter((name) => name.startsWith('.'))) {
    reachable(join(dirname(file), path.replace(/\.js$/, '.d.ts')), seen);
  }
  return seen;
}

test('a sheet that imports kernel-helpers reads plain declarations only, so that its first cell is quick', () => {
  const found = reachable(declarations);
  expect(found.size).toBeGreaterThan(5);
  const packages = [...found].flatMap(([file, names]) =>
    names.filter((name) => !name.startsWith('.')).map((name) => `${file} names ${name}`),
  );
  expect(packages).toEqual([]);
});
