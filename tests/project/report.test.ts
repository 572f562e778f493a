import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { expect, onTestFinished, test } from 'vitest';
import { total } from '../setup/report.js';

function totalOf(testResults: { status: string; tests: string[] }[]) {
  const folder = mkdtempSync(join(tmpdir(), 'report-'));
  onTestFinished(() => rmSync(folder, { recursive: true }));
  const file = join(folder, 'vitest.json');
  const results = testResults.map(({ status, tests }) => ({
    status,
    assertionResults: tests.map((each) => ({ status: each })),
  }));
  writeFileSync(file, JSON.stringify({ testResults: results }));
  return total(file);
}

test('passed and failed tests are counted over all files', () => {
  const files = [
    { status: 'passed', tests: ['passed', 'passed'] },
    { status: 'failed', tests: ['passed', 'failed'] },
  ];
  expect(totalOf(files)).toEqual({ passed: 3, failed: 1, skipped: 0 });
});

test('a test that did not run is neither passed nor failed', () => {
  const files = [{ status: 'passed', tests: ['passed', 'pending', 'skipped', 'todo'] }];
  expect(totalOf(files)).toEqual({ passed: 1, failed: 0, skipped: 3 });
});

test('a file that could not be run counts as a failure', () => {
  expect(totalOf([{ status: 'failed', tests: [] }])).toEqual({ passed: 0, failed: 1, skipped: 0 });
});

test('a run without a report counts as a failure', () => {
  expect(total(join(tmpdir(), 'no-such-report.json'))).toEqual({ passed: 0, failed: 1, skipped: 0 });
});
