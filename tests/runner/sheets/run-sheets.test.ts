import { readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, test, vi } from 'vitest';
import { runSheets } from '../../../kernel-helpers/src/runner/sheets/run-sheets.js';
import { commission, pidIn, runs, writePid } from '../setting.js';

const brief = [
  "import { openCommission } from 'kernel-helpers';\nconst job = openCommission();",
  "if (false) job.decide('brief', { inputs: {}, results: {} as never, findings: [] });\n1",
];
const sizing = [
  "import { openCommission } from 'kernel-helpers';\nconst job = openCommission();",
  "const brief = () => job.need('brief');\n2",
];

test('sheets run in the order of their needs, each in a kernel of its own', async () => {
  const folder = commission({
    '01-sizing.ipynb': [...sizing, 'const left = 1;'],
    '02-brief.ipynb': [...brief, 'typeof left'],
  });
  const cells: string[] = [];
  const { finished, failure } = await runSheets({
    folder,
    seconds: 60,
    onCell: (file, cell, of) => cells.push(`${file} ${cell}/${of}`),
  });
  expect(failure?.message).toMatch(/^line 1: left is not known: no cell above/);
  expect(failure).toMatchObject({ file: '02-brief.ipynb', cell: 3, plain: true, line: undefined });
  expect(finished).toEqual([]);
  expect(cells).toEqual(['02-brief.ipynb 1/3', '02-brief.ipynb 2/3', '02-brief.ipynb 3/3']);
}, 60_000);

test('a sheet that ran comes back with its outputs and counts, the same every time', async () => {
  const folder = commission({ '01-a.ipynb': ["console.log('½ in')", ' ', '1 + 1'], '02-b.ipynb': ['3'] });
  const runs = [await runSheets({ folder, seconds: 60 }), await runSheets({ folder, seconds: 60 })];
  const [first, again] = runs.map(({ finished }) => finished.map(({ file, notebook }) => ({ file, notebook })));
  expect(first).toEqual(again);
  expect(first?.map(({ file }) => file)).toEqual(['01-a.ipynb', '02-b.ipynb']);
  expect(first?.[0]?.notebook.cells.map(({ execution_count, outputs }) => ({ execution_count, outputs }))).toEqual([
    { execution_count: 1, outputs: [{ output_type: 'stream', name: 'stdout', text: '½ in\n' }] },
    { execution_count: null, outputs: [] },
    { execution_count: 2, outputs: [{ output_type: 'stream', name: 'stdout', text: '2\n' }] },
  ]);
  expect(first?.[0]?.notebook.metadata.language_info).toMatchObject({ name: 'typescript' });
}, 60_000);

test('a sheet that need not run is left alone, asked when those it rests on have run', async () => {
  const folder = commission({ '01-sizing.ipynb': sizing, '02-brief.ipynb': brief, '03-c.ipynb': ['1'] });
  const told: string[] = [];
  const { finished } = await runSheets({
    folder,
    seconds: 60,
    isUnchanged: (file) => file !== '02-brief.ipynb',
    onSheet: ({ file, kernel }) => void told.push(`${file} ${kernel === undefined ? 'left alone' : 'ran'}`),
  });
  expect(told).toEqual(['02-brief.ipynb ran', '01-sizing.ipynb left alone', '03-c.ipynb left alone']);
  expect(
    finished.map(({ notebook }) => notebook.cells.every(({ execution_count }) => execution_count === null)),
  ).toEqual([false, true, true]);
}, 60_000);

test.each([
  [
    'an error of ours, which says all by itself',
    ["import { parseLength } from 'kernel-helpers';", "const length = 9;\n\nconst width = parseLength('nine');"],
    { cell: 2, cells: 2, status: 'error', plain: true, line: undefined },
    /^[^\n]*nine[^\n]*$/,
  ],
  [
    'an error from a helper of the sheet',
    [
      "function fit(gap: number): number {\n  if (gap < 0) throw new Error('too tight');\n  return gap;\n}",
      '\nfit(-1);',
    ],
    { cell: 2, line: { number: 2, text: 'fit(-1);' } },
    /^Error: too tight$/,
  ],
  [
    'a wrong type, without running the cell',
    ["console.log('no');\nconst width: number = '9 in';"],
    { cell: 1, line: { number: 2, text: "const width: number = '9 in';" } },
    /^Type 'string' is not assignable to type 'number'\.$/,
  ],
  [
    'a promise that fails when its cell is over',
    [
      "setTimeout(() => Promise.reject(new Error('too late')), 50);",
      'await new Promise((done) => setTimeout(done, 500));',
    ],
    { status: 'error' },
    /^Error: too late$/,
  ],
])(
  'a sheet stops at %s',
  async (_, cells, place, message) => {
    const { finished, failure } = await runSheets({ folder: commission({ '01-a.ipynb': cells }), seconds: 60 });
    expect(finished).toEqual([]);
    expect(failure).toMatchObject({ file: '01-a.ipynb', ...place });
    expect(failure?.message).toMatch(message);
  },
  60_000,
);

test('after a failure no later sheet runs, and no kernel is left', async () => {
  const folder = commission({
    '01-a.ipynb': [writePid, "throw new Error('no')"],
    '02-b.ipynb': ["import fs from 'node:fs';\nfs.writeFileSync('b', '');"],
  });
  const { failure } = await runSheets({ folder, seconds: 60 });
  expect(failure?.file).toBe('01-a.ipynb');
  expect(readdirSync(folder).sort()).toEqual(['01-a.ipynb', '02-b.ipynb', 'pid']);
  expect(runs(pidIn(folder) as number)).toBe(false);
}, 60_000);

test('a cell over its time limit stops the sheet, and is told how to get more', async () => {
  const folder = commission({ '01-a.ipynb': [writePid, 'for (;;);'] });
  const { failure } = await runSheets({ folder, seconds: 5 });
  expect(failure).toMatchObject({ cell: 2, cells: 2, status: 'too long' });
  expect(failure?.message).toMatch(/longer than 5 seconds.*--limit/);
  expect(runs(pidIn(folder) as number)).toBe(false);
}, 60_000);

test('stopped in a cell, the run says where, and no kernel is left', async () => {
  const folder = commission({
    '01-a.ipynb': ['1'],
    '02-b.ipynb': ['1', `${writePid} for (;;);`, '3'],
    '03-c.ipynb': ['1'],
  });
  const stop = new AbortController();
  const run = runSheets({ folder, seconds: 60, signal: stop.signal });
  await vi.waitUntil(() => pidIn(folder), { timeout: 50_000 });
  stop.abort();
  const { finished, failure } = await run;
  expect(finished.map(({ file }) => file)).toEqual(['01-a.ipynb']);
  expect(failure).toMatchObject({ file: '02-b.ipynb', cell: 2, cells: 3, status: 'stopped' });
  expect(runs(pidIn(folder) as number)).toBe(false);
}, 60_000);

test('stopped before the first kernel is up, nothing has run', async () => {
  const folder = commission({ '01-a.ipynb': [writePid] });
  const stop = new AbortController();
  const run = runSheets({ folder, seconds: 60, signal: stop.signal });
  stop.abort();
  expect((await run).failure).toMatchObject({ file: '01-a.ipynb', cell: 0, status: 'stopped' });
  expect(pidIn(folder)).toBeUndefined();
});

test('what cannot run is refused before any kernel starts', async () => {
  const broken = commission({ '01-a.ipynb': [writePid], '02-b.ipynb': ['1'] });
  writeFileSync(join(broken, '02-b.ipynb'), readFileSync(join(broken, '02-b.ipynb'), 'utf8').slice(0, 40));
  await expect(runSheets({ folder: broken, seconds: 60 })).rejects.toThrow(/^02-b\.ipynb cannot be read/);
  expect(pidIn(broken)).toBeUndefined();
  await expect(runSheets({ folder: commission({}), seconds: 60 })).rejects.toThrow(/no sheets/);
  await expect(runSheets({ folder: commission({ '01-sizing.ipynb': sizing }), seconds: 60 })).rejects.toThrow(
    /^01-sizing\.ipynb needs brief/,
  );
});
