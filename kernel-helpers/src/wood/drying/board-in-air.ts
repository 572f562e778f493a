import { saturationPressure } from '../air/psychrometrics.js';
import { moistureByHumidity } from '../emc.js';
import { diffusivityByMoisture } from './diffusivity.js';
import { Slab, type SlabConditions } from './slab.js';

/** A board as the solver takes it. @internal */
export interface BoardInAir {
  /** From a face to the middle, m. */
  halfThickness: number;
  /** Ovendry mass over the mass of the same volume of water. */
  specificGravity: number;
  /** Of the finish on each face to water vapour, m² s Pa/kg; 0 for bare wood. */
  finishResistance: number;
  /** What the published diffusivity is multiplied by. */
  diffusionFactor: number;
}

/**
 * Resistance of still indoor air at a face to water vapour, m² s Pa/kg: 1 / 25e-9, the indoor coefficient of Künzel 1995
 * (as quoted in published program source). Good to a factor of 2: 7 % of the days that a bare 1/8 in board takes, 2 % of
 * those of a 1/2 in lid.
 *
 * @internal
 */
export const stillAirResistance = 4e7;

const secondsInDay = 86400;
const waterDensity = 1000;

/**
 * What a board meets in this air, for {@link Slab}: content in %, length in m, time in days, potential the humidity.
 * Vapour pressure drives the exchange at the face, so a finish passes more in warm air than in cold.
 *
 * @internal
 */
export function conditionsOf(board: BoardInAir, temperatureC: number, relativeHumidity: number): SlabConditions {
  const moisture = moistureByHumidity(temperatureC);
  // A flux of 1 % m/day is this mass of water over an area and time, kg/(m² s).
  const massFlux = (board.specificGravity * waterDensity) / 100 / secondsInDay;
  const wet = moisture(1);
  const wetSlope = (wet - moisture(0.999)) / 0.001;
  return {
    potential: relativeHumidity,
    resistance: ((stillAirResistance + board.finishResistance) * massFlux) / saturationPressure(temperatureC),
    diffusivity: diffusivityByMoisture(board.specificGravity, temperatureC, secondsInDay * board.diffusionFactor),
    // Carried on past 0 and 1 for the iteration's sake.
    isotherm: (humidity) => {
      if (humidity > 1) return wet + wetSlope * (humidity - 1);
      return humidity < 0 ? -moisture(-humidity) : moisture(humidity);
    },
  };
}

/** A board of even moisture put into air that may change in time (days). @internal */
export function putInAir(
  board: BoardInAir,
  startMoisture: number,
  air: (day: number) => { temperatureC: number; relativeHumidity: number },
  day: number,
): Slab {
  return new Slab({
    halfThickness: board.halfThickness,
    content: () => startMoisture,
    time: day,
    at: (time) => {
      const { temperatureC, relativeHumidity } = air(time);
      return conditionsOf(board, temperatureC, relativeHumidity);
    },
  });
}
