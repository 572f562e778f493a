import {
  cellWallDiffusivityFormula,
  diffusivityFormula,
  diffusivityValues,
  lumenFormula,
} from '../../wood/drying/diffusivity.js';
import type { DisplayItem } from '../kit/display.js';
import { working } from './working.js';

/**
 * How fast water spreads through wood, worked: the wall of a cell, its hollow, and both together.
 *
 * @param wood  as `diffusivity` takes it
 * @throws ShopError  as `diffusivity`
 */
export function diffusivityWorking(wood: Parameters<typeof diffusivityValues>[0]): DisplayItem[] {
  const { moisture: M, temperatureC: T, specificGravity: G } = wood;
  return [
    ...working(cellWallDiffusivityFormula, { M, T }, { digits: 3 }),
    ...working(lumenFormula, { M, G }, { digits: 3 }),
    ...working(diffusivityFormula, diffusivityValues(wood), { digits: 3 }),
  ];
}
