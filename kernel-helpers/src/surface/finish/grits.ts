import * as z from 'zod';
import data from '../../../../data/grits.json';
import { dataTable } from '../../measure/data-file.js';

/** A grade of coated abrasive. */
export interface Grit {
  /** `P120` for FEPA P (ISO 6344), `cami-120` for CAMI. */
  id: string;
  system: 'FEPA P' | 'CAMI';
  /** Average grain size, micrometres. */
  microns: number;
  source: string;
  fromMemory: boolean;
}

const gritEntry: z.ZodType<Grit> = z.strictObject({
  id: z.string().regex(/^(?:P|cami-)\d+$/),
  system: z.enum(['FEPA P', 'CAMI']),
  microns: z.number().positive(),
  source: z.string().min(1),
  fromMemory: z.boolean(),
});

const grits = dataTable('grits.json', data, { list: 'grits', what: 'grit', entry: gritEntry });

/**
 * A grade and its grain size.
 *
 * @param id  such as `P120` or `cami-120`
 * @throws ShopError  names the nearest ids
 */
export function grit(id: string): Grit {
  return grits.entry(id);
}

/** All grades, each system from coarse to fine. */
export function allGrits(): Grit[] {
  return grits.all();
}
