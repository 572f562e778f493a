import * as z from 'zod';
import { nonNegative } from './values.js';

const size = { length: nonNegative, width: nonNegative, thickness: nonNegative };
// A defect on a board may begin outside the offcut that it reaches into.
const place = { fromEnd: z.number(), fromEdge: z.number(), length: nonNegative, width: nonNegative };
const defects = z.array(z.looseObject({ kind: z.string(), ...place }));

const board = z.looseObject({
  mark: z.string(),
  ...size,
  price: nonNegative,
  inHand: z.boolean().optional(),
  plywood: z.boolean().optional(),
  species: z.string().optional(),
  moisture: nonNegative.optional(),
  bow: nonNegative.optional(),
  cup: nonNegative.optional(),
  twist: nonNegative.optional(),
  defects: defects.optional(),
  sapwoodLower: nonNegative.optional(),
  sapwoodUpper: nonNegative.optional(),
  note: z.string().optional(),
});

const cutBoard = z.looseObject({
  board: z.looseObject({ mark: z.string(), ...size, cost: nonNegative, defects }),
  parts: z.array(z.looseObject({ name: z.string(), ...place })),
  cuts: z.array(z.looseObject({ kind: z.enum(['crosscut', 'rip']), at: z.number(), from: z.number(), to: z.number() })),
  offcuts: z.array(z.looseObject({ ...place, defects: defects.optional() })),
});
const plan = z.looseObject({
  boards: z.array(cutBoard),
  cost: nonNegative,
  yield: nonNegative,
  bound: nonNegative,
  proven: z.boolean(),
  leastArea: z.boolean().optional(),
  steps: nonNegative.optional(),
  bounds: z.string(),
});

const part = { name: z.string(), count: z.int().min(1), ...size };
const blank = z.looseObject({
  name: z.string(),
  parts: z.array(z.string()),
  ...size,
  because: z.enum(['part', 'figure', 'short']),
});
const milled = z.looseObject({
  blank,
  board: z.string(),
  bow: z.number(),
  cup: z.number(),
  twist: z.number(),
  measured: z.boolean(),
  reach: z.number(),
  resawn: z.looseObject({ thickness: nonNegative, gives: nonNegative }).optional(),
  passes: z.array(z.looseObject({ face: z.enum(['first', 'second']), depth: nonNegative, left: nonNegative })),
});

const panel = z.looseObject({
  part: z.string(),
  count: z.int().min(1),
  boards: z.int().min(2),
  edgeJoints: z.int().min(1),
  board: z.looseObject({ name: z.string(), roughWidth: nonNegative, width: nonNegative }),
  glued: z.looseObject(size),
  finished: z.looseObject(size),
  flattened: z.enum(['by planer', 'by hand']),
});
const panelGluing = z.looseObject({
  glue: z.string(),
  clampMinutes: nonNegative,
  cureHours: nonNegative,
  millilitres: nonNegative,
  pressure: nonNegative,
  panels: z.array(
    z.looseObject({ part: z.string(), clamps: z.int().min(2), spacing: nonNegative, forceEach: nonNegative }),
  ),
});

const planer = z.looseObject({
  leastLength: nonNegative,
  leastWidth: nonNegative,
  leastThickness: nonNegative,
  widest: nonNegative,
  deepestPass: nonNegative,
  lightPass: nonNegative,
  snipeLength: nonNegative,
  snipeDepth: nonNegative,
});
const jointer = z.looseObject({ leastLength: nonNegative, widest: nonNegative });

/** @internal */
export const stock = z.looseObject({
  boards: z.array(board),
  plan,
  sheets: z.array(board),
  offcuts: z.array(board),
  rough: z.array(
    z.looseObject({
      ...part,
      called: z.string(),
      finished: z.looseObject(size),
      panel: z.string().optional(),
      strip: z.boolean().optional(),
    }),
  ),
  toCut: z.looseObject({
    parts: z.array(z.looseObject({ ...part, sequence: z.string().optional() })),
    blanks: z.array(blank),
    partOf: z.record(z.string(), z.string()),
  }),
  panels: z.array(panel).optional(),
  panelGluing: panelGluing.optional(),
  planer: planer.optional(),
  jointer: jointer.optional(),
  bought: nonNegative,
  steps: z.array(z.looseObject({ step: z.string(), left: z.number(), lost: z.number(), yield: z.number() })),
  yield: nonNegative,
  milled: z.array(milled),
  snipe: z.array(
    z.looseObject({
      remedy: z.enum(['extra length', 'end to end', 'lead and tail pieces']),
      how: z.string(),
      costs: z.number(),
    }),
  ),
});
