import * as z from 'zod';
import data from '../../../../data/finishes.json';
import { dataTable } from '../../measure/data-file.js';

/** A type of finish. */
export interface Finish {
  /** Such as `oil-wax`. */
  id: string;
  name: string;
  kind: 'oil' | 'wax' | 'film';
  /** Usual number. */
  coats: number;
  /** One coat. */
  squareFeetPerQuart: number;
  /** From wiping on to wiping off; null where it is left on. */
  wipeOffMinutes: number | null;
  /** To the next coat. */
  recoatHours: number;
  /** Until it can be closed, packed and used. */
  cureDays: number;
  /** Start of its ids in moisture-excluding.json; null where nothing is published. */
  moistureExcluding: string | null;
  /** Food and skin. */
  contact: string;
  /** Its rags can catch fire by themselves. */
  oilyRags: boolean;
  solvent: boolean;
  source: string;
  fromMemory: boolean;
  note: string;
}

const words = z.string().min(1);

const finishEntry: z.ZodType<Finish> = z.strictObject({
  id: z.string().regex(/^[a-z0-9-]+$/),
  name: words,
  kind: z.enum(['oil', 'wax', 'film']),
  coats: z.int().min(1).max(10),
  squareFeetPerQuart: z.number().positive(),
  wipeOffMinutes: z.number().positive().nullable(),
  recoatHours: z.number().positive(),
  cureDays: z.number().positive(),
  moistureExcluding: words.nullable(),
  contact: words,
  oilyRags: z.boolean(),
  solvent: z.boolean(),
  source: words,
  fromMemory: z.boolean(),
  note: words,
});

const finishes = dataTable('finishes.json', data, { list: 'finishes', what: 'finish', entry: finishEntry });

/**
 * A type of finish.
 *
 * @param id  such as `oil-wax`, `shellac`, `tung-oil`
 * @throws ShopError  names the nearest ids
 */
export function finish(id: string): Finish {
  return finishes.entry(id);
}

/** All types. */
export function allFinishes(): Finish[] {
  return finishes.all();
}
