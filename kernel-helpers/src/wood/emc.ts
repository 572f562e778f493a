import { evaluate, type Formula } from '../measure/formula.js';
import { ShopError } from '../measure/shop-error.js';

const source =
  'Wood Handbook FPL-GTR-282 (2021), eq. 4-5 (Hailwood and Horrobin; constants of Simpson 1973), Celsius form; printed as a table in FPL-GTR-190 (2010), table 4-2';

const temperature = { tex: 'T', meaning: 'temperature of the air', unit: '°C', min: -40, max: 100 };

function constantOf(tex: string, meaning: string, expression: string): Formula<'T'> {
  return { name: meaning, result: { tex, meaning, unit: '' }, expression, symbols: { T: temperature }, source };
}

/** The four constants of {@link emcFormula}, each a polynomial of the temperature. Below -1.1 °C they run past the printed table. */
export const emcConstants: Record<'W' | 'K' | 'K1' | 'K2', Formula<'T'>> = {
  W: constantOf('W', 'molecular weight of the wood that holds one of water', '349 + 1.29 * T + 0.0135 * T^2'),
  K: constantOf('K', 'ratio of dissolved water to water in the air', '0.805 + 0.000736 * T - 0.00000273 * T^2'),
  K1: constantOf('K_1', 'constant of the first bound water', '6.27 - 0.00938 * T - 0.000303 * T^2'),
  K2: constantOf('K_2', 'constant of the second bound water', '1.91 + 0.0407 * T - 0.000293 * T^2'),
};

/** Moisture that wood comes to in air of one temperature and humidity. */
export const emcFormula: Formula<'h' | 'W' | 'K' | 'K1' | 'K2'> = {
  name: 'Equilibrium moisture content',
  result: { tex: 'M', meaning: 'equilibrium moisture content', unit: '%' },
  expression:
    '1800 / W * (K * h / (1 - K * h) + (K1 * K * h + 2 * K1 * K2 * K^2 * h^2) / (1 + K1 * K * h + K1 * K2 * K^2 * h^2))',
  symbols: {
    h: { meaning: 'relative humidity, 0 to 1', unit: '', min: 0, max: 1 },
    W: { meaning: emcConstants.W.result.meaning, unit: '' },
    K: { meaning: emcConstants.K.result.meaning, unit: '' },
    K1: { tex: 'K_1', meaning: emcConstants.K1.result.meaning, unit: '' },
    K2: { tex: 'K_2', meaning: emcConstants.K2.result.meaning, unit: '' },
  },
  source,
};

/**
 * The moisture content that wood comes to when it stays in this air.
 *
 *   M = 1800/W (K h/(1 - K h) + (K1 K h + 2 K1 K2 K² h²)/(1 + K1 K h + K1 K2 K² h²))
 *
 * @param air.temperatureC  -40 to 100 °C; the printed table spans -1.1 to 93.3 °C
 * @param air.relativeHumidity  0 to 1
 * @returns moisture content, % of ovendry mass
 * @throws ShopError  outside these ranges; a humidity given as 45 is told from 0.45
 * @see Wood Handbook FPL-GTR-282, eq. 4-5; FPL-GTR-190, table 4-2 (met within 0.06 up to 130 °F)
 * @example equilibriumMoisture({ temperatureC: 20, relativeHumidity: 0.5 }) // 9.27
 */
export function equilibriumMoisture(air: { temperatureC: number; relativeHumidity: number }): number {
  return evaluate(emcFormula, emcValues(air));
}

/** The numbers that {@link emcFormula} takes in this air: for its typeset working. */
export function emcValues(air: {
  temperatureC: number;
  relativeHumidity: number;
}): Record<'h' | 'W' | 'K' | 'K1' | 'K2', number> {
  const { temperatureC, relativeHumidity } = air;
  if (relativeHumidity > 1 && relativeHumidity <= 100)
    throw new ShopError(
      `relativeHumidity: ${relativeHumidity} given; a fraction from 0 to 1 is possible, so ${relativeHumidity} % is written ${relativeHumidity / 100}`,
    );
  const constant = (name: keyof typeof emcConstants) => evaluate(emcConstants[name], { T: temperatureC });
  return { h: relativeHumidity, W: constant('W'), K: constant('K'), K1: constant('K1'), K2: constant('K2') };
}
