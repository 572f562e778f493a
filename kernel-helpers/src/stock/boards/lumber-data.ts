import * as z from 'zod';
import data from '../../../../data/lumber.json';
import { dataTable } from '../../measure/data-file.js';
import { ShopError } from '../../measure/shop-error.js';

/** A grade of hardwood lumber: least sizes, and how much of a board's face is clear wood in cuttings of a least size. */
export interface LumberGrade {
  id: string;
  name: string;
  /** in */
  leastWidth: number;
  leastFeet: number;
  leastCuttings: { width: number; feet: number }[];
  /** Clear face, in twelfths of surface measure. */
  clearTwelfths: number;
  fromMemory: boolean;
}

const positive = z.number().positive();
const thicknesses = z
  .object({
    thicknesses: z
      .array(z.object({ rough: positive, quarters: z.string().nullable(), surfacedTwoSides: positive }))
      .min(1),
  })
  .safeParse(data);
if (!thicknesses.success)
  throw new ShopError(
    `data/lumber.json: ${thicknesses.error.issues[0]?.path.join('.')}: ${thicknesses.error.issues[0]?.message}`,
  );

/** data/lumber.json, checked. @internal */
export const lumber = thicknesses.data;

const gradeFields: z.ZodType<LumberGrade> = z.strictObject({
  id: z.string(),
  name: z.string().min(1),
  leastWidth: positive,
  leastFeet: positive,
  leastCuttings: z.array(z.strictObject({ width: positive, feet: positive })).min(1),
  clearTwelfths: positive.max(12),
  fromMemory: z.boolean(),
});

const grades = dataTable('lumber.json', data, { list: 'grades', what: 'grade', entry: gradeFields });

/**
 * A grade of hardwood lumber.
 *
 * @param id  `fas`, `selects`, `no-1-common`, `no-2a-common`, `no-3a-common`
 * @throws ShopError  an id that is not in the list; names the nearest
 */
export function lumberGrade(id: string): LumberGrade {
  return grades.entry(id);
}

/** Thicknesses that are sold by the quarter of an inch. @internal */
export const quarterThicknesses = lumber.thicknesses.flatMap(({ rough, quarters }) =>
  quarters ? [{ rough, quarters }] : [],
);
