import { describe, expect, it } from 'vitest';
import { allOperations, countWork, operationIds } from '../../kernel-helpers/src/money/operations.js';
import type { PiecePart } from '../../kernel-helpers/src/piece/piece.js';
import { cautions } from '../../kernel-helpers/src/show/tables/cautions.js';
import { roughCut } from '../../kernel-helpers/src/stock/milling/rough-cut.js';
import { box, dovetails, fingers, keyedMitre, rabbet } from './a-box.js';

const work = { piece: box, boards: 2, letters: 7, coats: 3 };

it('the operations that code can name are those of the data file, in working order', () => {
  expect(allOperations().map(({ id }) => id)).toEqual([...operationIds]);
});

describe('counts of a box', () => {
  it('come from the design', () => {
    expect(countWork({ ...work, joint: dovetails })).toMatchObject({
      board: 2,
      part: 6,
      'solid part': 5,
      corner: 4,
      tail: 12,
      groove: 7,
      lid: 1,
      letter: 7,
      coat: 3,
    });
  });

  it('by hand: the lengths and faces of a box 9 1/2 by 6 1/4 by 4 in inside, 5/8 stock, 3 coats', () => {
    const counts = countWork({ ...work, joint: dovetails });
    const of = (name: string) => box.parts.find((part) => part.name === name) as (typeof box.parts)[number];
    const [side, front, back, lid, bottom] = ['side', 'front', 'back', 'lid', 'bottom'].map(of) as [
      ...[PiecePart, PiecePart, PiecePart, PiecePart, PiecePart],
    ];
    // Two sides, front, back and lid are milled; each side is grooved twice, the back twice, the front once.
    expect(counts['foot of board']).toBeCloseTo((2 * side.length + 2 * front.length + lid.length) / 12, 12);
    expect(counts['foot of groove']).toBeCloseTo((4 * side.length + 3 * back.length) / 12, 12);
    // Four grades on one face of all solid parts at the end, on the other and on both of the bottom before.
    const solid = [side, side, front, back, lid].reduce((sum, { length, width }) => sum + (length * width) / 144, 0);
    const panel = (bottom.length * bottom.width) / 144;
    expect(counts['graded square foot after assembly']).toBeCloseTo(4 * solid, 12);
    expect(counts['graded square foot before assembly']).toBeCloseTo(4 * (solid + 2 * panel), 12);
    expect(counts['square foot coated']).toBeCloseTo(3 * 2 * (solid + panel), 12);
    // 9 1/2 + 2 x 5/8 long, 6 1/4 + 2 x 5/8 wide.
    const { height } = box.overall;
    expect(counts['square foot packed']).toBeCloseTo((2 * (10.75 * 7.5 + 10.75 * height + 7.5 * height)) / 144, 12);
  });

  it('take what a sheet on the surface says of faces and grades', () => {
    const sanded = { beforeAssembly: 9, afterAssembly: 14 };
    expect(countWork({ ...work, joint: dovetails, coated: 3.1, sanded })).toMatchObject({
      'graded square foot before assembly': 9,
      'graded square foot after assembly': 14,
      'square foot coated': 3 * 3.1,
    });
  });

  it.each([
    ['dovetails', dovetails, { tail: 12, finger: 0, mitre: 0, key: 0, rabbet: 0 }],
    ['fingers', fingers, { tail: 0, finger: 36, mitre: 0, key: 0, rabbet: 0 }],
    ['keyed mitres', keyedMitre, { tail: 0, finger: 0, mitre: 4, key: 12, rabbet: 0 }],
    ['rabbets', rabbet, { tail: 0, finger: 0, mitre: 0, key: 0, rabbet: 4 }],
  ])('hold the pieces of %s and of no other joint', (_, joint, expected) => {
    expect(countWork({ ...work, joint })).toMatchObject(expected);
  });

  it('count each board of a panel as milled by itself, its joints, and the panel once more when it is flattened', () => {
    const counts = (widest: string) => {
      const { panels } = roughCut({ parts: box.parts, widestBoard: '3 in', planer: { widest } });
      const { panel, ...rest } = countWork({ ...work, joint: dovetails, panels });
      return { panels, panel, ...rest };
    };
    const glued = counts('12 in');
    const boards = glued.panels.reduce((sum, { count, boards: each }) => sum + count * each, 0);
    const parts = glued.panels.reduce((sum, { count }) => sum + count, 0);
    expect(parts).toBe(5);
    expect(glued['solid part']).toBe(boards);
    expect(glued['edge joint']).toBe(boards - parts);
    expect(glued).toMatchObject({ panel: 5, 'square foot by hand': 0, part: 6, tail: 12 });
    expect(counts('3 in')).toMatchObject({ panel: 0 });
    expect(counts('3 in')['square foot by hand']).toBeGreaterThan(0);
  });

  it('count letters by hand or the minutes of a cutter, not both', () => {
    expect(countWork({ ...work, joint: dovetails, carvingMinutes: 12 })).toMatchObject({
      letter: 0,
      'carving minute': 12,
    });
  });

  it.each([
    [{ coats: -1 }, 'coats: -1 given; possible: a whole number from 0 to 1000 (coats of finish)'],
    [{ letters: 2.5 }, 'letters: 2.5 given; possible: a whole number'],
    [{ boards: Number.NaN }, 'boards: null given'],
    [{ carvingMinutes: -3 }, 'carvingMinutes: -3 given; possible: a number from 0 to 6000 min'],
  ])('refuse %j in one line', (bad, message) => {
    expect(() => countWork({ ...work, joint: dovetails, ...bad })).toThrow(message);
  });
});

describe('the operations of a box', () => {
  it('come after operations that are there, and send nobody to a caution that is not', () => {
    const ids = allOperations().map(({ id }) => id);
    for (const { after = [], cautions: wanted = [] } of allOperations()) {
      expect(ids).toEqual(expect.arrayContaining(after));
      const chosen = ['router', 'handle-by-hand', 'handle-by-machine'];
      expect(() => cautions(wanted.filter((id) => !chosen.includes(id)))).not.toThrow();
    }
  });

  it('stand in working order: none before what it comes after', () => {
    const ids = allOperations().map(({ id }) => id);
    for (const [place, { after = [] }] of allOperations().entries())
      for (const id of after) expect(ids.indexOf(id)).toBeLessThan(place);
  });
});
