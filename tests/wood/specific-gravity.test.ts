import { describe, expect, it } from 'vitest';
import { addSpecies, allSpecies } from '../../kernel-helpers/src/wood/species.js';
import { gravityAt12, howSure } from '../../kernel-helpers/src/wood/specific-gravity.js';

describe('specific gravity at 12 % moisture', () => {
  it('is the printed one where there is one', () => {
    expect(gravityAt12('walnut-black')).toMatchObject({ value: 0.55, fromMemory: false });
    expect(gravityAt12('walnut-black')).not.toHaveProperty('estimated');
    expect(howSure(gravityAt12('walnut-black'))).toBe('read in print');
  });

  /** The relation by hand: with the volume 26.5 % x 0.55 smaller from green to dry, three fifths of it by 12 %. */
  it('else comes from the basic one by the handbook’s relation, and says so', () => {
    const teak = gravityAt12('teak');
    const shrinkage = ((26.5 * 0.55) / 100) * (1 - 12 / 30);
    expect(teak?.value).toBeCloseTo(0.55 / (1 - shrinkage), 12);
    expect(howSure(teak)).toMatch(/^estimated: from the basic 0.55, Wood Handbook .* eq. 4-13/);
  });

  it('of a name that yards sell a mix under is the mean of its kinds', () => {
    const kinds = ['oak-water', 'oak-laurel', 'oak-willow'].map((id) => gravityAt12(id)?.value as number);
    const mix = gravityAt12('oak-red-water-laurel-willow');
    expect(mix?.value).toBeCloseTo(kinds.reduce((a, b) => a + b) / 3, 12);
    expect(howSure(mix)).toMatch(/^estimated: mean of 3 woods sold under this name/);
  });

  it('is known of a wood of one’s own that has the basic one alone', () => {
    const figures = { source: 'own boards', fromMemory: false };
    addSpecies([
      {
        id: 'pear-from-the-garden',
        commonName: 'Pear',
        botanicalName: 'Pyrus communis',
        group: 'hardwood',
        fibreSaturation: 30,
        specificGravity: { green: 0.6, at12: null, ...figures },
      },
    ]);
    expect(gravityAt12('pear-from-the-garden')?.value).toBeCloseTo(0.663, 3);
  });

  it('stays unknown where nothing is, and nothing is made up', () => {
    const unknown = allSpecies().filter(({ id }) => !gravityAt12(id));
    expect(unknown.map(({ id }) => id)).toContain('apple');
    for (const { specificGravity, kinds } of unknown) expect(specificGravity ?? kinds).toBeUndefined();
    expect(howSure(gravityAt12('apple'))).toBe('not published here');
    expect(unknown.length).toBeLessThan(27);
  });
});
