import * as z from 'zod';
import { amount, oneOf, readParameters, size, words } from '../../measure/parameters.js';
import { ShopError } from '../../measure/shop-error.js';
import { tape } from '../../measure/verdict.js';
import type { CutBoard, CutPart, Defect, FirstCut } from './plan.js';

/** What a cut plan is asked for. Lengths in inches, or as typed: `9 1/2 in`, `240 mm`. */
export interface CutJob {
  parts: CutPart[];
  boards: CutBoard[];
  /** What one cut of the saw takes, in. */
  kerf: number;
  firstCut: FirstCut;
  /** Least offcut worth keeping, in. */
  leastOffcut: { length: number; width: number };
  /** How long to look: 1 is usual, 10 ten times the work. Counted in steps of work, so that a job has one plan. */
  effort: number;
}

/** A part of a job as it is typed. */
export type TypedCutPart = Omit<CutPart, 'length' | 'width' | 'thickness'> & {
  length: number | string;
  width: number | string;
  thickness: number | string;
};

/** A defect as it is typed. */
export type TypedCutDefect = { kind: string } & Record<'fromEnd' | 'fromEdge' | 'length' | 'width', number | string>;

/** A board of a job as it is typed; without defects where it has none. */
export type TypedCutBoard = {
  mark: string;
  thickness: number | string;
  width: number | string;
  length: number | string;
  cost: number;
  defects?: TypedCutDefect[];
};

/** A cutting job as it is typed. */
export interface TypedCutJob {
  parts: TypedCutPart[];
  boards: TypedCutBoard[];
  kerf: number | string;
  /** `crosscut` or `rip`. */
  firstCut: string;
  leastOffcut?: { length: number | string; width: number | string };
  effort?: number;
}

/** Most parts and boards of one job. */
export const mostParts = 500;
const mostBoards = 60;

const defect: z.ZodType<Defect> = z.strictObject({
  kind: words('what it is: knot, check, sapwood'),
  fromEnd: size({ least: 0, most: 240, why: "from the board's marked end" }),
  fromEdge: size({ least: 0, most: 60, why: "from the board's lower edge" }),
  length: size({ least: 1 / 64, most: 240, why: 'along the grain' }),
  width: size({ least: 1 / 64, most: 60, why: 'across the grain' }),
});

const board: z.ZodType<CutBoard> = z.strictObject({
  mark: words('what is chalked on the board'),
  thickness: size({ least: 0.05, most: 6, why: 'thickness of the board or sheet' }),
  width: size({ least: 0.5, most: 60, why: 'width of the board or sheet' }),
  length: size({ least: 2, most: 240, why: 'length of the board or sheet' }),
  cost: z
    .number({ error: 'possible: a whole number of cents, 0 for a board in hand' })
    .int('possible: a whole number of cents, 0 for a board in hand')
    .min(0, 'possible: a whole number of cents, 0 for a board in hand')
    .max(10_000_000, 'possible: at most 10,000,000 cents'),
  defects: z.array(defect).max(50, 'possible: at most 50 defects on a board').default([]),
}) as z.ZodType<CutBoard>;

const part: z.ZodType<CutPart> = z.strictObject({
  name: words('what the part is called'),
  count: z
    .number({ error: 'possible: a whole number from 1' })
    .int('possible: a whole number from 1')
    .min(1, 'possible: a whole number from 1'),
  length: size({ least: 0.25, most: 240, why: 'rough length, along the grain' }),
  width: size({ least: 0.125, most: 60, why: 'rough width, across the grain' }),
  thickness: size({ least: 0.02, most: 6, why: 'least thickness of its board' }),
  sequence: words('a name for parts that stay together').optional(),
});

const job = z.strictObject({
  parts: z.array(part).min(1, 'possible: one part or more'),
  boards: z
    .array(board)
    .min(1, 'possible: one board or more')
    .max(mostBoards, `possible: at most ${mostBoards} boards at a time (leave out those that will not be bought)`),
  kerf: size({ least: 1 / 64, most: 0.5, why: 'the saw takes something: measure a cut' }),
  firstCut: oneOf(['crosscut', 'rip'], 'the first cuts go across the board, or along it'),
  leastOffcut: z
    .strictObject({
      length: size({ least: 0.25, most: 240, why: 'shortest offcut worth keeping' }),
      width: size({ least: 0.125, most: 60, why: 'narrowest offcut worth keeping' }),
    })
    .default({ length: 6, width: 1.5 }),
  effort: amount({ least: 0.01, most: 100, why: '1 is usual, 10 looks ten times as long' }).default(1),
}) as unknown as z.ZodType<CutJob>;

/**
 * Reads a cutting job as it was typed.
 *
 * @throws ShopError  one line: the field, the value given, what is possible; a mark or name used twice; a defect outside its
 *   board; no board thick enough or large enough for a part; too many parts
 */
export function readCutJob(typed: TypedCutJob): CutJob {
  const read = readParameters(job, typed);
  const total = read.parts.reduce((sum, { count }) => sum + count, 0);
  if (total > mostParts)
    throw new ShopError(
      `parts: ${total.toLocaleString('en-US')} given; possible: at most ${mostParts} in one plan (plan the pieces of one commission at a time)`,
    );
  noneTwice(
    'parts',
    'name',
    read.parts.map(({ name }) => name),
  );
  noneTwice(
    'boards',
    'mark',
    read.boards.map(({ mark }) => mark),
  );
  for (const { mark, length, width, defects } of read.boards)
    for (const { kind, fromEnd, fromEdge, length: long, width: wide } of defects)
      if (fromEnd + long > length + 1e-9 || fromEdge + wide > width + 1e-9)
        throw new ShopError(
          `defects: the ${kind} on board "${mark}" reaches ${tape(fromEnd + long)} from the end and ${tape(fromEdge + wide)} from the edge; ` +
            `possible: within ${tape(length)} by ${tape(width)} (a defect lies on its board)`,
        );
  for (const each of read.parts) checkFits(each, read.boards);
  return read;
}

function noneTwice(field: string, key: string, values: string[]): void {
  const twice = values.find((value, index) => values.indexOf(value) !== index);
  if (twice !== undefined) throw new ShopError(`${field}: the ${key} "${twice}" is given twice; each needs its own`);
}

function checkFits({ name, length, width, thickness }: CutPart, boards: CutBoard[]): void {
  const thick = boards.filter((each) => each.thickness >= thickness - 1e-9);
  if (thick.length === 0) {
    const most = Math.max(...boards.map((each) => each.thickness));
    throw new ShopError(
      `parts: "${name}" needs a board ${tape(thickness)} thick; possible: up to ${tape(most)} (the thickest board given)`,
    );
  }
  if (!thick.some((each) => each.length >= length - 1e-9 && each.width >= width - 1e-9)) {
    const sizes = thick.map((each) => `${tape(each.length)} by ${tape(each.width)}`);
    throw new ShopError(
      `parts: "${name}" is ${tape(length)} by ${tape(width)}; possible: what a board of its thickness holds, grain along the length (largest given: ${sizes[0]})`,
    );
  }
}
