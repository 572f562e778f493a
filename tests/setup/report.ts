import { readFileSync } from 'node:fs';
import { join } from 'node:path';

/** Vitest's own report of the last whole run, in its JSON format. */
export const report = join(import.meta.dirname, '..', 'reports', 'vitest.json');

export interface Total {
  passed: number;
  /** Failed tests, and files that could not be run at all. */
  failed: number;
  /** Tests that did not run: skipped or still to be written. */
  skipped: number;
}

interface Report {
  testResults: { status: string; assertionResults: { status: string }[] }[];
}

/** Counts the tests of a report, which is missing when the run itself broke down: that is a failure too. */
export function total(file: string): Total {
  let read: Report;
  try {
    read = JSON.parse(readFileSync(file, 'utf8'));
  } catch {
    return { passed: 0, failed: 1, skipped: 0 };
  }
  const tests = read.testResults.flatMap((result) => result.assertionResults);
  const passed = tests.filter((test) => test.status === 'passed').length;
  const failed = tests.filter((test) => test.status === 'failed').length;
  const broken = read.testResults.filter(
    ({ status, assertionResults }) => status === 'failed' && !assertionResults.some((test) => test.status === 'failed'),
  ).length;
  return { passed, failed: failed + broken, skipped: tests.length - passed - failed };
}
