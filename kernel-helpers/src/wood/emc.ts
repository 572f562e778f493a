import { bisect } from '../measure/bisect.js';
import { compileFormula, evaluate, type Formula } from '../measure/formula.js';
import { ShopError } from '../measure/shop-error.js';
import { type Air, readAir } from './air/air-fields.js';

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
    W: {
      meaning: `${emcConstants.W.result.meaning}; the four constants come from the air's temperature, ${temperature.min} to ${temperature.max} °C`,
      unit: '',
    },
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
 * @param air.temperatureC, air.temperatureF  one of the two: -40 to 100 °C; the printed table spans 30 to 200 °F
 * @param air.relativeHumidity  0 to 1
 * @returns moisture content, % of ovendry mass
 * @throws ShopError  outside these ranges; a humidity given as 45 is told from 0.45
 * @see Wood Handbook FPL-GTR-282, eq. 4-5; FPL-GTR-190, table 4-2 (met within 0.06)
 * @example equilibriumMoisture({ temperatureC: 20, relativeHumidity: 0.5 }) // 9.27
 */
export function equilibriumMoisture(air: Air): number {
  return evaluate(emcFormula, emcValues(air));
}

/** The numbers that {@link emcFormula} takes in this air: for its typeset working. */
export function emcValues(air: Air): Record<'h' | 'W' | 'K' | 'K1' | 'K2', number> {
  const { temperatureC, relativeHumidity } = readAir(air);
  const constant = (name: keyof typeof emcConstants) => evaluate(emcConstants[name], { T: temperatureC });
  return { h: relativeHumidity, W: constant('W'), K: constant('K'), K1: constant('K1'), K2: constant('K2') };
}

const overHumidity = compileFormula(emcFormula, ['h'], emcConstants);

/** {@link equilibriumMoisture} by relative humidity (0 to 1) at one temperature, for loops; unchecked. @internal */
export function moistureByHumidity(temperatureC: number): (relativeHumidity: number) => number {
  return overHumidity({ T: temperatureC });
}

/**
 * The humidity in which wood comes to this moisture content: {@link equilibriumMoisture} the other way round.
 *
 * @param wood.moisture  % of ovendry mass
 * @param wood.temperatureC, wood.temperatureF  one of the two: -40 to 100 °C
 * @returns relative humidity, 0 to 1, found to 1e-10
 * @throws ShopError  a moisture that no air of this temperature gives
 * @example humidityFor({ moisture: 8, temperatureC: 20 }) // 0.420
 */
export function humidityFor(
  wood: { moisture: number; temperatureC: number } | { moisture: number; temperatureF: number },
): number {
  const { moisture } = wood;
  const { temperatureC } = readAir({ ...wood, relativeHumidity: 1 });
  const moistureIn = (relativeHumidity: number) => equilibriumMoisture({ temperatureC, relativeHumidity });
  const most = moistureIn(1);
  if (!(moisture >= 0 && moisture <= most))
    throw new ShopError(
      `moisture: ${moisture} % given; at ${Number(temperatureC.toFixed(1))} °C air brings wood to 0 to ${most.toFixed(1)} %, and no humidity to more`,
    );
  if (moisture === 0 || moisture === most) return moisture === 0 ? 0 : 1;
  return bisect((humidity) => moistureIn(humidity) - moisture, 0, 1, 1e-10);
}
