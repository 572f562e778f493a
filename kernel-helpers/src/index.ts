export type { Block, Place, PlacedPart } from './box/assembled-box.js';
export { assembledBox } from './box/assembled-box.js';
export type { BindingMonths } from './box/binding-months.js';
export { bindingMonths } from './box/binding-months.js';
export type { Bookcase, BookcaseDesign } from './box/bookcase.js';
export { sizeBookcase } from './box/bookcase.js';
export type { BoxFigures } from './box/box-figures.js';
export { boxFigures, massFormula } from './box/box-figures.js';
export type { Brief, Joint } from './box/brief.js';
export { readBrief } from './box/brief.js';
export type { Dividers } from './box/dividers.js';
export { compartmentFormula, sizeDividers } from './box/dividers.js';
export type { Drawer, DrawerDesign } from './box/drawer.js';
export { sizeDrawer } from './box/drawer.js';
export { drawnBookcase } from './box/drawn-bookcase.js';
export { drawnBox } from './box/drawn-box.js';
export { drawnDrawer } from './box/drawn-drawer.js';
export { drawnFrameAndPanel } from './box/drawn-frame-and-panel.js';
export type { DrawnPiece, DrawnSize, Solid, SolidBlock, Span, ViewName } from './box/drawn-piece.js';
export { drawnSolidTop } from './box/drawn-solid-top.js';
export { fingerRoom } from './box/finger-room.js';
export type { FitOdds } from './box/fit-odds.js';
export { fitOdds } from './box/fit-odds.js';
export { fittedParts, withFittedLid } from './box/fitted-parts.js';
export type { FrameAndPanel, FrameDesign } from './box/frame-and-panel.js';
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
export type { Piece, PieceKind, PiecePart, SizedPiece } from './box/piece.js';
export type { FitMonth, MonthOfMoisture, SeasonalFit } from './box/seasonal-fit.js';
export { equilibriumByMonth, fittedWidthFormula, seasonalFit } from './box/seasonal-fit.js';
export type { LoadedShelf } from './box/shelf-sag.js';
export { longestShelf, sagFormula, shelfSag, stiffness, stiffnessFormula } from './box/shelf-sag.js';
export type { BoxBrief, BoxDesign, Groove, Part, SizedBox } from './box/size-box.js';
export { sizeBox } from './box/size-box.js';
export { boardLengthFormula, heightFormula, lidLengthFormula, lidWidthFormula } from './box/size-formulas.js';
export { sizedBox } from './box/sized-box.js';
export type { SolidTop, SolidTopDesign } from './box/solid-top.js';
export { sizeSolidTop } from './box/solid-top.js';
export type { Tray } from './box/tray.js';
export { sizeTray } from './box/tray.js';
export type { CornerLayout, FirstBoards } from './joints/corner.js';
export { layOutCorner } from './joints/corner.js';
export type { CornerPoint, CornerSolid } from './joints/corner-solids.js';
export { cornerSolids } from './joints/corner-solids.js';
export type { DovetailInput, DovetailLayout, JointPiece } from './joints/dovetails.js';
export { dividerFormula, layOutDovetails, slopeFormula } from './joints/dovetails.js';
export type { Finger, FingerInput, FingerLayout } from './joints/finger-joint.js';
export { fingerFormula, layOutFingers } from './joints/finger-joint.js';
export { grooveFindings } from './joints/groove-findings.js';
export type { GroovePasses } from './joints/groove-passes.js';
export { boxGroovePasses, groovePasses, passDepthFormula, passesFormula } from './joints/groove-passes.js';
export type { GrooveEnd, GrooveRun } from './joints/groove-runs.js';
export { grooveRuns } from './joints/groove-runs.js';
export { nearestHiddenHeight } from './joints/hidden-heights.js';
export type { JointCompared } from './joints/joint-comparison.js';
export { compareJoints, dovetailGlueFormula, fingerGlueFormula } from './joints/joint-comparison.js';
export type { KeyedMitreLayout } from './joints/keyed-mitre.js';
export { keyGapFormula, layOutKeyedMitre, mitreFaceFormula } from './joints/keyed-mitre.js';
export { loweredFrontFinding } from './joints/lowered-front.js';
export type { RabbetLayout } from './joints/rabbet.js';
export { layOutRabbet, rabbetedLengthFormula } from './joints/rabbet.js';
export type { Finding, Verdict } from './measure/finding.js';
export type { Formula, FormulaSymbol } from './measure/formula.js';
export { evaluate } from './measure/formula.js';
export type { LengthSystem } from './measure/length.js';
export { caliperScale, formatLength, parseLength, shownLength } from './measure/length.js';
export type { Prediction, Question } from './measure/prediction.js';
export { comparePrediction } from './measure/prediction.js';
export { ShopError } from './measure/shop-error.js';
export { celsius, fahrenheit } from './measure/temperature.js';
export type { Actuals, ClientAnswer, OperationWorked, Planned, TypedActuals, TypedWork } from './money/actuals.js';
export { readActuals, readAnswer } from './money/actuals.js';
export { closingFindings } from './money/closing-findings.js';
export type { Correction, TimeTaken } from './money/correction.js';
export { correctedOperations, corrections, shrunkFormula } from './money/correction.js';
export type { Bought, Cost, CostInput } from './money/cost.js';
export { estimateCost, overheadFormula } from './money/cost.js';
export type { Hours, HoursEstimate, OperationHours } from './money/hours.js';
export { estimateHours } from './money/hours.js';
export { jointMinutes } from './money/joint-minutes.js';
export type { Money } from './money/money.js';
export { addMoney, allocateMoney, formatMoney, lessMoney, money, shareOfMoney, unitsOf } from './money/money.js';
export type { Offer, OtherWay } from './money/offers.js';
export { offersSideBySide } from './money/offers.js';
export type { Counted, Counts, Operation, Waiting } from './money/operations.js';
export { boxCounts, boxOperations } from './money/operations.js';
export type { PriceLever } from './money/price-levers.js';
export { priceLevers } from './money/price-levers.js';
export type { Quote, TaxRule, Terms } from './money/quote.js';
export { markupFormula, priceFormula, quote } from './money/quote.js';
export type { Share } from './money/share.js';
export { shareOf } from './money/share.js';
export type { ThreePoints } from './money/three-points.js';
export { threePointMean, threePointVariance } from './money/three-points.js';
export type { Trend } from './money/trend.js';
export { trend } from './money/trend.js';
export type { Fault } from './record/chain.js';
export type { CommissionCheck } from './record/check.js';
export { checkCommission } from './record/check.js';
export type { Commission, Decided } from './record/commission.js';
export type { CommissionCard, LidInSeason } from './record/commission-card.js';
export type { Decision } from './record/decision.js';
export type { DecisionRow } from './record/decision-row.js';
export type {
  AirDecision,
  DaysDecision,
  Decisions,
  LidDecision,
  QuoteDecision,
  StockDecision,
  SurfaceDecision,
} from './record/decisions.js';
export type { Entry, Head, Versions } from './record/entry.js';
export type { Lesson, Predicted } from './record/lesson.js';
export { openLesson } from './record/lesson.js';
export type { FaceName } from './record/letter-face.js';
export { letterFace } from './record/letter-face.js';
export { openCommission } from './record/open-commission.js';
export type { Tried } from './record/progress-file.js';
export type { Wanted } from './record/search-commissions.js';
export { searchCommissions } from './record/search-commissions.js';
export type { ShopBook } from './record/shop-book.js';
export { shopBook } from './record/shop-book.js';
export type { CommissionProblem } from './record/shop-index.js';

export type { Stale } from './record/stale.js';
export { surfaceDecision } from './record/surface-decision.js';
export { proveCuts } from './runner/prove-cuts.js';
export { boardTable, shoppingList } from './show/board-tables.js';
export { cautions } from './show/cautions.js';
export { closingPlot } from './show/closing-plot.js';
export type { Curve } from './show/curve-plot.js';
export { curvePlot } from './show/curve-plot.js';
export { cutTable, partTable, setUpTable } from './show/cut-plan-tables.js';
export { longDay, shortDay } from './show/day-text.js';
export { diffusivityWorking } from './show/diffusivity-working.js';
export { cutPlanDrawing } from './show/drawing/cut-plan-drawing.js';
export { dividerWalk } from './show/drawing/divider-walk.js';
export { jointDxf, partsDxf } from './show/drawing/dxf.js';
export { explodedView } from './show/drawing/exploded-view.js';
export { grooveDrawing } from './show/drawing/groove-drawing.js';
export { jointDrawing } from './show/drawing/joint-drawing.js';
export { jointTemplate } from './show/drawing/joint-template.js';
export type { DrawingOptions } from './show/drawing/lengths.js';
export { letteringDxf, letteringSvg } from './show/drawing/lettering-files.js';
export { letteringPreview } from './show/drawing/lettering-preview.js';
export { letteringTemplate } from './show/drawing/lettering-template.js';
export { lidDrawing } from './show/drawing/lid-drawing.js';
export { lidSection } from './show/drawing/lid-section.js';
export { pieceDrawing } from './show/drawing/piece-drawing.js';
export { pieceStick, storyStick } from './show/drawing/story-stick.js';
export { tapeDrawing } from './show/drawing/tape-drawing.js';
export { markdown } from './show/escape.js';
export type { FigureText } from './show/figure.js';
export { figure } from './show/figure.js';
export { findingList } from './show/finding-list.js';
export { hoursPlot } from './show/hours-plot.js';
export { leverPlot } from './show/lever-plot.js';
export { lidClearancePlot } from './show/lid-clearance-plot.js';
export { lidPlaces } from './show/lid-places.js';
export { millingPlot } from './show/milling-plot.js';
export { dryingPlot, moistureYearPlot } from './show/moisture-plots.js';
export { movementWorking } from './show/movement-working.js';
export { oddsPlot } from './show/odds-plot.js';
export { benchListPage } from './show/paper/bench-list.js';
export type { BenchSettings } from './show/paper/bench-settings.js';
export { benchSettings } from './show/paper/bench-settings.js';
export type { ClientQuote } from './show/paper/quote-page.js';
export { quotePage } from './show/paper/quote-page.js';
export { partLabels } from './show/part-labels.js';
export { pieceCard } from './show/piece-card.js';
export type { PlotLibrary } from './show/plot.js';
export { plot } from './show/plot.js';
export { priceLeversPlot } from './show/price-levers-plot.js';
export { progressTable } from './show/progress-table.js';
export { promisePlot } from './show/promise-plot.js';
export { scheduleChart } from './show/schedule-chart.js';
export { settingOut } from './show/setting-out.js';
export { correctionPlot, lidSeasonsPlot, pricesPlot, yieldPlot } from './show/shop-book-plots.js';
export type { Shown } from './show/shown.js';
export { show } from './show/shown.js';
export { svgFile } from './show/svg-file.js';
export type { Cell, Column } from './show/table.js';
export { table } from './show/table.js';
export { widthWindow } from './show/width-window.js';
export { woodFigures } from './show/wood-figures.js';
export type { WorkingOptions } from './show/working.js';
export { working } from './show/working.js';
export type { Blank, PartsToCut } from './stock/blanks.js';
export { blanksOf } from './stock/blanks.js';
export { boardFeet, boardFootFormula } from './stock/board-feet.js';
export type { BoardLayout, NumberedCut, NumberedPart } from './stock/board-layouts.js';
export { boardLayouts } from './stock/board-layouts.js';
export type { Board, TypedBoard } from './stock/boards.js';
export { readBoards } from './stock/boards.js';
export { boardsFromCsv } from './stock/boards-csv.js';
export type { BoardsToBuy } from './stock/boards-to-buy.js';
export { boardsToBuy } from './stock/boards-to-buy.js';
export { chalkMarks } from './stock/chalk-marks.js';
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
export { defectText } from './stock/defects.js';
export { bowFormula, cupFormula, flattened, reachFormula, twistFormula } from './stock/flattening.js';
export type { LumberGrade } from './stock/lumber-data.js';
export { lumberGrade } from './stock/lumber-data.js';
export { lumberTally, surfacedThickness, surfaceMeasureFormula } from './stock/lumber-tally.js';
export type { MilledBlank, Milling, MillingLoss, MillingStep } from './stock/milling-loss.js';
export { millingLoss } from './stock/milling-loss.js';
export { offcutBoards } from './stock/offcuts.js';
export { planFindings } from './stock/plan-findings.js';
export { planSheets } from './stock/plan-sheets.js';
export type { Planer, PlanerPass, TypedPlaner } from './stock/planer.js';
export { planerPasses } from './stock/planer.js';
export type { MillingAllowances, RoughPart } from './stock/rough-parts.js';
export { roughParts } from './stock/rough-parts.js';
export type { SetUp } from './stock/set-ups.js';
export { setUps } from './stock/set-ups.js';
export type { TypedSheet } from './stock/sheet-goods.js';
export { readSheets, sheetParts } from './stock/sheet-goods.js';
export type { ShopStock, StockOffered, StockTurn } from './stock/shop-stock.js';
export { stockFor } from './stock/shop-stock.js';
export type { SnipeRemedy } from './stock/snipe.js';
export { snipeRemedies } from './stock/snipe.js';
export type { TrimmedBoard } from './stock/trimmed-boards.js';
export { trimmedBoards } from './stock/trimmed-boards.js';
export { cuttingTimeFormula } from './surface/cutting-time.js';
export type { Face } from './surface/face.js';
export type { Finish } from './surface/finishes.js';
export { allFinishes, finish } from './surface/finishes.js';
export type { Finishing } from './surface/finishing.js';
export { finishAmountFormula, planFinishing } from './surface/finishing.js';
export type { Glue } from './surface/glues.js';
export { allGlues, glue } from './surface/glues.js';
export type { Gluing } from './surface/gluing.js';
export { assemblyFormula, glueAmountFormula, planGluing } from './surface/gluing.js';
export type { GritStep } from './surface/grit-order.js';
export { gritOrder } from './surface/grit-order.js';
export type { Grit } from './surface/grits.js';
export { allGrits, grit } from './surface/grits.js';
export type { Handle, HandleInput, HandleKind } from './surface/handle.js';
export { layOutHandle } from './surface/handle.js';
export { chordFormula, wallFormula } from './surface/handle-formulas.js';
export type { Lettering, LetteringInput, TypedOrnament } from './surface/lettering.js';
export { layOutLettering } from './surface/lettering.js';
export type { SurfaceStep } from './surface/order-of-work.js';
export { orderOfWork } from './surface/order-of-work.js';
export type { SandingInput, SandingPlan } from './surface/sanding.js';
export { planSanding, proudAfterFormula, sandedFormula } from './surface/sanding.js';
export type { RouterSetUp } from './surface/set-up.js';
export { setUpFindings } from './surface/set-up.js';
export type { SurfaceArea } from './surface/surface-areas.js';
export { surfaceAreas } from './surface/surface-areas.js';
export { vDepthFormula, vWidthFormula } from './surface/v-groove.js';
export type { BenchStep, WaitingDays } from './time/bench-steps.js';
export { benchSteps } from './time/bench-steps.js';
export type { WorkingCalendar } from './time/calendar.js';
export { hoursOn } from './time/calendar.js';
export type { Activity, ActivityTimes, CriticalPath } from './time/critical-path.js';
export { criticalPath } from './time/critical-path.js';
export { laterStarts } from './time/later-starts.js';
export type { Schedule, ScheduledStep, SchedulePlan } from './time/schedule.js';
export { schedule } from './time/schedule.js';
export type { Climate, Heating, MonthOfAir } from './wood/air.js';
export { climate, heatedAirFormula, heatedAirValues, yearOfAir } from './wood/air.js';
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
export {
  boardVariation,
  coefficientFormula,
  movement,
  ringAngleFormula,
  shrinkageFormula,
  totalShrinkageFormula,
} from './wood/movement.js';
export { dewPoint, humidityFromDewPoint, humidityFromWetBulb, wetBulb } from './wood/psychrometrics.js';
export type { ServiceMoisture } from './wood/service-moisture.js';
export { allServiceMoisture, serviceMoisture } from './wood/service-moisture.js';
export type { Species } from './wood/species.js';
export { addSpecies, allSpecies, species, woodName } from './wood/species.js';
export type { DayOfYear, SwingFollowed } from './wood/swing-followed.js';
export { swingFollowed } from './wood/swing-followed.js';
