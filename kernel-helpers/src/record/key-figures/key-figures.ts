import { decisionSchemas } from '../decisions/decision-schemas.js';
import type { Decisions } from '../decisions/decisions.js';
import { airFigures, briefFigures, grooveFigures, jointFigures, lidFigures, sizingFigures } from './piece-figures.js';
import {
  actualsFigures,
  answerFigures,
  daysFigures,
  measuredFigures,
  quoteFigures,
  stockFigures,
  surfaceFigures,
} from './shop-figures.js';
import type { Shown } from './shown.js';
import type { KeyFigures } from './told.js';

const byDecision: { [What in keyof Decisions]: (results: Decisions[What], shown: Shown) => KeyFigures } = {
  brief: briefFigures,
  sizing: sizingFigures,
  air: airFigures,
  lid: lidFigures,
  joint: jointFigures,
  grooves: grooveFigures,
  stock: stockFigures,
  surface: surfaceFigures,
  quote: quoteFigures,
  days: daysFigures,
  measured: measuredFigures,
  answer: answerFigures,
  actuals: actualsFigures,
};

/**
 * What a decision comes to: its key figures, and one short sentence for a line of progress.
 *
 * @param what  what was decided: `sizing`
 * @param results  as the record or a draft has them
 * @param shown  as `shownBy` reads it off the commission's entries
 * @returns an empty sentence and no figures for a decision that these helpers do not know, or that is of another shape, of an
 *   older daybook
 * @example keyFigures('lid', lid, { units: 'tape', currency: 'USD' }).sentence // 'plane to 6.657 in'
 */
export function keyFigures(what: string, results: unknown, shown: Shown): KeyFigures {
  const nothing = { sentence: '', figures: [] };
  if (!Object.hasOwn(byDecision, what)) return nothing;
  const known = what as keyof Decisions;
  if (!decisionSchemas[known].safeParse(results).success) return nothing;
  try {
    return (byDecision[known] as (results: unknown, shown: Shown) => KeyFigures)(results, shown);
  } catch {
    // A wood, a finish or a glue that was taken out of the data since: the decision stands, and cannot be named here.
    return nothing;
  }
}
