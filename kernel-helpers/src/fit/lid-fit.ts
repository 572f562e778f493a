import * as z from 'zod';
import type { Finding } from '../measure/finding.js';
import { amount, known, readParameters, size } from '../measure/parameters.js';
import { caliper } from '../measure/verdict.js';
import type { MonthOfAir } from '../wood/air/air.js';
import { movement } from '../wood/movement.js';
import { species as speciesOf } from '../wood/species.js';
import {
  equilibriumByMonth,
  type FitMonth,
  type MonthOfMoisture,
  type SeasonalFit,
  seasonalFindings,
  seasonalFit,
} from './seasonal-fit.js';

/** The lid in one month of the year. */
export interface LidMonth extends FitMonth {
  /** Room left over the tongue in its groove, from the thickness it was planed to, in. */
  tongueRoom: number;
}

/** How a sliding lid fits through the year. Inches. */
export interface LidFit extends SeasonalFit {
  /** Thickness to plane the tongue to on the day of fitting. */
  fittedTongue: number;
  byMonth: LidMonth[];
  findings: Finding[];
}

/** What the fit reads of a box, in; the design of a sized box has it. */
export interface LidOpening {
  insideWidth: number;
  lidGrooveDepth: number;
  /** Thickness of the tongue: the height of its grooves. */
  tongueThickness: number;
}

/** What decides the fit. Lengths as text or inches. */
export interface LidFitInput {
  box: LidOpening;
  species: string;
  /** Degrees, 0 flat-sawn, 90 quarter-sawn. */
  ringAngle: number;
  /** A year, as `yearOfAir` gives it. */
  air: MonthOfAir[];
  /** Moisture that the lid really reaches in each month, %; what it would come to in the air, unless told otherwise. */
  moistures?: MonthOfMoisture[];
  /** Meter reading of the lid today, %. */
  fittingMoisture: number;
  /** Play that must stay in the wettest month, in all; 0.010 in unless told otherwise. */
  leastClearance?: number | string;
  /** Part of the groove's depth that the centred tongue must still reach into in the driest month; half unless told otherwise. */
  leastEngagement?: number;
  /** Tongue left in the far groove when the lid is pushed hard to one side; 1/32 in unless told otherwise. */
  leastHold?: number | string;
  /** How far inside the widest width to aim, for the plane and the saw; 1/64 in unless told otherwise. */
  cuttingTolerance?: number | string;
  /** Room over the tongue on the day of fitting; 0.010 in unless told otherwise. */
  tongueRoom?: number | string;
}

const fields = z.object({
  species: known(speciesOf, 'the wood of the lid'),
  ringAngle: amount({ least: 0, most: 90, unit: 'degrees', why: '0 flat-sawn, 90 quarter-sawn' }),
  fittingMoisture: amount({ least: 3, most: 20, unit: '%', why: 'moisture of the lid today, by meter' }),
  leastClearance: size({ least: 0, most: 0.25, why: 'play that must stay in the wettest month, in all' }).default(0.01),
  leastEngagement: amount({ least: 0, most: 1, why: "part of the groove's depth that must hold" }).default(0.5),
  leastHold: size({ least: 0, most: 0.5, why: 'tongue left in the far groove when pushed aside' }).default(1 / 32),
  cuttingTolerance: size({ least: 0, most: 0.125, why: 'how far inside the widest width to aim' }).default(1 / 64),
  tongueRoom: size({ least: 0, most: 0.125, why: 'room over the tongue on the day of fitting' }).default(0.01),
});

const remedies =
  'quarter-sawn wood, a calmer species, a deeper groove, or fitting at a moisture nearer the middle of the year';

/**
 * How a sliding lid fits month by month, and the widths that may be planed on the day of fitting.
 *
 * The opening is set by the front and back boards along their grain and hardly moves; the lid moves across its grain.
 * Unless `moistures` says otherwise the lid is taken to come fully to each month's air: a real lid follows late and less,
 * so its year is milder.
 *
 * @param input  see {@link LidFitInput}
 * @returns width to plane to (snug: a cutting tolerance inside the widest), window, twelve months, findings; in
 * @throws ShopError  one line: the field, the value given, what is possible, why
 * @see trade rules: common practice, no source; {@link seasonalFit}
 */
export function lidFit(input: LidFitInput): LidFit {
  const read = readParameters(fields, { ...input });
  const { species, ringAngle, fittingMoisture, leastClearance } = read;
  const { insideWidth, lidGrooveDepth, tongueThickness } = input.box;
  const fit = seasonalFit({
    opening: insideWidth + 2 * lidGrooveDepth,
    species,
    ringAngle,
    fittingMoisture,
    moistures: input.moistures ?? equilibriumByMonth(input.air),
    leastClearance,
    // Centred, each tongue reaches depth - c/2; pushed aside, the far one reaches depth - c.
    mostClearance: Math.min(2 * lidGrooveDepth * (1 - read.leastEngagement), lidGrooveDepth - read.leastHold),
    cuttingTolerance: read.cuttingTolerance,
  });

  // The tongue's thickness lies across the growth rings when the width lies along them.
  const tongue = tongueThickness - read.tongueRoom;
  const byMonth = fit.byMonth.map((month) => {
    const thicker = movement({
      across: tongue,
      species,
      ringAngle: 90 - ringAngle,
      fromMoisture: fittingMoisture,
      toMoisture: month.moisture,
    });
    return { ...month, tongueRoom: read.tongueRoom - thicker.change };
  });
  const tightest = Math.min(...byMonth.map(({ tongueRoom }) => tongueRoom));
  const findings = seasonalFindings(
    fit,
    { piece: 'lid', tight: 'it sticks', loose: 'its tongues reach too little into their grooves' },
    remedies,
    read,
  );
  findings.push({
    rule: 'lid: room over the tongue',
    verdict: tightest > 0 ? 'ok' : 'stop',
    figures: `${caliper(tightest)} left in the tightest month`,
    reason: 'a tongue that swells to the height of its groove locks the lid',
    change: 'plane the tongue thinner by a shaving (tongueRoom)',
  });
  return { ...fit, fittedTongue: tongue, byMonth, findings };
}
