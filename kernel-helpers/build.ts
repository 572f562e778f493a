/** Builds dist/: one bundled ES module for the sheets, one for the commands, and plain declarations beside them. */
import { spawnSync } from 'node:child_process';
import { copyFileSync, existsSync, renameSync, rmSync } from 'node:fs';
import { createRequire } from 'node:module';
import { dirname, join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { build } from 'esbuild';

const here = dirname(fileURLToPath(import.meta.url));
const dist = join(here, 'dist');
// Named by the process, so that two builds at once do not meet.
const next = join(here, `dist.next-${process.pid}`);
const previous = join(here, `dist.previous-${process.pid}`);
process.on('exit', () => {
  for (const folder of [next, previous]) rmSync(folder, { recursive: true, force: true });
});

// Bundled because mathjs and Plot as hundreds of loose files cost the kernel over half a second; bundled, under 0.1 s.
await build({
  absWorkingDir: here,
  entryPoints: { index: 'src/index.ts', command: 'src/runner/command.ts' },
  outdir: next,
  bundle: true,
  splitting: true,
  format: 'esm',
  platform: 'node',
  target: 'node20.19',
  external: ['tslab', 'zeromq'],
  legalComments: 'linked',
  sourcemap: 'linked',
  // Bundled CommonJS packages call require for Node's own modules.
  banner: {
    js: "import { createRequire as nodeRequire } from 'node:module'; const require = nodeRequire(import.meta.url);",
  },
});

// Preloaded into kernels as they stand, before any module loader of ours.
for (const name of ['kernel-guard.cjs', 'kernel-output.cjs'])
  copyFileSync(join(here, 'src/runner', name), join(next, name));

const tsc = createRequire(import.meta.url).resolve('typescript/bin/tsc');
const types = spawnSync(process.execPath, [tsc, '-p', join(here, 'tsconfig.build.json'), '--outDir', next], {
  stdio: 'inherit',
});
if (types.status !== 0) process.exit(types.status ?? 1);

// Swapped in whole, so that a failed build leaves the last good one and a running kernel never meets half of one.
if (existsSync(dist)) renameSync(dist, previous);
renameSync(next, dist);
