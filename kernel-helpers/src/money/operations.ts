import * as z from 'zod';
import data from '../../../data/operations.json';
import type { DovetailLayout } from '../joints/dovetails.js';
import type { FingerLayout } from '../joints/finger-layout.js';
import type { KeyedMitreLayout } from '../joints/keyed-mitre.js';
import type { RabbetLayout } from '../joints/rabbet.js';
import { dataTable } from '../measure/data-file.js';
import { amount, readParameters } from '../measure/parameters.js';
import type { SizedPiece } from '../piece/piece.js';
import { type Panel, panelCounts } from '../stock/milling/panels.js';
import type { ThreePoints } from './pert.js';

/** What every piece counts, some of it none. @internal */
export const countsOfAll = [
  'piece',
  'board',
  'part',
  'solid part',
  'corner',
  'tail',
  'finger',
  'mitre',
  'key',
  'rabbet',
  'groove',
  'lid',
  'letter',
  'carving minute',
  'coat',
  'tenon',
  'edge joint',
] as const;

/**
 * What grows with the size of a piece, and what only a piece with panels has: those the planer takes, and the faces of those it
 * does not. A record from before they were counted has none.
 *
 * A graded square foot is a square foot sanded with one grade of grit, a coated one is covered with one coat. @internal
 */
export const countsOfSize = [
  'foot of board',
  'foot of groove',
  'graded square foot before assembly',
  'graded square foot after assembly',
  'square foot coated',
  'square foot packed',
  'panel',
  'square foot by hand',
] as const;

/** @internal */
export const countUnits = [...countsOfAll, ...countsOfSize] as const;

/** What operations are counted by. */
export type CountUnit = (typeof countUnits)[number];

/** How many of each. */
export type Counts = Record<(typeof countsOfAll)[number], number> &
  Partial<Record<(typeof countsOfSize)[number], number>>;

const waits = ['settle', 'rest', 'panel', 'glue', 'recoat', 'cure'] as const;

/**
 * What has to pass by itself: boards that settle in the shop's air, milled parts that rest, glue in a panel that is flattened
 * afterwards, glue elsewhere, a coat before the next, the last coat.
 */
export type Waiting = (typeof waits)[number];

/** The operations of data/operations.json, in working order. @internal */
export const operationIds = [
  'choose-boards',
  'rough-cut',
  'flatten-and-thickness',
  'edge-joints',
  'flatten-panels',
  'flatten-by-hand',
  'final-size',
  'lay-out-joint',
  'cut-joint',
  'cut-fingers',
  'cut-mitres',
  'cut-rabbets',
  'tenons',
  'grooves',
  'lettering',
  'carving',
  'lid',
  'sanding',
  'glue-up',
  'keys',
  'clean-up',
  'sanding-outside',
  'finish',
  'hand-over',
] as const;

export type OperationId = (typeof operationIds)[number];

/** A step of the work and what it usually takes. */
export interface Operation {
  id: OperationId;
  name: string;
  per: CountUnit;
  /** Minutes, once. */
  setUp: ThreePoints;
  /** Minutes for each of the counted things. */
  each: ThreePoints;
  /** What makes it longer besides, and minutes for each of that: a foot of every board, a square foot of every coat. */
  besides?: { per: CountUnit; each: ThreePoints };
  /** Operations that must be done first, where the design has them; the one before it in the list unless told otherwise. */
  after?: OperationId[];
  /** What must pass once it is done. */
  wait?: Waiting;
  /** Ids of data/cautions.json; `router`, `handle-by-hand` and `handle-by-machine` stand for what the piece has. */
  cautions?: string[];
  source: string;
}

const points = z
  .tuple([z.number().min(0), z.number().min(0), z.number().min(0)])
  .refine(([least, likely, most]) => least <= likely && likely <= most, 'least, likely and most must rise');

const operationEntry: z.ZodType<Operation> = z.strictObject({
  id: z.enum(operationIds),
  name: z.string().min(1),
  per: z.enum(countUnits),
  setUp: points,
  each: points,
  besides: z.strictObject({ per: z.enum(countUnits), each: points }).optional(),
  after: z.array(z.enum(operationIds)).optional(),
  wait: z.enum(waits).optional(),
  cautions: z.array(z.string()).optional(),
  source: z.string().min(1),
});

const table = dataTable('operations.json', data, { list: 'operations', what: 'operation', entry: operationEntry });

/** The steps of a box, in working order. */
export function allOperations(): Operation[] {
  return table.all();
}

const whole = (why: string) => {
  const possible = `possible: a whole number from 0 to 1000 (${why})`;
  return z.number({ error: possible }).int(possible).min(0, possible).max(1000, possible);
};

/** The layout of one corner. */
export type JointLayout = DovetailLayout | FingerLayout | KeyedMitreLayout | RabbetLayout;

const squareFeetOf = (why: string) => amount({ least: 0, most: 10_000, unit: 'sq ft', why });

const workFields = z.object({
  boards: whole('boards bought'),
  letters: whole('letters and figures cut by hand').default(0),
  carvingMinutes: amount({ least: 0, most: 6000, unit: 'min', why: 'minutes the cutter runs' }).default(0),
  coats: whole('coats of finish'),
  coated: squareFeetOf('faces that get the finish').optional(),
  sanded: z
    .object({
      beforeAssembly: squareFeetOf('faces sanded before assembly, once for each grade'),
      afterAssembly: squareFeetOf('faces sanded after assembly, once for each grade'),
    })
    .optional(),
});

/** Grades of grit on every face, where no sheet on the surface says: common practice, no source. */
const usualGrades = 4;

/**
 * Counts that the hours rest on, from the design.
 *
 * @param work.piece  a box or any other sized piece
 * @param work.joint  the layout of one corner, where the piece has one: dovetails, fingers, keyed mitre or rabbet
 * @param work.panels  parts that are glued up, see `panelsOf`: each of their boards is milled as a solid part
 * @param work.boards  boards bought
 * @param work.letters  letters and figures cut by hand; none where a cutter carves them
 * @param work.carvingMinutes  minutes that a cutter takes for the lettering
 * @param work.coats  coats of finish
 * @param work.coated  square feet that get the finish; all faces unless told otherwise
 * @param work.sanded  square feet, once for each grade, as `planSanding` counts them; four grades on all faces unless told
 *   otherwise: one face of every solid part after assembly, the other, and both of plywood, before
 * @returns lengths in feet, of finished parts; four corners' worth of the joint
 * @throws ShopError  one line: the field, the value given, what is possible, why
 */
export function countWork(work: {
  piece: Pick<SizedPiece, 'parts' | 'counts' | 'overall'>;
  joint?: JointLayout | undefined;
  panels?: readonly Panel[] | undefined;
  boards: number;
  letters?: number;
  carvingMinutes?: number;
  coats: number;
  coated?: number | undefined;
  sanded?: { beforeAssembly: number; afterAssembly: number } | undefined;
}): Counts {
  const { piece, joint, panels = [] } = work;
  const read = readParameters(workFields, { ...work });
  const { boards, letters, carvingMinutes, coats } = read;
  const wood = piece.parts.filter(({ material }) => material === 'wood');
  const plywood = piece.parts.filter(({ material }) => material === 'plywood');
  const glued = panelCounts(panels);
  // All but one board of every panel: that one is counted as the part.
  const further = panels.map((panel) => ({ count: panel.count * (panel.boards - 1), length: panel.finished.length }));
  const number = (parts: readonly { count: number }[]) => parts.reduce((sum, { count }) => sum + count, 0);
  const feet = (parts: readonly { count: number; length: number }[]) =>
    parts.reduce((sum, { count, length }) => sum + (count * length) / 12, 0);
  const squareFeet = (parts: typeof wood) =>
    parts.reduce((sum, { count, length, width }) => sum + (count * length * width) / 144, 0);
  const outside = squareFeet(wood);
  const inside = outside + 2 * squareFeet(plywood);
  const { length, width, height } = piece.overall;
  return {
    piece: 1,
    board: boards,
    part: number(piece.parts),
    'solid part': number([...wood, ...further]),
    'foot of board': feet([...wood, ...further]),
    corner: piece.counts.corner,
    ...(joint ? jointCounts(joint) : noJoint),
    // A drawer has tails of its own, counted where it is sized.
    tail: piece.counts.tail + (joint ? jointCounts(joint).tail : 0),
    groove: piece.counts.groove,
    'foot of groove': (piece.counts.grooveLength ?? 0) / 12,
    lid: piece.counts.lid,
    tenon: piece.counts.tenon,
    'edge joint': glued.edgeJoints,
    ...(panels.length > 0 ? { panel: glued.byPlaner, 'square foot by hand': glued.squareFeetByHand } : {}),
    letter: carvingMinutes > 0 ? 0 : letters,
    'carving minute': carvingMinutes,
    'graded square foot before assembly': read.sanded?.beforeAssembly ?? usualGrades * inside,
    'graded square foot after assembly': read.sanded?.afterAssembly ?? usualGrades * outside,
    coat: coats,
    'square foot coated': coats * (read.coated ?? inside + outside),
    'square foot packed': (2 * (length * width + width * height + height * length)) / 144,
  };
}

const noJoint = { tail: 0, finger: 0, mitre: 0, key: 0, rabbet: 0 };

/** What is counted at four corners of a joint. @internal */
export function jointCounts(joint: JointLayout): typeof noJoint {
  if ('tails' in joint) return { ...noJoint, tail: 4 * joint.tails.length };
  if ('fingerWidth' in joint) return { ...noJoint, finger: 4 * joint.count };
  if ('keys' in joint) return { ...noJoint, mitre: 4, key: 4 * joint.keys.length };
  return { ...noJoint, rabbet: 4 };
}
