import { expect, it } from 'vitest';
import { ofHundred } from '../../kernel-helpers/src/measure/of-hundred.js';

it.each([
  [1, 'over 99'],
  [0.9951, 'over 99'],
  [0.9949, '99'],
  [0.934, '93'],
  [0.5, '50'],
  [0.0051, '1'],
  [0.0049, 'under 1'],
  [0, 'under 1'],
])('odds of %f are said as %s of a hundred', (share, said) => {
  expect(ofHundred(share)).toBe(said);
});

it('nothing is said to be certain', () => {
  for (let cases = 0; cases <= 10_000; cases++) expect(ofHundred(cases / 10_000)).not.toMatch(/^(0|100)$/);
});
