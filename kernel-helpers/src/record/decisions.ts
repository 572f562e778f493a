import { z } from 'zod';

/**
 * What each decision hands on: `job.need('sizing')` gives `Decisions['sizing']`.
 *
 * To add a decision, or to give one its fields: write its interface here or in the folder of the trade that it comes
 * from, name it below, and say the same in `decisionShapes`. The compiler holds the two together.
 */
export interface Decisions {
  brief: Record<string, unknown>;
  sizing: Record<string, unknown>;
  lid: Record<string, unknown>;
  stock: Record<string, unknown>;
  quote: Record<string, unknown>;
}

/**
 * What a decision's results must look like, on the way into the record and out of it. Results are handed on as they
 * were recorded, so a shape checks and never transforms.
 *
 * @internal
 */
export const decisionShapes: { [What in keyof Decisions]: z.ZodType<Decisions[What]> } = {
  brief: z.record(z.string(), z.unknown()),
  sizing: z.record(z.string(), z.unknown()),
  lid: z.record(z.string(), z.unknown()),
  stock: z.record(z.string(), z.unknown()),
  quote: z.record(z.string(), z.unknown()),
};
