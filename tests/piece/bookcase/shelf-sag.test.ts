import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  longestShelf,
  mostSag,
  shelfSag,
  thinnestShelf,
} from '../../../kernel-helpers/src/piece/bookcase/shelf-sag.js';
import { addSpecies } from '../../../kernel-helpers/src/wood/species.js';

const shelf = { species: 'cherry-black', span: 30, depth: 10, thickness: 0.75, load: 25 };

describe('how far a shelf sags', () => {
  it('worked by hand: cherry, 30 in between the sides, 10 deep, 3/4 thick, 25 lb a foot', () => {
    // Cherry: G 0.50, E 10,300 MPa = 1,493,888 psi. Own weight 62.43 x 0.50 x 1.12 x 7.5/144 = 1.8208 lb a foot.
    // q = 26.8208/12 = 2.23507 lb/in; I = 10 x 0.421875/12 = 0.3515625 in^4
    // 5 x 2.23507 x 810,000 / (384 x 1,493,888 x 0.3515625) = 9,052,020 / 201,674,900 = 0.044884; 1.6 times that 0.071815
    const { ownWeight, firstDay, lasting } = shelfSag(shelf);
    expect(ownWeight).toBeCloseTo(1.8209, 3);
    expect(firstDay).toBeCloseTo(0.044884, 5);
    expect(lasting).toBeCloseTo(0.071815, 5);
  });

  /** The beam cut into short pieces, its curvature summed twice: no formula of sag in it. */
  it('agrees with a beam bent piece by piece', () => {
    const { span, depth, thickness, load } = shelf;
    const { ownWeight, firstDay } = shelfSag(shelf);
    const q = (load + ownWeight) / 12;
    const stiff = (10300 * 145.0377 * depth * thickness ** 3) / 12;
    const pieces = 2000;
    const dx = span / 2 / pieces;
    let slope = 0;
    let rise = 0;
    // From the middle, where it lies level, out to a support.
    for (let i = 0; i < pieces; i++) {
      const x = span / 2 + (i + 0.5) * dx;
      const bend = ((q * x * (span - x)) / 2 / stiff) * dx;
      rise += (slope + bend / 2) * dx;
      slope += bend;
    }
    expect(firstDay).toBeCloseTo(rise, 6);
  });

  it('doubled span: sixteen times; doubled load and own weight: double', () => {
    const { firstDay, ownWeight } = shelfSag(shelf);
    expect(shelfSag({ ...shelf, span: 60 }).firstDay).toBeCloseTo(16 * firstDay, 9);
    expect(shelfSag({ ...shelf, load: 50 + ownWeight }).firstDay).toBeCloseTo(2 * firstDay, 9);
  });

  it('bends a little under nothing but itself', () => {
    expect(shelfSag({ ...shelf, load: 0 }).firstDay).toBeGreaterThan(0);
  });

  it('at its longest, and at its thinnest, sags just as much as the eye forgives after years', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 8, max: 60, noNaN: true }),
        fc.double({ min: 0.5, max: 2, noNaN: true }),
        (span, thickness) => {
          const longest = longestShelf({ ...shelf, span, thickness });
          expect(shelfSag({ ...shelf, span: longest, thickness }).lasting).toBeCloseTo(mostSag(longest), 9);
          const thinnest = thinnestShelf({ ...shelf, span, thickness });
          expect(shelfSag({ ...shelf, span, thickness: thinnest }).lasting).toBeCloseTo(mostSag(span), 5);
        },
      ),
    );
  });

  it('may sag by 1/32 in a foot, which the 360th part of the span allows too', () => {
    expect(mostSag(36)).toBe(3 / 32);
    for (const span of [12, 30, 60]) expect(mostSag(span)).toBeLessThan(span / 360);
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
