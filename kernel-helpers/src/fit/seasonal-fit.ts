import type { Finding, Verdict } from '../measure/finding.js';
import { evaluate, type Formula } from '../measure/formula.js';
import { caliper } from '../measure/verdict.js';
import type { MonthOfAir } from '../wood/air/air.js';
import { monthNames } from '../wood/air/months.js';
import { equilibriumMoisture } from '../wood/emc.js';
import { movement } from '../wood/movement.js';
import { movementFindings } from '../wood/movement-findings.js';

/** A solid piece between two faces that do not move, in one month. Inches, both sides together. */
export interface FitMonth {
  /** 1 to 12. */
  month: number;
  /** Moisture of the piece, %. */
  moisture: number;
  /** Play; below zero it binds. */
  clearance: number;
  /** Band that holds nine boards in ten. */
  low: number;
  high: number;
}

/** Play that must stay, and that must not be exceeded. Inches. */
export interface FitLimits {
  leastClearance: number;
  mostClearance: number;
  /** Past the most a gap is seen, and nothing lets go: a drawer's in winter. */
  gapOnlyShows?: boolean;
}

/** How a solid piece fits its opening through the year. Inches. */
export interface SeasonalFit {
  /** Width to plane to on the day of fitting. */
  fittedWidth: number;
  /** The opening, which does not move. */
  opening: number;
  /** Widths that may be planed on that day; narrowest above widest means that none does. */
  window: { narrowest: number; widest: number };
  limits: FitLimits;
  /** Moisture of the piece on the day of fitting, %. */
  fittingMoisture: number;
  byMonth: FitMonth[];
  /** Month of most and of least moisture. */
  wettest: number;
  driest: number;
}

/** Moisture of the piece in each month, %. */
export interface MonthOfMoisture {
  month: number;
  moisture: number;
}

/** Width to which a piece may be planed on the day of fitting, from the play it must have in another month. */
export const fittedWidthFormula: Formula<'O' | 'c' | 's'> = {
  name: 'Width on the day of fitting',
  result: { tex: 'W', meaning: 'width on the day of fitting', unit: 'in' },
  expression: '(O - c) / (1 + s)',
  symbols: {
    O: { meaning: 'opening, which stands still', unit: 'in', min: 0 },
    c: { meaning: 'play in the other month', unit: 'in', min: 0 },
    s: { meaning: 'part of its width by which it grows until then', unit: '', min: -0.2, max: 0.2 },
  },
  source: 'geometry: opening less play is the width in that month',
};

/** Moisture that wood would come to in each month's air, if it had the time. */
export function equilibriumByMonth(air: MonthOfAir[]): MonthOfMoisture[] {
  return air.map(({ month, temperatureC, relativeHumidity }) => ({
    month,
    moisture: equilibriumMoisture({ temperatureC, relativeHumidity }),
  }));
}

/**
 * A solid piece that moves across its grain in an opening that does not: a lid in its grooves, a bottom, a frame's panel,
 * a drawer's height. The window is set by the band that holds nine boards in ten, not by the mean.
 *
 * @param piece.opening  in
 * @param piece.leastClearance, piece.mostClearance  play that must stay, and that must not be exceeded, in
 * @param piece.gapOnlyShows  past the most a gap is seen and nothing lets go: where no width does both, it must not bind
 * @param piece.cuttingTolerance  how far inside the widest width to aim, in
 * @param piece.width  the width it has, where that is settled; else as snug as the year allows
 * @returns with the width to plane to: in a narrow window, its middle
 * @throws ShopError  as {@link movement}
 * @see change: {@link movement}
 */
export function seasonalFit(piece: {
  opening: number;
  species: string;
  ringAngle: number;
  fittingMoisture: number;
  moistures: MonthOfMoisture[];
  leastClearance: number;
  mostClearance: number;
  gapOnlyShows?: boolean;
  cuttingTolerance: number;
  width?: number;
}): SeasonalFit {
  const { opening, species, ringAngle, fittingMoisture, moistures, leastClearance, mostClearance } = piece;
  const strains = moistures.map(({ moisture }) =>
    movement({ across: 1, species, ringAngle, fromMoisture: fittingMoisture, toMoisture: moisture }),
  );
  const width = (c: number, s: number) => evaluate(fittedWidthFormula, { O: opening, c, s });
  const widest = width(leastClearance, Math.max(...strains.map(({ high }) => high)));
  const narrowest = width(mostClearance, Math.min(...strains.map(({ low }) => low)));
  const snug = Math.max((narrowest + widest) / 2, widest - piece.cuttingTolerance);
  const fittedWidth = piece.width ?? (piece.gapOnlyShows ? Math.min(snug, widest) : snug);
  const byMonth = moistures.map(({ month, moisture }, index) => {
    const { change, low, high } = strains[index] as (typeof strains)[number];
    const play = (strain: number) => opening - fittedWidth * (1 + strain);
    return { month, moisture, clearance: play(change), low: play(high), high: play(low) };
  });
  const moistest = (a: FitMonth, b: FitMonth) => (b.moisture > a.moisture ? b : a);
  const driest = (a: FitMonth, b: FitMonth) => (b.moisture < a.moisture ? b : a);
  return {
    fittedWidth,
    opening,
    window: { narrowest, widest },
    limits: { leastClearance, mostClearance, ...(piece.gapOnlyShows ? { gapOnlyShows: true } : {}) },
    fittingMoisture,
    byMonth,
    wettest: byMonth.reduce(moistest).month,
    driest: byMonth.reduce(driest).month,
  };
}

/** How a fit stands in its wettest and its driest month: by the band, or by the mean alone. @internal */
export function verdictsOf({ limits, byMonth, wettest, driest }: SeasonalFit): { wet: Verdict; dry: Verdict } {
  const at = (month: number) => byMonth.find((other) => other.month === month) as FitMonth;
  const held = (band: boolean, mean: boolean): Verdict => (band ? 'ok' : mean ? 'watch' : 'stop');
  const { leastClearance: least, mostClearance: most, gapOnlyShows } = limits;
  const dry = held(at(driest).high <= most + 1e-9, at(driest).clearance <= most);
  return {
    wet: held(at(wettest).low >= least - 1e-9, at(wettest).clearance >= least),
    dry: gapOnlyShows && dry === 'stop' ? 'watch' : dry,
  };
}

/**
 * What must be true of a piece that moves in its opening.
 *
 * @param fit  see {@link seasonalFit}
 * @param words  the piece, what is planed of it (width unless told otherwise), and what happens to it past each limit:
 *   `{ piece: 'the lid', tight: 'it sticks', loose: 'it falls out' }`
 * @param change  what would help
 * @param wood  what it is made of
 * @internal
 */
export function seasonalFindings(
  fit: SeasonalFit,
  words: { piece: string; size?: 'width' | 'height' | 'depth'; tight: string; loose: string },
  change: string,
  wood: { species: string; ringAngle: number },
): Finding[] {
  const { limits, window } = fit;
  const at = (month: number) => fit.byMonth.find((other) => other.month === month) as FitMonth;
  const wettest = at(fit.wettest);
  const driest = at(fit.driest);
  const room = window.widest - window.narrowest;
  const verdicts = verdictsOf(fit);
  const { size = 'width' } = words;
  const { gapOnlyShows } = limits;
  return [
    {
      rule: `${words.piece}: a ${size} that fits the whole year`,
      verdict: room < 0 && !gapOnlyShows ? 'stop' : room < 1 / 64 ? 'watch' : 'ok',
      figures:
        room < 0
          ? `no ${size} does: ${caliper(-room)} more room is needed between the limits`
          : `${caliper(window.narrowest)} to ${caliper(window.widest)}, ${caliper(room)} to work in`,
      reason: gapOnlyShows
        ? 'it must not bind in the wettest month; the gap that it leaves in the driest is a matter of looks'
        : 'it must neither bind in the wettest month nor lose its hold in the driest',
      change,
    },
    {
      rule: `${words.piece}: free in the wettest month`,
      verdict: verdicts.wet,
      figures: `${monthNames[wettest.month - 1]}: ${caliper(wettest.clearance)} of play, nine boards in ten ${caliper(wettest.low)} or more, at ${wettest.moisture.toFixed(1)} %`,
      reason: `under ${caliper(limits.leastClearance)} in all ${words.tight}`,
      change,
    },
    {
      rule: `${words.piece}: ${gapOnlyShows ? 'gap' : 'held'} in the driest month`,
      verdict: verdicts.dry,
      figures: `${monthNames[driest.month - 1]}: ${caliper(driest.clearance)} of play, nine boards in ten ${caliper(driest.high)} or less, at ${driest.moisture.toFixed(1)} %`,
      reason: `over ${caliper(limits.mostClearance)} in all ${words.loose}`,
      change,
    },
    ...movementFindings({
      piece: words.piece,
      species: wood.species,
      ringAngle: wood.ringAngle,
      moistures: [fit.fittingMoisture, wettest.moisture, driest.moisture],
    }),
  ];
}
