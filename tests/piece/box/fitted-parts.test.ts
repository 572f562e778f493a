import { expect, it } from 'vitest';
import { fittedParts, withFittedLid } from '../../../kernel-helpers/src/piece/box/fitted-parts.js';
import { sizeBox } from '../../../kernel-helpers/src/piece/box/size-box.js';

const box = sizeBox({ insideLength: 9.5, insideWidth: 6.25, insideDepth: 4, species: 'walnut-black' });

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
