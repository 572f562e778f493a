import { copyFileSync, mkdirSync, rmSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { afterAll, beforeAll, expect, test } from 'vitest';
import type { Actuals } from '../../kernel-helpers/src/money/actuals.js';
import { soundEntries } from '../../kernel-helpers/src/record/chain/record-file.js';
import { latest } from '../../kernel-helpers/src/record/stale.js';
import { startKernel } from '../../kernel-helpers/src/runner/kernel/start-kernel.js';
import { readNotebook } from '../../kernel-helpers/src/runner/sheets/notebook.js';
import { runSheet } from '../../kernel-helpers/src/runner/sheets/run-sheet.js';
import { shopBook } from '../../kernel-helpers/src/shop/shop-book.js';
import { changeParameter, command, copyOf, root, workedCommission } from './setting.js';

const closing = '11-closing.ipynb';
const operations = ['cut-joint', 'lid', 'finish'];

let folder: string;
let remove: () => void;
beforeAll(() => {
  ({ folder, remove } = workedCommission());
});
afterAll(() => remove());

const decided = (commission: string, what: string) => latest(soundEntries(commission), what)?.results;
const commissions = () => dirname(folder);

/** Fills in the sheet as a maker would: yes, and each operation at so many hours. */
function close(commission: string, hours: number): void {
  const worked = operations.map((operation) => `{ operation: '${operation}', date: '2026-02-01', hours: ${hours} }`);
  changeParameter(commission, closing, "answer: '', ", "answer: 'accepted', ");
  changeParameter(commission, closing, "answered: '', ", "answered: '2026-01-12', ");
  changeParameter(commission, closing, "finished: '', ", "finished: '2026-03-01', ");
  changeParameter(commission, closing, 'worked: []', `worked: [${worked.join(', ')}]`);
}

test('a commission that is not closed yet says so, and records nothing of it', () => {
  expect(decided(folder, 'actuals')).toBeUndefined();
  expect(decided(folder, 'answer')).toBeUndefined();
  expect(JSON.stringify(readNotebook(join(folder, closing)))).toContain('is not finished yet');
});

test('closed, it records what it took beside the estimate, checks as the same, and is in the shop book', () => {
  close(folder, 6);
  const work = command('work', folder, '--decide');
  expect(work.stdout + work.stderr).toMatch(/accepted .* \(recorded, entry \d+\); finished .* \(recorded, entry \d+\)/);
  const actuals = decided(folder, 'actuals') as Actuals;
  expect(actuals.actual).toBe(18);
  expect(actuals.operations.map(({ id }) => id)).toEqual(operations);
  expect(actuals.operations.every(({ estimated }) => estimated > 0)).toBe(true);
  expect(JSON.stringify(readNotebook(join(folder, closing)))).toContain('Outside the range');
  expect(command('check', folder).stdout).toMatch(/^Same: /m);
  expect(shopBook(commissions()).corrections.map(({ operation, pieces }) => [operation, pieces])).toEqual(
    operations.map((operation) => [operation, 1]),
  );
});

test.each([['negative hours', /hours: -1 given; possible: a number from 0 to 24 h/, -1]])(
  '%s stop the sheet in one line',
  (_, message, hours) => {
    const wrong = copyOf(folder, 'wrong');
    changeParameter(wrong, closing, 'hours: 6', `hours: ${hours}`);
    expect(command('work', wrong, '--decide').stdout).toMatch(message);
    rmSync(wrong, { recursive: true });
  },
);

test('the shop book shows all of it, and its lines change the next quote for a reason that stays in the record', async () => {
  const worksheets = join(commissions(), '..', '..', 'worksheets');
  mkdirSync(worksheets, { recursive: true });
  copyFileSync(join(root, 'worksheets', 'shop-book.ipynb'), join(worksheets, 'shop-book.ipynb'));
  const kernel = await startKernel({ cwd: worksheets });
  const { executed, failure } = await runSheet(kernel, readNotebook(join(worksheets, 'shop-book.ipynb')), {
    seconds: 60,
  });
  await kernel.shutdown();
  expect(failure).toBeUndefined();
  const shown = JSON.stringify(executed);
  for (const part of ['1 commissions in the book, 1 of them closed', 'Won 1 of 1', 'Every record is whole'])
    expect(shown).toContain(part);
  expect(shown).toMatch(/ {2}pace: 0\.\d\d,/);
  const [line] = /\{ operation: 'cut-joint', factor: (\d\.\d\d), because: '[^']*' \}/.exec(shown) ?? [];
  expect(line).toBeDefined();

  const next = copyOf(folder, 'next');
  const before = decided(next, 'quote') as { hours: { mean: number } };
  changeParameter(next, '09-hours-cost-quote.ipynb', 'shop: {}', `shop: { corrections: [${line}] }`);
  expect(command('work', next, '--decide').status).toBe(0);
  const after = decided(next, 'quote') as { hours: { mean: number } };
  expect(after.hours.mean).toBeGreaterThan(before.hours.mean);
  expect(JSON.stringify(latest(soundEntries(next), 'quote')?.inputs)).toContain('your last piece took');
  expect(JSON.stringify(readNotebook(join(next, '09-hours-cost-quote.ipynb')))).toContain('your last piece took');
});
