import { describe, expect, it } from 'vitest';
import { sizeBox } from '../../../kernel-helpers/src/piece/box/size-box.js';
import { chalkMarks } from '../../../kernel-helpers/src/stock/cutting/chalk-marks.js';

const { parts } = sizeBox({ insideLength: 9.5, insideWidth: 6.25, insideDepth: 4, species: 'walnut-black' });
const left = 'left side: seen from outside its front end is at the right';
const right = 'right side: seen from outside its front end is at the left';
const sides = (...rows: string[][]) => {
  const marks = chalkMarks({ parts, blanks: rows.map((row) => ({ parts: row })) });
  return [marks['side 1']?.words, marks['side 2']?.words];
};

describe('what is chalked on the parts', () => {
  it('the figure runs round: outside faces up, the side left of the front in the blank is the left one', () => {
    expect(sides(['side 1', 'front', 'side 2', 'back'])).toEqual([left, right]);
    expect(sides(['front', 'side 1', 'back', 'side 2'])).toEqual([right, left]);
    expect(sides(['back', 'side 1', 'front', 'side 2'])).toEqual([left, right]);
  });

  it('one side is the left one where no figure says which', () => {
    expect(sides(['side 1'], ['side 2'], ['front'], ['back'])).toEqual([left, right]);
  });

  it('says nothing of pieces without a front between two sides', () => {
    expect(chalkMarks({ parts, blanks: [{ parts: ['side 1', 'side 2', 'shelf 1'] }] })).toEqual({});
  });

  it('says what the front is still lowered to', () => {
    const { front, back, lid } = chalkMarks({
      parts,
      blanks: [{ parts: ['side 1', 'front', 'side 2', 'back', 'lid'] }],
    });
    expect(front).toEqual({ words: expect.stringContaining('comes down to 4 29/64 in'), upright: true });
    expect(back).toEqual({ words: '', upright: true });
    expect(lid?.upright).toBe(false);
  });
});
