import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { longestShelf, sagAFoot, shelfSag, stiffness } from '../../../kernel-helpers/src/piece/bookcase/shelf-sag.js';
import { addSpecies } from '../../../kernel-helpers/src/wood/species.js';

const shelf = { species: 'cherry-black', span: 30, depth: 10, thickness: 0.75, load: 25 };

describe('how far a shelf sags', () => {
  it('worked by hand: cherry, 30 in between the sides, 10 deep, 3/4 thick, 25 lb a foot', () => {
    // q = 25/12 = 2.08333 lb/in; I = 10 x 0.421875/12 = 0.3515625 in^4; E = 2,800,000 x 0.50 = 1,400,000 psi
    // 5 x 2.08333 x 810,000 / (384 x 1,400,000 x 0.3515625) = 8,437,500 / 189,000,000 = 0.044643
    expect(shelfSag(shelf)).toBeCloseTo(0.044643, 6);
  });

  it('doubled span: sixteen times; doubled thickness: an eighth; doubled load: double', () => {
    const sag = shelfSag(shelf);
    expect(shelfSag({ ...shelf, span: 60 })).toBeCloseTo(16 * sag, 9);
    expect(shelfSag({ ...shelf, thickness: 1.5 })).toBeCloseTo(sag / 8, 9);
    expect(shelfSag({ ...shelf, load: 50 })).toBeCloseTo(2 * sag, 9);
  });

  it('at its longest sags just as much as the eye forgives', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 8, max: 60, noNaN: true }),
        fc.double({ min: 0.5, max: 2, noNaN: true }),
        (span, t) => {
          const longest = longestShelf({ ...shelf, span, thickness: t });
          expect(shelfSag({ ...shelf, span: longest, thickness: t })).toBeCloseTo((sagAFoot * longest) / 12, 9);
        },
      ),
    );
  });

  // Modulus of elasticity at 12 % moisture, million psi: a table of U.S. hardwoods on synthmind.com (Tree Species Strength
  // Properties), read there; its figures are those of the Wood Handbook's table of hardwoods as remembered. One relation for all
  // woods is good to about a fifth.
  it.each([
    ['alder-red', 1.38],
    ['ash-white', 1.74],
    ['beech-american', 1.72],
    ['birch-yellow', 2.01],
    ['cherry-black', 1.49],
  ])('takes the stiffness of %s within a fifth of the %f million psi in print', (wood, printed) => {
    expect(stiffness(wood) / (printed * 1e6)).toBeGreaterThan(0.8);
    expect(stiffness(wood) / (printed * 1e6)).toBeLessThan(1.2);
  });

  it('says so where the density of a wood is not known', () => {
    addSpecies([
      {
        id: 'test-wood',
        commonName: 'Test wood',
        botanicalName: 'Lignum test',
        group: 'imported',
        fibreSaturation: 30,
      },
    ]);
    expect(() => shelfSag({ ...shelf, species: 'test-wood' })).toThrow(/species: "test-wood" given; its density/);
  });
});
