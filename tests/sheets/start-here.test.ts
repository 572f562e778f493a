import { join } from 'node:path';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { checkCommission } from '../../kernel-helpers/src/record/check/check.js';
import type { Kernel } from '../../kernel-helpers/src/runner/kernel/kernel.js';
import { startKernel } from '../../kernel-helpers/src/runner/kernel/start-kernel.js';
import { readNotebook } from '../../kernel-helpers/src/runner/sheets/notebook.js';
import { codeCells } from '../../kernel-helpers/src/runner/sheets/run-sheet.js';
import { changeParameter, command, decided, root, templateCommission } from './setting.js';

const sheet = readNotebook(join(root, 'worksheets', 'start-here.ipynb'));
const prose = sheet.cells.map(({ source }) => source).join('\n');
let kernel: Kernel;

beforeAll(async () => {
  kernel = await startKernel({ cwd: join(root, 'worksheets') });
});
afterAll(() => kernel.shutdown());

/** Runs one cell. After an error the kernel refuses what comes within a fifth of a second: nobody clicks so fast. */
async function run(source: string) {
  for (;;) {
    const execution = await kernel.execute(source, { seconds: 60 });
    if (execution.status !== 'abort') return execution;
  }
}

/** Runs all cells with another inside width; gives what the last one showed. */
async function runAll(insideWidth: string): Promise<string> {
  let shown = '';
  for (const { source } of codeCells(sheet)) {
    const { outputs } = await run(source.replace("'6 1/4 in'", `'${insideWidth}'`));
    shown = JSON.stringify(outputs).replaceAll('\u00a0', ' ');
  }
  return shown;
}

test('run as it stands, changed as it says, and spoilt as it says, the sheet to start with does what it says', async () => {
  expect(await runAll('6 1/4 in')).toContain('7 1/2 in');
  expect(prose).toContain("`'7 in'`");
  expect(await runAll('7 in')).toContain('8 1/4 in');
  expect(prose).toContain("`'7 inchs'`");
  expect(await runAll('7 inchs')).toMatch(/inchs.*is not a unit of length here/);
  expect(await runAll('7 in')).toContain('8 1/4 in');
});

test('the small commission that it proposes is worked from brief to record without a stop', () => {
  expect(prose).toContain('for the inside answer `8 x 6 1/4 x 4 in`');
  const { folder, remove } = templateCommission();
  try {
    changeParameter(folder, '01-brief.ipynb', "insideLength: '9 1/2 in'", "insideLength: '8 in'");
    const { stderr, status } = command('work', folder, '--decide');
    expect(stderr).toBe('');
    expect(status).toBe(0);
    const { entries } = checkCommission(folder);
    expect(entries.map(({ what }) => what)).toEqual(decided);
    expect(entries.flatMap(({ findings }) => findings.filter(({ verdict }) => verdict === 'stop'))).toEqual([]);
  } finally {
    remove();
  }
});
