import { bisect } from '../../measure/bisect.js';
import { evaluate, type Formula } from '../../measure/formula.js';
import { ShopError } from '../../measure/shop-error.js';
import { gravityAt12 } from '../../wood/specific-gravity.js';
import { stiffness } from '../../wood/stiffness.js';

/**
 * Most sag that the eye forgives, in for each foot of span: 1/32, which is a little less than the 360th part of the span.
 * Common practice, no source.
 */
export const sagAFoot = 1 / 32;

/** What a foot of the bare shelf weighs, at 12 % moisture. */
export const ownWeightFormula: Formula<'G' | 'b' | 't'> = {
  name: 'Own weight of a shelf',
  result: { tex: 'w_0', meaning: 'weight of each foot of the shelf', unit: 'lb' },
  // Water weighs 62.43 lb a cubic foot; a foot of shelf is b t / 144 of one.
  expression: '62.43 * G * 1.12 * b * t / 144',
  symbols: {
    G: { tex: 'G', meaning: 'specific gravity at 12 % moisture', unit: '', min: 0.1, max: 1.3 },
    b: { meaning: 'depth of the shelf', unit: 'in', min: 0.1 },
    t: { meaning: 'thickness of the shelf', unit: 'in', min: 0.001 },
  },
  source: 'Wood Handbook FPL-GTR-190 (2010), eq. 4-14: density from specific gravity and moisture',
};

/** Sag in the middle of a board that lies free on both ends under an even load, on the day it is loaded. */
export const sagFormula: Formula<'w' | 'L' | 'E' | 'b' | 't'> = {
  name: 'Sag of a shelf',
  // 5 q L^4 / (384 E I) with q = w / 12 for each inch and I = b t^3 / 12.
  result: { tex: '\\delta', meaning: 'sag in the middle on the first day', unit: 'in' },
  expression: '5 * w * L^4 / (384 * E * b * t^3)',
  symbols: {
    w: { meaning: 'load and own weight on each foot', unit: 'lb', min: 0 },
    L: { meaning: 'span between the sides', unit: 'in', min: 0 },
    E: { meaning: 'modulus of elasticity', unit: 'psi', min: 1 },
    b: { meaning: 'depth of the shelf', unit: 'in', min: 0.1 },
    t: { meaning: 'thickness of the shelf', unit: 'in', min: 0.001 },
  },
  source: 'beam theory: simply supported, uniform load (Gere and Timoshenko, Mechanics of Materials; from memory)',
};

/** Sag of a shelf that stays loaded for years. Creep of single boards runs from nothing to twice the first sag. */
export const lastingSagFormula: Formula<'d'> = {
  name: 'Sag of a shelf that stays full',
  result: { tex: '\\delta_\\infty', meaning: 'sag in the middle after years', unit: 'in' },
  expression: '1.6 * d',
  symbols: { d: { tex: '\\delta', meaning: 'sag on the first day', unit: 'in', min: 0 } },
  source:
    'EN 1995-1-1, table 3.2: 60 % more for solid timber in heated rooms (from memory); the U.S. National Design Specification for Wood Construction, 3.5.2, takes 50 % for seasoned lumber (read)',
};

/** A shelf and what stands on it. Inches; load in pounds on each foot. */
export interface LoadedShelf {
  species: string;
  span: number;
  depth: number;
  thickness: number;
  load: number;
}

/** How far a shelf sags in its middle. Inches. */
export interface ShelfSag {
  /** Pounds on each foot, for the bare shelf. */
  ownWeight: number;
  firstDay: number;
  /** After years under the same load. */
  lasting: number;
}

/**
 * Sag of a shelf under its load and its own weight. A shelf held in dadoes is a little stiffer than one that lies free.
 *
 * @throws ShopError  a wood whose stiffness or density is not known
 * @see {@link ownWeightFormula}, {@link sagFormula}, {@link lastingSagFormula}, `stiffness`
 */
export function shelfSag({ species, span, depth: b, thickness: t, load }: LoadedShelf): ShelfSag {
  const gravity = gravityAt12(species);
  const stiff = stiffness(species);
  if (!gravity || !stiff)
    throw new ShopError(
      `species: "${species}" given; its density at 12 % moisture is not known, so its shelves' sag is not either; add it to own-species.json`,
    );
  const ownWeight = evaluate(ownWeightFormula, { G: gravity.value, b, t });
  const firstDay = evaluate(sagFormula, { w: load + ownWeight, L: span, E: stiff.psi, b, t });
  return { ownWeight, firstDay, lasting: evaluate(lastingSagFormula, { d: firstDay }) };
}

/** Most that a shelf of this span may sag, in. */
export const mostSag = (span: number): number => (sagAFoot * span) / 12;

/**
 * Longest span at which a shelf that stays full sags no more than the eye forgives: {@link sagAFoot}.
 *
 * @returns in
 */
export function longestShelf(shelf: LoadedShelf): number {
  // Sag goes with the fourth power of the span, what is allowed with the first.
  return shelf.span * Math.cbrt(mostSag(shelf.span) / shelfSag(shelf).lasting);
}

/**
 * Least thickness at which this shelf sags no more than the eye forgives, its own weight growing with it.
 *
 * @returns in
 */
export function thinnestShelf(shelf: LoadedShelf): number {
  const over = (thickness: number) => mostSag(shelf.span) - shelfSag({ ...shelf, thickness }).lasting;
  return bisect(over, 0.001, 24, 1e-6);
}
