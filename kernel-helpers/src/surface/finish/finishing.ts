import * as z from 'zod';
import type { Finding } from '../../measure/finding.js';
import { evaluate, type Formula } from '../../measure/formula.js';
import { amount, known, readParameters } from '../../measure/parameters.js';
import { judge } from '../../measure/verdict.js';
import { testedNearest } from './coating.js';
import { type Finish, finish } from './finishes.js';
import type { SurfaceArea } from './surface-areas.js';

/** Finish that the coats take. */
export const finishAmountFormula: Formula<'A' | 'n' | 'c'> = {
  name: 'Amount of finish',
  result: { tex: 'V', meaning: 'finish', unit: 'ml', min: 0 },
  // A U.S. liquid quart is 946.352946 ml.
  expression: '946.352946 * n * A / c',
  symbols: {
    A: { meaning: 'area', unit: 'sq ft', min: 0 },
    n: { meaning: 'coats', unit: '', min: 1 },
    c: { meaning: 'coverage of a quart, one coat', unit: 'sq ft', min: 1 },
  },
  source: "definition of coverage; the figure is the label's",
};

/** The finish, its coats and its waits. */
export interface Finishing {
  finish: Finish;
  coats: number;
  /** Whether the inside faces get it too. */
  inside: boolean;
  squareFeet: number;
  millilitres: number;
  /** From one coat to the next, and from the last until the piece may be closed, packed and used. */
  recoatHours: number;
  cureDays: number;
  /** Hours from the first coat to the last. */
  coatingHours: number;
  /** Published hold on moisture after 1, 7 and 14 days, % of what bare wood took up; nothing where none is published. */
  keepsOut?: {
    coats: number;
    day1: number | null;
    day7: number | null;
    day14: number | null;
    source: string;
    fromMemory: boolean;
  };
  findings: Finding[];
}

const fields = z.strictObject({
  finish: known(finish, 'the type of finish'),
  coats: amount({ least: 1, most: 10, why: 'coats of finish' })
    .refine(Number.isInteger, 'possible: a whole number')
    .optional(),
  inside: z.boolean({ error: 'possible: true or false (whether the inside is finished too)' }).default(false),
  temperatureC: amount({ least: -10, most: 50, unit: '°C', why: 'of the shop' }),
  planned: z.string().optional(),
});

/**
 * Coats, amount and waits of a finish, and what it does to the wood's moisture.
 *
 * @param finishing.areas  as `surfaceAreas` returns them
 * @param finishing.coats  the usual number unless told otherwise
 * @param finishing.inside  whether the inside faces get it too; not unless told otherwise
 * @param finishing.planned  finish and coats that the year of the lid was worked out with, such as `shellac-2-coats`
 * @throws ShopError  one line: the field, the value given, what is possible, why
 * @see data/finishes.json; moisture: Wood Handbook FPL-GTR-190, table 16-3, see data/moisture-excluding.json
 */
export function planFinishing(finishing: {
  areas: readonly SurfaceArea[];
  finish: string;
  coats?: number;
  inside?: boolean;
  temperatureC: number;
  planned?: string;
}): Finishing {
  const { areas, ...typed } = finishing;
  const read = readParameters(fields, typed);
  const chosen = finish(read.finish);
  const coats = read.coats ?? chosen.coats;
  const squareFeet =
    areas.filter(({ inside }) => read.inside || !inside).reduce((sum, { area }) => sum + area, 0) / 144;
  const nearest = testedNearest(chosen.id, coats);
  const own = `${chosen.moistureExcluding ?? chosen.id}-${coats}-coat${coats === 1 ? '' : 's'}`;
  const findings: Finding[] = [
    {
      rule: 'warmth for the finish',
      verdict: judge(read.temperatureC >= 13, 'watch'),
      figures: `${read.temperatureC} °C in the shop`,
      reason: 'below about 13 °C oils stay tacky and films blush',
      change: 'warm the shop, and keep it warm until the last coat is hard',
    },
    {
      rule: 'rags',
      verdict: judge(!chosen.oilyRags, 'watch'),
      figures: chosen.oilyRags
        ? `${chosen.name} dries by taking up oxygen, and warms as it does`
        : `${chosen.name} dries without warming its rags`,
      reason: 'oily rags in a heap catch fire by themselves, hours later',
      change: 'lay every rag flat outdoors until it is hard, or under water in a closed metal can',
    },
  ];
  if (read.planned !== undefined)
    findings.push({
      rule: 'the finish that the lid was fitted for',
      verdict: judge(read.planned === own || (read.planned === '' && chosen.moistureExcluding === null), 'watch'),
      figures: `here ${chosen.name}, ${coats} ${coats === 1 ? 'coat' : 'coats'}; the year of the wood was worked out for ${read.planned || 'bare wood'}`,
      reason: 'another finish lets the lid follow the seasons sooner or later',
      change: chosen.moistureExcluding
        ? `set finish to '${own}' in sheet 03, or to the nearest number of coats that it knows, and run 03 and 04 again`
        : `nothing is published for ${chosen.name}: set finish to '' in sheet 03 (bare wood moves most, so you are on the safe side), and run 03 and 04 again`,
    });
  return {
    ...{ finish: chosen, coats, inside: read.inside, squareFeet, findings },
    millilitres: evaluate(finishAmountFormula, { A: squareFeet, n: coats, c: chosen.squareFeetPerQuart }),
    recoatHours: chosen.recoatHours,
    cureDays: chosen.cureDays,
    coatingHours: (coats - 1) * chosen.recoatHours,
    keepsOut: nearest && {
      coats: nearest.coats,
      ...nearest.keptOutPercent,
      source: nearest.source,
      fromMemory: nearest.fromMemory,
    },
  };
}
