import { z } from 'zod';
import type { Finding } from '../measure/finding.js';
import { formatLength } from '../measure/length.js';
import { amount, known, readParameters, size } from '../measure/parameters.js';
import type { MonthOfAir } from '../wood/air.js';
import { equilibriumMoisture } from '../wood/emc.js';
import { movement } from '../wood/movement.js';
import { species as speciesOf } from '../wood/species.js';
import type { SizedBox } from './size-box.js';

/** The lid in one month of the year. Inches, in all (both sides together). */
export interface LidMonth {
  /** 1 to 12. */
  month: number;
  /** Moisture the lid would come to, %. */
  moisture: number;
  /** Play between tongues and groove floors; below zero it binds. */
  clearance: number;
  /** Band that holds nine boards in ten. */
  low: number;
  high: number;
  /** Room left over the tongue in its groove, from the thickness it was planed to. */
  tongueRoom: number;
}

/** How a sliding lid fits through the year. Inches. */
export interface LidFit {
  /** Width to plane the lid to on the day of fitting. */
  fittedWidth: number;
  /** Between the groove floors. */
  opening: number;
  /** Widths that may be planed on that day; narrowest above widest means that none does. */
  window: { narrowest: number; widest: number };
  limits: { leastClearance: number; mostClearance: number };
  /** Moisture of the lid on the day of fitting, %. */
  fittingMoisture: number;
  byMonth: LidMonth[];
  wettest: number;
  driest: number;
  findings: Finding[];
}

/** What decides the fit. Lengths as text or inches. */
export interface LidFitInput {
  box: SizedBox;
  species: string;
  /** Degrees, 0 flat-sawn, 90 quarter-sawn. */
  ringAngle: number;
  /** A year, as `yearOfAir` gives it. */
  air: MonthOfAir[];
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

/**
 * How a sliding lid fits month by month, and the widths that may be planed on the day of fitting.
 *
 * The opening is set by the front and back boards along their grain and hardly moves; the lid moves across its grain.
 * The lid is taken to come fully to each month's air: a thin lid follows late and less, so the year it really sees is
 * milder. Windows are set by the band that holds nine boards in ten, not by the mean.
 *
 * @param input  see {@link LidFitInput}
 * @returns width to plane to (snug: a cutting tolerance inside the widest), window, twelve months, findings; in
 * @throws ShopError  one line: the field, the value given, what is possible, why
 * @see trade rules: common practice, no source; moisture: {@link equilibriumMoisture}; change: {@link movement}
 */
export function lidFit(input: LidFitInput): LidFit {
  const { box, air } = input;
  const {
    species,
    ringAngle,
    fittingMoisture,
    leastClearance,
    leastEngagement,
    leastHold,
    cuttingTolerance,
    tongueRoom,
  } = readParameters(fields, { ...input });
  const { insideWidth, lidGrooveDepth, tongueThickness } = box.design;
  const opening = insideWidth + 2 * lidGrooveDepth;
  // Centred, each tongue reaches depth - c/2; pushed aside, the far one reaches depth - c.
  const mostClearance = Math.min(2 * lidGrooveDepth * (1 - leastEngagement), lidGrooveDepth - leastHold);

  const year = air.map(({ month, temperatureC, relativeHumidity }) => ({
    month,
    moisture: equilibriumMoisture({ temperatureC, relativeHumidity }),
  }));
  const strainTo = (toMoisture: number) =>
    movement({ across: 1, species, ringAngle, fromMoisture: fittingMoisture, toMoisture });
  const strains = year.map(({ moisture }) => strainTo(moisture));

  const most = Math.max(...strains.map(({ high }) => high));
  const least = Math.min(...strains.map(({ low }) => low));
  const widest = (opening - leastClearance) / (1 + most);
  const narrowest = (opening - mostClearance) / (1 + least);
  // As snug as the year allows; in a narrow window, its middle.
  const fittedWidth = Math.max((narrowest + widest) / 2, widest - cuttingTolerance);

  // The tongue's thickness lies across the growth rings when the width lies along them.
  const tongue = tongueThickness - tongueRoom;
  const byMonth = year.map(({ month, moisture }, index) => {
    const { change, low, high } = strains[index] as (typeof strains)[number];
    const thicker = movement({
      across: tongue,
      species,
      ringAngle: 90 - ringAngle,
      fromMoisture: fittingMoisture,
      toMoisture: moisture,
    });
    return {
      month,
      moisture,
      clearance: opening - fittedWidth * (1 + change),
      low: opening - fittedWidth * (1 + high),
      high: opening - fittedWidth * (1 + low),
      tongueRoom: tongueThickness - tongue - thicker.change,
    };
  });
  const byMoisture = [...byMonth].sort((a, b) => a.moisture - b.moisture);
  const driest = byMoisture[0] as LidMonth;
  const wettest = byMoisture[byMoisture.length - 1] as LidMonth;

  const fit = {
    fittedWidth,
    opening,
    window: { narrowest, widest },
    limits: { leastClearance, mostClearance },
    fittingMoisture,
    byMonth,
    wettest: wettest.month,
    driest: driest.month,
  };
  return { ...fit, findings: lidFindings(fit, lidGrooveDepth) };
}

const monthNames = [
  'January',
  'February',
  'March',
  'April',
  'May',
  'June',
  'July',
  'August',
  'September',
  'October',
  'November',
  'December',
];

function lidFindings(fit: Omit<LidFit, 'findings'>, grooveDepth: number): Finding[] {
  const caliper = (inches: number) => formatLength(inches, { system: 'caliper' });
  const { byMonth, limits, window } = fit;
  const wettest = byMonth[fit.wettest - 1] as LidMonth;
  const driest = byMonth[fit.driest - 1] as LidMonth;
  const nameOf = ({ month }: LidMonth) => monthNames[month - 1];
  const room = window.widest - window.narrowest;
  const tightest = Math.min(...byMonth.map(({ tongueRoom }) => tongueRoom));
  const levers =
    'quarter-sawn wood, a calmer species, a deeper groove, or fitting at a moisture nearer the middle of the year';
  return [
    {
      rule: 'a width that fits the whole year',
      verdict: room < 0 ? 'stop' : room < 1 / 64 ? 'watch' : 'ok',
      figures:
        room < 0
          ? `no width does: the lid would need ${caliper(-room)} more room between its limits`
          : `${caliper(window.narrowest)} to ${caliper(window.widest)}, ${caliper(room)} to work in`,
      reason: 'the lid must neither bind in the wettest month nor lose its grooves in the driest',
      change: levers,
    },
    {
      rule: 'the lid runs in the wettest month',
      verdict:
        wettest.low >= limits.leastClearance - 1e-9
          ? 'ok'
          : wettest.clearance >= limits.leastClearance
            ? 'watch'
            : 'stop',
      figures: `${nameOf(wettest)}: ${caliper(wettest.clearance)} of play, nine boards in ten ${caliper(wettest.low)} or more at ${wettest.moisture.toFixed(1)} %`,
      reason: `under ${caliper(limits.leastClearance)} in all it sticks`,
      change: levers,
    },
    {
      rule: 'the lid is held in the driest month',
      verdict:
        driest.high <= limits.mostClearance + 1e-9 ? 'ok' : driest.clearance <= limits.mostClearance ? 'watch' : 'stop',
      figures: `${nameOf(driest)}: ${caliper(driest.clearance)} of play in grooves ${caliper(grooveDepth)} deep, nine boards in ten ${caliper(driest.high)} or less at ${driest.moisture.toFixed(1)} %`,
      reason: `over ${caliper(limits.mostClearance)} in all the tongues reach too little into their grooves`,
      change: levers,
    },
    {
      rule: 'room over the tongue',
      verdict: tightest > 0 ? 'ok' : 'stop',
      figures: `${caliper(tightest)} left in the tightest month`,
      reason: 'a tongue that swells to the height of its groove locks the lid',
      change: 'plane the tongue thinner by a shaving (tongueRoom)',
    },
  ];
}
