import type { Formula, FormulaSymbol } from '../../measure/formula.js';

const inches = (tex: string, meaning: string, max?: number): FormulaSymbol => ({
  tex,
  meaning,
  unit: 'in',
  min: 0,
  max,
});

/** Width that a core-box bit cuts at the surface. */
export const chordFormula: Formula<'R' | 'd'> = {
  name: 'Chord of a core-box cut',
  result: inches('c', 'width at the surface'),
  expression: '2 * sqrt(min(d, R) * (2 * R - min(d, R)))',
  symbols: { R: inches('R', 'radius of the bit'), d: inches('d', 'depth of the cut') },
  source: 'geometry: the chord of a circle at a height; deeper than its radius the bit cuts its whole diameter',
};

/** How far a round wall leans under a finger. */
export const wallFormula: Formula<'R' | 'd'> = {
  name: 'Slope of the wall at the surface',
  result: { tex: '\\varphi', meaning: 'angle between wall and lid at the edge', unit: 'deg', min: 0 },
  expression: '90 - atan((R - min(d, R)) / sqrt(min(d, R) * (2 * R - min(d, R)) + 1e-18)) * 180 / pi',
  symbols: { R: inches('R', 'radius of the bit'), d: inches('d', 'depth of the cut') },
  source: 'geometry: the tangent of a circle at a height',
};
