import { createRequire } from 'node:module';
import { join } from 'node:path';
import { afterAll, describe, expect, it } from 'vitest';
import type { Complaint } from '../../../kernel-helpers/src/runner/kernel/complaint.js';
import { slipIn } from '../../../kernel-helpers/src/runner/kernel/slips.js';
import { cell, usualSlips } from './usual-slips.js';

/** tslab's own checking of cells, with its TypeScript. */
interface Converter {
  convert(declared: string, cell: string): { diagnostics: Complaint[]; declOutput?: string };
  close(): void;
}

const require = createRequire(import.meta.url);
require('../../../kernel-helpers/src/runner/kernel/kernel-converter.cjs');
const { createConverter } = require(join(require.resolve('tslab/package.json'), '../dist/converter.js')) as {
  createConverter(): Converter;
};
const tslab = createConverter();
afterAll(() => tslab.close());

/** What is said of a cell that came after the one of parameters. */
function said(source: string, before = ''): string | undefined {
  const declared = before === '' ? '' : (tslab.convert('', before).declOutput ?? '');
  return slipIn(source, tslab.convert(declared, source).diagnostics, before);
}

it('says nothing of a cell as it should be', () => {
  expect(said(cell)).toBeUndefined();
});

describe('a slip in the parameters is said in one line: where, what, how to write it', () => {
  it.each(usualSlips)('%s as %s', (from, to, message) => {
    const line = said(cell.replace(from, to));
    expect(line).toContain(message);
    expect(line?.split('\n')).toHaveLength(1);
  });
});

describe('in a cell below', () => {
  it('a name that nothing gave is one of a cell that has not run', () => {
    for (const [source, name] of [
      ["job.decide('sizing', {});", 'job'],
      ['const { coats } = parameters;', 'parameters'],
      ['const box = { units: brief.units };', 'brief'],
    ])
      expect(said(source as string)).toBe(
        `line 1: ${name} is not known: no cell above that has run gives it. Run all cells from the top.`,
      );
  });

  it('a misspelt parameter is named where it stands', () => {
    const misspelt = cell.replace('insideLength', 'insideLenght');
    expect(said('const length = parameters.insideLength;', misspelt)).toBe(
      'parameters, line 3, insideLenght: there is no such parameter; write insideLength:',
    );
    expect(said('const { coats, insideLength } = parameters;', misspelt)).toContain(
      'line 3, insideLenght: there is no',
    );
  });

  it('a parameter that was taken out is named', () => {
    const without = cell.replace('  lagging: false,\n', '');
    expect(said('const { lagging } = parameters;', without)).toBe(
      'parameters: lagging is missing among them; write it with its value, as it was',
    );
  });

  it('a number for a text, and a text for a number or a yes or no, are named where they stand', () => {
    const use = `function take(given: { client: string; coats: number; lagging: boolean }) {}\ntake(parameters);`;
    expect(said(use, cell)).toBeUndefined();
    for (const [from, to, message] of [
      [
        "'R. Example'",
        '7',
        "parameters, line 2, client: 7 given; possible: words in quotation marks; write client: '7'",
      ],
      ['coats: 2', "coats: '2'", "parameters, line 5, coats: '2' given; possible: a number; write coats: 2"],
      [
        'lagging: false',
        "lagging: 'false'",
        "line 6, lagging: 'false' given; possible: true or false; write lagging: false",
      ],
    ] as const)
      expect(said(use, cell.replace(from, to))).toContain(message);
  });

  it('the same of one that is handed on under another name, or alone', () => {
    const take = 'function take(client: string) {}\n';
    const message = "parameters, line 2, client: 7 given; possible: words in quotation marks; write client: '7'";
    const number = cell.replace("'R. Example'", '7');
    for (const use of ['take(parameters.client);', 'const { client: who } = parameters;\ntake(who);'])
      expect(said(take + use, number)).toBe(message);
  });

  it('a misspelt name among those that a sheet checks is named where it stands', () => {
    const check = `function check<P>(given: P, names: (keyof P)[]) {}\ncheck(parameters, ['insideLength']);`;
    expect(said(check, cell.replace('insideLength', 'insideLenght'))).toBe(
      'parameters, line 3, insideLenght: there is no such parameter; write insideLength:',
    );
    expect(said(check, cell.replace(/ {2}insideLength.*\n/, ''))).toContain('insideLength is missing among them');
  });

  it('what is no usual slip is left to the compiler', () => {
    expect(said('const wide: number = "nine";')).toBeUndefined();
  });
});
