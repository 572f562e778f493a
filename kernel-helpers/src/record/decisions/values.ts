import * as z from 'zod';

/** @internal */
export const nonNegative = z.number().min(0);

/** A part of a whole, 0 to 1. @internal */
export const share = z.number().min(0).max(1);

/** @internal */
export const money = z.looseObject({ minor: z.int(), currency: z.string().length(3) });

/** What every groove of a box says, planned or run. Lengths in inches. @internal */
export const grooveFields = {
  board: z.enum(['side', 'front', 'back']),
  groove: z.enum(['lid', 'bottom']),
  fromBottom: nonNegative,
  width: nonNegative,
  depth: nonNegative,
};
