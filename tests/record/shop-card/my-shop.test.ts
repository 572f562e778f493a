import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { runInNewContext } from 'node:vm';
import { expect, it } from 'vitest';
import { usualShop } from '../../../kernel-helpers/src/record/shop-card/shop-card.js';

it('the sheet of the shop begins with the card that a shop begins with, and asks for all of it', () => {
  const sheet = join(import.meta.dirname, '..', '..', '..', 'worksheets', 'my-shop.ipynb');
  const { cells } = JSON.parse(readFileSync(sheet, 'utf8')) as { cells: { id: string; source: string[] }[] };
  const typed = cells.find(({ id }) => id === 'parameters')?.source.join('') ?? '';
  const { decided, ...card } = JSON.parse(
    JSON.stringify(runInNewContext(typed.replace(/^const parameters = (.*);\s*$/s, '($1)'))),
  );
  expect(decided).toBe(false);
  expect(card).toEqual(usualShop());
});
