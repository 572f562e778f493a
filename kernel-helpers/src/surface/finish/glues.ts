import * as z from 'zod';
import data from '../../../../data/glues.json';
import { dataTable } from '../../measure/data-file.js';

/** A type of glue. */
export interface Glue {
  /** Such as `hide-liquid`. */
  id: string;
  type: string;
  /** From spreading to joining, minutes: least and most. */
  openMinutes: [number, number];
  /** From joining to full pressure, minutes. */
  closedMinutes: number;
  /** Least time in clamps, minutes. */
  clampMinutes: number;
  /** To full strength, hours. */
  cureHours: number;
  leastTemperatureC: number;
  gapFilling: string;
  /** How the glue line looks. */
  line: string;
  /** Resistance to water. */
  water: string;
  /** Whether the joint can be opened again. */
  opensAgain: 'yes' | 'no';
  source: string;
  /** Fields that could not be read in print. */
  valuesFromMemory: string[];
  fromMemory: boolean;
  note: string;
}

const minutes = z.number().min(0);
const words = z.string().min(1);

const glueEntry: z.ZodType<Glue> = z
  .strictObject({
    id: z.string().regex(/^[a-z0-9-]+$/),
    type: words,
    openMinutes: z.tuple([minutes, minutes]).refine(([least, most]) => least <= most, 'least and most must rise'),
    closedMinutes: minutes,
    clampMinutes: minutes,
    cureHours: minutes,
    leastTemperatureC: z.number(),
    gapFilling: words,
    line: words,
    water: words,
    opensAgain: z.enum(['yes', 'no']),
    source: words,
    valuesFromMemory: z.array(words),
    fromMemory: z.boolean(),
    note: words,
  })
  .refine(({ fromMemory, valuesFromMemory }) => fromMemory === valuesFromMemory.length > 0, {
    path: ['valuesFromMemory'],
    message: 'which values are remembered must agree with fromMemory',
  });

const glues = dataTable('glues.json', data, { list: 'glues', what: 'glue', entry: glueEntry });

/**
 * A type of glue.
 *
 * @param id  such as `pva-yellow`, `hide-liquid`, `epoxy`
 * @throws ShopError  names the nearest ids
 */
export function glue(id: string): Glue {
  return glues.entry(id);
}

/** All types. */
export function allGlues(): Glue[] {
  return glues.all();
}
