import { spawnSync } from 'node:child_process';
import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { afterAll, beforeAll, expect, inject, test } from 'vitest';
import { readRecord } from '../../kernel-helpers/src/record/chain/record-file.js';
import { compareRecords } from '../../kernel-helpers/src/record/check/compare.js';
import { readNotebook } from '../../kernel-helpers/src/runner/sheets/notebook.js';
import { decided, root, templateCommission, workedCommission } from './setting.js';

const { python, variables } = inject('python');
// Both commissions are worked by the same person, whom the sheets name, and decided.
const env = { ...variables, COMMISSION_WHO: 'the maker', COMMISSION_DECIDE: '1' };
const ask = (...args: string[]) => spawnSync(python, args, { cwd: root, env, encoding: 'utf8' });

let ours: ReturnType<typeof workedCommission>;
let theirs: ReturnType<typeof templateCommission>;
let files: string[];
let run: ReturnType<typeof ask>;

beforeAll(() => {
  ours = workedCommission();
  theirs = templateCommission();
  files = readdirSync(theirs.folder)
    .filter((file) => file.endsWith('.ipynb'))
    .sort();
  run = ask(join(import.meta.dirname, 'run_with_nbclient.py'), theirs.folder, ...files);
}, 240_000);
afterAll(() => {
  ours.remove();
  theirs.remove();
});

test("the sheets are ordinary notebooks: Jupyter's own nbclient runs each from top to bottom", () => {
  expect(run.status, run.stderr).toBe(0);
  expect(run.stdout.split('\n').filter(Boolean)).toHaveLength(files.length);
  // A failing cell of this kernel sends no error message: only what it printed tells.
  for (const file of files) expect(readFileSync(join(theirs.folder, file), 'utf8')).not.toContain('"stderr"');
});

test('decided in Jupyter or by our runner, the record says the same', () => {
  const [recorded, again] = [ours, theirs].map(({ folder }) => readRecord(folder).entries);
  const compared = compareRecords(recorded ?? [], again ?? []);
  expect(compared.map(({ what, outcome }) => `${what} ${outcome}`)).toEqual(decided.map((what) => `${what} same`));
});

test('each cell shows the same in Jupyter and with our runner', () => {
  const hashes = /\b[0-9a-f]{12}\b/g;
  const shown = (folder: string, file: string) =>
    readNotebook(join(folder, file)).cells.map(({ id, outputs }) => [
      id,
      JSON.stringify(outputs ?? [], null, 1)?.replace(hashes, 'hash'),
    ]);
  for (const file of files) expect(shown(theirs.folder, file)).toEqual(shown(ours.folder, file));
});

test("Jupyter's nbformat finds our notebooks valid and would write them byte for byte as we do", () => {
  const script = `import sys, nbformat
for path in sys.argv[1:]:
    text = open(path, encoding='utf8', newline='').read()
    notebook = nbformat.reads(text, as_version=nbformat.NO_CONVERT)
    nbformat.validate(notebook)
    print(nbformat.writes(notebook) + '\\n' == text)`;
  const paths = [...files.map((file) => join(ours.folder, file))];
  const { stdout, stderr } = ask('-c', script, ...paths);
  expect(stdout.trim().split(/\r?\n/), stderr).toEqual(files.map(() => 'True'));
});
