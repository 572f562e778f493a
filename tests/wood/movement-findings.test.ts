import { describe, expect, it } from 'vitest';
import { lidFit } from '../../kernel-helpers/src/fit/lid-fit.js';
import { fastenerTravel, panelFit } from '../../kernel-helpers/src/fit/panel-fits.js';
import { movement } from '../../kernel-helpers/src/wood/movement.js';
import { movementFindings } from '../../kernel-helpers/src/wood/movement-findings.js';
import { addSpecies } from '../../kernel-helpers/src/wood/species.js';

const move = (species: string, ringAngle = 0, toMoisture = 12) =>
  movement({ across: 10, species, ringAngle, fromMoisture: 8, toMoisture });

/** Table 13-5 prints red oak 0.00158 and 0.00369, white oak 0.00180 and 0.00365; northern red oak 8.6 % and white oak 10.5 % stand in table 4-3. */
describe('a wood that yards sell in a mix', () => {
  it('moves by the larger figure of the mix and the species', () => {
    for (const id of ['oak-northern-red', 'oak-red-commercial']) {
      expect(move(id).change).toBeCloseTo(10 * 0.00369 * 4, 12);
      expect(move(id, 90).change).toBeCloseTo(10 * 0.00158 * 4, 12);
      expect(move(id).method.wood).toBe('oak-red-commercial');
    }
    for (const id of ['oak-white', 'oak-white-commercial']) {
      expect(move(id).change).toBeCloseTo((10 * 10.5 * 4) / (3000 - 20 * 10.5), 9);
      expect(move(id).method).toMatchObject({ wood: 'oak-white', basis: 'table of shrinkage' });
    }
  });

  it('does so in the long form too, where the species’ own shrinkage would be taken', () => {
    // 0.00369 goes with 10.31 % from green to dry.
    expect(move('oak-northern-red', 0, 16).method.figure).toBeCloseTo(10.31, 2);
    expect(move('oak-northern-red', 0, 16).method.passedOver).toBeCloseTo(8.6 / (3000 - 20 * 8.6), 9);
  });

  it('is said where the width is decided, with both figures', () => {
    const oak = { piece: 'lid', species: 'oak-northern-red', ringAngle: 0, moistures: [7, 11] };
    expect(movementFindings(oak)[1]).toMatchObject({
      verdict: 'watch',
      figures: '0.00369 for 1 %, of Red oak, commercial (group), the table of coefficients; passed over: 0.00304',
      reason: expect.stringMatching(/yards sell these woods as one/),
    });
    expect(movementFindings({ ...oak, species: 'oak-red-commercial' })).toHaveLength(1);
  });

  it('a wood that no mix has keeps its own figure, and nothing is said of it', () => {
    expect(move('walnut-black').method).toMatchObject({ wood: 'walnut-black' });
    expect(move('walnut-black').method).not.toHaveProperty('passedOver');
    expect(movementFindings({ piece: 'lid', species: 'walnut-black', ringAngle: 0, moistures: [7, 11] })).toHaveLength(
      1,
    );
  });
});

it('printed figures of one wood that disagree are said, with the one passed over', () => {
  const cited = { source: 'made up for this test', fromMemory: false };
  addSpecies([
    {
      id: 'wood-of-two-tables',
      commonName: 'Wood of two tables',
      botanicalName: 'Arbor dubia',
      group: 'imported',
      fibreSaturation: 30,
      coefficient: { radial: 0.001, tangential: 0.002, ...cited },
      shrinkage: { radial: 4, tangential: 9, volumetric: null, ...cited },
    },
  ]);
  const [, figure] = movementFindings({
    piece: 'lid',
    species: 'wood-of-two-tables',
    ringAngle: 0,
    moistures: [8, 10],
  });
  expect(figure?.figures).toBe(
    `${(9 / (3000 - 180)).toFixed(5)} for 1 %, of the table of shrinkage; passed over: 0.00200`,
  );
});

/** Table 13-5 heads its coefficients with 6 to 14 % moisture content. */
describe('moistures outside 6 to 14 %', () => {
  const verdict = (...moistures: number[]) =>
    movementFindings({ piece: 'lid', species: 'walnut-black', ringAngle: 0, moistures })[0]?.verdict;

  it.each([
    [[6, 10, 14], 'ok'],
    [[5.9, 10], 'watch'],
    [[10, 14.1], 'watch'],
    [[10, 8, 5], 'watch'],
  ] as const)('%j: %s', (moistures, expected) => {
    expect(verdict(...moistures)).toBe(expected);
  });

  it('are said by every fit that is worked with them, and by a top’s fasteners', () => {
    const year = (driest: number) => [
      { month: 1, moisture: driest },
      { month: 7, moisture: 11 },
    ];
    const wood = { species: 'walnut-black', ringAngle: 0, fittingMoisture: 8, air: [] };
    const said = (driest: number) => {
      const moving = { ...wood, moistures: year(driest) };
      const box = { insideWidth: 6.25, lidGrooveDepth: 0.25, tongueThickness: 0.25 };
      return [
        lidFit({ ...moving, box }).findings,
        panelFit({ ...moving, between: 8, grooveDepth: 0.25 }).findings,
        fastenerTravel({ ...moving, fromFixed: 9 }).findings,
      ].map((findings) => findings.find(({ rule }) => /moistures that the coefficients are for/.test(rule))?.verdict);
    };
    expect(said(7)).toEqual(['ok', 'ok', 'ok']);
    expect(said(5)).toEqual(['watch', 'watch', 'watch']);
  });
});
