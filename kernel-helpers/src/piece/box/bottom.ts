import { movingPart, panelFit } from '../../fit/panel-fits.js';
import { panelThicknessFinding } from '../../fit/panel-thickness.js';
import type { MovingPart } from '../../fit/room-findings.js';
import { equilibriumByMonth } from '../../fit/seasonal-fit.js';
import type { Finding } from '../../measure/finding.js';
import { ShopError } from '../../measure/shop-error.js';
import type { MonthOfAir } from '../../wood/air/air.js';
import type { BoxDesign, Part } from './sized-box.js';

/** A box's bottom, and how a solid one moves in its grooves. Inches. @internal */
export interface Bottom {
  part: Part;
  moves: MovingPart[];
  findings: Finding[];
}

/**
 * The bottom panel. A solid one has its grain along the longer way and is planed, across it, to what its year allows: room
 * left in the wettest month, still held in the driest.
 *
 * @param air  of its later home; a solid bottom cannot do without
 * @throws ShopError  a solid bottom without a year of air
 * @see {@link panelFit}
 * @internal
 */
export function boxBottom(design: BoxDesign, groovePlay: number, air: MonthOfAir[] | undefined): Bottom {
  const { insideLength, insideWidth, bottomGrooveDepth, bottomClearance, bottomThickness } = design;
  const opening = { length: insideLength + 2 * bottomGrooveDepth, width: insideWidth + 2 * bottomGrooveDepth };
  const panel = { name: 'bottom', count: 1, thickness: bottomThickness } as const;
  const sheet = { part: 'bottom', panel: bottomThickness, groove: bottomThickness + groovePlay };
  if (design.bottom === 'plywood')
    return {
      part: {
        ...panel,
        length: opening.length - bottomClearance,
        width: opening.width - bottomClearance,
        grain: 'none',
        material: 'plywood',
        note: 'plywood, measured thickness; glue it in if you like',
      },
      moves: [],
      findings: [panelThicknessFinding(sheet)],
    };
  if (!air)
    throw new ShopError(
      'air: none given; a solid bottom is sized for the year of the room it goes to (yearOfAir gives one for a place)',
    );
  const wood = {
    species: design.species,
    ringAngle: design.bottomRingAngle,
    fittingMoisture: design.bottomMoisture,
  };
  const moving = { ...wood, air };
  const fit = panelFit({
    ...moving,
    part: 'bottom',
    between: Math.min(insideLength, insideWidth),
    grooveDepth: bottomGrooveDepth,
  });
  return {
    part: {
      ...panel,
      length: Math.max(opening.length, opening.width) - bottomClearance,
      width: fit.fittedWidth,
      grain: opening.length >= opening.width ? 'front to back' : 'side to side',
      material: 'wood',
      note: 'solid: dry in its grooves, at most a dab of glue at the middle of its ends',
    },
    moves: [movingPart('bottom', bottomThickness, moving, fit)],
    findings: [
      ...fit.findings,
      panelThicknessFinding({ ...sheet, solid: { ...wood, moistures: equilibriumByMonth(air) } }),
    ],
  };
}
