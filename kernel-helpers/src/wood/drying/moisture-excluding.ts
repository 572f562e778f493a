import * as z from 'zod';
import data from '../../../../data/moisture-excluding.json';
import { dataTable } from '../../measure/data-file.js';

/** How much moisture a finish kept out of wood in the Forest Products Laboratory's test. */
export interface MoistureExcluding {
  /** Such as `shellac-2-coats`. */
  id: string;
  finish: string;
  application: 'coats' | 'brushed' | 'dipped';
  coats: number;
  /** After 1, 7 and 14 days in damp air, % of what bare wood took up; null where it is not known. */
  keptOutPercent: { day1: number | null; day7: number | null; day14: number | null };
  source: string;
  fromMemory: boolean;
  /** Which of the three values are remembered. */
  valuesFromMemory: ('day1' | 'day7' | 'day14')[];
  note?: string;
}

const percent = z.number().min(0).max(100).nullable();

const excludingEntry: z.ZodType<MoistureExcluding> = z
  .strictObject({
    id: z.string().regex(/^[a-z0-9-]+$/),
    finish: z.string().min(1),
    application: z.enum(['coats', 'brushed', 'dipped']),
    coats: z.int().min(1).max(10),
    keptOutPercent: z.strictObject({ day1: percent, day7: percent, day14: percent }),
    source: z.string().min(1),
    fromMemory: z.boolean(),
    valuesFromMemory: z.array(z.enum(['day1', 'day7', 'day14'])),
    note: z.string().optional(),
  })
  .refine(({ fromMemory, valuesFromMemory }) => fromMemory === valuesFromMemory.length > 0, {
    path: ['valuesFromMemory'],
    message: 'which values are remembered must agree with fromMemory',
  });

const finishes = dataTable('moisture-excluding.json', data, {
  list: 'finishes',
  what: 'finish',
  entry: excludingEntry,
});

/**
 * What is published of a finish's hold on moisture.
 *
 * @param id  finish and coats, such as `shellac-2-coats`, `epoxy-2k-2-coats`, `paraffin-dipped`
 * @throws ShopError  names the nearest ids
 */
export function moistureExcluding(id: string): MoistureExcluding {
  return finishes.entry(id);
}

/** All finishes and numbers of coats that were tested. */
export function allMoistureExcluding(): MoistureExcluding[] {
  return finishes.all();
}
