import { spawnSync } from 'node:child_process';
import { rmSync } from 'node:fs';
import { createRequire } from 'node:module';
import { dirname, join } from 'node:path';

/** Runs Vitest with these arguments, its report going to a file; the process fails when it does. */
export function runVitest(args: string[], report: string, node = process.execPath, env = process.env): void {
  rmSync(report, { force: true });
  const vitest = join(dirname(createRequire(import.meta.url).resolve('vitest/package.json')), 'vitest.mjs');
  const config = ['--config', join(import.meta.dirname, '..', 'vitest.config.ts')];
  const reporters = ['--reporter=default', '--reporter=json', `--outputFile.json=${report}`];
  const run = spawnSync(node, [vitest, 'run', ...config, ...reporters, ...args], { stdio: 'inherit', env });
  if (run.status !== 0) process.exitCode = 1;
}
