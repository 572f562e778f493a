import { expect, test } from 'vitest';
import { failureText } from '../../../kernel-helpers/src/runner/sheets/run-report.js';

const failure = { file: '02-sizing.ipynb', cell: 2, cells: 9, status: 'error' } as const;

test('what was typed and cannot be is told in one line: sheet, parameter, value, what is possible', () => {
  const message = 'stockThickness: "58 in" given; possible: 1/4 in to 1 1/2 in (thickness of the four boards)';
  expect(failureText({ ...failure, plain: true, message })).toBe(`02-sizing, ${message}`);
});

test('any other failure is told with its cell and its line', () => {
  const line = { number: 3, text: 'const width = area / 0;' };
  expect(failureText({ ...failure, plain: false, line, message: 'Error: no width' })).toBe(
    'Stopped at 02-sizing.ipynb, cell 2 of 9.\n  line 3:  const width = area / 0;\n  Error: no width',
  );
});
