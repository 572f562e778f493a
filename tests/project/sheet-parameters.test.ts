import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { runInNewContext } from 'node:vm';
import { describe, expect, test } from 'vitest';
import { checkParameters } from '../../kernel-helpers/src/measure/sheet-parameters.js';

const worksheets = join(import.meta.dirname, '..', '..', 'worksheets');
const names = ['commission', 'pieces'].flatMap((folder) =>
  readdirSync(join(worksheets, folder), { recursive: true, encoding: 'utf8' })
    .filter((name) => name.endsWith('.ipynb') && !name.includes('.ipynb_checkpoints'))
    .map((name) => join(folder, name)),
);

/** A sheet's parameters as they come, and how it checks them before it works anything out. */
function sheet(name: string) {
  const { cells } = JSON.parse(readFileSync(join(worksheets, name), 'utf8')) as {
    cells: { cell_type: string; metadata: { tags?: string[] }; source: string[] }[];
  };
  const code = cells.filter(({ cell_type }) => cell_type === 'code').map(({ source }) => source.join(''));
  const typed = cells.find(({ metadata }) => metadata.tags?.includes('parameters'))?.source.join('') ?? '';
  // What a sheet's cell makes of its text: an object of another realm, brought into this one.
  const read = (text: string) => JSON.parse(JSON.stringify(runInNewContext(text))) as Record<string, unknown>;
  const checks = code.flatMap((cell) => [...cell.matchAll(/^checkParameters\(parameters, (\{.*?\})\);$/gms)]);
  return {
    parameters: read(typed.replace(/^const parameters = (.*);\s*$/s, '($1)')),
    check: (parameters: object) => {
      for (const [, expected] of checks) checkParameters(parameters, read(`(${expected})`));
    },
  };
}

/** Values that JavaScript itself would make something of: no error, another piece. */
const isTreacherous = (value: unknown) => typeof value === 'boolean' || value === '' || typeof value === 'object';

/** Named values that a helper reads by the sheet's own name for them; held by its own test. */
const readByName = new Set(['shop', 'house', 'readings', 'ownPlace', 'decided']);

describe.each(names)('%s', (name) => {
  const { parameters, check } = sheet(name);

  test('takes its own parameters as they come', () => {
    expect(Object.keys(parameters).length).toBeGreaterThan(0);
    expect(() => check(parameters)).not.toThrow();
  });

  test('refuses null, and text for a yes or no, a list or named values, by its own name for them', () => {
    for (const [field, value] of Object.entries(parameters).filter(
      ([field, value]) => isTreacherous(value) && !readByName.has(field),
    ))
      for (const wrong of typeof value === 'string' ? [null] : [null, 'no'])
        expect(() => check({ ...parameters, [field]: wrong }), field).toThrow(
          `${field}: ${JSON.stringify(wrong)} given; possible: `,
        );
  });
});

test.each([
  ['otherBoardPrice', -1],
  ['outsideWork', {}],
])('sheet 09 refuses %s: %j before it reaches a quote', (field, wrong) => {
  const { parameters, check } = sheet(join('commission', '09-hours-cost-quote.ipynb'));
  expect(() => check({ ...parameters, [field]: wrong })).toThrow(
    `${field}: ${JSON.stringify(wrong)} given; possible: `,
  );
});
