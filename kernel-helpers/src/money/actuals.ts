import * as z from 'zod';
import { amount, day, oneOf, readParameters, words } from '../measure/parameters.js';
import { refusal, ShopError } from '../measure/shop-error.js';
import { refuseOutside, type SoFar } from '../measure/so-far.js';
import { boardFeet } from '../stock/boards/board-feet.js';
import type { Board } from '../stock/boards/boards.js';

/** A stretch of work as it is typed: from a start to a stop on one day, or the hours of it. */
export interface TypedWork {
  /** An operation's id, such as `cut-joint`. */
  operation: string;
  date: string;
  /** Clock times of 24 hours, `9:10`. */
  start?: string;
  stop?: string;
  hours?: number;
}

/** What it really took, as it is typed. */
export interface TypedActuals {
  /** ISO day on which the piece was finished. */
  finished: string;
  worked: TypedWork[];
  /** Marks of the boards of the plan that were used. */
  boardsUsed: string[];
  /** Boards used besides, read with `readBoards`. */
  moreBoards?: Board[];
  /** What was agreed with the client after the quote. */
  changes?: { date: string; what: string }[];
  /** For operations that took much more or less than estimated: why, by the operation's id. */
  why?: Record<string, string>;
  /** What to do otherwise next time. */
  learned?: string;
}

/** An operation's hours: estimated before, taken in the end. */
export interface OperationWorked {
  id: string;
  name: string;
  /** Mean of the estimate, h; 0 when nobody expected the operation. */
  estimated: number;
  /** Standard deviation of the estimate, h. */
  deviation: number;
  /** Hours it took. */
  actual: number;
}

/** What a commission really took. */
export interface Actuals {
  finished: string;
  /** In working order; only operations whose time was taken. */
  operations: OperationWorked[];
  /** Operations of the estimate whose time nobody took: in no sum and no comparison. */
  untimed: string[];
  /** Sums over `operations`, h. */
  estimated: number;
  actual: number;
  /** Board feet of the boards used, and the part of them that is in the piece, 0 to 1. */
  boardFeet: number;
  yield: number;
  changes: { date: string; what: string }[];
  why: Record<string, string>;
  learned: string;
}

/** What the actuals are read against. */
export interface Planned {
  /** The day the commission was begun, and today: nothing was worked before the one or after the other. */
  soFar: SoFar;
  /** The estimate by operation, h; see {@link HoursEstimate}. */
  byOperation: readonly { id: string; name: string; mean: number; deviation: number }[];
  /** Operations that may be named besides those of the estimate. */
  operations: readonly { id: string; name: string }[];
  boards: readonly Board[];
  /** Board feet bought, and the part of them planned to be in the piece. */
  bought: number;
  yield: number;
}

const clock = z
  .string({ error: 'possible: a time of day such as 9:10 or 14:05' })
  .regex(/^([01]?\d|2[0-3]):[0-5]\d$/, 'possible: a time of day such as 9:10 or 14:05');

const fields = z.strictObject({
  finished: day('the day the piece was finished'),
  worked: z
    .array(
      z.strictObject({
        operation: words('the id of an operation'),
        date: day('the day it was worked'),
        start: clock.optional(),
        stop: clock.optional(),
        hours: amount({
          least: 0,
          most: 24,
          unit: 'h',
          why: 'hours of one day; for more days give more rows',
        }).optional(),
      }),
    )
    .min(1, 'possible: at least one stretch of work'),
  boardsUsed: z.array(words("a board's mark")),
  changes: z.array(z.strictObject({ date: day('the day it was agreed'), what: words('what was agreed') })).optional(),
  why: z.record(z.string(), words('why it took that long')).optional(),
  learned: z.string().max(2000, 'possible: at most 2,000 letters').optional(),
});

/**
 * Reads what a commission really took, and sets it beside the estimate.
 *
 * @param typed  as the maker typed it: hours by operation, boards, changes agreed
 * @param planned  the estimate by operation, the boards bought, the day the commission was begun and today
 * @returns hours by operation, summed over all stretches of work; board feet and yield as they came out
 * @throws ShopError  one line: the field, the value given, what is possible, why
 */
export function readActuals(typed: TypedActuals, planned: Planned): Actuals {
  const { moreBoards = [], ...rest } = typed;
  const { finished, worked, boardsUsed, changes = [], why = {}, learned = '' } = readParameters(fields, rest);
  const timely = (path: PropertyKey[], date: string) => {
    refuseOutside(path, date, planned.soFar);
    if (date > finished)
      throw refusal({ path, given: date, possible: `possible: to ${finished}, when it was finished` });
  };
  timely(['finished'], finished);
  for (const [index, { date }] of changes.entries()) timely(['changes', index, 'date'], date);

  const taken = new Map<string, number>();
  const rows = new Set<string>();
  for (const [index, row] of worked.entries()) {
    const path = ['worked', index];
    timely([...path, 'date'], row.date);
    operationOf([...path, 'operation'], row.operation, planned);
    if (rows.has(JSON.stringify(row)))
      throw refusal({ path, given: row, possible: 'possible: each row once; take one out' });
    rows.add(JSON.stringify(row));
    taken.set(row.operation, (taken.get(row.operation) ?? 0) + hoursOf(path, row));
  }
  for (const id of Object.keys(why)) operationOf(['why', id], id, planned);

  const known = [...planned.byOperation, ...planned.operations.filter(({ id }) => !estimateOf(planned, id))];
  const operations = known
    .filter(({ id }) => taken.has(id))
    .map(({ id, name }) => {
      const { mean = 0, deviation = 0 } = estimateOf(planned, id) ?? {};
      return { id, name, estimated: mean, deviation, actual: taken.get(id) as number };
    });
  const used = [...boardsUsed.map((mark, index) => boardOf(['boardsUsed', index], mark, planned)), ...moreBoards];
  const usedFeet = used.reduce((sum, board) => sum + boardFeet(board), 0);
  const inPiece = planned.bought * planned.yield;
  if (usedFeet < inPiece)
    throw new ShopError(
      `boardsUsed: ${usedFeet.toFixed(2)} board feet given; the piece alone holds ${inPiece.toFixed(2)}: name every board it was cut from, further ones in moreBoards`,
    );
  return {
    finished,
    operations,
    untimed: planned.byOperation.filter(({ id }) => !taken.has(id)).map(({ name }) => name),
    estimated: operations.reduce((sum, { estimated }) => sum + estimated, 0),
    actual: operations.reduce((sum, { actual }) => sum + actual, 0),
    boardFeet: usedFeet,
    yield: inPiece / usedFeet,
    changes,
    why,
    learned,
  };
}

function estimateOf(planned: Planned, id: string) {
  return planned.byOperation.find((operation) => operation.id === id);
}

function operationOf(path: PropertyKey[], id: string, planned: Planned): void {
  const ids = planned.operations.map((operation) => operation.id);
  if (!ids.includes(id) && !estimateOf(planned, id))
    throw refusal({ path, given: id, possible: `possible: ${ids.join(', ')} (the operations)` });
}

function boardOf(path: PropertyKey[], mark: string, planned: Planned): Board {
  const board = planned.boards.find((each) => each.mark === mark);
  if (board) return board;
  const marks = planned.boards.map((each) => each.mark).join(', ');
  throw refusal({
    path,
    given: mark,
    possible: `possible: ${marks} (the boards bought; further ones go in moreBoards)`,
  });
}

function hoursOf(path: PropertyKey[], { start, stop, hours }: z.output<typeof fields>['worked'][number]): number {
  if (hours !== undefined && start === undefined && stop === undefined) return hours;
  if (hours !== undefined || start === undefined || stop === undefined)
    throw refusal({
      path,
      given: { start, stop, hours },
      possible: 'possible: either start and stop, or hours, one of the two',
    });
  const minutes = (time: string) => {
    const [hour, minute] = time.split(':').map(Number) as [number, number];
    return 60 * hour + minute;
  };
  const length = minutes(stop) - minutes(start);
  if (length <= 0)
    throw refusal({
      path,
      given: { start, stop },
      possible: 'possible: a stop after its start (for work past midnight give two rows)',
    });
  return length / 60;
}

/** Whether the client took the offer. */
export interface ClientAnswer {
  answer: 'accepted' | 'declined';
  /** ISO day. */
  date: string;
  reason: string;
}

/**
 * Reads what the client answered to the quote.
 *
 * @param typed.answer  `accepted` or `declined`
 * @param soFar  day of the commission and today: no answer came before the one or after the other
 * @throws ShopError  one line: the field, the value given, what is possible, why
 */
export function readAnswer(typed: { answer: string; date: string; reason?: string }, soFar: SoFar): ClientAnswer {
  const answerFields = z.strictObject({
    answer: oneOf(['accepted', 'declined'], 'what the client said'),
    date: day('the day of the answer'),
    reason: z.string().max(2000, 'possible: at most 2,000 letters').optional(),
  });
  const { answer, date, reason = '' } = readParameters(answerFields, typed);
  refuseOutside(['date'], date, soFar);
  return { answer, date, reason };
}
