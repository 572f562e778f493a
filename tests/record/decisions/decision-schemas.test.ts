import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, expectTypeOf, test } from 'vitest';
import type { DovetailLayout } from '../../../kernel-helpers/src/joints/dovetails.js';
import { layOutFingers } from '../../../kernel-helpers/src/joints/finger-joint.js';
import type { GrooveRun } from '../../../kernel-helpers/src/joints/groove-runs.js';
import { sizeBookcase } from '../../../kernel-helpers/src/piece/bookcase/bookcase.js';
import { sizeBox } from '../../../kernel-helpers/src/piece/box/size-box.js';
import type { Brief } from '../../../kernel-helpers/src/piece/brief.js';
import { sizeDrawer } from '../../../kernel-helpers/src/piece/drawer/drawer.js';
import { sizeFrameAndPanel } from '../../../kernel-helpers/src/piece/frame-and-panel/frame-and-panel.js';
import { sizeSolidTop } from '../../../kernel-helpers/src/piece/solid-top/solid-top.js';
import type { Entry } from '../../../kernel-helpers/src/record/chain/entry.js';
import {
  type DecisionsByKind,
  decisionSchemas,
  type HeldTogether,
  type SchemaResults,
} from '../../../kernel-helpers/src/record/decisions/decision-schemas.js';
import type { Unlike } from '../../../kernel-helpers/src/record/decisions/unlike.js';
import { yearOfAir } from '../../../kernel-helpers/src/wood/air/air.js';

type Rename<T, Old extends keyof T, New extends string> = {
  [Field in keyof T as Field extends Old ? New : Field]: T[Field];
};
type With<What extends keyof DecisionsByKind, Results> = Omit<DecisionsByKind, What> & { [Decision in What]: Results };
type Found<What extends keyof DecisionsByKind, Results> = Unlike<With<What, Results>, SchemaResults, 'decisions'>;
type OfLid = DecisionsByKind['lid'];
type OfJoint = DecisionsByKind['joint'];
type OfGrooves = DecisionsByKind['grooves'];
type OfSizing = DecisionsByKind['sizing'];
type Box = Extract<OfSizing, { kind: 'box' }>;

/** Each of the demonstration's decisions, as its record keeps it. */
const recorded = readFileSync(
  join(import.meta.dirname, '../../../data/commissions/2026-11-25-tea-chest/record.jsonl'),
  'utf8',
)
  .trimEnd()
  .split('\n')
  .map((line) => JSON.parse(line) as Pick<Entry, 'results'> & { what: keyof typeof decisionSchemas });

/** Every object within a value, the value itself first. */
function objectsIn(value: unknown): Record<string, unknown>[] {
  if (typeof value !== 'object' || value === null) return [];
  const within = Object.values(value).flatMap(objectsIn);
  return Array.isArray(value) ? within : [value as Record<string, unknown>, ...within];
}

test('decisions and schemas name the same fields', () => {
  expectTypeOf<Unlike<DecisionsByKind, SchemaResults, 'decisions'>>().toBeNever();
});

test('a field renamed in a decision alone does not compile', () => {
  type Renamed = With<'lid', Rename<OfLid, 'fittedWidth', 'widthFitted'>>;
  // @ts-expect-error  the lid's schema asks for fittedWidth
  type _Required = HeldTogether<Unlike<Renamed, SchemaResults, 'decisions'>>;
  type OptionalRenamed = With<'brief', Rename<Brief, 'insideDepth', 'depthInside'>>;
  // @ts-expect-error  the brief's schema asks for insideDepth, where it is given
  type _Optional = HeldTogether<Unlike<OptionalRenamed, SchemaResults, 'decisions'>>;
  type InSchema = Rename<SchemaResults['surface'], 'handleBit', 'bit'>;
  // @ts-expect-error  the decision is read as handleBit
  type _InSchema = HeldTogether<Unlike<DecisionsByKind['surface'], InSchema, 'surface'>>;
});

test('the compiler names the field, however deep it is', () => {
  type Run = Rename<GrooveRun, 'roundEnd', 'radius'>;
  expectTypeOf<Found<'grooves', Omit<OfGrooves, 'runs'> & { runs: Run[] }>>().toEqualTypeOf<
    'decisions.grooves.runs[].roundEnd' | 'decisions.grooves.runs[].radius'
  >();
  type Month = Rename<OfLid['byMonth'][number], 'tongueRoom', 'room'>;
  expectTypeOf<Found<'lid', Omit<OfLid, 'byMonth'> & { byMonth: Month[] }>>().toEqualTypeOf<
    'decisions.lid.byMonth[].tongueRoom' | 'decisions.lid.byMonth[].room'
  >();
  type Estimate = NonNullable<DecisionsByKind['quote']['hours']['byOperation']>;
  expectTypeOf<Unlike<Rename<Estimate[number], 'mean', 'middle'>[], Estimate, 'hours'>>().toEqualTypeOf<
    'hours[].mean' | 'hours[].middle'
  >();
});

test('a kind that one alone knows, and a field that one alone may leave out, differ', () => {
  expectTypeOf<Found<'joint', Omit<OfJoint, 'layout'> & { layout: DovetailLayout }>>().not.toBeNever();
  type Sizing<Design> = Exclude<OfSizing, Box> | (Omit<Box, 'design'> & { design: Design });
  expectTypeOf<Found<'sizing', Sizing<Rename<Box['design'], 'foot', 'base'>>>>().toEqualTypeOf<'decisions.sizing'>();
  expectTypeOf<
    Found<'answer', { answer: 'accepted'; date: string; reason: string }>
  >().toEqualTypeOf<'decisions.answer.answer'>();
  expectTypeOf<
    Found<'answer', Omit<DecisionsByKind['answer'], 'reason'> & { reason?: string }>
  >().toEqualTypeOf<'decisions.answer.reason'>();
});

test.each(recorded)(
  '$what of the demonstration is of its schema, with fields of another daybook besides',
  ({ what, results }) => {
    expect(decisionSchemas[what].safeParse(results).error).toBeUndefined();
    for (const object of objectsIn(results)) object.ofAnotherDaybook = 'kept';
    expect(decisionSchemas[what].safeParse(results).error).toBeUndefined();
  },
);

const air = yearOfAir({ place: 'chicago-ohare' });
const moving = { species: 'cherry-black', ringAngle: 0, fittingMoisture: 8, air };

test.each([
  sizeBox({ insideLength: 9.5, insideWidth: 6.25, insideDepth: 4, species: 'walnut-black', bottom: 'solid', air }),
  sizeDrawer({ ...moving, opening: '5 in', openingWidth: '12 in', openingDepth: '16 in', bottom: 'solid' }),
  sizeSolidTop({ ...moving, length: '40 in', width: '20 in' }),
  sizeFrameAndPanel({ ...moving, height: '24 in', width: '16 in' }),
  sizeBookcase({ species: 'cherry-black', height: '48 in', width: '30 in', depth: '11 in', shelves: 3 }),
])('a $kind is of the schema of what is sized', (piece) => {
  expect(decisionSchemas.sizing.safeParse(JSON.parse(JSON.stringify(piece))).error).toBeUndefined();
});

test('a finger joint is of the schema of a joint', () => {
  const layout = layOutFingers({ boardWidth: '5 in', stockThickness: '1/2 in', fingerWidth: '1/2 in' });
  expect(decisionSchemas.joint.safeParse({ layout, firstBoards: 'sides' }).error).toBeUndefined();
});

test('a decision that lacks what later sheets read is refused, by the field', () => {
  const lid = recorded.find(({ what }) => what === 'lid')?.results as { byMonth: { tongueRoom?: number }[] };
  delete lid.byMonth[3]?.tongueRoom;
  expect(decisionSchemas.lid.safeParse(lid).error?.issues[0]?.path).toEqual(['byMonth', 3, 'tongueRoom']);
});

test('a brief gives all that a box asks for, or nothing of it', () => {
  const brief = recorded.find(({ what }) => what === 'brief')?.results as Brief;
  const { insideLength, insideWidth, insideDepth, joint, ...drawer } = brief;
  expect(decisionSchemas.brief.safeParse(drawer).success).toBe(true);
  expect(
    decisionSchemas.brief.safeParse({ ...drawer, insideLength, insideWidth, joint }).error?.issues[0]?.message,
  ).toBe('possible: all of insideLength, insideWidth, insideDepth, joint (a box), or none (any other piece)');
  expect(insideDepth).toBeGreaterThan(0);
});
