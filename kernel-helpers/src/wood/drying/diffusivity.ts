import { compileFormula, evaluate, type Formula } from '../../measure/formula.js';

const moisture = { tex: 'M', meaning: 'moisture content of the wood', unit: '%', min: 0, max: 30 };
const gravity = { tex: 'G', meaning: 'specific gravity (ovendry mass, volume as it is)', unit: '', min: 0.1, max: 1 };

/** How fast bound water spreads through the wall of a cell, across the grain. */
export const cellWallDiffusivityFormula: Formula<'M' | 'T'> = {
  name: 'Diffusivity of the cell wall',
  result: { tex: 'D_w', meaning: 'diffusivity of the cell wall across the grain', unit: 'm²/s' },
  expression: '7 * 10^(-6) * exp(-(9200 - 70 * M) / (1.987 * (T + 273.15)))',
  symbols: { M: moisture, T: { meaning: 'temperature of the wood', unit: '°C', min: -40, max: 100 } },
  source:
    'Siau 1984, Transport Processes in Wood, eq. 6.14 (as quoted with its number in published program source; the book itself was not read); measured between about 10 and 60 °C',
};

/** Width of the hollow of a cell as part of the cell's width. */
export const lumenFormula: Formula<'M' | 'G'> = {
  name: 'Hollow of the cell',
  result: { tex: 'a', meaning: "width of the hollow as part of the cell's", unit: '' },
  expression: 'sqrt(1 - G * (0.667 + 0.01 * M))',
  symbols: { M: moisture, G: gravity },
  source: 'Siau 1984, Transport Processes in Wood, square root of the porosity (from memory)',
};

/** How fast moisture spreads through wood across the grain, from its cell walls and hollows. */
export const diffusivityFormula: Formula<'Dw' | 'a'> = {
  name: 'Diffusivity across the grain',
  result: { tex: 'D', meaning: 'diffusivity across the grain', unit: 'm²/s' },
  expression: 'Dw / ((1 - a) * (1 - a^2))',
  symbols: {
    Dw: { ...cellWallDiffusivityFormula.result },
    a: { ...lumenFormula.result, min: 0, max: 1 },
  },
  source:
    'Siau 1984, Transport Processes in Wood, eq. 6.22 where vapour crosses the hollows freely (the short form from memory; the long form as quoted in published program source)',
};

/** By how much a board may differ from {@link diffusivity} either way: no better is known. */
export const diffusivityDoubt = 2;

/**
 * How fast moisture spreads through wood across the grain.
 *
 *   D = Dw / ((1 - a)(1 - a²)),   Dw = 7e-6 exp(-(9200 - 70 M)/(R T)),   a² = 1 - G (0.667 + 0.01 M)
 *
 * Good to a factor of 2 either way: values from sorption and from cup tests on the same walnut and cherry disagree by
 * as much (Konopka and others 2017), and aspen at 43 °C rose 8 times from 2.5 to 18 % where this gives 3.7 (Simpson).
 *
 * @param wood.moisture  0 to 30 %
 * @param wood.temperatureC  -40 to 100 °C
 * @param wood.specificGravity  ovendry mass, 0.1 to 1
 * @returns m²/s, the same for both directions across the grain (radial is commonly 1 to 2 times tangential)
 * @throws ShopError  outside these ranges
 * @see Siau 1984, Transport Processes in Wood, eq. 6.14 and 6.22, partly from memory
 * @example diffusivity({ moisture: 10, temperatureC: 20, specificGravity: 0.5 }) // 3.91e-11
 */
export function diffusivity(wood: { moisture: number; temperatureC: number; specificGravity: number }): number {
  return evaluate(diffusivityFormula, diffusivityValues(wood));
}

/** The numbers that {@link diffusivityFormula} takes in this wood: for its typeset working. */
export function diffusivityValues(wood: {
  moisture: number;
  temperatureC: number;
  specificGravity: number;
}): Record<'Dw' | 'a', number> {
  const { moisture: M, temperatureC: T, specificGravity: G } = wood;
  return { Dw: evaluate(cellWallDiffusivityFormula, { M, T }), a: evaluate(lumenFormula, { M, G }) };
}

const overMoisture = compileFormula(diffusivityFormula, ['M'], { Dw: cellWallDiffusivityFormula, a: lumenFormula });

/**
 * {@link diffusivity} by moisture content (%) in one wood at one temperature, for loops. Past the formulas' range of
 * moisture the end value is kept; the rest is unchecked.
 *
 * @param scale  what m²/s is multiplied by
 * @internal
 */
export function diffusivityByMoisture(
  specificGravity: number,
  temperatureC: number,
  scale = 1,
): (moisture: number) => number {
  const inRange = overMoisture({ G: specificGravity, T: temperatureC });
  const { min, max } = moisture;
  return (given) => scale * inRange(Math.min(Math.max(given, min), max));
}
