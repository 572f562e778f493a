import { describe, expect, it } from 'vitest';
import { movement } from '../../kernel-helpers/src/wood/movement.js';
import { addSpecies, allSpecies, type Species, species } from '../../kernel-helpers/src/wood/species.js';

const own = (id: string, tangential = 0.0035): Species => ({
  id,
  commonName: 'Oak from the barn',
  botanicalName: 'Quercus sp.',
  group: 'hardwood',
  fibreSaturation: 30,
  coefficient: { radial: 0.0019, tangential, source: 'own boards, winter to summer', fromMemory: false },
});
const move = (id: string) => movement({ across: 10, species: id, ringAngle: 0, fromMoisture: 7, toMoisture: 8 }).change;

describe("a wood of the maker's own", () => {
  it('is used like any other once it is added', () => {
    expect(() => move('oak-from-the-barn')).toThrow(/is not in the list/);
    const before = allSpecies().length;
    expect(addSpecies([own('oak-from-the-barn')])).toHaveLength(1);
    expect(move('oak-from-the-barn')).toBeCloseTo(0.035, 9);
    expect(allSpecies()).toHaveLength(before + 1);
    expect(() => species('oak-from-the-bern')).toThrow(/nearest: .*oak-from-the-barn|nearest: /);
  });

  it('takes the place of itself when its cell is run again', () => {
    addSpecies([own('oak-again')]);
    addSpecies([own('oak-again', 0.004)]);
    expect(move('oak-again')).toBeCloseTo(0.04, 9);
    expect(allSpecies().filter(({ id }) => id === 'oak-again')).toHaveLength(1);
  });

  it.each([
    [
      [own('walnut-black')],
      'own species, entry walnut-black, field id: a published wood has this id; give yours another',
    ],
    [[own('elm-x'), own('elm-x')], 'own species, entry elm-x, field id: it stands there twice'],
    [[own('elm-y', 0.35)], 'own species, entry elm-y, field coefficient, tangential:'],
    [
      [own('elm-z', 0.001)],
      'own species, entry elm-z, field coefficient, tangential: 0.001 given; must be more than radial',
    ],
    [[{ ...own('elm-w'), hardness: 3 }], 'own species, entry elm-w, field'],
    [[{}], 'own species, entry undefined, field id:'],
    ['oak', 'woods: a list of entries is needed, as in data/species.json'],
  ])('names the entry and the field at fault, and adds none: %j', (woods, message) => {
    const before = allSpecies().length;
    expect(() =>
      addSpecies([own('good-one'), ...(woods as Species[])].slice(typeof woods === 'string' ? 1 : 0)),
    ).toThrow(typeof woods === 'string' ? 'own species' : message);
    expect(() => addSpecies(woods as Species[])).toThrow(message);
    expect(allSpecies()).toHaveLength(before);
  });
});
