import fc from 'fast-check';
import { expect, it } from 'vitest';
import { withParameters } from '../../../kernel-helpers/src/record/begun/parameters-cell.js';

const cell = `const parameters = {
  client: 'R. Example',          // who it is for
  boards: [
    { mark: 'A', price: 14.5, defects: ['check at 0 in, by 0 in'] }, // the first
    { mark: 'B', text: "it's, so }" },
  ],
  // which way: { left, right }
  turn: { client: 'nobody', at: [1, 2] },
  coats: 2, // coats of it
  last: true
};
const other = { client: 'R. Example' };
`;

/** What the cell holds once it has run. */
const read = (source: string) => new Function(`${source}; return { parameters, other };`)();

it('writes a value under a name and leaves what stands behind it in its column', () => {
  expect(withParameters(cell, { client: 'Ann' })).toBe(
    cell.replace("'R. Example',          // who", "'Ann',                 // who"),
  );
  expect(withParameters(cell, { coats: 3 })).toContain('  coats: 3, // coats of it');
  expect(withParameters(cell, { client: 'A name that is longer' })).toContain(
    "  client: 'A name that is longer', // who it is for\n",
  );
});

it('puts what stands behind a long value above it', () => {
  const long = 'w'.repeat(100);
  expect(withParameters(cell, { client: long })).toContain(`{\n  // who it is for\n  client: '${long}',\n  boards`);
});

it('empties a list of many lines, and leaves names inside others alone', () => {
  const { parameters, other } = read(withParameters(cell, { boards: [], client: '', mark: 'Z', at: 3, last: false }));
  expect(parameters).toEqual({ ...read(cell).parameters, boards: [], client: '', last: false });
  expect(other).toEqual({ client: 'R. Example' });
});

it('passes over a name that the cell has not, and a cell that has no parameters', () => {
  expect(withParameters(cell, { nobody: 1 })).toBe(cell);
  expect(withParameters('show(1);', { client: 'Ann' })).toBe('show(1);');
});

it('keeps any text as it was typed, quotation marks and apostrophes too', () => {
  fc.assert(
    fc.property(fc.string({ unit: 'grapheme' }), fc.string(), (client, last) => {
      const plain = (text: string) => text.replace(/\r\n/g, '\n');
      const { parameters } = read(withParameters(cell, { client, last }));
      expect(parameters).toEqual({ ...read(cell).parameters, client: plain(client), last: plain(last) });
    }),
  );
  expect(withParameters(cell, { client: "Ann O'Hara" })).toContain(`client: "Ann O'Hara",`);
});
