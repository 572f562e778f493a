import * as z from 'zod';
import data from '../../../../data/grits.json';
import { entryOf, readEntries } from '../../measure/data-file.js';

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

let byId: ReadonlyMap<string, Grit> | undefined;

function gritsById(): ReadonlyMap<string, Grit> {
  if (!byId) {
    const sources: Record<string, string> = data.sources;
    byId = readEntries('grits.json', data, 'grits', gritEntry);
    for (const entry of byId.values()) entry.source = sources[entry.source] ?? entry.source;
  }
  return byId;
}

/**
 * A grade and its grain size.
 *
 * @param id  such as `P120` or `cami-120`
 * @throws ShopError  names the nearest ids
 */
export function grit(id: string): Grit {
  return entryOf(gritsById(), id, 'grit');
}

/** All grades, each system from coarse to fine. */
export function allGrits(): Grit[] {
  return [...gritsById().values()];
}
