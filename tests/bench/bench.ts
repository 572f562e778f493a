/**
 * `npm run bench [-- --rounds 5]`: how long the maker waits, as medians over some rounds. The whole commission is run by
 * turns by our runner and by Jupyter's own nbclient, so that both meet the same machine; then with one parameter changed.
 */
import { spawnSync } from 'node:child_process';
import { readdirSync } from 'node:fs';
import { availableParallelism } from 'node:os';
import { join } from 'node:path';
import { parseArgs } from 'node:util';
import type { Kernel } from '../../kernel-helpers/src/runner/kernel/kernel.js';
import { startKernel } from '../../kernel-helpers/src/runner/kernel/start-kernel.js';
import { pythonEnvironment } from '../../kernel-helpers/src/runner/lab/python-environment.js';
import { readNotebook } from '../../kernel-helpers/src/runner/sheets/notebook.js';
import { codeCells } from '../../kernel-helpers/src/runner/sheets/run-sheet.js';
import { changeParameter, root, templateCommission } from '../sheets/setting.js';

const rounds = Number(parseArgs({ options: { rounds: { type: 'string', default: '5' } } }).values.rounds);
const lidSheet = '04-lid-through-the-year.ipynb';

const median = (values: number[]) => [...values].sort((a, b) => a - b)[Math.floor(values.length / 2)] as number;

async function timed<T>(work: () => Promise<T> | T): Promise<{ seconds: number; result: T }> {
  const began = performance.now();
  const result = await work();
  return { seconds: (performance.now() - began) / 1000, result };
}

async function runCells(kernel: Kernel, sources: string[]): Promise<void> {
  for (const source of sources) {
    const { status, outputs } = await kernel.execute(source, { seconds: 120 });
    if (status !== 'ok') throw new Error(`${status}: ${JSON.stringify(outputs)}`);
  }
}

/** A run of the whole commission by a command, from its start to its end. */
async function whole(program: string, args: (folder: string) => string[], env = process.env) {
  const { folder, remove } = templateCommission();
  try {
    const { seconds, result } = await timed(() =>
      spawnSync(program, args(folder), { cwd: root, env, encoding: 'utf8' }),
    );
    if (result.status !== 0) throw new Error(result.stdout + result.stderr);
    return { seconds, said: result.stderr };
  } finally {
    remove();
  }
}

/** From one parameter changed in a commission that was worked to its new page. */
async function afterChange(folder: string, file: string, from: string, to: string): Promise<number> {
  if (from !== to) changeParameter(folder, file, from, to);
  const { seconds, result } = await timed(() => spawnSync(process.execPath, [command, 'work', folder], { cwd: root }));
  if (result.status !== 0) throw new Error(String(result.stdout) + result.stderr);
  return seconds;
}

const environment = await pythonEnvironment(root, console.log);
const worked = templateCommission();
const command = join(root, 'kernel-helpers', 'dist', 'command.js');
const tellPeak = `data:text/javascript,process.on('exit',()=>console.error('peak',process.resourceUsage().maxRSS))`;
const files = readdirSync(worked.folder)
  .filter((file) => file.endsWith('.ipynb'))
  .sort();
const nbclient = join(root, 'tests', 'sheets', 'run_with_nbclient.py');

spawnSync(process.execPath, [command, 'work', worked.folder, '--decide'], { cwd: root });
const lid = codeCells(readNotebook(join(worked.folder, lidSheet)));
// All but the decision: as in JupyterLab after a change, without adding to the record each time.
const shown = lid.slice(0, -1).map(({ source }) => source);
// From the parameters to the picture of the year.
const drawn = lid.filter(({ id }) => ['parameters', 'fit-year', 'year-plot'].includes(id)).map(({ source }) => source);

const ready: number[] = [];
const first: number[] = [];
const redrawn: number[] = [];
const changed: number[] = [];
const ours: number[] = [];
const untouched: number[] = [];
const last: number[] = [];
const brief: number[] = [];
const theirs: number[] = [];
let kernelPeak = 0;
let runnerPeak = 0;
for (let round = 0; round < rounds; round++) {
  const start = await timed(() => startKernel({ cwd: worked.folder }));
  const kernel = start.result;
  ready.push(start.seconds);
  first.push((await timed(() => runCells(kernel, shown.slice(0, 2)))).seconds);
  await runCells(kernel, shown.slice(2));
  const other = (sources: string[], angle: number) =>
    sources.map((source) => source.replace('ringAngle: 20', `ringAngle: ${angle}`));
  redrawn.push((await timed(() => runCells(kernel, other(drawn, 30 + round)))).seconds);
  changed.push((await timed(() => runCells(kernel, other(shown, 60 + round)))).seconds);
  const memory = await kernel.execute("import process from 'node:process';\nprocess.resourceUsage().maxRSS", {
    seconds: 10,
  });
  kernelPeak = Math.max(kernelPeak, Number((memory.outputs[0] as { text: string }).text) / 1024);
  await kernel.shutdown();

  const us = await whole(process.execPath, (folder) => ['--import', tellPeak, command, 'work', folder, '--decide']);
  ours.push(us.seconds);
  runnerPeak = Math.max(runnerPeak, Number(us.said.match(/^peak (\d+)$/m)?.[1]) / 1024);
  const depth = (sixteenths: number) => `insideDepth: '${4 + sixteenths / 16} in'`;
  const begin = (days: number) => `start: '2027-01-${String(4 + days).padStart(2, '0')}'`;
  brief.push(await afterChange(worked.folder, '01-brief.ipynb', depth(round), depth(round + 1)));
  untouched.push(await afterChange(worked.folder, '01-brief.ipynb', '', ''));
  last.push(await afterChange(worked.folder, '10-days-and-record.ipynb', begin(round), begin(round + 1)));
  const them = await whole(environment.python, (folder) => [nbclient, folder, ...files], {
    ...environment.variables,
    COMMISSION_DECIDE: '1',
  });
  theirs.push(them.seconds);
  console.log(`round ${round + 1}: ours ${us.seconds.toFixed(2)} s, nbclient ${them.seconds.toFixed(2)} s`);
}
worked.remove();

const line = (what: string, figure: string) => console.log(`${what.padEnd(58)} ${figure}`);
const seconds = (values: number[]) =>
  `${median(values).toFixed(2)} s  (${Math.min(...values).toFixed(2)} to ${Math.max(...values).toFixed(2)})`;
console.log(`\nNode ${process.version}, ${availableParallelism()} cores, medians of ${rounds} rounds`);
line('Kernel ready', seconds(ready));
line('First cells: parameters, then all of kernel-helpers', seconds(first));
line("Changed parameter to the lid's year redrawn", seconds(redrawn));
line(`Changed parameter to new result: all ${shown.length} cells of the lid`, seconds(changed));
line(`Whole commission of ${files.length} sheets, our runner`, seconds(ours));
line(`Whole commission of ${files.length} sheets, nbclient`, seconds(theirs));
line('From a changed parameter of sheet 01 to a new page', seconds(brief));
line('The same against a whole run', (median(brief) / median(ours)).toFixed(2));
line('From a changed parameter of sheet 10 to a new page', seconds(last));
line('Worked again with nothing changed', seconds(untouched));
line('Our runner against nbclient', (median(ours) / median(theirs)).toFixed(2));
line('Peak memory of a kernel', `${kernelPeak.toFixed(0)} MB`);
line('Peak memory of the runner', `${runnerPeak.toFixed(0)} MB`);
