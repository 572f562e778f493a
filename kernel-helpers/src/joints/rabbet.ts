import * as z from 'zod';
import type { Finding } from '../measure/finding.js';
import { evaluate, type Formula, type FormulaSymbol } from '../measure/formula.js';
import { readParameters, size } from '../measure/parameters.js';
import { ShopError } from '../measure/shop-error.js';
import { judge, rounding, tape } from '../measure/verdict.js';
import { groovePasses } from './groove-passes.js';

const inches = (tex: string, meaning: string): FormulaSymbol => ({ tex, meaning, unit: 'in', min: 0 });

/** Length of the board that goes into the rabbets of its neighbours. */
export const rabbetedLengthFormula: Formula<'I' | 'd'> = {
  name: 'Length of the board between',
  result: inches('L', 'length of the board that goes into the rabbets'),
  expression: 'I + 2 * d',
  symbols: { I: inches('I', 'inside size along the board'), d: inches('d', 'depth of the rabbet') },
  source: 'common practice, no source',
};

/** A rabbeted corner. Inches. */
export interface RabbetLayout {
  boardWidth: number;
  stockThickness: number;
  /** Into the thickness of the rabbeted board, from its inside face. */
  rabbetDepth: number;
  /** Along the rabbeted board, from its end: the neighbour's thickness and what it stands proud. */
  rabbetWidth: number;
  /** Thickness that covers the neighbour's end. */
  lip: number;
  /** By how much the neighbour is longer than the inside, both ends. */
  lengthAdded: number;
  /** End grain on long grain: the neighbour's end on the rabbet's floor, the shoulder on its inside face. Square inches. */
  glueArea: { floor: number; shoulder: number };
  setUp: {
    /** Fence to the far side of the cutter. */
    fence: number;
    /** Height of the cutter over the table. */
    height: number;
    /** Gauge for the shoulder line, from the end. */
    gauge: number;
    passes: number;
    offsets: number[];
    depths: number[];
  };
  findings: Finding[];
}

const fields = z.strictObject({
  boardWidth: size({ least: 0.5, most: 60, why: 'width of the boards at the joint' }),
  stockThickness: size({ least: 0.125, most: 3, why: 'thickness of the stock' }),
  neighbourThickness: size({ least: 0.125, most: 3, why: 'thickness of the board that goes in' }).optional(),
  proud: size({ least: 0, most: 0.5, why: 'how far the rabbeted board stands past its neighbour' }).default(0),
  rabbetDepth: size({ least: 1 / 32, most: 3, why: 'depth of the rabbet' }).optional(),
  cutter: size({ least: 1 / 64, most: 2, why: 'width of the blade or the cutter' }).default(1 / 2),
});

/**
 * Lays out a rabbeted corner: the end of one board takes in the end of its neighbour.
 *
 *   rabbet   = neighbour's thickness + proud wide, half to two thirds of the thickness deep
 *   length   = inside + 2 depth           of the board that goes in
 *
 * @param joint.neighbourThickness  as the stock unless told otherwise
 * @param joint.rabbetDepth  half the stock unless told otherwise
 * @param joint.cutter  1/2 in unless told otherwise; one wider than the rabbet runs into a sacrificial fence
 * @returns sizes, glue areas, set-up, findings; in and square in
 * @throws ShopError  one line: the field, the value given, the nearest that is possible, why
 * @see common practice, no source; areas: geometry
 * @example layOutRabbet({ boardWidth: '5 in', stockThickness: '1/2 in' }).rabbetDepth // 1/4
 */
export function layOutRabbet(joint: {
  boardWidth: number | string;
  stockThickness: number | string;
  neighbourThickness?: number | string;
  proud?: number | string;
  rabbetDepth?: number | string;
  cutter?: number | string;
}): RabbetLayout {
  const read = readParameters(fields, { ...joint });
  const { boardWidth, stockThickness, proud, neighbourThickness = stockThickness } = read;
  const rabbetDepth = read.rabbetDepth ?? stockThickness / 2;
  const rabbetWidth = neighbourThickness + proud;
  if (rabbetDepth >= stockThickness - rounding)
    throw new ShopError(
      `rabbetDepth: ${tape(rabbetDepth)} given; possible: less than ${tape(stockThickness)} (it would cut the end off), half to two thirds is usual`,
    );
  const lip = stockThickness - rabbetDepth;
  const share = rabbetDepth / stockThickness;
  const cutter = Math.min(read.cutter, rabbetWidth);
  const { passes, offsets, depths } = groovePasses({ grooveWidth: rabbetWidth, grooveDepth: rabbetDepth, cutter });
  const findings: Finding[] = [
    {
      rule: 'rabbet half to two thirds of the stock',
      verdict: judge(share >= 1 / 2 - rounding && share <= 2 / 3 + rounding, 'watch'),
      figures: `${tape(rabbetDepth)} deep in ${tape(stockThickness)} stock`,
      reason: 'a shallow rabbet holds little and shows much end grain; a deep one leaves a weak lip',
      change: `rabbetDepth from ${tape(stockThickness / 2)} to ${tape((stockThickness * 2) / 3)}`,
    },
    {
      rule: 'lip over the end',
      verdict: judge(lip >= 1 / 8, 'watch'),
      figures: `${tape(lip)} left`,
      reason: 'a thinner lip breaks at the first knock',
      change: `rabbetDepth at most ${tape(Math.max(1 / 32, stockThickness - 1 / 8))}`,
    },
    {
      rule: 'held by more than glue',
      verdict: 'watch',
      figures: `${tape(rabbetDepth)} of shoulder, no long grain on long grain`,
      reason: 'end grain takes glue badly: pegs, pins or screws carry this corner',
      change: 'peg it through the lip, or take a dovetail, fingers or a keyed mitre',
    },
  ];
  return {
    boardWidth,
    stockThickness,
    rabbetDepth,
    rabbetWidth,
    lip,
    lengthAdded: evaluate(rabbetedLengthFormula, { I: 0, d: rabbetDepth }),
    glueArea: { floor: neighbourThickness * boardWidth, shoulder: rabbetDepth * boardWidth },
    setUp: { fence: rabbetWidth, height: rabbetDepth, gauge: rabbetWidth, passes, offsets, depths },
    findings,
  };
}
