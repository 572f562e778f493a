import { mkdirSync, mkdtempSync, rmSync } from 'node:fs';
import { join } from 'node:path';
import type { TestProject } from 'vitest/node';

/** Before the tests of the sheets: a folder for the one commission that they share once the first of them has worked it. */
export default function sharedCommission(project: TestProject): () => void {
  const work = join(project.config.root, 'tests', '.work');
  mkdirSync(work, { recursive: true });
  const daybook = mkdtempSync(join(work, 'shared-'));
  project.provide('sharedDaybook', daybook);
  return () => rmSync(daybook, { recursive: true, force: true, maxRetries: 5 });
}

declare module 'vitest' {
  interface ProvidedContext {
    sharedDaybook: string;
  }
}
