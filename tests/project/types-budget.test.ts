import { readdirSync } from 'node:fs';
import { join } from 'node:path';
import { expect, test } from 'vitest';

const types = join(import.meta.dirname, '..', '..', 'node_modules', '@types');

// tslab's own, Node's, and three of Vitest's and its bundler's that cannot be had without.
const budget = ['chai', 'deep-eql', 'estree', 'node', 'resolve'];

test('the kernel loads every @types package at each start, so there are no more than these', () => {
  expect(readdirSync(types).filter((name) => !budget.includes(name))).toEqual([]);
});
