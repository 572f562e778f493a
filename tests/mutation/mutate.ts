import { fork } from 'node:child_process';
import { mkdtempSync, readdirSync, readFileSync, rmSync } from 'node:fs';
import { createRequire } from 'node:module';
import { basename, dirname, join, relative, sep } from 'node:path';
import { fileURLToPath } from 'node:url';
import { build } from 'esbuild';
import { type Mutant, mutantsOf, withMutants } from './mutants.js';

// `npm run mutate -- joints 60 7 rabbet`: tries 60 mutants of a folder of src/ (or `all`), drawn with seed 7, of the files
// with `rabbet` in their path (or of all), against the folder's tests.
// All stand in one bundle of the tests, each chosen by its number: no file of the sources is written.

const root = fileURLToPath(new URL('../..', import.meta.url));
const [folder = '', count = '60', seed = '1', only = ''] = process.argv.slice(2);
/** A mutant that takes half a minute and twice as long as the tests do without one counts as killed: it does not end. */
const halfMinute = 30_000;

const filesUnder = (path: string, ending: RegExp) =>
  readdirSync(join(root, path), { recursive: true, encoding: 'utf8' })
    .filter((name) => ending.test(name))
    .map((name) => join(root, path, name))
    .sort();

/** Numbers from 0 to 1 that a seed decides (mulberry32). */
function randomFrom(state: number): () => number {
  let at = state;
  return () => {
    at = (at + 0x6d2b79f5) | 0;
    let mixed = Math.imul(at ^ (at >>> 15), 1 | at);
    mixed = (mixed + Math.imul(mixed ^ (mixed >>> 7), 61 | mixed)) ^ mixed;
    return ((mixed ^ (mixed >>> 14)) >>> 0) / 2 ** 32;
  };
}

type Numbered = Mutant & { path: string };

function drawMutants(): Map<number, Numbered> {
  const all = filesUnder(join('kernel-helpers', 'src', folder), /(?<!\.d)\.ts$/)
    .filter((path) => path.includes(only))
    .flatMap((path) => mutantsOf(path, readFileSync(path, 'utf8')).map((mutant) => ({ ...mutant, path })));
  const random = randomFrom(Number(seed));
  const drawn = all
    .map((mutant) => ({ mutant, order: random() }))
    .sort((one, other) => one.order - other.order)
    .slice(0, count === 'all' ? all.length : Number(count));
  console.log(`${folder}: ${drawn.length} of ${all.length} mutants`);
  return new Map(drawn.map(({ mutant }, index) => [index + 1, mutant]));
}

/** Tests of a folder, and those against print that read it. */
const testFiles = () => [
  ...filesUnder(join('tests', folder), /\.test\.ts$/),
  ...filesUnder(join('tests', 'published'), /\.test\.ts$/).filter((path) =>
    readFileSync(path, 'utf8').includes(`/src/${folder.split(sep)[0]}/`),
  ),
];

/** Bundles the tests and the sources with their mutants; tells which tests read a source, those of its own name first. */
async function bundle(mutants: ReadonlyMap<number, Numbered>, outfile: string): Promise<(source: string) => string[]> {
  const entry = testFiles()
    .map((path) => `[${JSON.stringify(path)}, () => require(${JSON.stringify(path)})]`)
    .join(',\n');
  const { metafile } = await build({
    stdin: {
      contents: `export const files = [${entry}];\nexport { collected } from 'vitest';`,
      resolveDir: root,
    },
    outfile,
    absWorkingDir: root,
    metafile: true,
    bundle: true,
    platform: 'node',
    format: 'cjs',
    packages: 'external',
    banner: { js: 'module.exports = (mutant, require, module) => {' },
    footer: { js: 'return module.exports; };' },
    logLevel: 'error',
    plugins: [
      {
        name: 'mutants',
        setup({ onLoad, onResolve }) {
          onResolve({ filter: /^vitest$/ }, () => ({ path: join(root, 'tests', 'mutation', 'collected.ts') }));
          onLoad({ filter: /\.ts$/ }, ({ path }) => {
            const own = new Map([...mutants].filter(([, mutant]) => mutant.path === path));
            const source = readFileSync(path, 'utf8');
            const contents = own.size > 0 ? withMutants(path, source, own) : source;
            const url = JSON.stringify(`file://${path}`);
            return {
              contents: contents
                .replaceAll('import.meta.url', url)
                .replaceAll('import.meta.dirname', JSON.stringify(dirname(path))),
              loader: 'ts',
            };
          });
        },
      },
    ],
  });
  const reached = (path: string, seen = new Set<string>()): Set<string> => {
    if (seen.has(path)) return seen;
    seen.add(path);
    for (const { path: next } of metafile.inputs[path]?.imports ?? []) reached(next, seen);
    return seen;
  };
  const tests = testFiles().map((path) => ({ path, reads: reached(relative(root, path).replaceAll(sep, '/')) }));
  return (source) =>
    tests
      .filter(({ reads }) => reads.has(relative(root, source).replaceAll(sep, '/')))
      .map(({ path }) => path)
      .sort((one, other) => Number(isNamed(other, source)) - Number(isNamed(one, source)));
}

const isNamed = (test: string, source: string) => basename(test, '.test.ts') === basename(source, '.ts');

/** Runs the tests with one mutant after the other (0: none); tells what failed. */
async function tryMutants(outfile: string): Promise<void> {
  const require = createRequire(outfile);
  const start = require(outfile);
  const { log } = console;
  console.log = () => {};
  const unfit = new Set<string>();
  process.on('message', async ({ number, tests }: { number: number; tests: string[] }) => {
    let failed = '';
    try {
      const { files, collected } = start(number, require, { exports: {} });
      const load = new Map<string, () => void>(files);
      for (const path of tests) {
        collected.length = 0;
        load.get(path)?.();
        for (const test of [...collected]) {
          const label = `${relative(root, path)}: ${test.name}`;
          if (unfit.has(label)) continue;
          try {
            await test.body();
          } catch (error) {
            if (number === 0) {
              log(`left out, it fails without a mutant: ${label}: ${String(error).slice(0, 200)}`);
              unfit.add(label);
            } else failed = label;
          }
          if (failed) break;
        }
        if (failed) break;
      }
    } catch (error) {
      failed = `does not load: ${String(error).slice(0, 200)}`;
    }
    process.send?.({ number, failed });
  });
  process.send?.({ number: -1 });
}

async function main(): Promise<void> {
  const mutants = drawMutants();
  const made = mkdtempSync(join(root, 'node_modules', '.mutants-'));
  process.on('exit', () => rmSync(made, { recursive: true, force: true }));
  for (const signal of ['SIGINT', 'SIGTERM'] as const) process.on(signal, () => process.exit(1));
  const outfile = join(made, 'tests.cjs');
  const testsOf = await bundle(mutants, outfile);
  const used = [...new Set([...mutants.values()].flatMap(({ path }) => testsOf(path)))];
  const survivors: Numbered[] = [];
  const queue = [...mutants.keys()];
  let withoutMutant = 0;
  while (queue.length > 0)
    await new Promise<void>((over) => {
      const child = fork(fileURLToPath(import.meta.url), [folder], { env: { ...process.env, MUTANT_BUNDLE: outfile } });
      let clock: NodeJS.Timeout | undefined;
      let started = 0;
      const next = (number: number | undefined) => {
        if (number === undefined) return void child.kill('SIGKILL');
        clearTimeout(clock);
        started = Date.now();
        clock = setTimeout(
          () => child.kill('SIGKILL'),
          number === 0 ? 40 * halfMinute : halfMinute + 2 * withoutMutant,
        );
        const mutant = mutants.get(number);
        child.send({ number, tests: mutant ? testsOf(mutant.path) : used });
      };
      child.on('message', ({ number, failed }: { number: number; failed: string }) => {
        if (number === -1) return next(0);
        if (number === 0) withoutMutant = Date.now() - started;
        if (number > 0) {
          queue.shift();
          const mutant = mutants.get(number) as Numbered;
          if (!failed) survivors.push(mutant);
          if (!failed)
            console.log(
              `lives: ${relative(root, mutant.path)}:${mutant.line}  ${mutant.before.replaceAll(/\s+/g, ' ')}  ->  ${mutant.after.replaceAll(/\s+/g, ' ')}`,
            );
        }
        next(queue[0]);
      });
      child.on('exit', () => {
        clearTimeout(clock);
        // Ended in the middle of one: it did not come to an end.
        queue.shift();
        over();
      });
    });
  const killed = mutants.size - survivors.length;
  console.log(`${folder}: ${killed} of ${mutants.size} killed, ${((100 * killed) / mutants.size).toFixed(0)} %`);
}

const bundled = process.env.MUTANT_BUNDLE;
await (bundled ? tryMutants(bundled) : main());
