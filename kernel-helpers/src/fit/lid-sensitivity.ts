import { species } from '../wood/species.js';
import { type FitOdds, fitOdds } from './fit-odds.js';
import { type LidFit, type LidFitInput, lidFit } from './lid-fit.js';
import type { MonthOfMoisture } from './seasonal-fit.js';

/** One thing that could be done otherwise, and what it buys. Inches. */
export interface Lever {
  what: string;
  /** Widest less narrowest width; below zero no width fits. */
  room: number;
  /** Room gained over what is planned. */
  gain: number;
  fit: LidFit;
  odds: FitOdds;
}

/**
 * What each lever buys: the plan as it is, then the same lid with one thing changed at a time.
 *
 * @param plan.input  the lid as planned, see {@link lidFit}
 * @param plan.otherSpecies  woods to compare with
 * @param plan.finished  moisture of the lid by month under a finish, by the finish's name, %
 * @param plan.seed  of the odds
 * @returns the plan first, then the levers, most gain first
 * @throws ShopError  as {@link lidFit}
 */
export function lidLevers(plan: {
  input: LidFitInput;
  otherSpecies?: string[];
  finished?: Record<string, MonthOfMoisture[]>;
  seed?: number;
}): Lever[] {
  const { input, otherSpecies = [], finished = {}, seed = 1 } = plan;
  const { design } = input.box;
  const planned = lidFit(input);
  const at = (month: number) => planned.byMonth.find((other) => other.month === month)?.moisture ?? 0;
  const middle = Math.round(at(planned.wettest) + at(planned.driest)) / 2;
  const deeper = Math.min(design.lidGrooveDepth + 1 / 16, design.stockThickness / 2);

  const changed: [string, Partial<LidFitInput>][] = [
    ['quarter-sawn board', { ringAngle: 90 }],
    ['flat-sawn board', { ringAngle: 0 }],
    [`fitted at ${middle} %`, { fittingMoisture: middle }],
    [
      'groove 1/16 in deeper',
      deeper > design.lidGrooveDepth ? { box: { ...input.box, design: { ...design, lidGrooveDepth: deeper } } } : {},
    ],
    ...otherSpecies.map((id): [string, Partial<LidFitInput>] => [species(id).commonName, { species: id }]),
    ...Object.entries(finished).map(([finish, moistures]): [string, Partial<LidFitInput>] => [finish, { moistures }]),
  ];
  const lever = (what: string, change: Partial<LidFitInput>): Lever => {
    const changedInput = { ...input, ...change };
    const fit = lidFit(changedInput);
    const room = fit.window.widest - fit.window.narrowest;
    const odds = fitOdds({ fit, species: changedInput.species, ringAngle: changedInput.ringAngle, seed });
    return { what, room, gain: room - (planned.window.widest - planned.window.narrowest), fit, odds };
  };
  const levers = changed
    .filter(([, change]) =>
      Object.entries(change).some(([field, value]) => input[field as keyof LidFitInput] !== value),
    )
    .map(([what, change]) => lever(what, change))
    .sort((a, b) => b.gain - a.gain);
  return [lever('as planned', {}), ...levers];
}
