import { lidFit } from '../../fit/lid-fit.js';
import { equilibriumByMonth } from '../../fit/seasonal-fit.js';
import type { MonthOfAir } from '../../wood/air/air.js';

const sixteenth = 1 / 16;

/**
 * How deep the grooves of a sliding lid must be: the least sixteenth, from 1/4 in up, that leaves a width to plane to
 * through the whole year, even flat-sawn; half the board at most. Where no depth does, the deepest, and the fit of the lid says
 * what else helps.
 *
 * @param box.insideWidth, box.tongueThickness, box.stockThickness  in
 * @param box.air  a year of the room it goes to
 * @returns in
 * @see half the board: common practice, no source; {@link lidFit}
 */
export function lidGrooveDepthFor(box: {
  insideWidth: number;
  tongueThickness: number;
  stockThickness: number;
  species: string;
  air: MonthOfAir[];
}): number {
  const { species, air } = box;
  const moistures = equilibriumByMonth(air).map(({ moisture }) => moisture);
  // Planed in the middle of its year: another day moves the window, and hardly its width.
  const fittingMoisture = (Math.min(...moistures) + Math.max(...moistures)) / 2;
  const most = Math.floor(box.stockThickness / 2 / sixteenth) * sixteenth;
  for (let depth = 1 / 4; depth < most; depth += sixteenth) {
    const { window } = lidFit({
      box: { ...box, lidGrooveDepth: depth },
      species,
      ringAngle: 0,
      air,
      fittingMoisture,
    });
    if (window.widest - window.narrowest >= 1 / 64) return depth;
  }
  return most;
}
