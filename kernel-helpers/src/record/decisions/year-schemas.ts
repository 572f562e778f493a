import * as z from 'zod';
import { nonNegative } from './values.js';

const month = z.int().min(1).max(12);
const fitMonth = { month, moisture: nonNegative, clearance: z.number(), low: z.number(), high: z.number() };

/** How a solid piece fits its opening through the year. @internal */
export const seasonalFit = {
  fittedWidth: nonNegative,
  opening: nonNegative,
  window: z.looseObject({ narrowest: nonNegative, widest: nonNegative }),
  limits: z.looseObject({
    leastClearance: z.number(),
    mostClearance: z.number(),
    gapOnlyShows: z.boolean().optional(),
  }),
  fittingMoisture: nonNegative,
  byMonth: z.array(z.looseObject(fitMonth)).length(12),
  wettest: month,
  driest: month,
};

const steady = z.looseObject({ temperatureC: z.number(), relativeHumidity: nonNegative });
const stack = z.looseObject({
  species: z.string(),
  thickness: nonNegative,
  moisture: nonNegative,
  shop: steady,
  shopSettlesAt: nonNegative,
  middle: nonNegative,
  air: steady,
  conditioned: z.boolean(),
  settlesAt: nonNegative,
  days: nonNegative,
  low: nonNegative,
  high: nonNegative,
  coreDays: nonNegative,
});

/** @internal */
export const air = z.looseObject({
  months: z
    .array(
      z.looseObject({
        month,
        temperatureC: z.number(),
        relativeHumidity: z.number(),
        setBy: z.enum(['air from outdoors', 'people', 'coil', 'humidifier', 'dehumidifier']).optional(),
        days: nonNegative.optional(),
      }),
    )
    .length(12),
  moistures: z.array(z.looseObject({ month, moisture: nonNegative })).length(12),
  finish: z.string(),
  coating: z.looseObject({ finish: z.string(), coats: nonNegative }).optional(),
  stack: stack.optional(),
});

/** @internal */
export const lid = z.looseObject({
  ...seasonalFit,
  fittedTongue: nonNegative,
  byMonth: z.array(z.looseObject({ ...fitMonth, tongueRoom: z.number() })).length(12),
});

/** @internal */
export const measured = z.looseObject({
  measurements: z.array(
    z.looseObject({ date: z.iso.date(), clearance: nonNegative, relativeHumidity: z.number().optional() }),
  ),
});
