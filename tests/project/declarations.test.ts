import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, test } from 'vitest';

const dist = join(import.meta.dirname, '..', '..', 'kernel-helpers', 'dist');

test('a sheet that imports kernel-helpers reads one file of plain declarations, so that its first cell is quick', () => {
  expect(readdirSync(dist, { recursive: true, encoding: 'utf8' }).filter((name) => name.endsWith('.d.ts'))).toEqual([
    'index.d.ts',
  ]);
  const text = readFileSync(join(dist, 'index.d.ts'), 'utf8');
  expect(text).toContain('parseLength');
  expect([...text.matchAll(/\b(?:from|import)\s*\(?\s*['"]([^'"]+)['"]/g)].map((match) => match[1])).toEqual([]);
});
