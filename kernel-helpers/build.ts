/** Builds dist/: one bundled ES module for the sheets, one for the commands, one for the thread that plans cuts, and the declarations of the sheets' one. */
import { spawnSync } from 'node:child_process';
import { copyFileSync, existsSync, renameSync, rmSync, writeFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { dirname, join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { build } from 'esbuild';
import { rollup } from 'rollup';
import { dts } from 'rollup-plugin-dts';

const here = dirname(fileURLToPath(import.meta.url));
const dist = join(here, 'dist');
// Named by the process, so that two builds at once do not meet.
const next = join(here, `dist.next-${process.pid}`);
const previous = join(here, `dist.previous-${process.pid}`);
process.on('exit', () => {
  for (const folder of [next, previous]) rmSync(folder, { recursive: true, force: true });
});

// Bundled because mathjs and Plot as hundreds of loose files cost the kernel over half a second. Without the white space it
// loads a quarter sooner; names stay, for stacks.
await build({
  absWorkingDir: here,
  entryPoints: {
    index: 'src/index.ts',
    command: 'src/runner/commands/command.ts',
    'cut-worker': 'src/runner/cuts/cut-worker.ts',
  },
  outdir: next,
  bundle: true,
  splitting: true,
  format: 'esm',
  platform: 'node',
  target: 'node20.19',
  // highs finds its WebAssembly beside its own file.
  external: ['tslab', 'zeromq', 'highs'],
  minifyWhitespace: true,
  minifySyntax: true,
  // Node prints the line of an error that nobody caught.
  lineLimit: 200,
  legalComments: 'linked',
  sourcemap: 'linked',
  // Bundled CommonJS packages call require for Node's own modules.
  banner: {
    js: "import { createRequire as nodeRequire } from 'node:module'; const require = nodeRequire(import.meta.url);",
  },
});

// Preloaded into kernels as they stand, before any module loader of ours.
for (const name of ['guard', 'output', 'converter', 'slips', 'typescript'].map((each) => `kernel-${each}.cjs`))
  copyFileSync(join(here, 'src/runner/kernel', name), join(next, name));
await build({
  absWorkingDir: here,
  entryPoints: ['src/runner/kernel/slips.ts'],
  outfile: join(next, 'slips.cjs'),
  bundle: true,
  format: 'cjs',
  platform: 'node',
  target: 'node20.19',
});

const tsc = createRequire(import.meta.url).resolve('typescript/bin/tsc');
const loose = join(next, 'declarations');
const types = spawnSync(process.execPath, [tsc, '-p', join(here, 'tsconfig.build.json'), '--outDir', loose], {
  stdio: 'inherit',
});
if (types.status !== 0) process.exit(types.status ?? 1);
// One file, since the kernel looks for, reads and watches each: the first import takes 0.08 s with one, 0.2 s with a hundred.
const declarations = await rollup({ input: join(loose, 'index.d.ts'), plugins: [dts()] });
const [{ code }] = (await declarations.generate({})).output;
// A cell's own declarations must be able to name every type that a helper gives back, exported by us or not.
const named = (pattern: RegExp) => [...code.matchAll(pattern)].flatMap((match) => match[1]?.match(/[\w$]+/g) ?? []);
const exported = new Set(named(/^export (?:type )?\{([^}]*)\}/gm));
const hidden = named(/^(?:declare )?(?:interface|type|class) ([\w$]+)/gm).filter((name) => !exported.has(name));
writeFileSync(join(next, 'index.d.ts'), `${code}export type { ${hidden.join(', ')} };\n`);
rmSync(loose, { recursive: true });

// Swapped in whole, so that a failed build leaves the last good one and a running kernel never meets half of one.
if (existsSync(dist)) renameSync(dist, previous);
renameSync(next, dist);

// What Node compiled of TypeScript, so that a kernel need not: made last, since its cells import what was built.
const kept = spawnSync(process.execPath, [join(dist, 'kernel-typescript.cjs')], { cwd: here, stdio: 'inherit' });
if (kept.status !== 0) process.exit(kept.status ?? 1);
