/**
 * `npm run test:nodes`: the quick tests, `npm start` and a sheet in Jupyter under the other versions of Node that the project
 * is for. Each is installed from the registry on first use. Arguments name versions: `npm run test:nodes -- 24`.
 */
import { spawnSync } from 'node:child_process';
import { existsSync, mkdirSync, writeFileSync } from 'node:fs';
import { delimiter, dirname, join } from 'node:path';
import { nodeReports, otherNodes, printTotal } from './report.js';
import { runVitest } from './run-vitest.js';

const root = join(import.meta.dirname, '..', '..');
const quick = ['--project', 'core', '--project', 'core-apart'];
const startAndJupyter = ['--project', 'sheets', 'tests/sheets/start.test.ts', 'tests/sheets/nbclient.test.ts'];

const wanted = process.argv.slice(2).map(Number);
const versions = wanted.length > 0 ? wanted : otherNodes;
for (const version of versions) {
  const node = nodeOf(version);
  console.log(`Under Node ${answerOf(node)}:`);
  // What the tests start by the name of node is that one too.
  const env = { ...process.env, PATH: [dirname(node), process.env.PATH].join(delimiter) };
  const [quickReport, sheetsReport] = nodeReports(version);
  runVitest(quick, quickReport, node, env);
  runVitest(startAndJupyter, sheetsReport, node, env);
}
printTotal(versions.flatMap(nodeReports));

/** Path of this version of Node: the registry's package `node` would fetch this one by a script, which npm may be told not to run. */
function nodeOf(version: number): string {
  const windows = process.platform === 'win32';
  const system = `${windows ? 'win' : process.platform}-${process.arch}`;
  const name = system === 'darwin-arm64' ? `node-bin-${system}` : `node-${system}`;
  const folder = join(root, 'tests', '.work', 'nodes', String(version));
  const node = join(folder, 'node_modules', name, 'bin', windows ? 'node.exe' : 'node');
  const isThere = () => existsSync(node) && answerOf(node).startsWith(`v${version}.`);
  if (isThere()) return node;
  mkdirSync(folder, { recursive: true });
  writeFileSync(join(folder, 'package.json'), '{ "private": true }\n');
  spawnSync(`npm install --no-audit --no-fund ${name}@${version}`, { cwd: folder, shell: true, stdio: 'inherit' });
  if (!isThere()) throw new Error(`Node ${version} could not be installed in ${folder}`);
  return node;
}

function answerOf(node: string): string {
  return spawnSync(node, ['--version'], { encoding: 'utf8' }).stdout?.trim() ?? '';
}
