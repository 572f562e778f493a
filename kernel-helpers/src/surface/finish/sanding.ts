import * as z from 'zod';
import type { Finding } from '../../measure/finding.js';
import { evaluate, type Formula, type FormulaSymbol } from '../../measure/formula.js';
import { amount, readParameters, size } from '../../measure/parameters.js';
import { caliper, judge, rounding, tape } from '../../measure/verdict.js';
import type { SizedBox } from '../../piece/box/sized-box.js';
import { type GritStep, gritOrder, mostGritStep } from './grit-order.js';
import { type SurfaceArea, surfaceAreas } from './surface-areas.js';

const inches = (tex: string, meaning: string): FormulaSymbol => ({ tex, meaning, unit: 'in', min: 0 });

/** Wood that a face loses to sanding. */
export const sandedFormula: Formula<'m' | 'k' | 'g'> = {
  name: 'Thickness sanded off a face',
  result: inches('s', 'thickness sanded off'),
  expression: 'm + k * g / 25400',
  symbols: {
    m: inches('m', 'depth of the marks that the plane or the cutter left'),
    k: { meaning: 'depth of a scratch, a part of the grain', unit: '', min: 0, max: 1 },
    g: { tex: '\\Sigma g', meaning: 'grains of all grades but the last, added', unit: 'micrometres', min: 0 },
  },
  source:
    'each grade takes off the scratches of the one before; the share of the grain is common practice, no source: measure with a caliper',
};

/** How proud a joint stands once face and ends are sanded. */
export const proudAfterFormula: Formula<'p' | 's' | 'e'> = {
  name: 'Proud height after sanding',
  result: { tex: "p'", meaning: 'how far the ends stand past the face', unit: 'in' },
  expression: 'p + s - e',
  symbols: {
    p: inches('p', 'proud height as cut'),
    s: inches('s', 'sanded off the face'),
    e: inches('e', 'taken off the ends'),
  },
  source: 'geometry: the face goes back, the ends get shorter',
};

/** How the box is sanded. Inches. */
export interface SandingPlan {
  outside: GritStep[];
  inside: GritStep[];
  /** Depth of the marks that planer or saw left outside, and of a scratch as a part of its grain. */
  marks: number;
  scratchShare: number;
  /** Sanded off each outside face, and each inside face. */
  removed: number;
  removedInside: number;
  proudAfter: number;
  areas: SurfaceArea[];
  /** Square feet, once for each grade that goes over them: the minutes are the hours' to say. */
  sanded: { beforeAssembly: number; afterAssembly: number };
  findings: Finding[];
}

/** What is typed for sanding. */
export interface SandingInput {
  box: SizedBox;
  /** Grades in the shop, such as `P120`. */
  kept: readonly string[];
  from: string;
  to: string;
  /** First grade on the inside faces, which are planed or scraped clean; the last two grades unless told otherwise. */
  insideFrom?: string;
  /** Marks left on the outside faces and on the inside ones. */
  marks?: string | number;
  insideMarks?: string | number;
  /** Taken off the ends of a proud joint. */
  endsRemoved?: string | number;
  scratchShare?: number;
}

const names = z.string({ error: 'possible: a grade such as P120 (one of those you keep)' });
const fields = z.strictObject({
  kept: z
    .array(names, { error: "possible: a list such as ['P120', 'P180', 'P240'] (grades in the shop)" })
    .min(1, 'possible: at least one grade'),
  from: names,
  to: names,
  insideFrom: names.optional(),
  marks: size({ least: 0, most: 1 / 16, why: 'depth of the marks that planer or saw left' }).default(0.003),
  insideMarks: size({ least: 0, most: 1 / 16, why: 'depth of the marks on inside faces' }).default(0.001),
  endsRemoved: size({ least: 0, most: 0.25, why: 'taken off the ends of the joint' }).default(1 / 64),
  scratchShare: amount({ least: 0, most: 1, why: 'depth of a scratch as a part of the grain' }).default(0.5),
});

/** Most that may go off an inside face of a cut joint, in: what a joint's glue still bridges. Common practice, no source. */
const mostInside = 0.005;

/**
 * Grades, wood removed, what the hours count, and what sanding does to the joint.
 *
 *   s = marks + share x (grains of all grades but the last)          off each face
 *   p' = p + s - e                                                   proud height afterwards
 *
 * @param input  see {@link SandingInput}
 * @returns see {@link SandingPlan}
 * @throws ShopError  one line: the field, the value given, what is possible, why
 * @see grain sizes: data/grits.json with its sources; all else: common practice, no source
 */
export function planSanding(input: SandingInput): SandingPlan {
  const { box, ...typed } = input;
  const read = readParameters(fields, { ...typed });
  const { kept, from, to, marks, insideMarks, scratchShare } = read;
  const outside = gritOrder({ kept, from, to });
  const inside = gritOrder({ kept, from: read.insideFrom ?? (outside.at(-2) ?? outside[0])?.id ?? from, to });
  const grains = (steps: readonly GritStep[]) => steps.slice(0, -1).reduce((sum, { microns }) => sum + microns, 0);
  const removed = evaluate(sandedFormula, { m: marks, k: scratchShare, g: grains(outside) });
  const removedInside = evaluate(sandedFormula, { m: insideMarks, k: scratchShare, g: grains(inside) });
  const { proud } = box.design;
  const proudAfter = proud === 0 ? 0 : evaluate(proudAfterFormula, { p: proud, s: removed, e: read.endsRemoved });
  const areas = surfaceAreas(box);
  const squareFeet = (when: SurfaceArea['sanded']) =>
    areas
      .filter(({ sanded }) => sanded === when)
      .reduce((sum, face) => sum + (face.area / 144) * (face.inside ? inside : outside).length, 0);
  const steep = outside.filter(({ ratio = 1 }) => ratio >= mostGritStep);
  const findings: Finding[] = [
    {
      rule: 'steps between grades',
      verdict: judge(steep.length === 0, 'watch'),
      figures: outside.map(({ id, ratio }) => (ratio ? `${id} (${ratio.toFixed(2)} x finer)` : id)).join(', '),
      reason:
        'a grade more than about 1.6 x finer leaves the scratches of the one before, and they show under the finish',
      change: `keep a grade before ${steep.map(({ id }) => id).join(' and ')}`,
    },
    {
      rule: 'inside faces and the fit of the joint',
      verdict: judge(removedInside <= mostInside + rounding, 'watch'),
      figures: `${caliper(removedInside)} off each inside face, ${inside.map(({ id }) => id).join(', ')}`,
      reason: 'a board thinned after its joint was cut leaves that much gap at the floor of every socket',
      change: 'plane or scrape the inside faces before you cut the joint, and sand them with the last grade only',
    },
  ];
  if (proud > 0)
    findings.push({
      rule: 'joint stays proud',
      verdict: judge(proudAfter >= proud / 2, 'watch'),
      figures: `${tape(proud)} as cut, ${tape(Math.max(0, proudAfter))} after sanding face (${caliper(removed)}) and ends (${tape(read.endsRemoved)})`,
      reason: 'proud ends that are sanded nearly flush look like a mistake',
      change: 'take less off the ends, or gauge the joint prouder',
    });
  return {
    ...{ outside, inside, marks, scratchShare, removed, removedInside, proudAfter, areas },
    sanded: { beforeAssembly: squareFeet('before assembly'), afterAssembly: squareFeet('after assembly') },
    findings,
  };
}
