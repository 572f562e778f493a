import * as z from 'zod';
import { findingSchema } from '../chain/entry.js';
import { grooveFields, nonNegative } from './values.js';
import { seasonalFit } from './year-schemas.js';

const part = {
  count: z.int().min(1),
  length: nonNegative,
  width: nonNegative,
  thickness: nonNegative,
  material: z.enum(['wood', 'plywood']),
  widthBefore: nonNegative.optional(),
  boards: z.int().min(1).optional(),
  note: z.string(),
};
const count = z.int().min(0);
/** What every sized piece has, whatever it is. */
const sizedPiece = {
  overall: z.looseObject({ length: nonNegative, width: nonNegative, height: nonNegative }),
  moving: z.looseObject({ part: z.string(), thickness: nonNegative }),
  counts: z.looseObject({
    corner: count,
    tail: count,
    groove: count,
    lid: count,
    tenon: count,
    grooveLength: nonNegative.optional(),
  }),
  summary: z.array(z.looseObject({ what: z.string(), sizes: z.array(nonNegative) })),
  moves: z
    .array(
      z.looseObject({
        part: z.string(),
        species: z.string(),
        ringAngle: nonNegative,
        thickness: nonNegative,
        opening: nonNegative,
        fittedWidth: nonNegative,
        limits: z.looseObject({
          leastClearance: z.number(),
          mostClearance: z.number(),
          gapOnlyShows: z.boolean().optional(),
        }),
        fittingMoisture: nonNegative,
      }),
    )
    .optional(),
  fit: z.looseObject({ ...seasonalFit, findings: z.array(findingSchema) }).optional(),
  findings: z.array(findingSchema),
};

const boxDesign = z.looseObject({
  insideLength: nonNegative,
  insideWidth: nonNegative,
  insideDepth: nonNegative,
  species: z.string(),
  joint: z.enum(['through dovetail', 'finger joint']),
  stockThickness: nonNegative,
  proud: nonNegative,
  foot: nonNegative,
  lidThickness: nonNegative,
  tongueThickness: nonNegative,
  lidGrooveDepth: nonNegative,
  lidClearance: nonNegative,
  bottom: z.enum(['plywood', 'solid']),
  bottomThickness: nonNegative,
  bottomGrooveDepth: nonNegative,
  bottomClearance: nonNegative,
  bottomGroovePlay: nonNegative.optional(),
  bottomMoisture: nonNegative,
  bottomRingAngle: nonNegative,
});

const box = z.looseObject({
  ...sizedPiece,
  kind: z.literal('box'),
  design: boxDesign,
  parts: z
    .array(
      z.looseObject({
        ...part,
        name: z.enum(['side', 'front', 'back', 'lid', 'bottom']),
        grain: z.enum(['front to back', 'side to side', 'none']),
      }),
    )
    .min(1),
  grooves: z.array(z.looseObject(grooveFields)),
  markingGauge: nonNegative,
});

const otherPiece = z.looseObject({
  ...sizedPiece,
  kind: z.enum(['drawer', 'solid-top', 'frame-and-panel', 'bookcase']),
  parts: z
    .array(
      z.looseObject({
        ...part,
        name: z.string(),
        grain: z.enum(['front to back', 'side to side', 'upright', 'none']),
      }),
    )
    .min(1),
});

/** @internal */
export const sizing = z.discriminatedUnion('kind', [box, otherPiece]);
