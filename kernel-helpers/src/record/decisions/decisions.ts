import type { LidFit } from '../../fit/lid-fit.js';
import type { LidMeasured } from '../../fit/lid-measured.js';
import type { MonthOfMoisture } from '../../fit/seasonal-fit.js';
import type { CornerLayout, FirstBoards } from '../../joints/corner.js';
import type { GrooveRouting } from '../../joints/groove-routing.js';
import type { GrooveRun } from '../../joints/groove-runs.js';
import type { Actuals, ClientAnswer } from '../../money/actuals.js';
import type { Cost } from '../../money/cost.js';
import type { Hours, OperationHours } from '../../money/hours.js';
import type { Counts } from '../../money/operations.js';
import type { Quote } from '../../money/quote.js';
import type { Brief } from '../../piece/brief.js';
import type { SizedPiece } from '../../piece/piece.js';
import type { Board } from '../../stock/boards/boards.js';
import type { CutPlan } from '../../stock/cut-plan/plan.js';
import type { MillingLoss } from '../../stock/milling/milling-loss.js';
import type { RoughCut } from '../../stock/milling/rough-cut.js';
import type { Coating } from '../../surface/finish/coating.js';
import type { GlueOn } from '../../surface/finish/glued-faces.js';
import type { GluedPanels } from '../../surface/finish/panel-gluing.js';
import type { HandleKind } from '../../surface/handle/laid-out-handle.js';
import type { Schedule } from '../../time/scheduled-steps.js';
import type { MonthOfAir } from '../../wood/air/air.js';
import type { StackPlan } from '../../wood/drying/stack-plan.js';

/** The air the piece will live in, the moisture its lid reaches there under its finish, and how the stack waits. */
export interface AirDecision {
  months: MonthOfAir[];
  moistures: MonthOfMoisture[];
  /** Finish and coats of the published test that the moistures follow; nothing for bare wood. */
  finish: string;
  /** What the piece is finished with. Older records do not say. */
  coating?: Coating;
  /** What later sheets take for the stack's moisture and its wait; older records do not say. */
  stack?: StackPlan;
}

/** The width the lid is planed to, and the year it was fitted for. */
export type LidDecision = Omit<LidFit, 'findings'>;

/** The corner joint, and which boards carry its tails or the finger at the lower edge. */
export interface JointDecision {
  layout: CornerLayout;
  firstBoards: FirstBoards;
}

/** Where the grooves run, what they are routed with, and the passes that make them: the cutter, fences to its near side, and depths; in. */
export interface GrooveDecision {
  runs: GrooveRun[];
  /** Older records do not say. */
  routing?: Omit<GrooveRouting, 'findings'>;
  passes: { name: string; cutter: number; fences: number[]; depths: number[] }[];
}

/**
 * Boards and sheets that are used, how they are cut, what milling leaves, and the offcuts that go back to the shop's stock. Older
 * records do not say what planer and jointer take.
 */
export interface StockDecision
  extends Omit<MillingLoss, 'findings'>,
    Pick<RoughCut, 'rough' | 'toCut'>,
    Partial<Pick<RoughCut, 'planer' | 'jointer'>>,
    Partial<GluedPanels> {
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
  /** Square feet, once for each grade: the hours of sanding rest on them. */
  sanded?: { beforeAssembly: number; afterAssembly: number };
  /** Square feet, and how much of it is sanded before assembly. */
  area: number;
  areaBeforeAssembly: number;
  /** Id of the glue, minutes to assemble and in clamps, hours to full strength, ml; which faces get it: older records do not say. */
  glue: {
    id: string;
    assemblyMinutes: number;
    clampMinutes: number;
    cureHours: number;
    millilitres: number;
    on?: GlueOn;
  };
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
    /** Scatter of the pace that all operations share: the days take it over. */
    pace?: number;
    /** Counted by units of its day: some are counted no longer. */
    byOperation?: (Omit<OperationHours, 'per'> & { per: string })[];
  };
  /** What was counted on the piece: the days rest on it. */
  counts: Counts;
  cost: Cost;
  quote: Quote;
}

/** When what is done, and how sure the promised day is. */
export type DaysDecision = Omit<Schedule, 'findings' | 'readyBy' | 'pace'> & Partial<Pick<Schedule, 'pace'>>;

/**
 * What each decision hands on: `job.need('sizing')` gives `Decisions['sizing']`.
 *
 * To add a decision, or to give one its fields: write its interface here or in the folder of the trade that it comes
 * from, name it below, and say the same in its schema. The compiler holds the two together.
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
