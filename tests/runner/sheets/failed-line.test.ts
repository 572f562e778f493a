import { expect, test } from 'vitest';
import { failedLine } from '../../../kernel-helpers/src/runner/sheets/failed-line.js';

const source = `import { lidFit, sizeBox } from 'kernel-helpers';

const sized = sizeBox(parameters);
const thickness: number = 0.5;

const fit = lidFit({
  box: sized,
  species: 'walnut',
});`;

test('the compiler names the line itself', () => {
  expect(failedLine(source, "4:7 - Type 'string' is not assignable to type 'number'.")).toEqual({
    number: 4,
    text: 'const thickness: number = 0.5;',
  });
});

test('a statement is found again by what it says, though the kernel compiled it and moved it', () => {
  expect(failedLine(source, 'no', 'const sized = (0, kernel_helpers_1.sizeBox)(exports.parameters);')?.number).toBe(3);
  expect(failedLine(source, 'no', 'const fit = (0, kernel_helpers_1.lidFit)({')?.number).toBe(6);
  expect(failedLine(source, 'no', "species: 'walnut',")?.number).toBe(8);
});

test('without a trace there is no line, rather than a wrong one', () => {
  expect(failedLine(source, 'no')).toBeUndefined();
  expect(failedLine(source, 'no', '__awaiter(void 0);')).toBeUndefined();
  expect(failedLine(source, '99:1 - Unexpected end')).toBeUndefined();
});
