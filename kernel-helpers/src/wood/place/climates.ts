import * as z from 'zod';
import data from '../../../../data/climates.json';
import { dataTable } from '../../measure/data-file.js';
import { placeCalled } from './places.js';

/** A place's monthly outdoor means. */
export interface Climate {
  /** Such as `chicago-ohare`; `own-place` for one of the maker's own. */
  id: string;
  place: string;
  /** Two letters, as ISO 3166 writes it; nothing for a place of the maker's own. */
  country: string;
  kind: '30-year means' | 'typical year' | "the maker's own";
  /** January to December, °C. */
  temperatureC: number[];
  /** January to December, %. */
  relativeHumidityPercent: number[];
  /** January to December, °C, where published: safer for vapour than the mean humidity. */
  dewPointC?: number[];
  source: string;
  fromMemory: boolean;
  note?: string;
}

const months = (least: number, most: number) => z.array(z.number().min(least).max(most)).length(12);

/** What is kept of a place's year. @internal */
export const climateFields = z.strictObject({
  id: z.string().regex(/^[a-z0-9-]+$/),
  place: z.string().min(1),
  country: z.string().length(2),
  kind: z.enum(['30-year means', 'typical year', "the maker's own"]),
  temperatureC: months(-50, 50),
  relativeHumidityPercent: months(1, 100),
  dewPointC: months(-60, 35).optional(),
  source: z.string().min(1),
  fromMemory: z.boolean(),
  note: z.string().optional(),
});
const climateEntry: z.ZodType<Climate> = climateFields;

const climates = dataTable('climates.json', data, { list: 'climates', what: 'place', entry: climateEntry });

/**
 * A place's monthly outdoor means.
 *
 * @param place  an id such as `chicago-ohare`, or an ordinary name: "Chicago", "Portland, OR", or a town near one of the places, such
 *   as "Denver"; a place of the maker's own as it is
 * @throws ShopError  names the nearest places
 */
export function climate(place: string | Climate): Climate {
  if (typeof place === 'object') return place;
  return climates.byId().get(place) ?? placeCalled(String(place), climates.all());
}

/** All places, in the order of data/climates.json. */
export function allClimates(): Climate[] {
  return climates.all();
}
