import * as z from 'zod';
import { amount, day, readParameters, size } from '../measure/parameters.js';
import { ShopError } from '../measure/shop-error.js';
import { refuseOutside, type SoFar } from '../measure/so-far.js';

/** A delivered lid, measured in a later season. */
export interface LidMeasured {
  /** ISO day. */
  date: string;
  /** Play, both sides together, in. */
  clearance: number;
  /** Humidity of the room, 0 to 1, where it was read. */
  relativeHumidity?: number;
}

/** A measurement as it is typed: the play, or the lid's width by caliper. */
export interface TypedMeasurement {
  date: string;
  clearance?: number | string;
  width?: number | string;
  relativeHumidity?: number;
}

const fields = z.object({
  measured: z.array(
    z.strictObject({
      date: day('the day it was measured'),
      clearance: size({ least: 0, most: 2, why: 'play, both sides together; 0 when it sticks' }).optional(),
      width: size({ least: 0.5, most: 60, why: "the lid's width by caliper" }).optional(),
      relativeHumidity: amount({ least: 0, most: 1, why: 'a fraction: 45 % is 0.45' }).optional(),
    }),
  ),
});

/**
 * Reads later measurements of a delivered lid.
 *
 * @param given.measured  each with its day and either the play or the lid's width
 * @param given.opening  between the groove floors, in
 * @param given.soFar  day of the commission and today: nothing was measured before the one or after the other
 * @returns the play of each, oldest first
 * @throws ShopError  one line: the field, the value given, what is possible, why
 */
export function readMeasurements(given: {
  measured: TypedMeasurement[];
  opening: number;
  soFar: SoFar;
}): LidMeasured[] {
  const { measured } = readParameters(fields, { measured: given.measured });
  return measured
    .map(({ date, clearance, width, relativeHumidity }) => {
      refuseOutside(['measured'], date, given.soFar);
      if ((clearance === undefined) === (width === undefined))
        throw new ShopError(`measured on ${date}: give either clearance or width, one of the two`);
      const play = clearance ?? given.opening - (width as number);
      if (play < 0)
        throw new ShopError(
          `measured on ${date}: a width of ${width} in is more than the opening of ${given.opening} in; measure again`,
        );
      return { date, clearance: play, ...(relativeHumidity === undefined ? {} : { relativeHumidity }) };
    })
    .sort((a, b) => a.date.localeCompare(b.date));
}
