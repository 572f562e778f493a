import { realpathSync } from 'node:fs';
import { join } from 'node:path';
import { expect, test } from 'vitest';

const root = join(import.meta.dirname, '..', '..');

test("of Node, a sheet's type checker reads our few lines and not the whole, which takes half of a kernel's start", () => {
  expect(realpathSync(join(root, 'node_modules', '@types', 'node'))).toBe(join(root, 'kernel-helpers', 'sheet-types'));
});
