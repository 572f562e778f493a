import { species } from '../wood/species.js';
import { type FitOdds, fitOdds } from './fit-odds.js';
import { type LidFit, type LidFitInput, type LidMonth, lidFit } from './lid-fit.js';
import type { MonthOfMoisture } from './seasonal-fit.js';

/** A lid with one thing done otherwise, and what that buys. Inches. */
export interface LidChange {
  what: string;
  /** Widest less narrowest width; below zero no width fits. */
  room: number;
  /** Room gained over what is planned. */
  gain: number;
  fit: LidFit;
  odds: FitOdds;
}

/**
 * What each change buys: the plan as it is, then the same lid with one thing changed at a time.
 *
 * @param plan.input  the lid as planned, see {@link lidFit}; its box says how thick its boards are too, in, since no groove goes deeper
 *   than half of that
 * @param plan.otherSpecies  woods to compare with
 * @param plan.finished  moisture of the lid by month under a finish, by the finish's name, %
 * @param plan.seed  of the odds
 * @returns the plan first, then the changes, most gain first
 * @throws ShopError  as {@link lidFit}
 */
export function lidSensitivity(plan: {
  input: LidFitInput & { box: { stockThickness: number } };
  otherSpecies?: string[];
  finished?: Record<string, MonthOfMoisture[]>;
  seed?: number;
}): LidChange[] {
  const { input, otherSpecies = [], finished = {}, seed = 1 } = plan;
  const { lidGrooveDepth, stockThickness } = input.box;
  const planned = lidFit(input);
  const at = (month: number) => (planned.byMonth.find((other) => other.month === month) as LidMonth).moisture;
  const middle = Math.round(at(planned.wettest) + at(planned.driest)) / 2;
  const deeper = Math.min(lidGrooveDepth + 1 / 16, stockThickness / 2);

  const ideas: [string, Partial<LidFitInput>][] = [
    ['quarter-sawn board', { ringAngle: 90 }],
    ['flat-sawn board', { ringAngle: 0 }],
    [`fitted at ${middle} %`, { fittingMoisture: middle }],
    ['groove 1/16 in deeper', deeper > lidGrooveDepth ? { box: { ...input.box, lidGrooveDepth: deeper } } : {}],
    ...otherSpecies.map((id): [string, Partial<LidFitInput>] => [species(id).commonName, { species: id }]),
    ...Object.entries(finished).map(([finish, moistures]): [string, Partial<LidFitInput>] => [finish, { moistures }]),
  ];
  const changed = (what: string, change: Partial<LidFitInput>): LidChange => {
    const changedInput = { ...input, ...change };
    const fit = lidFit(changedInput);
    const room = fit.window.widest - fit.window.narrowest;
    const odds = fitOdds({ fit, species: changedInput.species, ringAngle: changedInput.ringAngle, seed });
    return { what, room, gain: room - (planned.window.widest - planned.window.narrowest), fit, odds };
  };
  const changes = ideas
    .filter(([, change]) =>
      Object.entries(change).some(([field, value]) => input[field as keyof LidFitInput] !== value),
    )
    .map(([what, change]) => changed(what, change))
    .sort((a, b) => b.gain - a.gain);
  return [changed('as planned', {}), ...changes];
}
