import * as z from 'zod';
import { drawerFit, type MovingPiece, type PieceFit } from '../../fit/panel-fits.js';
import { count, readParameters, size } from '../../measure/parameters.js';
import { ShopError } from '../../measure/shop-error.js';
import { judge, rounding, tape } from '../../measure/verdict.js';
import { noCounts, type SizedPiece } from '../piece.js';

/** All that decides a drawer, the opening's height left out. Inches. */
export interface DrawerDesign {
  openingWidth: number;
  openingDepth: number;
  sideThickness: number;
  frontThickness: number;
  sideClearance: number;
  backGap: number;
  lap: number;
  bottomThickness: number;
  bottomGrooveDepth: number;
  bottomGrooveUp: number;
  bottomClearance: number;
  /** At each corner. */
  tails: number;
}

/** A drawer for an opening. Inches. */
export interface Drawer extends SizedPiece {
  design: DrawerDesign;
  /** Height through the year; the fitted width of it is the height to plane to. */
  fit: PieceFit;
  inside: { length: number; width: number; depth: number };
}

const fields: z.ZodType<DrawerDesign> = z.strictObject({
  openingWidth: size({ least: 2, most: 60, why: 'width of the opening' }),
  openingDepth: size({ least: 2, most: 60, why: 'from the front of the opening to its back' }),
  sideThickness: size({ least: 0.25, most: 1, why: 'thickness of sides and back' }).default(1 / 2),
  frontThickness: size({ least: 0.375, most: 1.5, why: 'thickness of the front' }).default(3 / 4),
  sideClearance: size({ least: 0, most: 1, why: 'between side and carcase, each side; what runners need' }).default(
    1 / 64,
  ),
  backGap: size({ least: 0, most: 6, why: 'left behind the drawer' }).default(1 / 2),
  lap: size({ least: 0.125, most: 1, why: 'wood left in front of the lapped tails' }).default(1 / 4),
  bottomThickness: size({ least: 0.0625, most: 0.75, why: 'measured with a caliper' }).default(13 / 64),
  bottomGrooveDepth: size({ least: 0.0625, most: 0.5, why: 'depth of its grooves' }).default(1 / 4),
  bottomGrooveUp: size({ least: 0.125, most: 2, why: 'wood under the groove' }).default(3 / 8),
  bottomClearance: size({ least: 0, most: 0.5, why: 'play of the bottom, in all' }).default(3 / 64),
  tails: count({ least: 1, most: 30, what: 'tails at each corner' }).default(3),
});

/**
 * Sizes a drawer: lapped dovetails at the front, through at the back, a plywood bottom slid in from behind under the back.
 *
 *   height = what {@link drawerFit} allows through the year          width = opening - 2 clearance
 *   sides  = depth - gap behind - lap                                 back = height less the groove's wood and the bottom
 *
 * @param drawer.opening  height of the opening
 * @param drawer.sideClearance  each side; 1/64 in unless told otherwise (from memory: 0.3 to 0.8 mm), 1/2 in for many metal runners
 * @returns parts, overall, inside, the fit through the year, findings; in
 * @throws ShopError  one line: the field, the value given, the nearest that is possible, why
 * @see common practice, no source; lap of 1/4 in: Fairham, Woodwork Joints; height: {@link drawerFit}
 */
export function sizeDrawer(
  drawer: MovingPiece & {
    opening: number | string;
    openingWidth: number | string;
    openingDepth: number | string;
    sideThickness?: number | string;
    frontThickness?: number | string;
    sideClearance?: number | string;
    backGap?: number | string;
    lap?: number | string;
    bottomThickness?: number | string;
    bottomGrooveDepth?: number | string;
    bottomGrooveUp?: number | string;
    bottomClearance?: number | string;
    tails?: number;
  },
): Drawer {
  const { opening, species, ringAngle, fittingMoisture, air, moistures, ...typed } = drawer;
  const read = readParameters(fields, typed);
  const { sideThickness, frontThickness, lap, bottomThickness, bottomGrooveUp, bottomGrooveDepth } = read;
  const fit = drawerFit({ opening, species, ringAngle, fittingMoisture, air, ...(moistures ? { moistures } : {}) });
  const height = fit.fittedWidth;
  const width = read.openingWidth - 2 * read.sideClearance;
  const depth = read.openingDepth - read.backGap;
  if (lap > frontThickness - 1 / 8 + rounding)
    throw new ShopError(
      `lap: ${tape(lap)} given; possible: up to ${tape(frontThickness - 1 / 8)} in a front ${tape(frontThickness)} thick (the tails need wood to lie in)`,
    );
  const backWidth = height - bottomGrooveUp - bottomThickness;
  const inside = { length: depth - frontThickness - sideThickness, width: width - 2 * sideThickness, depth: backWidth };
  if (Math.min(inside.length, inside.width) <= 0 || backWidth < 1 / 2)
    throw new ShopError(
      `opening: ${tape(fit.opening)} high, ${tape(read.openingWidth)} wide, ${tape(read.openingDepth)} deep leaves no drawer; possible: over ${tape(bottomGrooveUp + bottomThickness + 3 / 4)} high, ${tape(2 * (sideThickness + read.sideClearance))} wide and ${tape(frontThickness + sideThickness + read.backGap)} deep`,
    );
  const wood = { thickness: sideThickness, material: 'wood' } as const;
  return {
    kind: 'drawer',
    design: read,
    parts: [
      {
        ...wood,
        name: 'drawer front',
        count: 1,
        length: width,
        width: height,
        thickness: frontThickness,
        grain: 'side to side',
        note: 'lapped',
      },
      {
        ...wood,
        name: 'drawer side',
        count: 2,
        length: depth - lap,
        width: height,
        grain: 'front to back',
        note: 'from the lap to the back',
      },
      {
        ...wood,
        name: 'drawer back',
        count: 1,
        length: width,
        width: backWidth,
        grain: 'side to side',
        note: 'stands on the bottom',
      },
      {
        name: 'drawer bottom',
        count: 1,
        length: inside.length + bottomGrooveDepth + sideThickness,
        width: inside.width + 2 * bottomGrooveDepth - read.bottomClearance,
        thickness: bottomThickness,
        material: 'plywood',
        grain: 'none',
        note: 'slid in under the back; one screw into it',
      },
    ],
    overall: { length: depth, width, height },
    moving: { part: 'drawer', thickness: sideThickness },
    counts: { ...noCounts, corner: 4, tail: 4 * read.tails, groove: 3 },
    summary: [
      { what: 'Inside', sizes: [inside.length, inside.width, inside.depth] },
      { what: 'Planed to a height of', sizes: [height] },
    ],
    inside,
    fit,
    findings: [
      ...fit.findings,
      {
        rule: 'drawer: runs between the sides',
        verdict: judge(read.sideClearance >= 0.3 / 25.4 - rounding, 'watch'),
        figures: `${tape(read.sideClearance)} each side`,
        reason: 'a drawer without play sticks at the first speck of dust',
        change: 'sideClearance from 1/64 to 1/32 in, or what the runners ask for',
      },
      {
        rule: 'drawer: bottom groove at most half the side',
        verdict: judge(bottomGrooveDepth <= sideThickness / 2 + rounding, 'stop'),
        figures: `${tape(bottomGrooveDepth)} deep in ${tape(sideThickness)}`,
        reason: 'the wall left beside a deeper groove splits',
        change: `bottomGrooveDepth at most ${tape(sideThickness / 2)}`,
      },
    ],
  };
}
