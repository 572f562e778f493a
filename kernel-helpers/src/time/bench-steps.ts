import * as z from 'zod';
import { routerWords } from '../joints/groove-routing.js';
import { amount, readParameters } from '../measure/parameters.js';
import { estimateHours } from '../money/hours.js';
import { allOperations, type Counts, type Operation, type OperationId, type Waiting } from '../money/operations.js';
import type { ThreePoints } from '../money/pert.js';
import { type Choices, cautionsFor } from '../surface/cautions.js';

/** An operation, or one coat of the finish. */
export type BenchStepId = OperationId | `finish-${number}`;

/** One step at the bench, as a schedule takes it. */
export interface BenchStep {
  id: string;
  name: string;
  /** What is counted: "12 tails"; empty where it is the piece itself. */
  count: string;
  /** Hands at work. */
  minutes: ThreePoints;
  /** Ids of steps that must be finished first, with their waiting. */
  after: string[];
  /** What passes by itself afterwards, before the next that rests on it. */
  wait?: { what: string; days: ThreePoints };
  /** Ids of data/cautions.json. */
  cautions?: string[];
}

/** Days that pass by themselves: one number, or least, likely and most. Half a day is 0.5. */
export type WaitingDays = { [what in Exclude<Waiting, 'panel'>]: number | readonly number[] } & {
  /** A day unless told otherwise. */
  panel?: number | readonly number[];
};

const waitWords: Record<Waiting, string> = {
  settle: 'boards settle, in the air that sheet 03 says',
  rest: 'parts rest stickered after the first cuts',
  panel: 'the glue of the panels cures, and its water leaves the joints',
  glue: 'glue cures',
  recoat: 'the coat dries',
  cure: 'the finish cures',
};

const days = amount({ least: 0, most: 3650, unit: 'days', why: 'days that pass by themselves' });
const rising = 'possible: least, likely and most days, rising';
const waiting: z.ZodType<ThreePoints> = z.union(
  [
    days.transform((likely): ThreePoints => [likely, likely, likely]),
    z.tuple([days, days, days]).refine(([a, m, b]) => a <= m && m <= b, rising),
  ],
  { error: 'possible: a number of days from 0 to 3650, or least, likely and most, rising' },
);
const waitingFields = z.strictObject({
  ...{ settle: waiting, rest: waiting, glue: waiting, recoat: waiting, cure: waiting },
  panel: waiting.default([1, 1, 1]),
});

/**
 * The steps of a piece in working order: what is counted on it, how long hands are at it, what waits for what. Finish
 * becomes a step for each coat. What the design does not have is left out, and what would have waited for it waits for
 * what it waited for.
 *
 * @param piece.counts  see {@link countWork}
 * @param piece.waits  days; `settle` from `stackPlan`, the others from the labels of glue and finish
 * @param piece.operations  in working order; those of a box unless told otherwise
 * @param piece.choices  wood, finish, glue, router and handle, where they are known: the cautions follow them
 * @throws ShopError  one line: the field, the value given, what is possible, why
 */
export function benchSteps(piece: {
  counts: Counts;
  waits: WaitingDays;
  operations?: Operation[];
  choices?: Choices;
}): BenchStep[] {
  const { counts, operations = allOperations(), choices = {} } = piece;
  const waits = readParameters(waitingFields, piece.waits);
  const { byOperation } = estimateHours({ counts, operations, simulations: 100 });
  const present = new Map(byOperation.map((operation) => [operation.id, operation]));
  const afterOf = ({ after }: Operation, index: number) =>
    after ?? operations.slice(index - 1, index).map(({ id }) => id);
  const waitOf = (wait: Waiting | undefined) =>
    wait && waits[wait][2] > 0 ? { wait: { what: waitWords[wait], days: waits[wait] } } : {};

  // The steps that stand for an operation's end: its own last step, or what it would have waited for.
  const ends = new Map<string, string[]>();
  return operations.flatMap((operation, index) => {
    const { id, name, per } = operation;
    const cautions = operation.cautions && cautionIds(operation.cautions, choices);
    const after = [...new Set(afterOf(operation, index).flatMap((before) => ends.get(before) ?? [before]))];
    const found = present.get(id);
    if (!found) {
      ends.set(id, after);
      return [];
    }
    const { count, minutes } = found;
    const step = { id, name, count: countWords(count, per), minutes, ...(cautions ? { cautions } : {}) };
    if (per !== 'coat') return [{ ...step, after, ...waitOf(operation.wait) }];
    ends.set(id, [coatId(count)]);
    return Array.from({ length: count }, (_, coat) => ({
      ...step,
      id: coatId(coat + 1),
      name: `${name}, coat ${coat + 1} of ${count}`,
      count: '',
      minutes: operation.setUp.map(
        (setUp, i) => ((minutes[i] as number) - setUp) / count + (coat === 0 ? setUp : 0),
      ) as ThreePoints,
      after: coat === 0 ? after : [coatId(coat)],
      ...waitOf(coat + 1 < count ? 'recoat' : 'cure'),
    }));
  });
}

/** Cautions of an operation, where they depend on what turns the bit and on what is cut with it. */
function cautionIds(operation: readonly string[], choices: Choices): string[] {
  const { router = 'router table', handle = 'none' } = choices;
  const routed: Record<string, string[]> = {
    router: [routerWords(router).caution],
    'handle-by-hand': handle === 'none' ? [] : ['hand-router', 'round-bit'],
    'handle-by-machine': handle === 'none' ? [] : ['round-bit'],
  };
  const ids = operation.flatMap((id) => routed[id] ?? [id]);
  return cautionsFor(ids, choices).map(({ id }) => id);
}

const coatId = (coat: number): BenchStepId => `finish-${coat}`;

function countWords(count: number, per: string): string {
  if (per === 'piece') return '';
  const number = Number.isInteger(count) ? String(count) : count.toFixed(1);
  if (per.startsWith('square foot')) return `${number} square feet`;
  if (per.startsWith('graded square foot')) return `${number} square feet, all grades added`;
  return `${number} ${count === 1 ? per : `${per}s`}`;
}
