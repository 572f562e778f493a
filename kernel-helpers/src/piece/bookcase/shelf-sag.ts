import { evaluate, type Formula } from '../../measure/formula.js';
import { ShopError } from '../../measure/shop-error.js';
import { species as speciesOf } from '../../wood/species.js';

/** Most sag that the eye forgives, in for each foot of span: common practice, no source. */
export const sagAFoot = 0.02;

/**
 * Stiffness of clear wood along its grain, from its density. Single boards differ by about 22 % (from memory), species from
 * the relation by up to a fifth.
 */
export const stiffnessFormula: Formula<'G'> = {
  name: 'Stiffness from density',
  result: { tex: 'E', meaning: 'modulus of elasticity in bending at 12 % moisture', unit: 'psi' },
  expression: '2800000 * G',
  symbols: { G: { tex: 'G', meaning: 'specific gravity at 12 % moisture', unit: '', min: 0.1, max: 1.3 } },
  source:
    'Forest Products Laboratory relation, printed in U.S. Army TM 5-852-4 / Air Force AFM 88-19 Chapter 4, Table 2-2 (air-dry wood, 2,800 G in 1,000 psi)',
};

/** Sag in the middle of a board that lies free on both ends under an even load, on the day it is loaded. */
export const sagFormula: Formula<'w' | 'L' | 'E' | 'b' | 't'> = {
  name: 'Sag of a shelf',
  // 5 q L^4 / (384 E I) with q = w / 12 for each inch and I = b t^3 / 12.
  result: { tex: '\\delta', meaning: 'sag in the middle', unit: 'in' },
  expression: '5 * w * L^4 / (384 * E * b * t^3)',
  symbols: {
    w: { meaning: 'load on each foot', unit: 'lb', min: 0 },
    L: { meaning: 'span between the sides', unit: 'in', min: 0 },
    E: { meaning: 'modulus of elasticity', unit: 'psi', min: 1 },
    b: { meaning: 'depth of the shelf', unit: 'in', min: 0.1 },
    t: { meaning: 'thickness of the shelf', unit: 'in', min: 0.05 },
  },
  source: 'beam theory: simply supported, uniform load (Gere and Timoshenko, Mechanics of Materials; from memory)',
};

/** A shelf and what stands on it. Inches; load in pounds on each foot. */
export interface LoadedShelf {
  species: string;
  span: number;
  depth: number;
  thickness: number;
  load: number;
}

/**
 * Sag of a shelf on the day it is loaded; left loaded for years it sags about as much again (from memory). A shelf held in
 * dadoes is a little stiffer than one that lies free.
 *
 * @returns in
 * @throws ShopError  a wood whose density is not known
 * @see {@link sagFormula}, {@link stiffnessFormula}
 */
export function shelfSag({ species, span, depth, thickness, load }: LoadedShelf): number {
  return evaluate(sagFormula, { w: load, L: span, E: stiffness(species), b: depth, t: thickness });
}

/**
 * Longest span at which a shelf sags no more than the eye forgives: {@link sagAFoot}.
 *
 * @returns in
 */
export function longestShelf(shelf: LoadedShelf): number {
  // Sag goes with the fourth power of the span, what is allowed with the first.
  return shelf.span * Math.cbrt((sagAFoot * (shelf.span / 12)) / shelfSag(shelf));
}

/**
 * Stiffness of a wood along its grain.
 *
 * @returns psi
 * @throws ShopError  a wood whose density is not known
 * @see {@link stiffnessFormula}
 */
export function stiffness(species: string): number {
  const gravity = speciesOf(species).specificGravity?.at12;
  if (!gravity)
    throw new ShopError(
      `species: "${species}" given; its density at 12 % moisture is not known, so its shelves' sag is not either; add it to own-species.json`,
    );
  return evaluate(stiffnessFormula, { G: gravity });
}
