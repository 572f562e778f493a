import * as z from 'zod';
import { equilibriumByMonth, type FitMonth, seasonalFit } from '../../fit/seasonal-fit.js';
import type { Finding } from '../../measure/finding.js';
import { amount, oneOf, readParameters, size } from '../../measure/parameters.js';
import { ShopError } from '../../measure/shop-error.js';
import { caliper, judge, rounding, tape } from '../../measure/verdict.js';
import type { MonthOfAir } from '../../wood/air/air.js';
import type { PiecePart } from '../piece.js';
import type { OpenBox } from './open-box.js';

/** A lid that is lifted off. Inches. No sheet takes it yet: kept for boxes with lids of other kinds. */
export interface LiftOffLid {
  /** The lid, and two battens where it has them. */
  parts: PiecePart[];
  /** What drops into the box: the lid's underside inside its rebate, or the battens' frame. */
  plug: { length: number; width: number; depth: number };
  /** Width of the rebate along the sides and along front and back; nothing with battens. */
  rebate?: { alongSides: number; alongEnds: number; depth: number };
  /** By how much the plug grows across its grain until the wettest month; nine boards in ten grow less. */
  swelling: number;
  findings: Finding[];
}

const fields = z.strictObject({
  style: oneOf(['rebated', 'battens'], 'how the lid is kept in its place'),
  thickness: size({ least: 0.1875, most: 2, why: 'thickness of the lid' }).default(0.625),
  overhang: size({ least: 0, most: 2, why: 'how far the lid stands past the box, each side' }).default(0),
  plugDepth: size({ least: 1 / 16, most: 2, why: 'how deep the lid drops into the box' }).default(0.25),
  clearance: size({ least: 0, most: 0.25, why: 'beside the plug, each side' }).default(1 / 64),
  battenWidth: size({ least: 0.25, most: 6, why: 'width of a batten' }).default(1),
  ringAngle: amount({ least: 0, most: 90, unit: 'degrees', why: '0 flat-sawn, 90 quarter-sawn' }).default(0),
  fittingMoisture: amount({ least: 3, most: 20, unit: '%', why: 'moisture today, by meter' }).default(8),
});

/** Play across the grain, in all, that still looks and feels like a lid that fits: common practice, no source. In. */
const mostLoose = 1 / 8;

/**
 * Sizes a lid that is lifted off: rebated all round, or flat with two battens under it.
 *
 *   lid   = overall - 2 proud + 2 overhang          plug = inside - 2 clearance
 *
 * The grain runs along the longer side. A rebated plug is one with the lid and swells across the grain: it is made narrower
 * by what nine boards in ten swell until the wettest month, and looser in the driest. Battens lie across the lid's grain, where they do not swell.
 *
 * @param lid.box  as sized, without a lid
 * @param lid.clearance  beside the plug, each side, when it is wettest; 1/64 in unless told otherwise (from memory: 0.2 to 0.4 mm)
 * @param lid.air  a year of the room it goes to
 * @param lid.fittingMoisture  meter reading today, %; 8 unless told otherwise
 * @returns lid, battens, plug, findings; in
 * @throws ShopError  one line: the field, the value given, the nearest that is possible, why
 * @see common practice, no source; through the year: {@link seasonalFit}
 */
export function liftOffLid(lid: {
  box: OpenBox;
  style: 'rebated' | 'battens';
  thickness?: number | string;
  overhang?: number | string;
  plugDepth?: number | string;
  clearance?: number | string;
  battenWidth?: number | string;
  ringAngle?: number;
  fittingMoisture?: number;
  air: MonthOfAir[];
}): LiftOffLid {
  const { box, air, ...typed } = lid;
  const read = readParameters(fields, typed);
  const { style, thickness, overhang, plugDepth, clearance, battenWidth } = read;
  const { insideLength, insideWidth, insideDepth, species, proud } = box.design;
  const rebated = style === 'rebated';
  if (rebated && plugDepth >= thickness - rounding)
    throw new ShopError(
      `plugDepth: ${tape(plugDepth)} given; possible: less than ${tape(thickness)} (the rebate is cut out of the lid's thickness)`,
    );
  if (plugDepth >= insideDepth)
    throw new ShopError(
      `plugDepth: ${tape(plugDepth)} given; possible: less than the inside depth ${tape(insideDepth)}`,
    );
  const outside = (overall: number) => overall - 2 * proud + 2 * overhang;
  const lengthwise = outside(box.overall.length);
  const crosswise = outside(box.overall.width);
  const grainLengthwise = lengthwise >= crosswise;
  const across = grainLengthwise ? insideWidth : insideLength;
  const { fittedWidth, byMonth, driest } = seasonalFit({
    ...{ opening: across, species, ringAngle: read.ringAngle, fittingMoisture: read.fittingMoisture },
    moistures: equilibriumByMonth(air),
    leastClearance: 2 * clearance,
    mostClearance: across,
    cuttingTolerance: 0,
  });
  const swelling = rebated ? across - 2 * clearance - fittedWidth : 0;
  const loosest = byMonth.find(({ month }) => month === driest) as FitMonth;
  const plug = {
    length: insideLength - 2 * clearance - (grainLengthwise ? 0 : swelling),
    width: insideWidth - 2 * clearance - (grainLengthwise ? swelling : 0),
    depth: plugDepth,
  };
  if (2 * battenWidth > (grainLengthwise ? plug.length : plug.width))
    throw new ShopError(
      `battenWidth: ${tape(battenWidth)} given; possible: up to ${tape((grainLengthwise ? plug.length : plug.width) / 2)} (two lie side by side in the box)`,
    );
  const wood = { material: 'wood' } as const;
  const parts: PiecePart[] = [
    {
      ...wood,
      name: 'lid',
      count: 1,
      length: Math.max(lengthwise, crosswise),
      width: Math.min(lengthwise, crosswise),
      thickness,
      grain: grainLengthwise ? 'front to back' : 'side to side',
      note: rebated ? 'rebated all round on its underside' : 'battens screwed across its underside',
    },
  ];
  if (!rebated)
    parts.push({
      ...wood,
      name: 'batten',
      count: 2,
      length: grainLengthwise ? plug.width : plug.length,
      width: battenWidth,
      thickness: plugDepth,
      grain: grainLengthwise ? 'side to side' : 'front to back',
      note: 'screwed at its middle, in slots near its ends: the lid moves over it',
    });
  const lip = thickness - plugDepth;
  const findings: Finding[] = [
    {
      rule: 'lid lifts off and does not rattle',
      verdict: judge(clearance >= 0.2 / 25.4 && clearance <= 1 / 32, 'watch'),
      figures: `${tape(clearance)} each side when it is wettest${rebated ? `, ${tape(clearance + swelling / 2)} across the grain today` : ''}`,
      reason: 'less and it jams or sucks air; more and it slides about',
      change: 'clearance from 1/64 to 1/32 in',
    },
    {
      rule: 'plug deep enough to hold',
      verdict: judge(plugDepth >= 3 / 16, 'watch'),
      figures: `${tape(plugDepth)} into the box`,
      reason: 'a shallow plug is pushed off by a sleeve',
      change: 'plugDepth at least 3/16 in',
    },
  ];
  if (rebated)
    findings.push({
      rule: 'lid keeps its place when it is driest',
      verdict: judge(loosest.high <= mostLoose + rounding, 'watch'),
      figures: `${caliper(loosest.high)} of play in all across the grain, at ${loosest.moisture.toFixed(1)} %`,
      reason: 'a plug that has shrunk so far lets the lid slide about and stand off the box at one side',
      change: `quarter-sawn or calmer wood, or battens: ${caliper(mostLoose)} in all is enough`,
    });
  if (rebated)
    findings.push({
      rule: 'wood over the rebate',
      verdict: judge(lip >= 3 / 16, 'watch'),
      figures: `${tape(lip)} left of ${tape(thickness)}`,
      reason: 'a thin edge splits when the lid is dropped',
      change: `plugDepth at most ${tape(Math.max(1 / 16, thickness - 3 / 16))}, or a thicker lid`,
    });
  const rebate = {
    alongSides: (crosswise - plug.width) / 2,
    alongEnds: (lengthwise - plug.length) / 2,
    depth: plugDepth,
  };
  return { parts, plug, ...(rebated ? { rebate } : {}), swelling, findings };
}
