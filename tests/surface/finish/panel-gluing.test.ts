import fc from 'fast-check';
import { expect, it } from 'vitest';
import { evaluate } from '../../../kernel-helpers/src/measure/formula.js';
import type { PiecePart } from '../../../kernel-helpers/src/piece/piece.js';
import { roughCut } from '../../../kernel-helpers/src/stock/milling/rough-cut.js';
import {
  clampForceFormula,
  panelPressureFormula,
  planPanelGluing,
} from '../../../kernel-helpers/src/surface/finish/panel-gluing.js';

const board: PiecePart = {
  ...{ name: 'side', count: 2, length: 47.25, width: 11, thickness: 0.75 },
  ...{ material: 'wood', grain: 'upright', note: '' },
};
const panels = (part = board, widestBoard = 7.5) => roughCut({ parts: [part], widestBoard }).panels;
const gluing = { species: 'walnut-black', glue: 'pva-yellow', minutesPerJoint: 2, temperatureC: 20 };

it("a joint an inch thick and ten long at 100 psi takes 1,000 lbf, twenty long 2,000: a trade magazine's example (Wengert)", () => {
  expect(evaluate(clampForceFormula, { p: 100, L: 10, t: 1 })).toBe(1000);
  expect(evaluate(clampForceFormula, { p: 100, L: 20, t: 1 })).toBe(2000);
});

// The ends are the Wood Handbook's, chapter 10, from memory: 700 kPa and 1,700 kPa, 6.895 kPa to the psi.
it('pressure goes with density, from 700 kPa for the lightest woods to 1,700 for the densest', () => {
  const kPa = (G: number) => evaluate(panelPressureFormula, { G }) * 6.895;
  expect(kPa(0.3)).toBeCloseTo(700, -1.5);
  expect(Math.abs(kPa(0.9) - 1700)).toBeLessThan(30);
  expect(kPa(0.55)).toBeGreaterThan(kPa(0.42));
});

it('clamps stand so close that their pressure meets at the glue line, 45 degrees from each jaw', () => {
  fc.assert(
    fc.property(fc.integer({ min: 12, max: 90 }), fc.integer({ min: 3, max: 10 }), (length, widest) => {
      const [panel] = panels({ ...board, length }, widest);
      const [clamped] = planPanelGluing({ ...gluing, panels: panels({ ...board, length }, widest) }).panels;
      if (!panel || !clamped) throw new Error('11 in make no panel');
      // Each covers as far to either side as its jaw is away from the line.
      expect(clamped.spacing).toBeLessThanOrEqual(2 * panel.board.width + 1e-9);
      expect(clamped.clamps * clamped.spacing).toBeCloseTo(panel.glued.length, 9);
      expect(clamped.clamps, 'two under it and one over it keep it flat').toBeGreaterThanOrEqual(3);
    }),
  );
});

it('where the clamps are light, more of them give the pressure', () => {
  // Walnut 0.55: 186 psi on 48 by 13/16 in is 7,243 lbf. Five would do for the spread of 11 1/4 in.
  const at = (clampForce: number) => planPanelGluing({ ...gluing, panels: panels(), clampForce }).panels[0];
  expect(at(2000)).toMatchObject({ clamps: 5 });
  expect(at(1000)).toMatchObject({ clamps: 8 });
  for (const force of [500, 1000, 2000]) expect(at(force)?.forceEach).toBeLessThanOrEqual(force);
});

it('glue is what all its joints take: each once as long and as thick as it is glued', () => {
  // Two joints of 48 by 13/16 in are 78 square inches, at 200 g/m² and 1.1 g/ml.
  expect(planPanelGluing({ ...gluing, panels: panels() }).millilitres).toBeCloseTo((78 * 6.4516e-4 * 200) / 1.1, 6);
});

it('a panel of so many joints that the first skins over before the last is closed is a watch, then a stop', () => {
  const verdict = (widest: number) =>
    planPanelGluing({ ...gluing, panels: panels(board, widest) }).findings.find(
      ({ rule }) => rule === 'open time of the glue',
    )?.verdict;
  expect([verdict(7.5), verdict(1)]).toEqual(['ok', 'stop']);
});
