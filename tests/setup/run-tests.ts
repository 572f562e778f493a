/** `npm test`: every test, then the total of the runner's own report. Arguments go to Vitest. */
import { spawnSync } from 'node:child_process';
import { rmSync } from 'node:fs';
import { createRequire } from 'node:module';
import { dirname, join } from 'node:path';
import { report } from './report.js';

rmSync(report, { force: true });
const vitest = join(dirname(createRequire(import.meta.url).resolve('vitest/package.json')), 'vitest.mjs');
const reporters = ['--reporter=default', '--reporter=json', `--outputFile.json=${report}`];
const args = ['run', '--config', join(import.meta.dirname, '..', 'vitest.config.ts'), ...reporters];
const run = spawnSync(process.execPath, [vitest, ...args, ...process.argv.slice(2)], { stdio: 'inherit' });
if (run.status !== 0) process.exitCode = 1;
await import('./print-total.js');
