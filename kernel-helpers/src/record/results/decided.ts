import type { LidFit } from '../../fit/lid-fit.js';
import type { BoxGroovePasses } from '../../joints/groove-passes.js';
import type { GrooveRouting } from '../../joints/groove-routing.js';
import type { GrooveRun } from '../../joints/groove-runs.js';
import type { Board } from '../../stock/boards/boards.js';
import type { CutPlan } from '../../stock/cut-plan/plan.js';
import type { BoardLayout } from '../../stock/cutting/board-layouts.js';
import type { MillingLoss } from '../../stock/milling/milling-loss.js';
import type { RoughCut } from '../../stock/milling/rough-cut.js';
import { type PanelGluing, panelDecision } from '../../surface/finish/panel-gluing.js';
import type { Schedule } from '../../time/scheduled-steps.js';
import type { DaysDecision, GrooveDecision, LidDecision, StockDecision } from '../decisions/decisions.js';

/** What later sheets need of a lid's year. */
export function lidDecision({ findings: _, ...fit }: LidFit): LidDecision {
  return fit;
}

/** What later sheets need of a box's grooves: where they run, what turns the bit, and how they are cut. */
export function grooveDecision(grooves: {
  runs: GrooveRun[];
  routing: GrooveRouting;
  passes: readonly BoxGroovePasses[];
}): GrooveDecision {
  const { runs, passes } = grooves;
  const { findings: _, ...routing } = grooves.routing;
  return {
    runs,
    routing,
    passes: passes.map(({ name, cutter, fences, depths }) => ({ name, cutter, fences, depths })),
  };
}

/**
 * What later sheets need of the boards: those that are used, how they are cut, and what milling leaves of them.
 *
 * @param stock.cut  what is cut out rough
 * @param stock.gluing  of the panels, where there are some
 * @param stock.layouts, stock.sheetLayouts  the boards and sheets that the plans use
 * @param stock.offcuts  as `offcutBoards` returns them
 */
export function stockDecision(stock: {
  cut: RoughCut;
  plan: CutPlan;
  milling: MillingLoss;
  gluing?: PanelGluing | undefined;
  layouts: readonly BoardLayout[];
  sheetLayouts: readonly BoardLayout[];
  offcuts: Board[];
}): StockDecision {
  const { cut, plan, milling, gluing, layouts, sheetLayouts, offcuts } = stock;
  const { findings: _, ...loss } = milling;
  const boards = layouts.map(({ board }) => board);
  const sheets = sheetLayouts.map(({ board }) => board);
  const { rough, toCut, planer, jointer } = cut;
  const glued = panelDecision(cut.panels, gluing);
  return { ...loss, rough, toCut, planer, jointer, ...glued, boards, plan, sheets, offcuts };
}

/** What later sheets need of a schedule. The share that is done by each day is a plot's, not the record's. */
export function daysDecision({ findings: _, readyBy: __, ...days }: Schedule): DaysDecision {
  return days;
}
