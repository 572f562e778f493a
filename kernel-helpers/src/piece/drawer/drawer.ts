import * as z from 'zod';
import { drawerBottomFit, drawerFit, type MovingPiece, movingPart, type PieceFit } from '../../fit/panel-fits.js';
import { panelThicknessFinding, usualGroovePlay } from '../../fit/panel-thickness.js';
import type { MovingPart } from '../../fit/room-findings.js';
import { equilibriumByMonth } from '../../fit/seasonal-fit.js';
import { amount, count, oneOf, readParameters, size } from '../../measure/parameters.js';
import { ShopError } from '../../measure/shop-error.js';
import { judge, rounding, tape } from '../../measure/verdict.js';
import { noCounts, type PiecePart, type SizedPiece } from '../piece.js';

/** All that decides a drawer, the opening's height left out. Inches. */
export interface DrawerDesign {
  openingWidth: number;
  openingDepth: number;
  sideThickness: number;
  frontThickness: number;
  sideClearance: number;
  backGap: number;
  lap: number;
  /** Nothing in older records, where it is plywood. */
  bottom?: 'plywood' | 'solid';
  bottomThickness: number;
  /** What its groove is wider than it is thick; nothing in older records. */
  bottomGroovePlay?: number;
  /** Solid bottom: degrees, 0 flat-sawn. */
  bottomRingAngle?: number;
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

const fields: z.ZodType<DrawerDesign & { bottomGroovePlay: number; bottomRingAngle: number }> = z.strictObject({
  openingWidth: size({ least: 2, most: 60, why: 'width of the opening' }),
  openingDepth: size({ least: 2, most: 60, why: 'from the front of the opening to its back' }),
  sideThickness: size({ least: 0.25, most: 1, why: 'thickness of sides and back' }).default(1 / 2),
  frontThickness: size({ least: 0.375, most: 1.5, why: 'thickness of the front' }).default(3 / 4),
  sideClearance: size({ least: 0, most: 1, why: 'between side and carcase, each side; what runners need' }).default(
    1 / 64,
  ),
  backGap: size({ least: 0, most: 6, why: 'left behind the drawer' }).default(1 / 2),
  lap: size({ least: 0.125, most: 1, why: 'wood left in front of the lapped tails' }).default(1 / 4),
  bottom: oneOf(['plywood', 'solid'], 'what the bottom is made of').default('plywood'),
  bottomGroovePlay: size({ least: 0, most: 0.125, why: 'what its groove is wider than the bottom is thick' }).default(
    usualGroovePlay,
  ),
  bottomRingAngle: amount({ least: 0, most: 90, unit: 'degrees', why: '0 flat-sawn, 90 quarter-sawn' }).default(0),
  bottomThickness: size({ least: 0.0625, most: 0.75, why: 'measured with a caliper' }).default(13 / 64),
  bottomGrooveDepth: size({ least: 0.0625, most: 0.5, why: 'depth of its grooves' }).default(1 / 4),
  bottomGrooveUp: size({ least: 0.125, most: 2, why: 'wood under the groove' }).default(3 / 8),
  bottomClearance: size({ least: 0, most: 0.5, why: 'play of the bottom, in all' }).default(3 / 64),
  tails: count({ least: 1, most: 30, what: 'tails at each corner' }).default(3),
});

/**
 * Sizes a drawer: lapped dovetails at the front, through at the back, a bottom slid in from behind under the back: plywood, or
 * solid with its grain from side to side, free at the back.
 *
 *   height = what {@link drawerFit} allows through the year          width = opening - 2 clearance
 *   sides  = depth - gap behind - lap                                 back = height less the groove's wood and the bottom
 *
 * @param drawer.opening  height of the opening
 * @param drawer.sideClearance  each side; 1/64 in unless told otherwise (from memory: 0.3 to 0.8 mm), 1/2 in for many metal runners
 * @returns parts, overall, inside, the fit through the year, findings; in
 * @throws ShopError  one line: the field, the value given, the nearest that is possible, why
 * @see common practice, no source; lap of 1/4 in: Fairham, Woodwork Joints; height: {@link drawerFit}; solid bottom: {@link drawerBottomFit}
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
    /** `plywood` unless told otherwise, or `solid`. */
    bottom?: string;
    bottomThickness?: number | string;
    bottomGroovePlay?: number | string;
    bottomRingAngle?: number;
    bottomGrooveDepth?: number | string;
    bottomGrooveUp?: number | string;
    bottomClearance?: number | string;
    tails?: number;
  },
): Drawer {
  const { opening, species, ringAngle, fittingMoisture, air, moistures, ...typed } = drawer;
  const read = readParameters(fields, typed);
  const { sideThickness, frontThickness, lap, bottomThickness, bottomGrooveUp, bottomGrooveDepth } = read;
  const moving = { species, ringAngle, fittingMoisture, air, ...(moistures ? { moistures } : {}) };
  const fit = drawerFit({ opening, ...moving });
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
  const bottom = drawerBottom(read, inside, moving);
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
      bottom.part,
    ],
    overall: { length: depth, width, height },
    moving: { part: 'drawer', thickness: sideThickness },
    counts: { ...noCounts, corner: 4, tail: 4 * read.tails, groove: 3, grooveLength: width + 2 * (depth - lap) },
    summary: [
      { what: 'Inside', sizes: [inside.length, inside.width, inside.depth] },
      { what: 'Planed to a height of', sizes: [height] },
    ],
    inside,
    fit,
    moves: [movingPart('drawer', sideThickness, moving, fit), ...bottom.moves],
    findings: [
      ...fit.findings,
      ...bottom.findings,
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

/** The bottom, from the front's groove to the back's outer face; a solid one planed to what its year allows. */
function drawerBottom(
  read: z.infer<typeof fields>,
  inside: Drawer['inside'],
  moving: MovingPiece,
): Pick<Drawer, 'findings'> & { part: PiecePart; moves: MovingPart[] } {
  const { bottomThickness, bottomGrooveDepth, sideThickness, bottomGroovePlay } = read;
  const reach = inside.length + bottomGrooveDepth + sideThickness;
  const wide = inside.width + 2 * bottomGrooveDepth - read.bottomClearance;
  const panel = { name: 'drawer bottom', count: 1, thickness: bottomThickness };
  const sheet = { part: 'drawer bottom', panel: bottomThickness, groove: bottomThickness + bottomGroovePlay };
  if (read.bottom !== 'solid') {
    const note = 'slid in under the back; one screw into it';
    return {
      part: { ...panel, length: reach, width: wide, material: 'plywood', grain: 'none', note },
      moves: [],
      findings: [panelThicknessFinding(sheet)],
    };
  }
  const board = { ...moving, ringAngle: read.bottomRingAngle };
  const fit = drawerBottomFit({ ...board, reach, under: sideThickness });
  const note =
    "glued in the front's groove alone; slid in under the back, its screw in a slot that is open to the rear";
  return {
    part: { ...panel, length: wide, width: fit.fittedWidth, material: 'wood', grain: 'side to side', note },
    moves: [movingPart('drawer bottom', bottomThickness, board, fit)],
    findings: [
      ...fit.findings,
      panelThicknessFinding({
        ...sheet,
        solid: { ...board, moistures: board.moistures ?? equilibriumByMonth(board.air) },
      }),
    ],
  };
}
