import { z } from 'zod';
import { type Brief, briefFields } from '../box/brief.js';
import type { LidFit } from '../box/lid-fit.js';
import type { LidMeasured } from '../box/lid-measured.js';
import type { SizedPiece } from '../box/piece.js';
import type { MonthOfMoisture } from '../box/seasonal-fit.js';
import type { DovetailLayout } from '../joints/dovetails.js';
import type { GrooveRun, TailBoards } from '../joints/groove-runs.js';
import type { Cost } from '../money/cost.js';
import type { Hours } from '../money/hours.js';
import type { Quote } from '../money/quote.js';
import type { Board } from '../stock/boards.js';
import type { MillingLoss } from '../stock/milling-loss.js';
import type { MonthOfAir } from '../wood/air.js';

/** The air the piece will live in, and the moisture its lid reaches there under its finish. */
export interface AirDecision {
  months: MonthOfAir[];
  moistures: MonthOfMoisture[];
  /** Finish and coats; nothing for bare wood. */
  finish: string;
}

/** The width the lid is planed to, and the year it was fitted for. */
export type LidDecision = Omit<LidFit, 'findings'>;

/** The corner joint, and which boards carry its tails. */
export interface JointDecision {
  layout: DovetailLayout;
  tailBoards: TailBoards;
}

/** Where the grooves run, and the passes that make them; in. */
export interface GrooveDecision {
  runs: GrooveRun[];
  passes: { name: string; offsets: number[]; depths: number[] }[];
}

/** What is bought and what of it becomes the piece. */
export interface StockDecision extends Omit<MillingLoss, 'findings'> {
  boards: Board[];
}

/** What the piece takes, costs and is offered for. */
export interface QuoteDecision {
  hours: Hours & { low: number; high: number };
  cost: Cost;
  quote: Quote;
}

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
  quote: QuoteDecision;
  measured: { measurements: LidMeasured[] };
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
  lid: z.looseObject({ fittedWidth: inches, opening: inches, window, byMonth: z.array(month).length(12) }),
  joint: z.looseObject({
    layout: z.looseObject({
      boardWidth: inches,
      dividerSetting: inches,
      gaugeSetting: inches,
      tails: z.array(z.looseObject({ from: inches, to: inches })).min(1),
    }),
    tailBoards: z.enum(['front and back', 'sides']),
  }),
  grooves: z.looseObject({
    runs: z.array(z.looseObject({ board: z.string(), groove: z.string(), from: inches, to: inches })),
    passes: z.array(z.looseObject({ name: z.string(), offsets: z.array(inches), depths: z.array(inches) })),
  }),
  stock: z.looseObject({
    boards: z.array(z.looseObject({ mark: z.string(), price: inches })),
    bought: inches,
    yield: inches,
  }),
  quote: z.looseObject({
    hours: z.looseObject({ mean: inches, low: inches, high: inches }),
    cost: z.looseObject({ total: amount }),
    quote: z.looseObject({ price: amount, deposit: amount, balance: amount, validUntil: z.iso.date() }),
  }),
  measured: z.looseObject({ measurements: z.array(z.looseObject({ date: z.iso.date(), clearance: inches })) }),
};
