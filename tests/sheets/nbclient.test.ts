import { spawnSync } from 'node:child_process';
import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { afterAll, beforeAll, expect, inject, test } from 'vitest';
import { errorText } from '../../kernel-helpers/src/runner/kernel/outputs.js';
import { notebookText, readNotebook } from '../../kernel-helpers/src/runner/sheets/notebook.js';
import { notebook } from '../runner/setting.js';
import { root } from './setting.js';

const { python, variables } = inject('python');
const script = `import sys, nbformat
from nbclient import NotebookClient
path = sys.argv[1]
sheet = nbformat.read(path, as_version=4)
NotebookClient(sheet, timeout=120, kernel_name='tslab', allow_errors=True, coalesce_streams=True).execute()
nbformat.write(sheet, path)`;

let folder: string;
let shown: ReturnType<typeof readNotebook>['cells'];
beforeAll(() => {
  mkdirSync(join(root, 'tests', '.work'), { recursive: true });
  folder = mkdtempSync(join(root, 'tests', '.work', 'nbclient-'));
  const sheet = join(folder, '01-a.ipynb');
  const cells = [
    "import process from 'node:process';\nconsole.log(process.version);",
    "import { explodedView, parseLength } from 'kernel-helpers';\nconsole.log(parseLength('9 1/2 in'));",
    'explodedView(null as never);',
  ];
  writeFileSync(sheet, notebookText(notebook(...cells)));
  const run = spawnSync(python, ['-c', script, sheet], { cwd: folder, env: variables, encoding: 'utf8' });
  expect(run.status, run.stderr).toBe(0);
  shown = readNotebook(sheet).cells;
});
afterAll(() => rmSync(folder, { recursive: true, force: true, maxRetries: 5 }));

test('Jupyter runs a sheet on the very Node of this project, with its helpers', () => {
  expect(shown[0]?.outputs).toMatchObject([{ text: `${process.version}\n` }]);
  expect(shown[1]?.outputs).toMatchObject([{ text: '9.5\n' }]);
});

test('an error within the helpers is told in Jupyter without their source, in lines that can be read', () => {
  const said = errorText(shown[2]?.outputs ?? []);
  expect(said).toMatch(/^TypeError: .* null .*\n +at .*\bexplodedView /);
  for (const line of said.split('\n').slice(1)) expect(line).toMatch(/^ +at /);
  expect(Math.max(...said.split('\n').map(({ length }) => length))).toBeLessThan(400);
});
