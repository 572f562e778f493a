import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { withoutInvented } from '../../../kernel-helpers/src/record/begun/begun-with.js';
import { newCommission } from '../../../kernel-helpers/src/record/new-commission.js';
import { testFolder } from '../setting.js';

const templates = join(import.meta.dirname, '..', '..', '..', 'worksheets', 'commission');
const facts = {
  client: "Ann O'Hara",
  promised: '2027-03-05',
  insideLength: '13 1/4 in',
  insideWidth: '8 in',
  insideDepth: '5 in',
  species: 'white oak',
  joint: 'dovetail',
  personal: 'the letters "A. H." in the lid',
  home: 'Denver',
};

type Sheet = { cells: { metadata: { tags?: string[] }; source: string[] }[] };

/** The sheets of a commission just begun: their whole text, and what their cells of parameters hold once they have run. */
function begun(piece: string, known: object = facts) {
  const { folder, sheets } = newCommission({
    root: testFolder(),
    title: 'Recipe box',
    date: '2027-01-08',
    templates,
    piece,
    facts: known,
  });
  const read = sheets.map((name) => JSON.parse(readFileSync(join(folder, name), 'utf8')) as Sheet);
  const cells = read.flatMap((sheet) => sheet.cells);
  const parameters = cells
    .filter(({ metadata }) => metadata.tags?.includes('parameters'))
    .map(({ source }) => new Function(`${source.join('')}; return parameters;`)() as Record<string, unknown>);
  return {
    text: cells.map(({ source }) => source.join('')).join('\n'),
    all: Object.assign({}, ...parameters.reverse()),
  };
}

const pieces = ['box', 'bookcase', 'drawer', 'frame-and-panel', 'solid-top'];

describe('a commission of one’s own', () => {
  it('of a box begins with the facts of its brief, in whichever sheet they stand', () => {
    const { letters, ...brief } = { ...facts, letters: 'A. H.' };
    expect(begun('box').all).toMatchObject({ ...brief, piece: 'Recipe box', text: letters });
    expect(begun('box').all).toMatchObject({ boards: [], sheets: [], today: '2027-01-08', start: '2027-01-11' });
  });

  it.each(pieces)('of a %s holds no name, board, word or comment of the demonstration', (piece) => {
    const { text } = begun(piece);
    const demonstration =
      /invented|R\. Example|S\. Sample|\bTEA\b|Tea chest|Piece for a study|9 1\/2 in'|mark: '[A-EP]'/g;
    expect(text.match(demonstration)).toBeNull();
    for (const line of text.split('\n').filter((each) => each.startsWith('  ') && each.includes('//')))
      expect(line.length, line).toBeLessThanOrEqual(110);
  });

  it.each(pieces)('of a %s leaves open what is not known, as an empty text beside what belongs there', (piece) => {
    const { text, all } = begun(piece, { client: 'Ann' });
    expect(all).toMatchObject({ client: 'Ann', promised: '', species: '', personal: '', home: '' });
    expect(text).toMatch(/ {2}promised: '', +\/\/ day it is promised for\n/);
    expect(Object.hasOwn(all, 'insideLength')).toBe(piece === 'box');
  });

  it('cuts no letters where the brief names none', () => {
    expect(begun('box', { ...facts, personal: 'plain' }).all).toMatchObject({ personal: 'plain', text: '' });
    expect(begun('box', { ...facts, letters: 'ANN\n2027' }).all).toMatchObject({ text: 'ANN\n2027' });
  });
});

it('leaves out what is said of the demonstration alone, and no more', () => {
  expect(withoutInvented('Chalk its mark on it. All boards and prices here are invented.')).toBe(
    'Chalk its mark on it. ',
  );
  expect(withoutInvented('Two. Client and piece are invented. Woods are called so.\nMore.')).toBe(
    'Two. Woods are called so.\nMore.',
  );
  expect(withoutInvented("client: 'R. Example', // who it is for (invented)")).toBe(
    "client: 'R. Example', // who it is for",
  );
  const own = 'A rule of 1/8 in. Nothing to leave out: see 02.';
  expect(withoutInvented(own)).toBe(own);
});
