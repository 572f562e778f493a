import * as z from 'zod';
import type { Finding } from '../../measure/finding.js';
import { evaluate, type Formula, type FormulaSymbol } from '../../measure/formula.js';
import { readParameters, size } from '../../measure/parameters.js';
import { ShopError } from '../../measure/shop-error.js';
import { judge, tape } from '../../measure/verdict.js';
import type { PiecePart } from '../piece.js';

const inches = (tex: string, meaning: string): FormulaSymbol => ({ tex, meaning, unit: 'in', min: 0 });

/** Clear width of one of several alike compartments. */
export const compartmentFormula: Formula<'I' | 'n' | 't'> = {
  name: 'Clear width of a compartment',
  result: inches('c', 'clear width of a compartment'),
  expression: '(I - n * t) / (n + 1)',
  symbols: {
    I: inches('I', 'inside size across the dividers'),
    n: { meaning: 'dividers', unit: '', min: 0 },
    t: inches('t', 'thickness of a divider'),
  },
  source: 'common practice, no source',
};

/** Dividers that part the inside of a box or a tray. Inches. No sheet takes them yet: kept for boxes fitted out inside. */
export interface Dividers {
  parts: PiecePart[];
  /** Clear size of each compartment. */
  compartment: { length: number; width: number };
  /** From the front's inside face, or the left side's, to the near side of each dado and of each crossing notch. */
  places: { lengthwise: number[]; crosswise: number[] };
  /** Where dividers cross, each is notched to half its height, from above or from below. */
  notch?: { width: number; depth: number };
  findings: Finding[];
}

const count = (why: string) =>
  z
    .number({ error: `possible: a whole number (${why})` })
    .int(`possible: a whole number (${why})`)
    .min(0, `possible: none or more (${why})`)
    .max(40, `possible: at most 40 (${why})`)
    .default(0);

const fields = z.strictObject({
  insideLength: size({ least: 0.5, most: 60, why: 'inside, front to back' }),
  insideWidth: size({ least: 0.5, most: 60, why: 'inside, side to side' }),
  height: size({ least: 0.25, most: 24, why: 'height of the dividers' }),
  thickness: size({ least: 1 / 16, most: 1, why: 'thickness of a divider' }).default(1 / 4),
  dadoDepth: size({ least: 0, most: 0.5, why: 'depth of the dado in the boards, 0 for loose dividers' }).default(0),
  crosswise: count('dividers from side to side'),
  lengthwise: count('dividers from front to back'),
});

/**
 * Parts the inside of a box or a tray into alike compartments.
 *
 *   compartment = (inside - n t) / (n + 1)          divider = inside + 2 dado depth
 *
 * @param dividers.crosswise  dividers that run from side to side
 * @param dividers.lengthwise  dividers that run from front to back
 * @param dividers.dadoDepth  0 for loose dividers, which is what it is unless told otherwise
 * @returns parts, compartment, places, notches, findings; in
 * @throws ShopError  one line: the field, the value given, the nearest that is possible, why
 * @see common practice, no source
 */
export function sizeDividers(dividers: {
  insideLength: number | string;
  insideWidth: number | string;
  height: number | string;
  thickness?: number | string;
  dadoDepth?: number | string;
  crosswise?: number;
  lengthwise?: number;
}): Dividers {
  const read = readParameters(fields, { ...dividers });
  const { insideLength, insideWidth, height, thickness, dadoDepth, crosswise, lengthwise } = read;
  if (crosswise + lengthwise === 0)
    throw new ShopError('crosswise: no dividers given; possible: one or more, crosswise or lengthwise');
  const fits = (field: string, inside: number, n: number) => {
    if (n * thickness >= inside)
      throw new ShopError(
        `${field}: ${n} given; possible: up to ${Math.ceil(inside / thickness) - 1} of ${tape(thickness)} in ${tape(inside)}`,
      );
    return evaluate(compartmentFormula, { I: inside, n, t: thickness });
  };
  const compartment = {
    length: fits('crosswise', insideLength, crosswise),
    width: fits('lengthwise', insideWidth, lengthwise),
  };
  const places = (n: number, clear: number) =>
    Array.from({ length: n }, (_, index) => (index + 1) * clear + index * thickness);
  const crossing = crosswise > 0 && lengthwise > 0;
  const part = (way: string, n: number, inside: number, grain: PiecePart['grain'], notched: string): PiecePart => ({
    name: `${way} divider`,
    count: n,
    length: inside + 2 * dadoDepth,
    width: height,
    thickness,
    material: 'wood',
    grain,
    note: crossing ? `notched to half its height from ${notched}` : dadoDepth > 0 ? 'slid into its dadoes' : 'loose',
  });
  const narrowest = Math.min(compartment.length, compartment.width);
  return {
    parts: [
      part('crosswise', crosswise, insideWidth, 'side to side', 'above'),
      part('lengthwise', lengthwise, insideLength, 'front to back', 'below'),
    ].filter((divider) => divider.count > 0),
    compartment,
    places: { lengthwise: places(crosswise, compartment.length), crosswise: places(lengthwise, compartment.width) },
    ...(crossing ? { notch: { width: thickness, depth: height / 2 } } : {}),
    findings: [
      {
        rule: 'fingers reach into a compartment',
        verdict: judge(narrowest >= 1, 'watch'),
        figures: `compartments ${tape(compartment.length)} by ${tape(compartment.width)}`,
        reason: 'what lies in a compartment narrower than thumb and finger is tipped out, not picked out',
        change: `compartments of 1 in and more: at most ${Math.max(0, Math.floor((insideLength - 1) / (1 + thickness)))} dividers crosswise, ${Math.max(0, Math.floor((insideWidth - 1) / (1 + thickness)))} lengthwise`,
      },
    ],
  };
}
