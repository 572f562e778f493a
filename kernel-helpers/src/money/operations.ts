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
  'square foot inside',
  'square foot outside',
  'coat',
  'tenon',
  'edge joint',
] as const;

/** What only a piece counts that has panels: those the planer takes, and the faces of those it does not. @internal */
export const countsOfPanels = ['panel', 'square foot by hand'] as const;

/** @internal */
export const countUnits = [...countsOfAll, ...countsOfPanels] as const;

/** What operations are counted by. */
export type CountUnit = (typeof countUnits)[number];

/** How many of each. */
export type Counts = Record<(typeof countsOfAll)[number], number> &
  Partial<Record<(typeof countsOfPanels)[number], number>>;

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

const workFields = z.object({
  boards: whole('boards bought'),
  letters: whole('letters and figures cut by hand').default(0),
  carvingMinutes: amount({ least: 0, most: 6000, unit: 'min', why: 'minutes the cutter runs' }).default(0),
  coats: whole('coats of finish'),
});

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
 * @returns one face of every solid part as square feet outside; the other, and both of plywood, inside; four corners' worth of
 *   the joint
 * @throws ShopError  one line: the field, the value given, what is possible, why
 */
export function countWork(work: {
  piece: Pick<SizedPiece, 'parts' | 'counts'>;
  joint?: JointLayout | undefined;
  panels?: readonly Panel[] | undefined;
  boards: number;
  letters?: number;
  carvingMinutes?: number;
  coats: number;
}): Counts {
  const { piece, joint, panels = [] } = work;
  const { boards, letters, carvingMinutes, coats } = readParameters(workFields, { ...work });
  const wood = piece.parts.filter(({ material }) => material === 'wood');
  const plywood = piece.parts.filter(({ material }) => material === 'plywood');
  const glued = panelCounts(panels);
  const number = (parts: typeof wood) => parts.reduce((sum, { count }) => sum + count, 0);
  const squareFeet = (parts: typeof wood) =>
    parts.reduce((sum, { count, length, width }) => sum + (count * length * width) / 144, 0);
  return {
    piece: 1,
    board: boards,
    part: number(piece.parts),
    'solid part': number(wood) + panels.reduce((sum, { count, boards: each }) => sum + count * (each - 1), 0),
    corner: piece.counts.corner,
    ...(joint ? jointCounts(joint) : noJoint),
    // A drawer has tails of its own, counted where it is sized.
    tail: piece.counts.tail + (joint ? jointCounts(joint).tail : 0),
    groove: piece.counts.groove,
    lid: piece.counts.lid,
    tenon: piece.counts.tenon,
    'edge joint': glued.edgeJoints,
    ...(panels.length > 0 ? { panel: glued.byPlaner, 'square foot by hand': glued.squareFeetByHand } : {}),
    letter: carvingMinutes > 0 ? 0 : letters,
    'carving minute': carvingMinutes,
    'square foot inside': squareFeet(wood) + 2 * squareFeet(plywood),
    'square foot outside': squareFeet(wood),
    coat: coats,
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
