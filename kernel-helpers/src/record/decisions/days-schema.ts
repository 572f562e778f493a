import * as z from 'zod';
import { nonNegative, share } from './values.js';

const day = z.iso.date();

/** @internal */
export const days = z.looseObject({
  start: day,
  promised: day,
  steps: z
    .array(
      z.looseObject({
        id: z.string(),
        name: z.string(),
        count: z.string(),
        hours: nonNegative,
        start: day,
        finish: day,
        wait: z.looseObject({ what: z.string(), until: day }).optional(),
        critical: z.boolean(),
        cautions: z.array(z.string()),
      }),
    )
    .min(1),
  finish: day,
  latestStart: day.optional(),
  criticalPath: z.array(z.string()).min(1),
  odds: share,
  pace: share.optional(),
  ready: z.looseObject({ p50: day, p80: day, p95: day }),
  simulations: nonNegative,
  seed: z.number(),
});
