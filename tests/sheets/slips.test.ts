import { afterAll, beforeAll, expect, test } from 'vitest';
import type { Kernel } from '../../kernel-helpers/src/runner/kernel/kernel.js';
import { errorText } from '../../kernel-helpers/src/runner/kernel/outputs.js';
import { startKernel } from '../../kernel-helpers/src/runner/kernel/start-kernel.js';
import { cell, usualSlips } from '../runner/kernel/usual-slips.js';

let kernel: Kernel;
beforeAll(async () => {
  kernel = await startKernel({ cwd: import.meta.dirname, startupTimeout: 60 });
});
afterAll(() => kernel.shutdown());

/** What a cell writes to its error stream, once the kernel takes one again after the last that failed. */
async function said(source: string): Promise<string> {
  for (;;) {
    const { status, outputs, failed } = await kernel.execute(source, { seconds: 60 });
    if (status !== 'abort') {
      expect(failed?.plain).toBe(status === 'error' ? true : undefined);
      return errorText(outputs);
    }
  }
}

test('the kernel says every usual slip in its one line, and takes the cell once it is mended', async () => {
  expect(await said("job.decide('sizing', {});")).toMatch(
    /^line 1: job is not known: no cell above that has run gives it/,
  );
  for (const [from, to, line] of usualSlips) {
    const text = await said(cell.replace(from, to));
    expect(text).toContain(line);
    expect(text.split('\n')).toHaveLength(1);
  }
  expect(await said(cell.replace('insideLength', 'insideLenght'))).toBe('');
  expect(await said('const length = parameters.insideLength;')).toBe(
    'parameters, line 3, insideLenght: there is no such parameter; write insideLength:',
  );
  expect(await said(cell)).toBe('');
  expect(await said('const length = parameters.insideLength;')).toBe('');
});
