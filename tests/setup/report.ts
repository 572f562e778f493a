import { readFileSync } from 'node:fs';
import { join } from 'node:path';

const reports = join(import.meta.dirname, '..', 'reports');

/** Vitest's own report of the last whole run, in its JSON format. */
export const report = join(reports, 'vitest.json');

/** Versions of Node that the project is for, but the one that is running. */
export const otherNodes = [20, 22, 24].filter((version) => !process.version.startsWith(`v${version}.`));

/** Reports of the last run under another version of Node: the quick tests, then `npm start` and Jupyter. */
export function nodeReports(version: number): [quick: string, sheets: string] {
  return [join(reports, `node-${version}-quick.json`), join(reports, `node-${version}-sheets.json`)];
}

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

/** Prints `N passed, N failed` over these reports; the process fails when a test failed or did not run, or none ran. */
export function printTotal(files: string[]): void {
  const totals = files.map(total);
  const sum = (of: keyof Total) => totals.reduce((all, each) => all + each[of], 0);
  if (sum('skipped') > 0) console.log(`${sum('skipped')} tests were skipped, and none may be`);
  if (sum('failed') > 0 || sum('skipped') > 0 || totals.some(({ passed }) => passed === 0)) process.exitCode = 1;
  console.log(`${sum('passed')} passed, ${sum('failed')} failed`);
}
