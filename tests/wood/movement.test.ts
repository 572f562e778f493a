import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { movement } from '../../kernel-helpers/src/wood/movement.js';
import { allSpecies, species } from '../../kernel-helpers/src/wood/species.js';

const woods = allSpecies().filter(({ coefficient, shrinkage }) => coefficient || shrinkage?.tangential != null);
const anyWood = fc.constantFrom(...woods.map(({ id }) => id));
const moisture = fc.integer({ min: 0, max: 220 }).map((tenths) => tenths / 10);

describe('wood across its grain', () => {
  it('goes there and back to where it was (long form)', () => {
    fc.assert(
      fc.property(anyWood, fc.double({ min: 0, max: 90, noNaN: true }), moisture, (id, ringAngle, wet) => {
        // One end outside 6 to 14 % keeps both ways on the long form, which is exact.
        const wood = { species: id, ringAngle };
        const there = movement({ ...wood, across: 10, fromMoisture: 3, toMoisture: wet }).change;
        const back = movement({ ...wood, across: 10 + there, fromMoisture: wet, toMoisture: 3 }).change;
        expect(there + back).toBeCloseTo(0, 9);
      }),
    );
  });

  it('swells when it takes up moisture, and the band holds the mean', () => {
    fc.assert(
      fc.property(
        anyWood,
        fc.double({ min: 0, max: 90, noNaN: true }),
        moisture,
        moisture,
        (id, ringAngle, from, to) => {
          const { change, low, high } = movement({
            across: 6,
            species: id,
            ringAngle,
            fromMoisture: from,
            toMoisture: to,
          });
          expect(Math.sign(change)).toBe(Math.sign(to - from));
          expect(low).toBeLessThanOrEqual(change);
          expect(high).toBeGreaterThanOrEqual(change);
        },
      ),
    );
  });

  it('moves less the nearer the rings stand to upright', () => {
    for (const { id } of woods) {
      const at = (ringAngle: number) =>
        movement({ across: 6, species: id, ringAngle, fromMoisture: 7, toMoisture: 12 }).change;
      for (let angle = 0; angle < 90; angle += 15) expect(at(angle + 15)).toBeLessThan(at(angle));
    }
  });

  it('takes the larger figure of a wood whose tables disagree, and says which', () => {
    const { method } = movement({ across: 6, species: 'mahogany-true', ringAngle: 0, fromMoisture: 7, toMoisture: 12 });
    expect(method.figure).toBe(0.00238);
    expect(method.basis).toBe('table of coefficients');
    expect(method.fromMemory).toBe(true);
    const oak = movement({ across: 6, species: 'oak-black', ringAngle: 0, fromMoisture: 7, toMoisture: 12 }).method;
    expect(oak.basis).toBe('table of shrinkage');
    expect(oak.figure).toBeCloseTo(11.1 / (3000 - 20 * 11.1), 9);
  });

  it.each([
    [{ species: 'walnut' }, /species: "walnut" is not in the list; nearest: walnut-black/],
    [{ ringAngle: 100 }, /ringAngle: 100 given; 0 \(flat-sawn\) to 90 degrees/],
    [{ toMoisture: 31 }, /toMoisture: 31 % given; 0 to 30 % is possible/],
    [{ species: 'redwood-old-growth', toMoisture: 25 }, /toMoisture: 25 % given; 0 to 22 %/],
    [{ fromMoisture: Number.NaN }, /fromMoisture: NaN/],
  ])('refuses %j in one line', (bad, message) => {
    const good = { across: 6, species: 'walnut-black', ringAngle: 0, fromMoisture: 7, toMoisture: 12 };
    expect(() => movement({ ...good, ...bad })).toThrow(message);
  });
});

it('every wood has its source beside each figure', () => {
  for (const { shrinkage, coefficient, specificGravity } of allSpecies())
    for (const figure of [shrinkage, coefficient, specificGravity])
      if (figure) expect(figure.source).toContain('Forest Products Laboratory');
  expect(species('walnut-black').coefficient).toMatchObject({ radial: 0.0019, tangential: 0.00274, fromMemory: false });
});
