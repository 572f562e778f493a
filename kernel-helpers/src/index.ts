export type { Block, Place, PlacedPart } from './box/assembled-box.js';
export { assembledBox } from './box/assembled-box.js';
export type { Bookcase } from './box/bookcase.js';
export { sizeBookcase } from './box/bookcase.js';
export type { BoxFigures } from './box/box-figures.js';
export { boxFigures, massFormula } from './box/box-figures.js';
export type { Brief, Joint } from './box/brief.js';
export { readBrief } from './box/brief.js';
export type { Dividers } from './box/dividers.js';
export { compartmentFormula, sizeDividers } from './box/dividers.js';
export type { Drawer } from './box/drawer.js';
export { sizeDrawer } from './box/drawer.js';
export { fingerRoom } from './box/finger-room.js';
export type { FitOdds } from './box/fit-odds.js';
export { fitOdds } from './box/fit-odds.js';
export type { FrameAndPanel } from './box/frame-and-panel.js';
export { sizeFrameAndPanel } from './box/frame-and-panel.js';
export type { HingedLid } from './box/hinged-lid.js';
export { hingedLid } from './box/hinged-lid.js';
export type { LidFit, LidFitInput, LidMonth } from './box/lid-fit.js';
export { lidFit } from './box/lid-fit.js';
export type { Lever } from './box/lid-levers.js';
export { lidLevers } from './box/lid-levers.js';
export type { LidMeasured, TypedMeasurement } from './box/lid-measured.js';
export { readMeasurements } from './box/lid-measured.js';
export type { LiftOffLid } from './box/lift-off-lid.js';
export { liftOffLid } from './box/lift-off-lid.js';
export type { OpenBox, OpenBoxBrief } from './box/open-box.js';
export { sizeOpenBox } from './box/open-box.js';
export type { FastenerTravel, MovingPiece, PieceFit } from './box/panel-fits.js';
export { drawerFit, fastenerTravel, panelFit } from './box/panel-fits.js';
export type { Piece, PiecePart } from './box/piece.js';
export type { FitMonth, MonthOfMoisture, SeasonalFit } from './box/seasonal-fit.js';
export { equilibriumByMonth, seasonalFit } from './box/seasonal-fit.js';
export type { BoxBrief, BoxDesign, Groove, Part, SizedBox } from './box/size-box.js';
export { sizeBox } from './box/size-box.js';
export { boardLengthFormula, heightFormula, lidLengthFormula, lidWidthFormula } from './box/size-formulas.js';
export type { SolidTop } from './box/solid-top.js';
export { sizeSolidTop } from './box/solid-top.js';
export type { Tray } from './box/tray.js';
export { sizeTray } from './box/tray.js';
export type { CornerPoint, CornerSolid } from './joints/corner-solids.js';
export { cornerSolids } from './joints/corner-solids.js';
export type { DovetailInput, DovetailLayout, JointPiece } from './joints/dovetails.js';
export { dividerFormula, layOutDovetails, slopeFormula } from './joints/dovetails.js';
export type { Finger, FingerLayout } from './joints/finger-joint.js';
export { fingerFormula, layOutFingers } from './joints/finger-joint.js';
export { grooveFindings } from './joints/groove-findings.js';
export type { GroovePasses } from './joints/groove-passes.js';
export { groovePasses, passDepthFormula, passesFormula } from './joints/groove-passes.js';
export type { GrooveEnd, GrooveRun, TailBoards } from './joints/groove-runs.js';
export { grooveRuns } from './joints/groove-runs.js';
export { nearestHiddenHeight } from './joints/hidden-heights.js';
export type { JointCompared } from './joints/joint-comparison.js';
export { compareJoints, dovetailGlueFormula, fingerGlueFormula } from './joints/joint-comparison.js';
export type { KeyedMitreLayout } from './joints/keyed-mitre.js';
export { keyGapFormula, layOutKeyedMitre, mitreFaceFormula } from './joints/keyed-mitre.js';
export type { RabbetLayout } from './joints/rabbet.js';
export { layOutRabbet, rabbetedLengthFormula } from './joints/rabbet.js';
export type { Finding, Verdict } from './measure/finding.js';
export type { Formula, FormulaSymbol } from './measure/formula.js';
export { evaluate } from './measure/formula.js';
export type { LengthSystem } from './measure/length.js';
export { formatLength, parseLength, shownLength } from './measure/length.js';
export { ShopError } from './measure/shop-error.js';
export { celsius, fahrenheit } from './measure/temperature.js';
export type { Cost, CostInput } from './money/cost.js';
export { estimateCost, overheadFormula } from './money/cost.js';
export type { Counted, Hours, HoursEstimate, Operation, ThreePoints } from './money/hours.js';
export { boxCounts, boxOperations, estimateHours, threePointMean } from './money/hours.js';
export type { Money } from './money/money.js';
export { addMoney, formatMoney, money, unitsOf } from './money/money.js';
export type { Quote } from './money/quote.js';
export { markupFormula, priceFormula, quote } from './money/quote.js';
export type { Fault } from './record/chain.js';
export type { CommissionCheck } from './record/check.js';
export { checkCommission } from './record/check.js';
export type { Commission, Decided } from './record/commission.js';
export type { Decision } from './record/decision.js';
export type { DecisionRow } from './record/decision-row.js';
export type { AirDecision, Decisions, LidDecision, QuoteDecision, StockDecision } from './record/decisions.js';
export type { Entry, Head, Versions } from './record/entry.js';
export { openCommission } from './record/open-commission.js';
export type { Stale } from './record/stale.js';
export { proveCuts } from './runner/prove-cuts.js';
export { cautions } from './show/cautions.js';
export { boxDrawing } from './show/drawing/box-drawing.js';
export { dividerWalk } from './show/drawing/divider-walk.js';
export { jointDxf, partsDxf } from './show/drawing/dxf.js';
export { explodedView } from './show/drawing/exploded-view.js';
export { grooveDrawing } from './show/drawing/groove-drawing.js';
export { jointDrawing } from './show/drawing/joint-drawing.js';
export { jointTemplate } from './show/drawing/joint-template.js';
export type { DrawingOptions } from './show/drawing/lengths.js';
export { storyStick } from './show/drawing/story-stick.js';
export { markdown } from './show/escape.js';
export type { FigureText } from './show/figure.js';
export { figure } from './show/figure.js';
export { findingList } from './show/finding-list.js';
export { leverPlot } from './show/lever-plot.js';
export { lidClearancePlot } from './show/lid-clearance-plot.js';
export { dryingPlot, moistureYearPlot } from './show/moisture-plots.js';
export { oddsPlot } from './show/odds-plot.js';
export type { PlotLibrary } from './show/plot.js';
export { plot } from './show/plot.js';
export type { Shown } from './show/shown.js';
export { show } from './show/shown.js';
export type { Cell, Column } from './show/table.js';
export { table } from './show/table.js';
export { widthWindow } from './show/width-window.js';
export type { WorkingOptions } from './show/working.js';
export { working } from './show/working.js';
export { boardFeet, boardFootFormula } from './stock/board-feet.js';
export type { Board, TypedBoard } from './stock/boards.js';
export { readBoards } from './stock/boards.js';
export { checkPlan } from './stock/cut-plan/check-plan.js';
export type { CutJob, TypedCutBoard, TypedCutJob, TypedCutPart, TypedDefect } from './stock/cut-plan/cut-job.js';
export type {
  Cut,
  CutBoard,
  CutBoardPlan,
  CutPart,
  CutPlan,
  Defect,
  FirstCut,
  Offcut,
} from './stock/cut-plan/plan.js';
export { planCuts } from './stock/cut-plan/plan-cuts.js';
export type { MillingLoss, MillingStep } from './stock/milling-loss.js';
export { millingLoss } from './stock/milling-loss.js';
export type { MillingAllowances, RoughPart } from './stock/rough-parts.js';
export { roughParts } from './stock/rough-parts.js';
export type { Climate, Heating, MonthOfAir } from './wood/air.js';
export { climate, yearOfAir } from './wood/air.js';
export type { Air } from './wood/air-fields.js';
export { stackFindings } from './wood/air-findings.js';
export type { AirOnDay } from './wood/daily-air.js';
export { dailyAir } from './wood/daily-air.js';
export type { DaysToSettle } from './wood/days-to-settle.js';
export { daysToSettle } from './wood/days-to-settle.js';
export {
  cellWallDiffusivityFormula,
  diffusivity,
  diffusivityDoubt,
  diffusivityFormula,
  diffusivityValues,
  lumenFormula,
} from './wood/diffusivity.js';
export type { DryingBoard, MoistureOnDay } from './wood/drying.js';
export { moistureThroughTime } from './wood/drying.js';
export { emcConstants, emcFormula, emcValues, equilibriumMoisture, humidityFor } from './wood/emc.js';
export { finishResistance } from './wood/finish-resistance.js';
export type { HygrometerReading, HygrometerUnits, ReadingProblem } from './wood/hygrometer.js';
export { readHygrometer } from './wood/hygrometer.js';
export type { MoistureExcluding } from './wood/moisture-excluding.js';
export { allMoistureExcluding, moistureExcluding } from './wood/moisture-excluding.js';
export { monthNames } from './wood/months.js';
export type { Movement, MovementMethod } from './wood/movement.js';
export { boardVariation, coefficientFormula, movement, shrinkageFormula } from './wood/movement.js';
export { dewPoint, humidityFromDewPoint, humidityFromWetBulb, wetBulb } from './wood/psychrometrics.js';
export type { ServiceMoisture } from './wood/service-moisture.js';
export { allServiceMoisture, serviceMoisture } from './wood/service-moisture.js';
export type { Species } from './wood/species.js';
export { addSpecies, allSpecies, species } from './wood/species.js';
export type { DayOfYear, SwingFollowed } from './wood/swing-followed.js';
export { swingFollowed } from './wood/swing-followed.js';
