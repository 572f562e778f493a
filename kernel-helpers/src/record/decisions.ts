import * as z from 'zod';
import type { LidFit } from '../fit/lid-fit.js';
import type { LidMeasured } from '../fit/lid-measured.js';
import type { MonthOfMoisture } from '../fit/seasonal-fit.js';
import type { CornerLayout, FirstBoards } from '../joints/corner.js';
import type { GrooveRun } from '../joints/groove-runs.js';
import type { Actuals, ClientAnswer } from '../money/actuals.js';
import type { Cost } from '../money/cost.js';
import type { Hours, HoursEstimate } from '../money/hours.js';
import type { Counts } from '../money/operations.js';
import type { Quote } from '../money/quote.js';
import { type Brief, briefFields } from '../piece/brief.js';
import type { SizedPiece } from '../piece/piece.js';
import type { Board } from '../stock/boards/boards.js';
import type { CutPlan } from '../stock/cut-plan/plan.js';
import type { MillingLoss } from '../stock/milling/milling-loss.js';
import type { HandleKind } from '../surface/handle/handle.js';
import type { Schedule } from '../time/schedule.js';
import type { MonthOfAir } from '../wood/air/air.js';

/** The air the piece will live in, and the moisture its lid reaches there under its finish. */
export interface AirDecision {
  months: MonthOfAir[];
  moistures: MonthOfMoisture[];
  /** Finish and coats; nothing for bare wood. */
  finish: string;
}

/** The width the lid is planed to, and the year it was fitted for. */
export type LidDecision = Omit<LidFit, 'findings'>;

/** The corner joint, and which boards carry its tails or the finger at the lower edge. */
export interface JointDecision {
  layout: CornerLayout;
  firstBoards: FirstBoards;
}

/** Where the grooves run, and the passes that make them: the cutter, fences to its near side, and depths; in. */
export interface GrooveDecision {
  runs: GrooveRun[];
  passes: { name: string; cutter: number; fences: number[]; depths: number[] }[];
}

/** Boards and sheets that are used, how they are cut, what milling leaves, and the offcuts that go back to the shop's stock. */
export interface StockDecision extends Omit<MillingLoss, 'findings'> {
  /** Those used, in hand or bought. */
  boards: Board[];
  plan: CutPlan;
  sheets: Board[];
  offcuts: Board[];
}

/** Lettering, handle, sanding, glue and finish: what is counted of them, and what has to wait. Lengths in inches. */
export interface SurfaceDecision {
  text: string;
  /** Letters and figures to cut, and the minutes that their cut takes. */
  letters: number;
  letteringMinutes: number;
  deepest: number;
  remaining: number;
  /** Angle of the V-bit, degrees; the round bit that cuts the handle, how deep it goes, around a pull from its top, and in how many
   * passes. */
  bitAngle: number;
  handleBit?: { radius: number; depth: number; passes: number };
  handle: HandleKind | 'none';
  /** Thickness the lid is milled to first. */
  lidStock: number;
  /** Sanded off each outside face; how proud the joint stands afterwards. */
  removed: number;
  proudAfter: number;
  /** Grades of grit in order. */
  grades: { outside: string[]; inside: string[] };
  sandingMinutes: number;
  /** Square feet, and how much of it is sanded before assembly. */
  area: number;
  areaBeforeAssembly: number;
  /** Id of the glue, minutes to assemble and in clamps, hours to full strength, ml. */
  glue: { id: string; assemblyMinutes: number; clampMinutes: number; cureHours: number; millilitres: number };
  /** Id of the finish, coats, whether the inside gets them, square feet, hours between coats, days to cure, ml. */
  finish: {
    id: string;
    coats: number;
    inside: boolean;
    squareFeet: number;
    recoatHours: number;
    cureDays: number;
    millilitres: number;
    oilyRags: boolean;
  };
  /** What has to wait, in working order. */
  waits: { after: string; hours: number }[];
}

/** What the piece takes, costs and is offered for. */
export interface QuoteDecision {
  hours: Hours & {
    low: number;
    high: number;
    p50: number;
    p80: number;
    p95: number;
    byOperation?: HoursEstimate['byOperation'];
  };
  /** What was counted on the piece: the days rest on it. */
  counts: Counts;
  cost: Cost;
  quote: Quote;
}

/** When what is done, and how sure the promised day is. */
export type DaysDecision = Omit<Schedule, 'findings' | 'readyBy'>;

/**
 * What each decision hands on: `job.need('sizing')` gives `Decisions['sizing']`.
 *
 * To add a decision, or to give one its fields: write its interface here or in the folder of the trade that it comes
 * from, name it below, and say the same in `decisionShapes`. The compiler holds the two together.
 */
export interface Decisions {
  brief: Brief;
  sizing: SizedPiece;
  air: AirDecision;
  lid: LidDecision;
  joint: JointDecision;
  grooves: GrooveDecision;
  stock: StockDecision;
  surface: SurfaceDecision;
  quote: QuoteDecision;
  days: DaysDecision;
  measured: { measurements: LidMeasured[] };
  answer: ClientAnswer;
  actuals: Actuals;
}

const number = z.number();
const inches = z.number().min(0);
const amount = z.looseObject({ minor: z.int(), currency: z.string().length(3) });
const window = z.looseObject({ narrowest: inches, widest: inches });
const part = z.looseObject({
  name: z.string(),
  count: z.int().min(1),
  length: inches,
  width: inches,
  thickness: inches,
  material: z.enum(['wood', 'plywood']),
  grain: z.string(),
});
const groove = z.looseObject({
  board: z.string(),
  groove: z.string(),
  fromBottom: inches,
  width: inches,
  depth: inches,
});
const corner = { boardWidth: inches, stockThickness: inches, gaugeSetting: inches };
const span = z.looseObject({ from: inches, to: inches });
/** What every sized piece has, whatever it is. */
const sizedPiece = {
  parts: z.array(part).min(1),
  overall: z.looseObject({ length: inches, width: inches, height: inches }),
  moving: z.looseObject({ part: z.string(), thickness: inches }),
  counts: z.record(z.string(), z.int().min(0)),
  summary: z.array(z.looseObject({ what: z.string(), sizes: z.array(inches) })),
};
const month = z.looseObject({
  month: z.int().min(1).max(12),
  moisture: inches,
  clearance: number,
  low: number,
  high: number,
});

/**
 * What a decision's results must look like, on the way into the record and out of it. Results are handed on as they
 * were recorded, so a shape checks and never transforms.
 *
 * @internal
 */
export const decisionShapes: { [What in keyof Decisions]: z.ZodType } = {
  brief: briefFields,
  sizing: z.discriminatedUnion('kind', [
    z.looseObject({
      ...sizedPiece,
      kind: z.literal('box'),
      design: z.looseObject({ insideLength: inches, insideWidth: inches, insideDepth: inches, stockThickness: inches }),
      grooves: z.array(groove),
      markingGauge: inches,
    }),
    z.looseObject({ ...sizedPiece, kind: z.enum(['drawer', 'solid-top', 'frame-and-panel', 'bookcase']) }),
  ]),
  air: z.looseObject({
    months: z.array(z.looseObject({ month: z.int(), temperatureC: number, relativeHumidity: number })).length(12),
    moistures: z.array(z.looseObject({ month: z.int(), moisture: inches })).length(12),
    finish: z.string(),
  }),
  lid: z.looseObject({
    fittedWidth: inches,
    fittedTongue: inches,
    opening: inches,
    window,
    byMonth: z.array(month).length(12),
  }),
  joint: z.looseObject({
    layout: z.union([
      z.looseObject({ ...corner, dividerSetting: inches, tails: z.array(span).min(1), pins: z.array(span).min(2) }),
      z.looseObject({ ...corner, count: z.int().min(2), first: z.array(span).min(2), second: z.array(span).min(2) }),
    ]),
    firstBoards: z.enum(['front and back', 'sides']),
  }),
  grooves: z.looseObject({
    runs: z.array(z.looseObject({ board: z.string(), groove: z.string(), from: inches, to: inches })),
    passes: z.array(
      z.looseObject({ name: z.string(), cutter: inches, fences: z.array(inches), depths: z.array(inches) }),
    ),
  }),
  stock: z.looseObject({
    boards: z.array(z.looseObject({ mark: z.string(), price: inches })),
    bought: inches,
    yield: inches,
    plan: z.looseObject({ cost: inches, bound: inches, proven: z.boolean() }),
    sheets: z.array(z.looseObject({ mark: z.string() })),
    offcuts: z.array(z.looseObject({ mark: z.string(), length: inches, width: inches })),
  }),
  surface: z.looseObject({
    text: z.string(),
    letters: z.int().min(0),
    letteringMinutes: inches,
    deepest: inches,
    remaining: number,
    bitAngle: inches,
    handle: z.enum(['scoop', 'raised pull', 'thumb notch', 'none']),
    handleBit: z.looseObject({ radius: inches, depth: inches, passes: z.int() }).optional(),
    lidStock: inches,
    removed: inches,
    proudAfter: number,
    grades: z.looseObject({ outside: z.array(z.string()), inside: z.array(z.string()) }),
    sandingMinutes: inches,
    area: inches,
    areaBeforeAssembly: inches,
    glue: z.looseObject({
      id: z.string(),
      assemblyMinutes: inches,
      clampMinutes: inches,
      cureHours: inches,
      millilitres: inches,
    }),
    finish: z.looseObject({
      id: z.string(),
      coats: z.int().min(1),
      inside: z.boolean(),
      squareFeet: inches,
      recoatHours: inches,
      cureDays: inches,
      millilitres: inches,
      oilyRags: z.boolean(),
    }),
    waits: z.array(z.looseObject({ after: z.string(), hours: inches })),
  }),
  quote: z.looseObject({
    hours: z.looseObject({ mean: inches, low: inches, high: inches }),
    counts: z.record(z.string(), inches),
    cost: z.looseObject({ total: amount }),
    quote: z.looseObject({ price: amount, deposit: amount, balance: amount, validUntil: z.iso.date() }),
  }),
  days: z.looseObject({
    promised: z.iso.date(),
    finish: z.iso.date(),
    odds: z.number().min(0).max(1),
    criticalPath: z.array(z.string()).min(1),
    steps: z.array(z.looseObject({ id: z.string(), hours: inches, start: z.iso.date(), finish: z.iso.date() })).min(1),
  }),
  measured: z.looseObject({ measurements: z.array(z.looseObject({ date: z.iso.date(), clearance: inches })) }),
  answer: z.looseObject({ answer: z.enum(['accepted', 'declined']), date: z.iso.date(), reason: z.string() }),
  actuals: z.looseObject({
    finished: z.iso.date(),
    operations: z.array(z.looseObject({ id: z.string(), name: z.string(), estimated: inches, actual: inches })),
    estimated: inches,
    actual: inches,
    boardFeet: inches,
    yield: inches,
  }),
};
