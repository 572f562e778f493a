import { fileURLToPath } from 'node:url';
import { configDefaults, defineConfig } from 'vitest/config';

const setup = (name: string) => fileURLToPath(new URL(`setup/${name}.ts`, import.meta.url));

// Kernels, JupyterLab and the browser want the computer's cores to themselves: one file at a time, after the quick ones.
const alone = (groupOrder: number) => ({
  fileParallelism: false,
  sequence: { groupOrder },
  testTimeout: 120_000,
  hookTimeout: 120_000,
});

export default defineConfig({
  root: fileURLToPath(new URL('..', import.meta.url)),
  test: {
    allowOnly: false,
    projects: [
      {
        test: {
          name: 'core',
          include: ['tests/**/*.test.ts'],
          exclude: [...configDefaults.exclude, 'tests/sheets/**', 'tests/browser/**'],
          globalSetup: [setup('built')],
          testTimeout: 30_000,
        },
      },
      {
        test: {
          name: 'sheets',
          include: ['tests/sheets/**/*.test.ts'],
          globalSetup: [setup('built'), setup('python')],
          ...alone(1),
        },
      },
      {
        test: {
          name: 'browser',
          include: ['tests/browser/**/*.test.ts'],
          globalSetup: [setup('built'), setup('python'), setup('browser'), setup('worked-commission')],
          ...alone(2),
        },
      },
    ],
  },
});
