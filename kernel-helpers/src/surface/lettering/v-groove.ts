import type { Formula } from '../../measure/formula.js';

const bitAngle = { tex: '\\beta', meaning: "angle of the bit's point", unit: 'deg', min: 20, max: 150 };

/** Depth at which a V-bit is as wide as the stroke. */
export const vDepthFormula: Formula<'w' | 'b'> = {
  name: 'Depth of a V-groove',
  result: { tex: 'd', meaning: 'depth', unit: 'in', min: 0 },
  expression: '(w / 2) / tan(b * pi / 360)',
  symbols: { w: { meaning: 'width of the stroke', unit: 'in', min: 0 }, b: bitAngle },
  source: 'geometry: the half width over the depth is the tangent of half the angle',
};

/** Width of a V-groove at the surface. */
export const vWidthFormula: Formula<'d' | 'b'> = {
  name: 'Width of a V-groove',
  result: { tex: 'w', meaning: 'width at the surface', unit: 'in', min: 0 },
  expression: '2 * d * tan(b * pi / 360)',
  symbols: { d: { meaning: 'depth', unit: 'in', min: 0 }, b: bitAngle },
  source: 'geometry: the half width over the depth is the tangent of half the angle',
};
