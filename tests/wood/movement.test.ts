import fc from 'fast-check';
import { probit } from 'simple-statistics';
import { describe, expect, it } from 'vitest';
import { movement } from '../../kernel-helpers/src/wood/movement.js';
import { allSpecies, soldTogether, species, woodName } from '../../kernel-helpers/src/wood/species.js';

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

  it('gives the figure of its example, with the band of nine boards in ten about it', () => {
    const wide = { across: 9.25, species: 'cherry-black', ringAngle: 0 };
    const swelling = movement({ ...wide, fromMoisture: 8, toMoisture: 12 });
    expect(swelling.change).toBeCloseTo(9.25 * 0.00248 * 4, 12); // 0.0918
    // Boards differ by 17.5 %; one in twenty is past either end of a normal distribution.
    const spread = probit(0.95) * 0.175;
    const shrinking = movement({ ...wide, fromMoisture: 12, toMoisture: 8 });
    for (const { change, low, high } of [swelling, shrinking]) {
      expect((high - change) / Math.abs(change)).toBeCloseTo(spread, 3);
      expect((change - low) / Math.abs(change)).toBeCloseTo(spread, 3);
    }
  });

  it('worked by hand in the long form: walnut from fibre saturation to ovendry shrinks by its printed 7.8 %', () => {
    const green = { across: 10, species: 'walnut-black', ringAngle: 0, fromMoisture: 30 };
    expect(movement({ ...green, toMoisture: 0 }).change).toBeCloseTo(-0.78, 9);
    // In proportion to the water lost.
    expect(movement({ ...green, toMoisture: 15 }).change).toBeCloseTo(-0.39, 9);
    expect(movement({ ...green, across: 9.22, fromMoisture: 0, toMoisture: 30 }).change).toBeCloseTo(0.78, 9);
  });

  it('takes the short form from 6 to 14 %, both included, and the long form past either', () => {
    const form = (fromMoisture: number, toMoisture: number) =>
      movement({ across: 6, species: 'walnut-black', ringAngle: 0, fromMoisture, toMoisture }).method.form;
    expect([form(6, 14), form(14, 6), form(6, 6), form(9, 11)]).toEqual(Array(4).fill('coefficient'));
    expect([form(5.9, 14), form(6, 14.1), form(14.1, 6), form(10, 5.9)]).toEqual(Array(4).fill('shrinkage'));
  });

  it('turns a strain by the square of the cosine: three parts of four at 30 degrees, half and half at 45', () => {
    const at = (ringAngle: number) =>
      movement({ across: 6, species: 'walnut-black', ringAngle, fromMoisture: 7, toMoisture: 12 }).method;
    const [tangential, radial] = [0.00274, 0.0019];
    expect(at(30).figure).toBeCloseTo(0.75 * tangential + 0.25 * radial, 12);
    expect(at(45).figure).toBeCloseTo((tangential + radial) / 2, 12);
    expect(at(45)).toMatchObject({ tangential, radial });
    expect([at(0).figure, at(90).figure]).toEqual([tangential, radial]);
  });

  it('takes the table that its form is made from unless the other gives 2 % more, in every wood that no mix is sold with', () => {
    const alone = woods.filter((wood) => soldTogether(wood).length === 0);
    for (const { id, coefficient, shrinkage, fibreSaturation } of alone)
      for (const [ringAngle, direction] of [
        [0, 'tangential'],
        [90, 'radial'],
      ] as const) {
        const total = shrinkage?.tangential == null ? undefined : (shrinkage[direction] as number);
        const fromShrinkage = total && total / (100 * fibreSaturation - total * (fibreSaturation - 10));
        const printed = coefficient?.[direction];
        const short = { across: 6, species: id, ringAngle, fromMoisture: 7, toMoisture: 12 };
        const { figure, basis } = movement(short).method;
        const useShrinkage = printed === undefined || (fromShrinkage ?? 0) > 1.02 * printed;
        expect(basis, id).toBe(useShrinkage ? 'table of shrinkage' : 'table of coefficients');
        expect(figure, id).toBeCloseTo((useShrinkage ? fromShrinkage : printed) as number, 12);
        const long = movement({ ...short, fromMoisture: 3 }).method;
        const useCoefficient = fromShrinkage === undefined || (printed ?? 0) > 1.02 * fromShrinkage;
        expect(long.basis, id).toBe(useCoefficient ? 'table of coefficients' : 'table of shrinkage');
        if (!useCoefficient) expect(long.figure, id).toBeCloseTo(total as number, 9);
      }
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
    [{ species: 'wallnut' }, /species: "wallnut" is not in the list; nearest: walnut-black/],
    [{ ringAngle: 91 }, /ringAngle: 91 given; 0 \(flat-sawn\) to 90 degrees/],
    [{ ringAngle: -1 }, /ringAngle: -1 given; 0 \(flat-sawn\) to 90 degrees/],
    [{ toMoisture: -1 }, /toMoisture: -1 % given; 0 to 30 % is possible/],
    [{ species: 'pine-sand' }, /species: pine-sand has no published movement figure/],
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

it('a wood is named as one says it', () => {
  expect(['walnut-black', 'pine-eastern-white', 'apple'].map(woodName)).toEqual([
    'black walnut',
    'eastern white pine',
    'apple',
  ]);
});
