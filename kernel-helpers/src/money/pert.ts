import { evaluate, type Formula, type FormulaSymbol } from '../measure/formula.js';

/** Least, likely and most of something that is never known beforehand: minutes, days. */
export type ThreePoints = [least: number, likely: number, most: number];

const time = (meaning: string): FormulaSymbol => ({ meaning, unit: 'min', min: 0 });

/** Mean of a three-point estimate. */
export const pertMean: Formula<'a' | 'm' | 'b'> = {
  name: 'Mean of three points',
  result: { tex: '\\bar t', meaning: 'mean time', unit: 'min' },
  expression: '(a + 4 * m + b) / 6',
  symbols: { a: time('least'), m: time('likely'), b: time('most') },
  source: 'Malcolm, Roseboom, Clark and Fazar 1959, Operations Research 7(5), the estimate of PERT (from memory)',
};

/**
 * Variance of the beta distribution with that mean on that range. The well-known (b - a)/6 for the deviation is a rule of
 * thumb for the same thing and comes out a little smaller.
 */
export const pertVariance: Formula<'a' | 't' | 'b'> = {
  name: 'Variance of three points',
  result: { tex: 's^2', meaning: 'variance', unit: 'min²' },
  expression: '(t - a) * (b - t) / 7',
  symbols: { a: time('least'), t: { ...time('mean'), tex: '\\bar t' }, b: time('most') },
  source: 'second moment of the beta distribution whose shapes add up to 6',
};

/** Mean and standard deviation, in the unit of the points. */
export function pertMoments([a, m, b]: ThreePoints): { mean: number; deviation: number } {
  const mean = evaluate(pertMean, { a, m, b });
  return { mean, deviation: Math.sqrt(evaluate(pertVariance, { a, t: mean, b })) };
}

/** Cells of the range in which the density is summed up, and steps of the table that a draw is read from. */
const cells = 256;
const steps = 1024;

/**
 * The distribution that is drawn from: the beta distribution on [least, most] with its mode at the likely value and shapes
 *
 *   1 + 4 (m - a)/(b - a)   and   1 + 4 (b - m)/(b - a)
 *
 * as a table of its quantiles, so that a draw costs one look-up.
 *
 * @returns the value below which a share of all cases lies, from that share: 0 to under 1
 * @see PERT's beta distribution: {@link pertMean}
 * @internal
 */
export function pertQuantile([a, m, b]: ThreePoints): (share: number) => number {
  if (b <= a) return () => a;
  const quantiles = quantileTable((m - a) / (b - a));
  const range = b - a;
  return (share) => {
    const place = share * steps;
    const below = Math.floor(place);
    const low = quantiles[below] as number;
    return a + range * (low + (place - below) * ((quantiles[below + 1] as number) - low));
  };
}

/** Quantiles of the beta distribution on 0 to 1 with this mode. */
function quantileTable(mode: number): Float64Array {
  const left = 4 * mode;
  const right = 4 - left;
  const density = (x: number) => x ** left * (1 - x) ** right;
  const summed = new Float64Array(cells + 1);
  let before = density(0);
  for (let i = 0; i < cells; i++) {
    const after = density((i + 1) / cells);
    summed[i + 1] = (summed[i] as number) + before + 4 * density((i + 0.5) / cells) + after;
    before = after;
  }
  const table = new Float64Array(steps + 1);
  const whole = summed[cells] as number;
  for (let step = 1, cell = 0; step < steps; step++) {
    const wanted = (step / steps) * whole;
    while ((summed[cell + 1] as number) < wanted) cell++;
    const low = summed[cell] as number;
    table[step] = (cell + (wanted - low) / ((summed[cell + 1] as number) - low)) / cells;
  }
  table[steps] = 1;
  return table;
}

/** The values below which these shares of a sample lie; sorts the sample. @internal */
export function percentiles(sample: Float64Array, shares: number[]): number[] {
  const sorted = sample.sort();
  return shares.map((share) => sorted[Math.min(sorted.length - 1, Math.ceil(share * sorted.length) - 1)] as number);
}
