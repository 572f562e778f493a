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
import type { SizedBox } from '../piece/box/sized-box.js';
import { type Brief, briefFields } from '../piece/brief.js';
import type { PieceKind, SizedPiece } from '../piece/piece.js';
import type { Board } from '../stock/boards/boards.js';
import type { CutPlan } from '../stock/cut-plan/plan.js';
import type { MillingLoss } from '../stock/milling/milling-loss.js';
import type { RoughCut } from '../stock/milling/rough-cut.js';
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
export interface StockDecision
  extends Omit<MillingLoss, 'findings'>,
    Pick<RoughCut, 'rough' | 'toCut' | 'planer' | 'jointer'> {
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
const nonNegative = z.number().min(0);
const amount = z.looseObject({ minor: z.int(), currency: z.string().length(3) });
const window = z.looseObject({ narrowest: nonNegative, widest: nonNegative });
const part = z.looseObject({
  name: z.string(),
  count: z.int().min(1),
  length: nonNegative,
  width: nonNegative,
  thickness: nonNegative,
  material: z.enum(['wood', 'plywood']),
  grain: z.string(),
});
const groove = z.looseObject({
  board: z.string(),
  groove: z.string(),
  fromBottom: nonNegative,
  width: nonNegative,
  depth: nonNegative,
});
const corner = { boardWidth: nonNegative, stockThickness: nonNegative, gaugeSetting: nonNegative };
const span = z.looseObject({ from: nonNegative, to: nonNegative });
/** What every sized piece has, whatever it is. */
const sizedPiece = {
  parts: z.array(part).min(1),
  overall: z.looseObject({ length: nonNegative, width: nonNegative, height: nonNegative }),
  moving: z.looseObject({ part: z.string(), thickness: nonNegative }),
  counts: z.record(z.string(), z.int().min(0)),
  summary: z.array(z.looseObject({ what: z.string(), sizes: z.array(nonNegative) })),
};
const month = z.looseObject({
  month: z.int().min(1).max(12),
  moisture: nonNegative,
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
export const decisionShapes = {
  brief: briefFields,
  sizing: z.discriminatedUnion('kind', [
    z.looseObject({
      ...sizedPiece,
      kind: z.literal('box'),
      design: z.looseObject({
        insideLength: nonNegative,
        insideWidth: nonNegative,
        insideDepth: nonNegative,
        stockThickness: nonNegative,
      }),
      grooves: z.array(groove),
      markingGauge: nonNegative,
    }),
    z.looseObject({ ...sizedPiece, kind: z.enum(['drawer', 'solid-top', 'frame-and-panel', 'bookcase']) }),
  ]),
  air: z.looseObject({
    months: z.array(z.looseObject({ month: z.int(), temperatureC: number, relativeHumidity: number })).length(12),
    moistures: z.array(z.looseObject({ month: z.int(), moisture: nonNegative })).length(12),
    finish: z.string(),
  }),
  lid: z.looseObject({
    fittedWidth: nonNegative,
    fittedTongue: nonNegative,
    opening: nonNegative,
    window,
    byMonth: z.array(month).length(12),
  }),
  joint: z.looseObject({
    layout: z.union([
      z.looseObject({
        ...corner,
        dividerSetting: nonNegative,
        tails: z.array(span).min(1),
        pins: z.array(span).min(2),
      }),
      z.looseObject({ ...corner, count: z.int().min(2), first: z.array(span).min(2), second: z.array(span).min(2) }),
    ]),
    firstBoards: z.enum(['front and back', 'sides']),
  }),
  grooves: z.looseObject({
    runs: z.array(z.looseObject({ board: z.string(), groove: z.string(), from: nonNegative, to: nonNegative })),
    passes: z.array(
      z.looseObject({
        name: z.string(),
        cutter: nonNegative,
        fences: z.array(nonNegative),
        depths: z.array(nonNegative),
      }),
    ),
  }),
  stock: z.looseObject({
    boards: z.array(z.looseObject({ mark: z.string(), price: nonNegative })),
    bought: nonNegative,
    yield: nonNegative,
    plan: z.looseObject({ cost: nonNegative, bound: nonNegative, proven: z.boolean() }),
    sheets: z.array(z.looseObject({ mark: z.string() })),
    offcuts: z.array(z.looseObject({ mark: z.string(), length: nonNegative, width: nonNegative })),
  }),
  surface: z.looseObject({
    text: z.string(),
    letters: z.int().min(0),
    letteringMinutes: nonNegative,
    deepest: nonNegative,
    remaining: number,
    bitAngle: nonNegative,
    handle: z.enum(['scoop', 'raised pull', 'thumb notch', 'none']),
    handleBit: z.looseObject({ radius: nonNegative, depth: nonNegative, passes: z.int() }).optional(),
    lidStock: nonNegative,
    removed: nonNegative,
    proudAfter: number,
    grades: z.looseObject({ outside: z.array(z.string()), inside: z.array(z.string()) }),
    sandingMinutes: nonNegative,
    area: nonNegative,
    areaBeforeAssembly: nonNegative,
    glue: z.looseObject({
      id: z.string(),
      assemblyMinutes: nonNegative,
      clampMinutes: nonNegative,
      cureHours: nonNegative,
      millilitres: nonNegative,
    }),
    finish: z.looseObject({
      id: z.string(),
      coats: z.int().min(1),
      inside: z.boolean(),
      squareFeet: nonNegative,
      recoatHours: nonNegative,
      cureDays: nonNegative,
      millilitres: nonNegative,
      oilyRags: z.boolean(),
    }),
    waits: z.array(z.looseObject({ after: z.string(), hours: nonNegative })),
  }),
  quote: z.looseObject({
    hours: z.looseObject({ mean: nonNegative, low: nonNegative, high: nonNegative }),
    counts: z.record(z.string(), nonNegative),
    cost: z.looseObject({ total: amount }),
    quote: z.looseObject({ price: amount, deposit: amount, balance: amount, validUntil: z.iso.date() }),
  }),
  days: z.looseObject({
    promised: z.iso.date(),
    finish: z.iso.date(),
    odds: z.number().min(0).max(1),
    criticalPath: z.array(z.string()).min(1),
    steps: z
      .array(z.looseObject({ id: z.string(), hours: nonNegative, start: z.iso.date(), finish: z.iso.date() }))
      .min(1),
  }),
  measured: z.looseObject({ measurements: z.array(z.looseObject({ date: z.iso.date(), clearance: nonNegative })) }),
  answer: z.looseObject({ answer: z.enum(['accepted', 'declined']), date: z.iso.date(), reason: z.string() }),
  actuals: z.looseObject({
    finished: z.iso.date(),
    operations: z.array(
      z.looseObject({ id: z.string(), name: z.string(), estimated: nonNegative, actual: nonNegative }),
    ),
    estimated: nonNegative,
    actual: nonNegative,
    boardFeet: nonNegative,
    yield: nonNegative,
  }),
} satisfies { [What in keyof Decisions]: z.ZodType };

/** The fields that a shape names, without the leave for others. */
type NamedFields<T> = T extends readonly (infer Item)[]
  ? readonly NamedFields<Item>[]
  : T extends object
    ? { [Field in keyof T as string extends Field ? never : Field]: NamedFields<T[Field]> }
    : T;

/** The decisions with the sized piece taken by its kind, as its shape does. */
type ByKind = Omit<Decisions, 'sizing'> & {
  sizing: SizedBox | (SizedPiece & { kind: Exclude<PieceKind, 'box'> });
};

/**
 * Each field that a shape checks stands in its decision's interface, with that type: renamed in one alone, it does not compile.
 *
 * @internal
 */
export type HeldByShapes<
  Given extends { [What in keyof Decisions]: NamedFields<z.infer<(typeof decisionShapes)[What]>> } = ByKind,
> = Given;
