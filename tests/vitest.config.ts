import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { configDefaults, defineConfig } from 'vitest/config';

const root = fileURLToPath(new URL('..', import.meta.url));
const setup = (name: string) => fileURLToPath(new URL(`setup/${name}.ts`, import.meta.url));

// To load the helpers anew for each file takes three quarters of the quick tests' time, so they share them. A file that
// puts another module in place of one, or a wood of its own into the list, is kept to itself.
const changesModules = /\bvi\.(mock|resetModules)\(|\baddSpecies\b|\bown-species\b/;
const keptApart = readdirSync(join(root, 'tests'), { recursive: true, encoding: 'utf8' })
  .filter((name) => name.endsWith('.test.ts') && changesModules.test(readFileSync(join(root, 'tests', name), 'utf8')))
  .map((name) => join('tests', name).replaceAll('\\', '/'));
const quick = { globalSetup: [setup('built')], testTimeout: 30_000, unstubEnvs: true, unstubGlobals: true };

// A kernel takes a second to start, a commission twenty to be worked, and other files of tests have the cores meanwhile.
const slow = { testTimeout: 240_000, hookTimeout: 240_000 };

export default defineConfig({
  root,
  test: {
    allowOnly: false,
    // Left to itself, Vitest keeps one core for itself: of two, the tests would have one.
    maxWorkers: '100%',
    projects: [
      {
        test: {
          name: 'core',
          include: ['tests/**/*.test.ts'],
          exclude: [...configDefaults.exclude, 'tests/sheets/**', 'tests/browser/**', ...keptApart],
          isolate: false,
          ...quick,
        },
      },
      { test: { name: 'core-apart', include: keptApart, ...quick } },
      {
        test: {
          name: 'sheets',
          include: ['tests/sheets/**/*.test.ts'],
          globalSetup: [setup('built'), setup('python'), setup('shared-commission')],
          isolate: false,
          ...slow,
        },
      },
      {
        test: {
          name: 'browser',
          include: ['tests/browser/**/*.test.ts'],
          globalSetup: [setup('built'), setup('python'), setup('browser'), setup('worked-commission')],
          ...slow,
        },
      },
    ],
  },
});
