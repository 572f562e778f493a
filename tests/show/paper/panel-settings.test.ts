import { expect, it } from 'vitest';
import type { PiecePart } from '../../../kernel-helpers/src/piece/piece.js';
import { panelSettings } from '../../../kernel-helpers/src/show/paper/panel-settings.js';
import { roughCut } from '../../../kernel-helpers/src/stock/milling/rough-cut.js';
import { panelDecision, planPanelGluing } from '../../../kernel-helpers/src/surface/finish/panel-gluing.js';

const shelf: PiecePart = {
  ...{ name: 'shelf', count: 3, length: 30, width: 11, thickness: 0.75 },
  ...{ material: 'wood', grain: 'side to side', note: '' },
};
const lines = (widest: string) => {
  const { panels } = roughCut({ parts: [shelf], widestBoard: 6, planer: { widest } });
  const glue = { species: 'walnut-black', glue: 'pva-yellow', minutesPerJoint: 2, temperatureC: 20 };
  const gluing = planPanelGluing({ panels, ...glue });
  return panelSettings(panelDecision(panels, gluing), (inches) => `${inches} in`);
};

it('the bench list says how wide boards are jointed, how a panel is clamped, and to what it is flattened', () => {
  const settings = lines('12 in');
  const said = settings['edge-joints']?.join('\n');
  expect(said).toContain('3 shelf: 2 boards each, jointed to 5.625 in; glued up 11.25 in wide, 0.8125 in thick');
  expect(said).toMatch(/shelf: 3 clamps, 10.25 in from one to the next/);
  expect(said).toContain('30 minutes in clamps at least');
  expect(settings['flatten-panels']).toEqual(['3 shelf: to 0.75 in thick, as much off either face']);
});

it('a panel wider than the planer is flattened by hand, by a drum sander or elsewhere', () => {
  const settings = lines('10 in');
  expect(settings['flatten-panels']).toEqual([]);
  expect(settings['flatten-by-hand']?.join('\n')).toMatch(
    /^3 shelf: to 0.75 in thick[\s\S]*drum sander or a wider planer/,
  );
});

it('says nothing where nothing is glued up', () => {
  expect(panelSettings({}, String)).toEqual({});
});
