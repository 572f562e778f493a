import * as z from 'zod';
import type { Finding } from '../measure/finding.js';
import { evaluate, type Formula, type FormulaSymbol } from '../measure/formula.js';
import { readParameters, size } from '../measure/parameters.js';
import { ShopError } from '../measure/shop-error.js';
import { judge, rounding, tape } from '../measure/verdict.js';
import { groovePasses } from './groove-passes.js';

const inches = (tex: string, meaning: string): FormulaSymbol => ({ tex, meaning, unit: 'in', min: 0 });

/** Wood left between two keys, and with no edge distance given between a key and the edge too. */
export const keyGapFormula: Formula<'W' | 'e' | 'k' | 'b'> = {
  name: 'Gap between keys',
  result: inches('s', 'wood between two keys'),
  expression: '(W - 2 * e - k * b) / (k - 1)',
  symbols: {
    W: inches('W', 'width of the boards'),
    e: inches('e', 'wood between the edge and the first key'),
    k: { meaning: 'keys in a corner', unit: '', min: 2 },
    b: inches('b', 'thickness of a key'),
  },
  source: 'common practice, no source',
};

/** Mitre face from the outer corner to the inner one. */
export const mitreFaceFormula: Formula<'t'> = {
  name: 'Length of the mitre face',
  result: inches('m', 'mitre face, from outer to inner corner'),
  expression: 't * sqrt(2)',
  symbols: { t: inches('t', 'thickness of the stock') },
  source: 'trigonometry, 45 degrees',
};

/** A mitred corner with keys let in across it. Inches, from the lower edge. */
export interface KeyedMitreLayout {
  boardWidth: number;
  stockThickness: number;
  keyThickness: number;
  /** How deep the slots go, from the outer corner along the mitre. */
  keyDepth: number;
  keys: { from: number; to: number }[];
  gap: number;
  /** From the outer corner to the inner one. */
  mitreFace: number;
  /** A key before it is trimmed: a right triangle, its long side outside. */
  keyBlank: { longSide: number; height: number; thickness: number };
  glueArea: {
    /** Mitre faces, what the slots take away left out; end grain at 45 degrees. Square inches. */
    mitre: number;
    /** Both faces of all keys; long grain to long grain. Square inches. */
    keys: number;
  };
  setUp: {
    /** Of the saw for the mitre, degrees. */
    mitreAngle: number;
    /** Height of the blade over the cradle's bottom line, where the corner rests. */
    bladeHeight: number;
    /** Fence to the lower side of each slot. */
    fences: number[];
    /** Passes for one slot, and how far each is moved on. */
    passes: number;
    offsets: number[];
  };
  findings: Finding[];
}

const fields = z.strictObject({
  boardWidth: size({ least: 0.5, most: 60, why: 'width of the boards at the joint' }),
  stockThickness: size({ least: 0.125, most: 3, why: 'thickness of the stock' }),
  keys: z
    .number({ error: 'possible: a whole number of keys' })
    .int('possible: a whole number of keys')
    .min(1, 'possible: one key or more')
    .max(100, 'possible: at most 100'),
  keyThickness: size({ least: 1 / 64, most: 1, why: 'thickness of a key' }).default(1 / 8),
  keyDepth: size({ least: 1 / 16, most: 4, why: 'depth of the slots from the outer corner' }).optional(),
  edge: size({ least: 0, most: 30, why: 'wood between the edge and the first key' }).optional(),
  kerf: size({ least: 1 / 64, most: 1, why: 'width of the blade that cuts the slots' }).default(1 / 8),
});

/**
 * Lays out a mitred corner with keys.
 *
 * The glued corner stands in a cradle at 45 degrees and the slots are cut across it. A slot as deep as d takes a key that is a right
 * triangle of height d and long side 2 d: each of its two faces glues on an area d².
 *
 *   s = (W - 2 e - k b) / (k - 1)          wood between two keys
 *
 * @param joint.keyDepth  from the outer corner along the mitre; two thirds of the mitre face unless told otherwise
 * @param joint.edge  wood between the edge and the first key; as much as between two keys unless told otherwise
 * @param joint.kerf  width of the blade that cuts the slots; 1/8 in unless told otherwise
 * @returns keys, glue areas, set-up, findings; in and square in
 * @throws ShopError  one line: the field, the value given, the nearest that is possible, why
 * @see common practice, no source; areas: geometry
 * @example layOutKeyedMitre({ boardWidth: '5 in', stockThickness: '1/2 in', keys: 3 }).gap // 1 5/32: (5 - 3/8) / 4
 */
export function layOutKeyedMitre(joint: {
  boardWidth: number | string;
  stockThickness: number | string;
  keys: number;
  keyThickness?: number | string;
  keyDepth?: number | string;
  edge?: number | string;
  kerf?: number | string;
}): KeyedMitreLayout {
  const read = readParameters(fields, { ...joint });
  const { boardWidth, stockThickness, keys: count, keyThickness, kerf } = read;
  const mitreFace = evaluate(mitreFaceFormula, { t: stockThickness });
  const keyDepth = read.keyDepth ?? (mitreFace * 2) / 3;
  const { edge, gap } = spacing(read);
  const keys = Array.from({ length: count }, (_, index) => {
    const from = edge + index * (keyThickness + gap);
    return { from, to: from + keyThickness };
  });
  const fits = kerf <= keyThickness + rounding;
  const { passes, offsets } = groovePasses({ grooveWidth: keyThickness, grooveDepth: keyDepth, cutter: kerf });
  const left = mitreFace - keyDepth;
  const findings: Finding[] = [
    {
      rule: 'slot stays inside the corner',
      verdict: judge(left >= 1 / 8, left > rounding ? 'watch' : 'stop'),
      absolute: 'impossible',
      figures: `slot ${tape(keyDepth)} deep, mitre ${tape(mitreFace)} from corner to corner`,
      reason: 'a slot as deep as the mitre comes out inside the box',
      change: `keyDepth at most ${tape(Math.max(1 / 16, mitreFace - 1 / 8))}`,
    },
    {
      rule: 'key reaches past the middle of the mitre',
      verdict: judge(keyDepth >= mitreFace / 2, 'watch'),
      figures: `slot ${tape(keyDepth)} deep of ${tape(mitreFace)}`,
      reason: 'a shallow key holds the outer edge only, and the inner edge opens',
      change: `keyDepth at least ${tape(mitreFace / 2)}`,
    },
    {
      rule: 'blade cuts the slot',
      verdict: judge(fits, 'stop'),
      absolute: 'impossible',
      figures: `blade ${tape(kerf)}, key ${tape(keyThickness)}, ${passes} ${passes === 1 ? 'pass' : 'passes'}`,
      reason: 'a blade thicker than the key leaves a gap beside it',
      change: `keyThickness at least ${tape(kerf)}, or a thinner blade`,
    },
    {
      rule: 'wood beside the outer keys',
      verdict: judge(edge >= keyThickness, 'watch'),
      figures: `${tape(edge)} from the edge, key ${tape(keyThickness)}`,
      reason: 'a thin strip between the slot and the edge breaks off at the saw',
      change: `edge at least ${tape(keyThickness)}`,
    },
  ];
  return {
    boardWidth,
    stockThickness,
    keyThickness,
    keyDepth,
    keys,
    gap,
    mitreFace,
    keyBlank: { longSide: 2 * keyDepth, height: keyDepth, thickness: keyThickness },
    glueArea: { mitre: mitreFace * boardWidth - count * keyDepth * keyThickness, keys: 2 * count * keyDepth ** 2 },
    setUp: { mitreAngle: 45, bladeHeight: keyDepth, fences: keys.map(({ from }) => from), passes, offsets },
    findings,
  };
}

/** Wood at the edges and between the keys. */
function spacing(read: z.infer<typeof fields>): { edge: number; gap: number } {
  const { boardWidth, keys, keyThickness, edge } = read;
  const wood = boardWidth - keys * keyThickness;
  const most = Math.floor(boardWidth / (2 * keyThickness));
  if (edge === undefined || keys === 1) {
    const even = wood / (keys + 1);
    if (even > rounding && edge === undefined) return { edge: even, gap: even };
    if (keys === 1 && wood > rounding) return { edge: wood / 2, gap: wood / 2 };
    throw new ShopError(
      `keys: ${keys} given; possible: ${most > 0 ? `1 to ${most}` : 'thinner ones'} of ${tape(keyThickness)} on boards ${tape(boardWidth)} wide, with as much wood as keys`,
    );
  }
  if (2 * edge >= wood - rounding)
    throw new ShopError(
      `edge: ${tape(edge)} given; possible: less than ${tape(Math.max(0, wood / 2))} with ${keys} keys of ${tape(keyThickness)} on boards ${tape(boardWidth)} wide`,
    );
  return { edge, gap: evaluate(keyGapFormula, { W: boardWidth, e: edge, k: keys, b: keyThickness }) };
}
