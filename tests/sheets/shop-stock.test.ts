import { readdirSync, rmSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import { soundEntries } from '../../kernel-helpers/src/record/chain/record-file.js';
import { runSheets } from '../../kernel-helpers/src/runner/sheets/run-sheets.js';
import { changeParameter, copyOf, workedCommission } from './setting.js';

interface Measured {
  inputs: { measured: { mark: string; width: number }[] };
  results: { boards: { mark: string }[]; offcuts: { mark: string }[]; sheets: { mark: string }[] };
}

const stockOf = (folder: string) =>
  soundEntries(folder).findLast(({ what }) => what === 'stock') as unknown as Measured | undefined;

const sheet = '07-stock-and-cutting.ipynb';

test('the next commission is offered the offcuts of the one before, beside its own table of boards', async () => {
  const { folder, remove } = workedCommission();
  try {
    const left = stockOf(folder)?.results.offcuts.map(({ mark }) => mark) ?? [];
    expect(left.length).toBeGreaterThan(0);

    const next = copyOf(folder, 'next');
    for (const name of readdirSync(next)) if (name.endsWith('.ipynb') && name !== sheet) rmSync(join(next, name));
    changeParameter(next, sheet, "boardsFile: ''", "boardsFile: 'boards.csv'");
    changeParameter(next, sheet, 'stockToday: false', 'stockToday: true');
    changeParameter(next, sheet, "figure: 'round the corners'", 'figure: []');
    writeFileSync(
      join(next, 'boards.csv'),
      'mark,thickness,width (mm),length (mm),price\nK,4/4,190.5,1219.2,1\nL,4/4,wide,1219.2,1\n',
    );
    const { failure } = await runSheets({ folder: next, seconds: 60, env: { COMMISSION_DECIDE: '1' } });
    expect(failure).toBeUndefined();
    const stock = stockOf(next);
    const offered = stock?.inputs.measured.map(({ mark }) => mark) ?? [];
    expect(offered).toEqual(expect.arrayContaining(['K', ...left.filter((mark) => !mark.startsWith('P'))]));
    expect(offered).not.toContain('L');
    expect(stock?.inputs.measured.find(({ mark }) => mark === 'K')?.width).toBeCloseTo(7.5, 9);
    expect(stock?.results.sheets, 'plywood left of the first').toMatchObject([{ mark: 'P-1' }]);
  } finally {
    remove();
  }
}, 240_000);
