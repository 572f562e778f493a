import * as z from 'zod';
import data from '../../../data/moisture-in-service.json';
import { dataTable } from '../measure/data-file.js';

/** Moisture that wood should have for a use, or comes to in it, %. */
export interface ServiceMoisture {
  /** Such as `interior-us-most`. */
  id: string;
  use: string;
  region: string;
  averagePercent?: number;
  /** For individual pieces. */
  lowPercent?: number;
  highPercent?: number;
  source: string;
  fromMemory: boolean;
  /** Which of the values are remembered. */
  valuesFromMemory: ('averagePercent' | 'lowPercent' | 'highPercent')[];
}

// In no sheet yet: what the computed air of a house will be held against.
const percent = z.number().min(0).max(30).optional();

const serviceEntry: z.ZodType<ServiceMoisture> = z
  .strictObject({
    id: z.string().regex(/^[a-z0-9-]+$/),
    use: z.string().min(1),
    region: z.string().min(1),
    averagePercent: percent,
    lowPercent: percent,
    highPercent: percent,
    source: z.string().min(1),
    fromMemory: z.boolean(),
    valuesFromMemory: z.array(z.enum(['averagePercent', 'lowPercent', 'highPercent'])),
  })
  .refine(({ fromMemory, valuesFromMemory }) => fromMemory === valuesFromMemory.length > 0, {
    path: ['valuesFromMemory'],
    message: 'which values are remembered must agree with fromMemory',
  });

const service = dataTable('moisture-in-service.json', data, {
  list: 'service',
  what: 'service moisture',
  entry: serviceEntry,
});

/**
 * Moisture recommended for a use.
 *
 * @param id  such as `interior-us-most`, `interior-us-dry-southwest`, `interior-us-damp-coastal`
 * @throws ShopError  names the nearest ids
 */
export function serviceMoisture(id: string): ServiceMoisture {
  return service.entry(id);
}

/** All uses and regions that the handbook speaks of. */
export function allServiceMoisture(): ServiceMoisture[] {
  return service.all();
}
