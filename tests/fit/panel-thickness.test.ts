import { expect, it } from 'vitest';
import { panelThicknessFinding } from '../../kernel-helpers/src/fit/panel-thickness.js';

const quarter = { part: 'panel', panel: 0.25 };
const solid = {
  species: 'cherry-black',
  ringAngle: 0,
  fittingMoisture: 8,
  moistures: [
    { month: 1, moisture: 6 },
    { month: 7, moisture: 12 },
  ],
};
const verdict = (groove: number, of?: typeof solid) =>
  panelThicknessFinding({ ...quarter, groove, ...(of && { solid: of }) }).verdict;

it('0.1 to 0.3 mm of play is wanted; none is worth a look, less than none is impossible', () => {
  expect([0.25, 0.253, 0.255, 0.261, 0.263].map((groove) => verdict(groove))).toEqual([
    'watch',
    'watch',
    'ok',
    'ok',
    'watch',
  ]);
  expect(panelThicknessFinding({ ...quarter, groove: 0.24 })).toMatchObject({
    verdict: 'stop',
    absolute: 'impossible',
  });
});

it('a flat-sawn panel swells in thickness across its rings, a quarter-sawn one along them: worked by hand', () => {
  const swells = (ringAngle: number, panel: number) =>
    panelThicknessFinding({ part: 'panel', panel, groove: panel + 0.01, solid: { ...solid, ringAngle } });
  // 1 in of cherry by 4 %: radial 0.00126, tangential 0.00248; nine boards in ten at most x 1.287858.
  expect(swells(0, 1).figures).toContain('swells by 0.006 in');
  expect(swells(90, 1)).toMatchObject({ verdict: 'watch' });
  expect(swells(90, 1).figures).toContain('swells by 0.013 in');
  expect(swells(0, 1).verdict).toBe('ok');
});

it('a panel fitted wetter than it will ever be has no swelling to fear', () => {
  expect(verdict(0.255, { ...solid, fittingMoisture: 14 })).toBe('ok');
});
