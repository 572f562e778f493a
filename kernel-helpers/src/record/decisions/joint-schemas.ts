import * as z from 'zod';
import { findingSchema } from '../chain/entry.js';
import { grooveFields, nonNegative } from './values.js';

const corner = {
  boardWidth: nonNegative,
  stockThickness: nonNegative,
  proud: nonNegative,
  gaugeSetting: nonNegative,
  findings: z.array(findingSchema),
};

const piece = { from: nonNegative, to: nonNegative, baselineFrom: z.number(), baselineTo: z.number() };
const dovetails = z.looseObject({
  ...corner,
  tails: z.array(z.looseObject(piece)).min(1),
  pins: z.array(z.looseObject({ ...piece, half: z.boolean() })).min(2),
  dividerSetting: nonNegative,
  sawAngle: nonNegative,
  slope: nonNegative,
  walk: z.looseObject({ up: z.array(z.number()), down: z.array(z.number()) }),
});

const board = z.array(z.looseObject({ kind: z.enum(['finger', 'socket']), from: nonNegative, to: nonNegative })).min(2);
const fingers = z.looseObject({
  ...corner,
  count: z.int().min(2),
  fingerWidth: nonNegative,
  play: nonNegative,
  first: board,
  second: board,
  note: z.string(),
  setUp: z.looseObject({
    cutterHeight: nonNegative,
    keyDistance: z.number(),
    firstBoardFence: z.array(z.number()),
    secondBoardFence: z.array(z.number()),
    passes: z.int(),
    offsets: z.array(z.number()),
  }),
});

/** @internal */
export const joint = z.looseObject({
  layout: z.union([dovetails, fingers]),
  firstBoards: z.enum(['front and back', 'sides']),
});

const end = z.enum(['through', 'stopped']);

/** @internal */
export const grooves = z.looseObject({
  runs: z.array(
    z.looseObject({
      ...grooveFields,
      from: nonNegative,
      to: nonNegative,
      ends: z.tuple([end, end]),
      why: z.string(),
      straddles: z.boolean(),
      roundEnd: nonNegative.optional(),
      shows: z.boolean().optional(),
    }),
  ),
  routing: z
    .looseObject({
      machine: z.enum(['router table', 'hand router', 'carving machine']),
      lines: z.array(z.string()),
    })
    .optional(),
  passes: z.array(
    z.looseObject({
      name: z.string(),
      cutter: nonNegative,
      fences: z.array(nonNegative),
      depths: z.array(nonNegative),
    }),
  ),
});
