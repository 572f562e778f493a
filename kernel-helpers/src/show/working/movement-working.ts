import { evaluate } from '../../measure/formula.js';
import {
  coefficientFormula,
  movement,
  ringAngleFormula,
  shrinkageFormula,
  totalShrinkageFormula,
} from '../../wood/movement.js';
import { species } from '../../wood/species.js';
import type { DisplayItem } from '../kit/display.js';
import { type WorkingOptions, working } from './working.js';

/**
 * A movement worked: the coefficient turned to the ring angle, then the form of the handbook's equation that holds for these
 * moistures.
 *
 * @param move  as `movement` takes it: inches, degrees, %
 * @param options  how the change is shown
 * @returns workings to show; of a board flat-sawn or quarter-sawn without the turning
 * @throws ShopError  as `movement`
 */
export function movementWorking(move: Parameters<typeof movement>[0], options: WorkingOptions = {}): DisplayItem[] {
  const { across, ringAngle, fromMoisture, toMoisture } = move;
  const { form, figure, tangential, radial } = movement(move).method;
  const turned = { Ct: tangential, Cr: radial, a: ringAngle };
  const turning = ringAngle === 0 || ringAngle === 90 ? [] : working(ringAngleFormula, turned, { digits: 4 });
  const ends = { D: across, Mi: fromMoisture, Mf: toMoisture };
  if (form === 'coefficient') return [...turning, ...working(coefficientFormula, { ...ends, C: figure }, options)];
  const M0 = species(move.species).fibreSaturation;
  return [
    ...turning,
    ...working(totalShrinkageFormula, { C: evaluate(ringAngleFormula, turned), M0 }, { digits: 4 }),
    ...working(shrinkageFormula, { ...ends, S: figure, M0 }, options),
  ];
}
