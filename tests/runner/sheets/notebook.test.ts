import { writeFileSync } from 'node:fs';
import { join } from 'node:path';
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { type Notebook, notebookText, readNotebook } from '../../../kernel-helpers/src/runner/sheets/notebook.js';
import { notebook, testFolder } from '../setting.js';

function read(text: string, name = '02-sizing.ipynb'): Notebook {
  const path = join(testFolder(), name);
  writeFileSync(path, text);
  return readNotebook(path);
}

test('what is written reads the same, and is written the same again', () => {
  const text = fc.string({ unit: 'grapheme' });
  const output = fc.oneof(
    fc.record({ output_type: fc.constant('stream'), name: fc.constantFrom('stdout', 'stderr'), text }),
    fc.record({
      output_type: fc.constant('display_data'),
      data: fc.dictionary(fc.constantFrom('text/html', 'text/latex', 'text/plain'), text),
      metadata: fc.constant({}),
    }),
  );
  fc.assert(
    fc.property(fc.array(fc.tuple(text, fc.array(output, { maxLength: 3 })), { maxLength: 5 }), (cells) => {
      const given = notebook(...cells.map(([source]) => source));
      given.cells = given.cells.map((cell, i) => ({
        ...cell,
        outputs: cells[i]?.[1] as Notebook['cells'][0]['outputs'],
        execution_count: i + 1,
      }));
      const written = notebookText(given);
      const again = read(written);
      expect(again).toEqual(given);
      expect(notebookText(again)).toBe(written);
    }),
    { numRuns: 50 },
  );
});

test('JSON shown by a cell keeps its form, and what we do not know of stays in its place', () => {
  const given = notebook('1');
  const cell = given.cells[0] as Notebook['cells'][0];
  cell.outputs = [
    { output_type: 'display_data', data: { 'application/vnd.x+json': ['a', 'b'], 'text/plain': 'a\nb' }, metadata: {} },
  ];
  Object.assign(cell, { metadata: { tags: ['parameters'], jupyter: { source_hidden: true } } });
  given.cells.push({ cell_type: 'markdown', id: 'picture', metadata: {}, source: '![a](attachment:a.png)' });
  Object.assign(given.cells[1] as object, { attachments: { 'a.png': { 'image/png': 'aGk=' } } });
  expect(read(notebookText(given))).toEqual(given);
});

test('the file is laid out as Jupyter lays it out: sorted keys, an indent of one, a list of lines, a last newline', () => {
  expect(notebookText(notebook('a;\nb'))).toBe(`{
 "cells": [
  {
   "cell_type": "code",
   "execution_count": null,
   "id": "cell-0",
   "metadata": {},
   "outputs": [],
   "source": [
    "a;\\n",
    "b"
   ]
  }
 ],
 "metadata": {},
 "nbformat": 4,
 "nbformat_minor": 5
}
`);
});

test.each([
  ['half a file', '{"cells": [', /^02-sizing\.ipynb cannot be read as a notebook/],
  ['an older format', { nbformat_minor: 4 }, /^02-sizing\.ipynb is not a notebook of format 4\.5: nbformat_minor/],
  ['a cell without id', { cells: [{ cell_type: 'markdown', metadata: {}, source: '' }] }, /cell 1 id/],
  [
    'a bad id',
    { cells: [{ cell_type: 'markdown', id: 'a b', metadata: {}, source: '' }] },
    /cell 1 id: must be 1 to 64/,
  ],
  ['a comma in a tag', { cells: [{ ...notebook('').cells[0], metadata: { tags: ['a,b'] } }] }, /without a comma/],
  [
    'a kind of cell that is none',
    { cells: [{ cell_type: 'chart', id: 'a', metadata: {}, source: '' }] },
    /cell 1 cell_type/,
  ],
  ['two cells of one id', { cells: [notebook('').cells[0], notebook('').cells[0]] }, /cells 1 and 2 have the same id/],
])('%s is refused by name', (_, change, message) => {
  const text = typeof change === 'string' ? change : JSON.stringify({ ...notebook(), ...change });
  expect(() => read(text)).toThrow(message);
});
