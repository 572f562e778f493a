import * as z from 'zod';
import { evaluate, type Formula } from '../../measure/formula.js';
import { amount, readParameters } from '../../measure/parameters.js';
import type { Panel } from '../../stock/milling/panels.js';
import { species as speciesOf } from '../../wood/species.js';
import { type Gluing, planGluing } from './gluing.js';

/** Pressure that draws two edges together, by how dense the wood is. */
export const panelPressureFormula: Formula<'G'> = {
  name: 'Pressure on a glue line',
  result: { tex: 'p', meaning: 'pressure on the glue line', unit: 'psi' },
  expression: 'min(250, max(100, 100 + (G - 0.35) / 0.35 * 150))',
  symbols: { G: { meaning: 'specific gravity of the wood at 12 % moisture', unit: '', min: 0.05, max: 1.5 } },
  source:
    'a straight line of our own between 100 psi for light woods and 250 for the densest (Wood Handbook chapter 10, from memory); 100 psi read as typical for edge gluing (Wengert, trade magazine, 2014), 175 to 250 for hardwoods in a magazine',
};

/** Force that all clamps of a panel give together: it does not grow with the number of joints, which lie behind one another. */
export const clampForceFormula: Formula<'p' | 'L' | 't'> = {
  name: 'Force of the clamps on a panel',
  result: { tex: 'F', meaning: 'force of all clamps together', unit: 'lbf' },
  expression: 'p * L * t',
  symbols: {
    p: { meaning: 'pressure on the glue line', unit: 'psi', min: 0 },
    L: { meaning: 'length of the joint', unit: 'in', min: 0 },
    t: { meaning: 'thickness of the joint', unit: 'in', min: 0 },
  },
  source:
    'definition of pressure; worked example: Wengert, trade magazine: a joint 1 in by 10 in at 100 psi takes 1,000 lbf',
};

/** Pressure spreads from a jaw at 45 degrees: at the glue line it covers twice the way from jaw to line. */
export const clampSpacingFormula: Formula<'d'> = {
  name: 'From clamp to clamp',
  result: { tex: 's', meaning: 'from one clamp to the next', unit: 'in' },
  expression: '2 * d',
  symbols: { d: { meaning: 'from the jaw to the nearest glue line', unit: 'in', min: 0 } },
  source: 'common practice, no source',
};

/** How a panel is clamped. */
export interface ClampedPanel {
  part: string;
  /** On each panel: half of them under it, half over it, in turn. */
  clamps: number;
  /** From one to the next, and from an end to the first half of it, in. */
  spacing: number;
  /** On each clamp, lbf. */
  forceEach: number;
}

/** How the panels of a piece are glued. */
export interface PanelGluing extends Gluing {
  /** On the glue line, psi. */
  pressure: number;
  panels: ClampedPanel[];
}

/** What a sheet decides of the parts that are glued up, as later sheets need it. */
export interface GluedPanels {
  panels: Panel[];
  /** Id of the glue, minutes in clamps, hours until the panels may be flattened, ml, psi; the clamps of each. */
  panelGluing: {
    glue: string;
    clampMinutes: number;
    cureHours: number;
    millilitres: number;
    pressure: number;
    panels: ClampedPanel[];
  };
}

/** Two under a panel and one over it, so that it stays flat: common practice, no source. */
const leastClamps = 3;

const fields = z.object({
  clampForce: amount({ least: 50, most: 10000, unit: 'lbf', why: 'what one of your clamps gives' }).default(2000),
});

/**
 * How the panels of a piece are glued: clamps by length and by force, glue, and whether the one with most joints is closed in
 * time.
 *
 *   clamps = length / spacing, and no fewer than pressure x length x thickness / one clamp's force, rounded up, at least three
 *
 * @param gluing.panels  see `panelsOf`; one at least
 * @param gluing.species  density decides the pressure; one without a density is taken for the densest
 * @param gluing.clampForce  lbf; 2,000 unless told otherwise: a steel bar or pipe clamp gives 1,000 to 2,500 (from memory)
 * @param gluing.minutesPerJoint  to spread one edge joint and lay it together
 * @throws ShopError  one line: the field, the value given, what is possible, why
 * @see {@link clampSpacingFormula}, {@link clampForceFormula}, {@link panelPressureFormula}, {@link planGluing}
 */
export function planPanelGluing(gluing: {
  panels: readonly Panel[];
  species: string;
  glue: string;
  minutesPerJoint: number;
  temperatureC: number;
  clampForce?: number;
}): PanelGluing {
  const { panels, species, glue, minutesPerJoint, temperatureC } = gluing;
  const { clampForce } = readParameters(fields, { clampForce: gluing.clampForce });
  const pressure = evaluate(panelPressureFormula, { G: speciesOf(species).specificGravity?.at12 ?? 1 });
  const area = panels.reduce((sum, { edgeJoints, glued }) => sum + edgeJoints * glued.length * glued.thickness, 0);
  const joints = Math.max(...panels.map(({ boards }) => boards - 1));
  return {
    ...planGluing({ glue, joints, minutesPerJoint, temperatureC, area }),
    pressure,
    panels: panels.map(({ part, board, glued: { length, thickness } }): ClampedPanel => {
      const force = evaluate(clampForceFormula, { p: pressure, L: length, t: thickness });
      const spread = length / evaluate(clampSpacingFormula, { d: board.width });
      const clamps = Math.max(leastClamps, Math.ceil(spread - 1e-9), Math.ceil(force / clampForce - 1e-9));
      return { part, clamps, spacing: length / clamps, forceEach: force / clamps };
    }),
  };
}

/**
 * Panels and how they are glued, for the record: nothing where there is no panel.
 *
 * @param gluing  as {@link planPanelGluing} gives it for them
 */
export function panelDecision(panels: Panel[], gluing: PanelGluing | undefined): Partial<GluedPanels> {
  if (!gluing) return {};
  const { id, clampMinutes, cureHours } = gluing.glue;
  const { millilitres, pressure, panels: clamped } = gluing;
  return { panels, panelGluing: { glue: id, clampMinutes, cureHours, millilitres, pressure, panels: clamped } };
}
