import fc from 'fast-check';
import { expect, it } from 'vitest';
import { sizeBookcase } from '../../../kernel-helpers/src/piece/bookcase/bookcase.js';
import { fittedParts, withFittedLid } from '../../../kernel-helpers/src/piece/box/fitted-parts.js';
import { sizeBox } from '../../../kernel-helpers/src/piece/box/size-box.js';

const box = sizeBox({ insideLength: 9.5, insideWidth: 6.25, insideDepth: 4, species: 'walnut-black' });
const bookcase = sizeBookcase({ species: 'cherry-black', width: 30, height: 48, depth: 11, shelves: 3 });

it("a box's lid is sawn 1/16 in over the width it is planed to when it is fitted, to the mark of a tape, and every other part as it was sized", () => {
  const parts = fittedParts({ piece: box, lid: { fittedWidth: 6.6 } });
  expect(parts.find(({ name }) => name === 'lid')?.width).toBe(6 + 42 / 64); // 6.6625 in, to the nearest 1/64
  expect(parts.filter(({ name }) => name !== 'lid')).toEqual(box.parts.filter(({ name }) => name !== 'lid'));
  expect(fittedParts({ piece: box })).toEqual(box.parts);
});

it('a lid with a raised pull is milled as thick as the pull needs', () => {
  const lid = fittedParts({ piece: box, lidStock: '1 in' }).find(({ name }) => name === 'lid');
  expect(lid?.thickness).toBe(1);
  expect(() => fittedParts({ piece: box, lidStock: '9 in' })).toThrow('lidStock: "9 in" given; possible');
});

it('letters and handle are laid out on the lid as wide as it was planed, all else as it was sized', () => {
  const fitted = withFittedLid(box, { fittedWidth: 6.6, fittedTongue: 0.24 });
  expect(fitted.parts.find(({ name }) => name === 'lid')?.width).toBe(6.6);
  expect(fitted.parts.filter(({ name }) => name !== 'lid')).toEqual(box.parts.filter(({ name }) => name !== 'lid'));
  expect(fitted.design).toEqual({ ...box.design, tongueThickness: 0.24 });
});

it('parts wider than any board are glued up from boards of one width; plywood is left whole', () => {
  const parts = fittedParts({ piece: bookcase, widestBoard: '6 in' });
  expect(parts.map(({ name, count, width }) => [name, count, width])).toEqual([
    ['side board', 4, 5.5],
    ['top board', 2, 5.5],
    ['bottom board', 2, 5.375],
    ['shelf board', 6, 5.375],
    ['back', 1, 29.25],
  ]);
});

it('glued up, a piece holds the same wood, from boards no wider than there are', () => {
  const wood = (parts: { count: number; length: number; width: number; thickness: number }[]) =>
    parts.reduce((sum, { count, length, width, thickness }) => sum + count * length * width * thickness, 0);
  fc.assert(
    fc.property(fc.integer({ min: 16, max: 300 }), (sixteenths) => {
      const widestBoard = sixteenths / 16;
      const parts = fittedParts({ piece: bookcase, widestBoard });
      expect(wood(parts)).toBeCloseTo(wood(bookcase.parts), 6);
      for (const { material, width } of parts)
        if (material === 'wood') expect(width).toBeLessThanOrEqual(widestBoard + 1e-9);
    }),
  );
});

it('refuses a board that is none', () => {
  expect(() => fittedParts({ piece: box, widestBoard: '0 in' })).toThrow('widestBoard: "0 in" given; possible: 1 in');
});
