import { randomNormal } from 'd3-random';
import type { Formula, FormulaSymbol } from '../measure/formula.js';
import { evaluate } from '../measure/formula.js';

/**
 * How far the pace of a whole piece scatters around its estimate, as a part of it. A wood, a joint or a month that goes badly
 * makes every step of a piece slow, so its steps are not independent. Common practice, no source: 15 to 20 % until the shop
 * book knows better.
 */
export const usualPace = 0.18;

const hours = (meaning: string, tex: string): FormulaSymbol => ({ tex, meaning, unit: 'h', min: 0 });

/** Variance of a step that is done at the pace of its piece. */
export const pacedVariance: Formula<'c' | 's' | 't'> = {
  name: 'Variance of a step at the pace of its piece',
  result: { tex: 'S^2', meaning: 'variance', unit: 'h²' },
  expression: '(1 + c^2) * s^2 + c^2 * t^2',
  symbols: {
    c: { meaning: 'scatter of the pace', unit: '', min: 0, max: 1 },
    s: hours('deviation of the step by itself', 's'),
    t: hours('mean of the step', '\\bar t'),
  },
  source:
    'variance of a product of independent quantities: Goodman 1960, J. Am. Stat. Assoc. 55(292), the pace with mean 1 (from memory)',
};

/** How many pieces the usual scatter counts as, beyond the first of the shop's own. Our assumption: no source. */
const weight = 4;

/**
 * What past pieces say of how far their pace scatters, drawn toward the usual figure when they are few: scaled inverse
 * chi-square, its mean taken as known, on logarithms of taken over estimated. What all pieces have in common is left to
 * the corrections of operations.
 *
 * @param pieces  hours estimated and taken of each; one without either is passed over
 * @returns a part of the estimate: 18 % is 0.18
 * @see Gelman et al., Bayesian Data Analysis, 3rd ed. 2013, section 2.6 (from memory)
 */
export function paceOf(pieces: readonly { estimated: number; actual: number }[]): number {
  const ratios = pieces
    .filter(({ estimated, actual }) => estimated > 0 && actual > 0)
    .map(({ estimated, actual }) => Math.log(actual / estimated));
  if (ratios.length < 2) return usualPace;
  const mean = ratios.reduce((sum, ratio) => sum + ratio, 0) / ratios.length;
  const squares = ratios.reduce((sum, ratio) => sum + (ratio - mean) ** 2, 0);
  const variance = (weight * Math.log1p(usualPace ** 2) + squares) / (weight + ratios.length - 1);
  return Math.sqrt(Math.expm1(variance));
}

/** Standard deviation of a step at the pace of its piece, from its own. @internal */
export function pacedDeviation(mean: number, own: number, pace: number): number {
  return Math.sqrt(evaluate(pacedVariance, { c: pace, s: own, t: mean }));
}

/**
 * Standard deviation of all steps of a piece together. Each two of them vary together by pace² x mean x mean.
 *
 * @param steps  deviations with the pace in them
 * @internal
 */
export function deviationTogether(steps: readonly { mean: number; deviation: number }[], pace: number): number {
  const sum = (of: (step: { mean: number; deviation: number }) => number) =>
    steps.reduce((total, step) => total + of(step), 0);
  const together = sum(({ mean }) => mean) ** 2 - sum(({ mean }) => mean ** 2);
  return Math.sqrt(sum(({ deviation }) => deviation ** 2) + pace ** 2 * together);
}

/**
 * Paces of as many pieces, 1 on average: lognormal, so that a piece can take much longer than usual, but none less than no time.
 *
 * @param random  0 to under 1
 * @internal
 */
export function drawnPaces(pieces: number, pace: number, random: () => number): Float64Array {
  const variance = Math.log1p(pace ** 2);
  const normal = randomNormal.source(random)(-variance / 2, Math.sqrt(variance));
  return Float64Array.from({ length: pieces }, () => Math.exp(normal()));
}
