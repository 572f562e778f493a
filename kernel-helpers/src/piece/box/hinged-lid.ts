import * as z from 'zod';
import { equilibriumByMonth } from '../../fit/seasonal-fit.js';
import type { Finding } from '../../measure/finding.js';
import { amount, readParameters, size } from '../../measure/parameters.js';
import { ShopError } from '../../measure/shop-error.js';
import { caliper, judge, rounding, tape } from '../../measure/verdict.js';
import type { MonthOfAir } from '../../wood/air/air.js';
import { movement } from '../../wood/movement.js';
import type { PiecePart } from '../piece.js';
import type { OpenBox } from './open-box.js';

/** A lid on two butt hinges. Inches. No sheet takes it yet: kept for boxes with lids of other kinds. */
export interface HingedLid {
  parts: PiecePart[];
  hinges: {
    /** From the box's outside faces to the outer end of each hinge. */
    fromSides: number;
    /** Depth of the mortise in the back's edge, and in the lid. */
    mortiseDepth: number;
    /** From the back's outside face to the far side of the mortise. */
    mortiseWidth: number;
    mortiseLength: number;
  };
  /** Longest screw that does not come out, in lid and in the back's edge. */
  longestScrew: { lid: number; back: number };
  findings: Finding[];
}

const fields = z.strictObject({
  thickness: size({ least: 0.1875, most: 2, why: 'thickness of the lid' }).default(0.625),
  overhang: size({ least: 0, most: 2, why: 'how far the lid stands past the front and the sides' }).default(0),
  hingeLength: size({ least: 0.5, most: 6, why: 'length of a hinge, along the joint' }).default(1.5),
  hingeKnuckle: size({ least: 1 / 16, most: 1, why: 'thickness of the closed hinge at its knuckle' }).default(3 / 16),
  leafThickness: size({ least: 1 / 64, most: 0.25, why: 'thickness of a leaf' }).default(1 / 16),
  leafWidth: size({ least: 3 / 16, most: 3, why: 'width of a leaf, from the middle of the pin' }).default(3 / 8),
  screwLength: size({ least: 0.125, most: 3, why: 'length of a screw' }).default(1 / 2),
  gap: size({ least: 0, most: 0.125, why: 'between lid and back when it is shut' }).default(1 / 64),
  ringAngle: amount({ least: 0, most: 90, unit: 'degrees', why: '0 flat-sawn, 90 quarter-sawn' }).default(0),
  fittingMoisture: amount({ least: 3, most: 20, unit: '%', why: 'moisture today, by meter' }).default(8),
});

/** Wood kept before the point of a screw. Common practice, no source. */
const underPoint = 1 / 16;

/**
 * Sizes a lid on two hinges let in at the back.
 *
 *   mortise depth = (closed knuckle - gap) / 2          in the back's edge and in the lid
 *   longest screw = thickness - mortise depth + leaf - 1/16
 *
 * Each leaf is let in by half of the closed hinge, so that lid and back close on each other but for the gap. The back's edge takes
 * the screw along its height; the lid takes it through its thickness.
 *
 * @param lid.box  as sized, without a lid
 * @param lid.hingeKnuckle  thickness of the closed hinge; 3/16 in unless told otherwise: measure yours
 * @param lid.gap  between lid and back when shut; 1/64 in unless told otherwise
 * @param lid.air  a year of the room it goes to
 * @param lid.fittingMoisture  meter reading today, %; 8 unless told otherwise
 * @returns lid, hinge positions and mortises, longest screws, findings; in
 * @throws ShopError  one line: the field, the value given, the nearest that is possible, why
 * @see common practice, no source
 */
export function hingedLid(lid: {
  box: OpenBox;
  thickness?: number | string;
  overhang?: number | string;
  hingeLength?: number | string;
  hingeKnuckle?: number | string;
  leafThickness?: number | string;
  leafWidth?: number | string;
  screwLength?: number | string;
  gap?: number | string;
  ringAngle?: number;
  fittingMoisture?: number;
  air: MonthOfAir[];
}): HingedLid {
  const { box, air, ...typed } = lid;
  const read = readParameters(fields, typed);
  const { thickness, overhang, hingeLength, hingeKnuckle, leafThickness, leafWidth, screwLength, gap } = read;
  const { stockThickness, proud } = box.design;
  const crosswise = box.overall.width - 2 * proud;
  const lengthwise = box.overall.length - 2 * proud;
  const mortiseDepth = (hingeKnuckle - gap) / 2;
  if (mortiseDepth < leafThickness - rounding)
    throw new ShopError(
      `hingeKnuckle: ${tape(hingeKnuckle)} given; possible: at least ${tape(2 * leafThickness + gap)} (two leaves of ${tape(leafThickness)} and the gap)`,
    );
  if (2 * hingeLength > crosswise)
    throw new ShopError(
      `hingeLength: ${tape(hingeLength)} given; possible: up to ${tape(crosswise / 2)} (two side by side along the back)`,
    );
  const lidLength = lengthwise + overhang;
  const lidWidth = crosswise + 2 * overhang;
  const longestScrew = {
    lid: Math.max(0, thickness - mortiseDepth + leafThickness - underPoint),
    back: box.overall.height - mortiseDepth + leafThickness - underPoint,
  };
  const behindLeaf = stockThickness - leafWidth;
  const findings: Finding[] = [
    {
      rule: 'screws stay inside the lid',
      verdict: judge(screwLength <= longestScrew.lid + rounding, 'stop'),
      absolute: 'impossible',
      figures: `screw ${tape(screwLength)}, lid ${tape(thickness)} less the mortise of ${tape(mortiseDepth)}`,
      reason: 'a longer screw comes out through the top, or lifts it in a bump',
      change: `screwLength at most ${tape(longestScrew.lid)}, or a lid ${tape(thickness + Math.max(0, screwLength - longestScrew.lid))} thick`,
    },
    {
      rule: 'wood inside the hinge leaf',
      verdict: behindLeaf <= 0 ? 'stop' : judge(behindLeaf >= 1 / 8, 'watch'),
      figures: `leaf ${tape(leafWidth)} on a back ${tape(stockThickness)} thick`,
      reason: 'a leaf as wide as the back shows inside, and its screws split the thin wall that is left',
      change: `leafWidth at most ${tape(Math.max(3 / 16, stockThickness - 1 / 8))}`,
    },
    {
      rule: 'lid left under the mortise',
      verdict: judge(thickness - mortiseDepth >= 1 / 4, 'watch'),
      figures: `${tape(thickness - mortiseDepth)} left of ${tape(thickness)}`,
      reason: 'the screws need wood to hold in',
      change: `a lid at least ${tape(mortiseDepth + 1 / 4)} thick, or a thinner hinge`,
    },
  ];
  findings.push(edgesThroughYear({ ...read, species: box.design.species, lidLength, lidWidth, air }));
  // A hinge's own length from each side is usual, less where the box is too narrow for that.
  const fromSides = Math.min(hingeLength, (crosswise - 2 * hingeLength) / 3);
  return {
    parts: [
      {
        name: 'lid',
        count: 1,
        length: Math.max(lidLength, lidWidth),
        width: Math.min(lidLength, lidWidth),
        thickness,
        material: 'wood',
        grain: lidLength >= lidWidth ? 'front to back' : 'side to side',
        note: 'two hinges at the back, let in half and half',
      },
    ],
    hinges: { fromSides, mortiseDepth, mortiseWidth: leafWidth, mortiseLength: hingeLength },
    longestScrew,
    findings,
  };
}

/** How far an edge of a lid on a box that stands still may come out of flush before it shows: common practice, no source. */
const showsFlush = 1 / 32;

/** The lid moves across its grain over a box that does not: from the hinges forward, or to both sides. */
function edgesThroughYear(lid: {
  species: string;
  ringAngle: number;
  fittingMoisture: number;
  lidLength: number;
  lidWidth: number;
  overhang: number;
  air: MonthOfAir[];
}): Finding {
  const { species, ringAngle, fittingMoisture, lidLength, lidWidth, overhang, air } = lid;
  const lengthwise = lidLength >= lidWidth;
  const moves = equilibriumByMonth(air).map(({ moisture }) =>
    movement({
      across: lengthwise ? lidWidth / 2 : lidLength,
      species,
      ringAngle,
      fromMoisture: fittingMoisture,
      toMoisture: moisture,
    }),
  );
  const outward = Math.max(0, ...moves.map(({ high }) => high));
  const inward = Math.max(0, ...moves.map(({ low }) => -low));
  const covers = overhang > 0 ? inward <= overhang + rounding : Math.max(outward, inward) <= showsFlush + rounding;
  return {
    rule: 'lid covers the box all year',
    verdict: judge(covers, 'watch'),
    figures: `overhang ${tape(overhang)}; ${lengthwise ? 'each side' : 'the front edge'} comes out by ${caliper(outward)} and goes in by ${caliper(inward)} from today, nine boards in ten`,
    reason:
      'the box stands still along its boards and the lid moves across its grain: a flush edge does not stay flush',
    change: `overhang at least ${tape(Math.max(inward, 1 / 16))}, quarter-sawn or calmer wood, or a framed lid`,
  };
}
