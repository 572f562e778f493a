import { z } from 'zod';
import data from '../../../data/operations.json';
import type { SizedPiece } from '../box/piece.js';
import { readEntries } from '../measure/data-file.js';
import type { Formula } from '../measure/formula.js';
import { evaluate } from '../measure/formula.js';
import { ShopError } from '../measure/shop-error.js';

/** What operations are counted by. */
export type Counted =
  | 'piece'
  | 'part'
  | 'corner'
  | 'tail'
  | 'groove'
  | 'lid'
  | 'letter'
  | 'square foot'
  | 'coat'
  | 'tenon'
  | 'edge joint';

/** Least, likely and most minutes. */
export type ThreePoints = [least: number, likely: number, most: number];

/** A step of the work and what it usually takes. */
export interface Operation {
  id: string;
  name: string;
  per: Counted;
  setUp: ThreePoints;
  each: ThreePoints;
  source: string;
}

/** Hours of one operation, or of all. */
export interface Hours {
  mean: number;
  /** Standard deviation. */
  deviation: number;
}

/** Hours of a piece: mean, and the band that holds eight times in ten. */
export interface HoursEstimate extends Hours {
  low: number;
  high: number;
  byOperation: (Hours & { id: string; name: string; count: number; per: Counted })[];
}

/** Mean of a three-point estimate. */
export const threePointMean: Formula<'a' | 'm' | 'b'> = {
  name: 'Mean of three points',
  result: { tex: '\\bar t', meaning: 'mean time', unit: 'min' },
  expression: '(a + 4 * m + b) / 6',
  symbols: {
    a: { meaning: 'least', unit: 'min', min: 0 },
    m: { meaning: 'likely', unit: 'min', min: 0 },
    b: { meaning: 'most', unit: 'min', min: 0 },
  },
  source: 'Malcolm, Roseboom, Clark and Fazar 1959, Operations Research 7(5), the estimate of PERT (from memory)',
};

const points = z
  .tuple([z.number().min(0), z.number().min(0), z.number().min(0)])
  .refine(([least, likely, most]) => least <= likely && likely <= most, 'least, likely and most must rise');

const operationEntry: z.ZodType<Operation> = z.strictObject({
  id: z.string(),
  name: z.string().min(1),
  per: z.enum([
    'piece',
    'part',
    'corner',
    'tail',
    'groove',
    'lid',
    'letter',
    'square foot',
    'coat',
    'tenon',
    'edge joint',
  ]),
  setUp: points,
  each: points,
  source: z.string().min(1),
});

let operations: Operation[] | undefined;

/** The steps of a box, in working order. */
export function boxOperations(): Operation[] {
  operations ??= [...readEntries('operations.json', data, 'operations', operationEntry).values()];
  return operations;
}

/**
 * Counts that the hours rest on, from the design.
 *
 * @param work.box  a box or any other sized piece
 * @param work.tailsPerCorner, work.letters, work.coats  what the sized piece does not know
 * @throws ShopError  a count that is not a whole number of zero or more
 */
export function boxCounts(work: {
  box: Pick<SizedPiece, 'parts' | 'counts'>;
  tailsPerCorner: number;
  letters: number;
  coats: number;
}): Record<Counted, number> {
  const { box, tailsPerCorner, letters, coats } = work;
  for (const [field, count] of Object.entries({ tailsPerCorner, letters, coats }))
    if (!Number.isInteger(count) || count < 0 || count > 1000)
      throw new ShopError(`${field}: ${count} given; possible: a whole number from 0 to 1000`);
  const wood = box.parts.filter(({ material }) => material === 'wood');
  return {
    piece: 1,
    part: box.parts.reduce((sum, { count }) => sum + count, 0),
    corner: box.counts.corner,
    tail: box.counts.tail + 4 * tailsPerCorner,
    groove: box.counts.groove,
    lid: box.counts.lid,
    tenon: box.counts.tenon,
    'edge joint': box.counts.edgeJoint,
    letter: letters,
    'square foot': wood.reduce((sum, { count, length, width }) => sum + (2 * count * length * width) / 144, 0),
    coat: coats,
  };
}

/**
 * Hours of a piece from what is counted on it. An operation whose count is zero takes nothing.
 *
 * The operations are taken as independent; the band is the normal distribution's middle eight in ten.
 *
 * @param estimate.counts  how many of each, see {@link boxCounts}
 * @param estimate.operations  in working order; those of a box unless told otherwise
 * @returns hours
 * @throws ShopError  a count below zero
 * @see three-point mean and deviation ((b - a)/6) of PERT: {@link threePointMean}
 */
export function estimateHours(estimate: { counts: Record<Counted, number>; operations?: Operation[] }): HoursEstimate {
  const { counts, operations = boxOperations() } = estimate;
  const mean = ([a, m, b]: ThreePoints) => evaluate(threePointMean, { a, m, b });
  const deviation = ([a, , b]: ThreePoints) => (b - a) / 6;
  const byOperation = operations
    .filter(({ per }) => counts[per] !== 0)
    .map(({ id, name, per, setUp, each }) => {
      const count = counts[per];
      if (!(count > 0)) throw new ShopError(`counts: ${count} ${per} given; possible: zero or more`);
      return {
        id,
        name,
        count,
        per,
        mean: (mean(setUp) + count * mean(each)) / 60,
        // One pace holds for all of a kind: a slow day makes every tail slow, so their deviations add.
        deviation: Math.hypot(deviation(setUp), count * deviation(each)) / 60,
      };
    });
  const total = byOperation.reduce((sum, operation) => sum + operation.mean, 0);
  const spread = Math.hypot(...byOperation.map((operation) => operation.deviation));
  const eightInTen = 1.2816 * spread;
  return { mean: total, deviation: spread, low: total - eightInTen, high: total + eightInTen, byOperation };
}
