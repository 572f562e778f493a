import { describe, expect, it } from 'vitest';
import { boxCounts, boxOperations } from '../../kernel-helpers/src/money/operations.js';
import { cautions } from '../../kernel-helpers/src/show/cautions.js';
import { box, dovetails, fingers, keyedMitre, rabbet } from './a-box.js';

const work = { box, boards: 2, letters: 7, coats: 3 };

describe('counts of a box', () => {
  it('come from the design', () => {
    expect(boxCounts({ ...work, joint: dovetails })).toMatchObject({
      board: 2,
      part: 6,
      corner: 4,
      tail: 12,
      groove: 7,
      lid: 1,
      letter: 7,
      coat: 3,
    });
    // Two sides 10 3/4 x 5, front 7 1/2 x 4 1/2 (lowered by the lid), back 7 1/2 x 5, all about; see the parts.
    const faces = box.parts.filter(({ material }) => material === 'wood').map((p) => 2 * p.count * p.length * p.width);
    expect(boxCounts({ ...work, joint: dovetails })['square foot']).toBeCloseTo(
      faces.reduce((sum, face) => sum + face, 0) / 144,
      12,
    );
  });

  it.each([
    ['dovetails', dovetails, { tail: 12, finger: 0, mitre: 0, key: 0, rabbet: 0 }],
    ['fingers', fingers, { tail: 0, finger: 36, mitre: 0, key: 0, rabbet: 0 }],
    ['keyed mitres', keyedMitre, { tail: 0, finger: 0, mitre: 4, key: 12, rabbet: 0 }],
    ['rabbets', rabbet, { tail: 0, finger: 0, mitre: 0, key: 0, rabbet: 4 }],
  ])('hold the pieces of %s and of no other joint', (_, joint, expected) => {
    expect(boxCounts({ ...work, joint })).toMatchObject(expected);
  });

  it('count letters by hand or the minutes of a cutter, not both', () => {
    expect(boxCounts({ ...work, joint: dovetails, carvingMinutes: 12 })).toMatchObject({
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
    expect(() => boxCounts({ ...work, joint: dovetails, ...bad })).toThrow(message);
  });
});

describe('the operations of a box', () => {
  it('come after operations that are there, and send nobody to a caution that is not', () => {
    const ids = boxOperations().map(({ id }) => id);
    for (const { after = [], cautions: wanted = [] } of boxOperations()) {
      expect(ids).toEqual(expect.arrayContaining(after));
      expect(() => cautions(...wanted)).not.toThrow();
    }
  });

  it('stand in working order: none before what it comes after', () => {
    const ids = boxOperations().map(({ id }) => id);
    for (const [place, { after = [] }] of boxOperations().entries())
      for (const id of after) expect(ids.indexOf(id)).toBeLessThan(place);
  });
});
