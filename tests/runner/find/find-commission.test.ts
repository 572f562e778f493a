import { mkdirSync } from 'node:fs';
import { join, relative } from 'node:path';
import { expect, test } from 'vitest';
import { findCommission, titleOf } from '../../../kernel-helpers/src/runner/find/find-commission.js';
import { testFolder } from '../setting.js';

function daybook(...names: string[]): string {
  const root = testFolder();
  mkdirSync(join(root, 'worksheets', 'commission'), { recursive: true });
  for (const name of names) mkdirSync(join(root, 'data', 'commissions', name), { recursive: true });
  return root;
}

test('a commission is found by its folder, its name without the date, its title, or a path', () => {
  const root = daybook('2026-03-12-tea-chest', '2026-04-01-blanket-box');
  const folder = join(root, 'data', 'commissions', '2026-03-12-tea-chest');
  for (const given of ['2026-03-12-tea-chest', 'tea-chest', 'Tea chest', folder, `${relative(root, folder)}/`]) {
    expect(findCommission(root, given, root)).toBe(folder);
  }
});

test('a wrong name gives the nearest, a name of two gives both', () => {
  const root = daybook('2026-03-12-tea-chest', '2026-05-02-tea-chest', '2026-04-01-blanket-box');
  expect(() => findCommission(root, 'blanket-bx', root)).toThrow(
    /^there is no commission "blanket-bx"; nearest: 2026-04-01-blanket-box/,
  );
  expect(() => findCommission(root, 'tea-chest', root)).toThrow(/2026-03-12-tea-chest, 2026-05-02-tea-chest$/);
  expect(() => findCommission(daybook(), 'tea chest', root)).toThrow(/npm run new -- "tea chest" starts one/);
});

test('a folder that is no commission is not worked', () => {
  const root = daybook('2026-03-12-tea-chest');
  expect(() => findCommission(root, 'worksheets/commission', root)).toThrow(/is no commission/);
});

test("a folder's name tells the title", () => {
  expect(titleOf('2026-03-12-tea-chest')).toBe('Tea chest');
});
