import { expect, it } from 'vitest';
import { evaluate } from '../../kernel-helpers/src/measure/formula.js';
import { allSpecies } from '../../kernel-helpers/src/wood/species.js';
import { gravityAt12, gravityFromBasicFormula } from '../../kernel-helpers/src/wood/specific-gravity.js';

/**
 * Wood Handbook FPL-GTR-190 (2010), eq. 4-13, against the woods whose specific gravity table 5-3 prints both green and at
 * 12 % (56 rows read, the others with a figure from memory). Printed to 0.01. The equation takes every wood to shrink by
 * 26.5 % of its basic specific gravity; single woods shrink by a quarter more or less, which is 0.03 of a heavy one: so 0.04
 * is held. Two rows lie off in print itself, willow oak (0.69 against 0.62) and black locust (0.69 against 0.74).
 */
it('the basic specific gravity gives the one at 12 % that is printed beside it', () => {
  const apart = ['oak-willow', 'locust-black'];
  const off = allSpecies().flatMap(({ id, specificGravity }) =>
    specificGravity?.green && specificGravity.at12 && !apart.includes(id)
      ? [{ id, off: evaluate(gravityFromBasicFormula, { Gb: specificGravity.green, M: 12 }) - specificGravity.at12 }]
      : [],
  );
  expect(off.length).toBeGreaterThan(95);
  for (const wood of off) expect(Math.abs(wood.off), wood.id).toBeLessThan(0.04);
  const mean = off.reduce((sum, wood) => sum + wood.off, 0) / off.length;
  expect(Math.abs(mean)).toBeLessThan(0.005);
});

/** Air-dry densities printed in chapter 2 and in fact sheets, kg/m³ at about 12 %: an estimate is held to 5 %. */
it.each([
  ['sapele', 674],
  ['mahogany-african', 513],
])('%s estimated from its basic figure weighs what is printed: %d kg/m³', (id, printed) => {
  const density = 1000 * (gravityAt12(id)?.value ?? 0) * 1.12;
  expect(Math.abs(density / printed - 1)).toBeLessThan(0.05);
});

/** Means of the members in table 5-3, worked from the printed rows apart from this code: 0.635, 0.667 and 0.72. */
it.each([
  ['oak-red-commercial', 0.635],
  ['oak-white-commercial', 0.667],
  ['hickory-true', 0.72],
])('%s is the mean of what is sold under its name', (id, mean) => {
  expect(gravityAt12(id)?.value).toBeCloseTo(mean, 3);
});
