import { expect, it } from 'vitest';
import { readInsideSizes } from '../../kernel-helpers/src/piece/inside-sizes.js';

it.each([
  ['13 1/4 x 8 x 5 in', ['13 1/4 in', '8 in', '5 in']],
  ['13 1/4 by 8 by 5', ['13 1/4 in', '8 in', '5 in']],
  ['240x160×90 mm', ['240 mm', '160 mm', '90 mm']],
  ['24 cm x 160 mm x 9 cm', ['24 cm', '160 mm', '9 cm']],
  ['9½" X 6" X 4"', ['9½"', '6"', '4"']],
  ['13.25 x 8 x 5"', ['13.25 "', '8 "', '5"']],
  ['1 ft 1 in x 8 x 5', ['1 ft 1 in', '8 in', '5 in']],
])('%s is front to back, side to side, depth', (typed, sizes) => {
  expect(Object.values(readInsideSizes(typed))).toEqual(sizes);
});

it.each(['', '13 1/4', '8 x 5', '1 x 2 x 3 x 4', 'x x x'])('%o is refused with how to write it', (typed) => {
  expect(() => readInsideSizes(typed)).toThrow(
    `inside: "${typed}" given; possible: three sizes, such as 13 1/4 x 8 x 5 in`,
  );
});
