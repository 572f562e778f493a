import { evaluate } from '../../measure/formula.js';
import type { Operation } from '../../money/operations.js';
import { pertMean, pertVariance } from '../../money/pert.js';
import type { DisplayItem } from '../kit/display.js';
import { working } from './working.js';

/**
 * An operation's time worked, its set-up and one of what it is counted by: mean and variance of the three points.
 *
 * @param operation  minutes
 * @returns workings to show
 */
export function pertWorking({ setUp, each }: Operation): DisplayItem[] {
  const [a, m, b] = [setUp[0] + each[0], setUp[1] + each[1], setUp[2] + each[2]];
  const t = evaluate(pertMean, { a, m, b });
  return [...working(pertMean, { a, m, b }, { digits: 3 }), ...working(pertVariance, { a, t, b }, { digits: 3 })];
}
