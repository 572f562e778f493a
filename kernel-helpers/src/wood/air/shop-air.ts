import * as z from 'zod';
import { readParameters } from '../../measure/parameters.js';
import { celsius } from '../../measure/temperature.js';
import { humidity } from './air-fields.js';

/** What a shop that somebody works in can have, °C. */
const inside = { least: 0, most: 40 };

/** @internal */
export const shopAirFields = z.strictObject({
  shopTemperatureC: z
    .number({ error: `possible: a number from ${inside.least} to ${inside.most} °C (air of your shop)` })
    .superRefine((value, context) => {
      if (value >= inside.least && value <= inside.most) return;
      const read = celsius(value);
      const fahrenheit =
        read >= inside.least && read <= inside.most ? `; was it read in °F? Then write ${read.toFixed(1)}` : '';
      context.addIssue(`possible: ${inside.least} to ${inside.most} °C (air of your shop)${fahrenheit}`);
    }),
  shopHumidity: humidity({ least: 0.05, most: 0.95 }),
});

/** Air of the shop as it is typed: °C, and a fraction. */
export interface TypedShopAir {
  shopTemperatureC: number;
  shopHumidity: number;
}

/**
 * Air of the shop, as it is typed in a sheet.
 *
 * @param typed.shopTemperatureC  0 to 40 °C
 * @param typed.shopHumidity  0.05 to 0.95
 * @throws ShopError  one line; a temperature that would be possible in °F is told
 */
export function shopAir(typed: TypedShopAir): {
  temperatureC: number;
  relativeHumidity: number;
} {
  const { shopTemperatureC, shopHumidity } = readParameters(shopAirFields, { ...typed });
  return { temperatureC: shopTemperatureC, relativeHumidity: shopHumidity };
}
