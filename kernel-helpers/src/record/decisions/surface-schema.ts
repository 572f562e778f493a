import * as z from 'zod';
import { nonNegative } from './values.js';

/** @internal */
export const surface = z.looseObject({
  text: z.string(),
  letters: z.int().min(0),
  letteringMinutes: nonNegative,
  deepest: nonNegative,
  remaining: z.number(),
  bitAngle: nonNegative,
  handleBit: z.looseObject({ radius: nonNegative, depth: nonNegative, passes: z.int() }).optional(),
  handle: z.enum(['scoop', 'raised pull', 'thumb notch', 'none']),
  lidStock: nonNegative,
  removed: nonNegative,
  proudAfter: z.number(),
  grades: z.looseObject({ outside: z.array(z.string()), inside: z.array(z.string()) }),
  sandingMinutes: nonNegative,
  sanded: z.looseObject({ beforeAssembly: nonNegative, afterAssembly: nonNegative }).optional(),
  area: nonNegative,
  areaBeforeAssembly: nonNegative,
  glue: z.looseObject({
    id: z.string(),
    assemblyMinutes: nonNegative,
    clampMinutes: nonNegative,
    cureHours: nonNegative,
    millilitres: nonNegative,
    on: z.enum(['long grain', 'all faces', 'inner third']).optional(),
  }),
  finish: z.looseObject({
    id: z.string(),
    coats: z.int().min(1),
    inside: z.boolean(),
    squareFeet: nonNegative,
    recoatHours: nonNegative,
    cureDays: nonNegative,
    millilitres: nonNegative,
    oilyRags: z.boolean(),
  }),
  waits: z.array(z.looseObject({ after: z.string(), hours: nonNegative })),
});
