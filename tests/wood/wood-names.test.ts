import { describe, expect, it } from 'vitest';
import { allSpecies, species } from '../../kernel-helpers/src/wood/species.js';
import { asSaid, woodsCalled } from '../../kernel-helpers/src/wood/wood-names.js';

describe('a wood called by its ordinary name', () => {
  it.each([
    ['white oak', 'oak-white'],
    ['Oak, white', 'oak-white'],
    ['red oak', 'oak-red-commercial'],
    ['northern red oak', 'oak-northern-red'],
    ['walnut', 'walnut-black'],
    ['Black Walnut', 'walnut-black'],
    ['cherry', 'cherry-black'],
    ['sugar maple', 'maple-sugar'],
    ['rock maple', 'maple-sugar'],
    ['poplar', 'yellow-poplar'],
    ['Spanish cedar', 'spanish-cedar'],
    ['western red cedar', 'cedar-western-red'],
    ['genuine mahogany', 'mahogany-true'],
    ['African mahogany', 'mahogany-african'],
    ['jatoba', 'courbaril'],
    ['beech', 'beech-american'],
    ['white  ash ', 'ash-white'],
    ['cypress', 'baldcypress'],
    ['walnut-black', 'walnut-black'],
    ['Walnut-Black', 'walnut-black'],
  ])('%s is %s', (name, id) => {
    expect(species(name).id).toBe(id);
  });

  it('of several woods asks which of them, the usual one first', () => {
    expect(() => species('soft maple')).toThrow(
      'species: "soft maple" is the name of several woods; which of them: red maple, silver maple, bigleaf maple',
    );
    expect(() => species('mahogany')).toThrow('which of them: african mahogany, true mahogany');
    expect(() => species('oak')).toThrow(/several woods; which of them: black oak, .*white oak/);
  });

  it('is named when it is written nearly right', () => {
    expect(() => species('wallnut')).toThrow('nearest: ');
    expect(() => species('whit oak')).toThrow('"whit oak" is not in the list; nearest: white oak');
    expect(() => species('plastic')).toThrow('none is near it');
    for (const nothing of ['', ' ', '12', '/']) expect(() => species(nothing)).toThrow('is not in the list');
  });

  it('finds every wood of the list by the name one says it by', () => {
    for (const wood of allSpecies()) expect(woodsCalled(asSaid(wood), allSpecies()), asSaid(wood)).toContain(wood);
    const lost = allSpecies().filter((wood) => woodsCalled(asSaid(wood), allSpecies()).length !== 1);
    expect(lost.map(asSaid)).toEqual([]);
  });

  it('names woods of the list only, in what yards call them', () => {
    for (const name of ['soft maple', 'hard maple', 'hickory', 'red cedar', 'southern yellow pine', 'redwood'])
      expect(woodsCalled(name, allSpecies()).length, name).toBeGreaterThan(1);
  });
});
