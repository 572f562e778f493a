import * as z from 'zod';
import type { Finding } from '../../measure/finding.js';
import { evaluate, type Formula } from '../../measure/formula.js';
import { amount, known, readParameters } from '../../measure/parameters.js';
import { judge } from '../../measure/verdict.js';
import { allGlues, type Glue, glue } from './glues.js';

/** Time from the first glue spread to the last joint home. */
export const assemblyFormula: Formula<'n' | 't' | 'o'> = {
  name: 'Time of the assembly',
  result: { tex: 'T', meaning: 'time from the first glue to the last joint home', unit: 'min', min: 0 },
  expression: 'n * t + o',
  symbols: {
    n: { meaning: 'joints to spread and close', unit: '', min: 1 },
    t: { meaning: 'minutes for one', unit: 'min', min: 0 },
    o: { meaning: 'minutes for the rest: bottom, squaring', unit: 'min', min: 0 },
  },
  source: 'common practice, no source: time it at the dry fit',
};

/** Glue that an area takes. */
export const glueAmountFormula: Formula<'A' | 'q'> = {
  name: 'Amount of glue',
  result: { tex: 'V', meaning: 'glue', unit: 'ml', min: 0 },
  expression: 'A * 0.00064516 * q / 1.1',
  symbols: {
    A: { meaning: 'area spread', unit: 'sq in', min: 0 },
    q: { meaning: 'spread', unit: 'g/m²', min: 50, max: 600 },
  },
  source: 'definition of spread; density 1.1 g/ml and a spread of 200 g/m² from memory, the label comes first',
};

/** The glue-up. */
export interface Gluing {
  glue: Glue;
  assemblyMinutes: number;
  /** Glue to mix or pour, ml. */
  millilitres: number;
  /** Every type, the one chosen too, and whether this assembly can be done with it. */
  choices: { id: string; type: string; inTime: boolean; warmEnough: boolean }[];
  findings: Finding[];
}

const fields = z.strictObject({
  glue: known(glue, 'the type of glue'),
  joints: amount({ least: 1, most: 500, why: 'joints that are spread and closed in one go' }),
  minutesPerJoint: amount({ least: 0.05, most: 120, unit: 'minutes', why: 'to spread and close one' }),
  otherMinutes: amount({ least: 0, most: 240, unit: 'minutes', why: 'bottom, squaring, clamps' }).default(2),
  temperatureC: amount({ least: -10, most: 50, unit: '°C', why: 'of shop and wood' }),
  area: amount({ least: 0, most: 100000, unit: 'sq in', why: 'area that is spread' }),
  spread: amount({ least: 50, most: 600, unit: 'g/m²', why: 'from the label' }).default(200),
});

/**
 * Whether a type of glue gives the assembly enough time and warmth, and how much of it is needed.
 *
 *   T = joints x minutes + the rest, against the open time
 *
 * @param gluing.joints, gluing.minutesPerJoint  what is glued in one go; time it at the dry fit
 * @param gluing.area  square inches that are spread
 * @param gluing.spread  g/m²; 200 unless told otherwise
 * @throws ShopError  one line: the field, the value given, what is possible, why
 * @see data/glues.json, each type with its source
 */
export function planGluing(gluing: {
  glue: string;
  joints: number;
  minutesPerJoint: number;
  otherMinutes?: number;
  temperatureC: number;
  area: number;
  spread?: number;
}): Gluing {
  const read = readParameters(fields, { ...gluing });
  const chosen = glue(read.glue);
  const assemblyMinutes = evaluate(assemblyFormula, { n: read.joints, t: read.minutesPerJoint, o: read.otherMinutes });
  const choices = allGlues().map(({ id, type, openMinutes, leastTemperatureC }) => ({
    id,
    type,
    inTime: assemblyMinutes <= openMinutes[0],
    warmEnough: read.temperatureC >= leastTemperatureC,
  }));
  const [least, most] = chosen.openMinutes;
  const slower = choices.filter(({ inTime, warmEnough }) => inTime && warmEnough).map(({ type }) => type);
  const late = assemblyMinutes > most + chosen.closedMinutes;
  const findings: Finding[] = [
    {
      rule: 'open time of the glue',
      verdict: assemblyMinutes <= least ? 'ok' : late ? 'stop' : 'watch',
      figures: `the assembly takes ${assemblyMinutes.toFixed(1)} minutes; ${chosen.type} stays open ${least === most ? least : `${least} to ${most}`} and bears ${chosen.closedMinutes} more once joined`,
      reason: 'glue that has skinned over does not wet the other face, and a swollen tail stops half way',
      change: `glue up in two goes${slower.length > 0 ? `, or take ${slower.join(', ')}` : ''}`,
    },
    {
      rule: 'warmth for the glue',
      verdict: judge(read.temperatureC >= chosen.leastTemperatureC, 'stop'),
      figures: `${read.temperatureC} °C; at least ${chosen.leastTemperatureC} °C for ${chosen.type}`,
      reason: 'below its least temperature a glue dries to chalk, gels or does not cure',
      change: 'warm shop, wood and glue the day before, or take a glue for the cold',
    },
  ];
  return {
    glue: chosen,
    assemblyMinutes,
    millilitres: evaluate(glueAmountFormula, { A: read.area, q: read.spread }),
    choices,
    findings,
  };
}
