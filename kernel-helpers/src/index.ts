/** What a sheet may import, room by room. The build adds the types that these name. */

// fit/
export { bindingMonths } from './fit/binding-months.js';
export { fitOdds } from './fit/fit-odds.js';
export { lidFit } from './fit/lid-fit.js';
export { readMeasurements } from './fit/lid-measured.js';
export { lidSensitivity } from './fit/lid-sensitivity.js';
export { roomFindings } from './fit/room-findings.js';
export { equilibriumByMonth, fittedWidthFormula } from './fit/seasonal-fit.js';
// joints/
export { layOutCorner, readFirstBoards } from './joints/corner.js';
export { dividerFormula, layOutDovetails, slopeFormula } from './joints/dovetails.js';
export { layOutFingers } from './joints/finger-joint.js';
export { grooveFindings } from './joints/groove-findings.js';
export { boxGroovePasses, groovePasses, passesFormula, widestBit } from './joints/groove-passes.js';
export { grooveRouting, routerWords } from './joints/groove-routing.js';
export { grooveRuns } from './joints/groove-runs.js';
export { compareJoints } from './joints/joint-comparison.js';
export { layOutKeyedMitre } from './joints/keyed-mitre.js';
export { loweredFrontFinding } from './joints/lowered-front.js';
export { passDepthFormula } from './joints/pass-depth.js';
export { layOutRabbet } from './joints/rabbet.js';
// lesson/
export { openLesson } from './lesson/lesson.js';
// measure/
export { evaluate } from './measure/formula.js';
export { caliperScale, formatLength, parseLength } from './measure/length.js';
export { checkParameters } from './measure/sheet-parameters.js';
// money/
export { readActuals, readAnswer } from './money/actuals.js';
export { closingFindings } from './money/closing-findings.js';
export { correctedOperations, shrunkFormula } from './money/correction.js';
export { estimateCost, overheadFormula } from './money/cost.js';
export { estimateHours } from './money/hours.js';
export { jointMinutes } from './money/joint-minutes.js';
export { formatMoney, unitsOf } from './money/money.js';
export { offersSideBySide } from './money/offers.js';
export { allOperations, countWork } from './money/operations.js';
export { priceSensitivity } from './money/price-sensitivity.js';
export { markupFormula, priceFormula, quote } from './money/quote.js';
// piece/
export { sizeBookcase } from './piece/bookcase/bookcase.js';
export { drawnBookcase } from './piece/bookcase/drawn-bookcase.js';
export { lastingSagFormula, ownWeightFormula, sagFormula, shelfSag } from './piece/bookcase/shelf-sag.js';
export { drawnBox } from './piece/box/drawn-box.js';
export { fittedParts, withFittedLid } from './piece/box/fitted-parts.js';
export { sizeBox } from './piece/box/size-box.js';
export { boardLengthFormula, heightFormula, lidWidthFormula } from './piece/box/size-formulas.js';
export { sizedBox } from './piece/box/sized-box.js';
export { readBrief } from './piece/brief.js';
export { sizeDrawer } from './piece/drawer/drawer.js';
export { drawnDrawer } from './piece/drawer/drawn-drawer.js';
export { drawnFrameAndPanel } from './piece/frame-and-panel/drawn-frame-and-panel.js';
export { sizeFrameAndPanel } from './piece/frame-and-panel/frame-and-panel.js';
export { drawnSolidTop } from './piece/solid-top/drawn-solid-top.js';
export { sizeSolidTop } from './piece/solid-top/solid-top.js';
// record/
export { checkCommission } from './record/check/check.js';
export { referenceOf } from './record/decision-row.js';
export { typeface } from './record/own/typeface-file.js';
export { daysDecision, grooveDecision, lidDecision, stockDecision } from './record/results/decided.js';
export { surfaceDecision } from './record/results/surface-decision.js';
export { keepShopCard } from './record/shop-card/keep-card.js';
// runner/
export { proveCuts } from './runner/cuts/prove-cuts.js';
// shop/
export { searchCommissions } from './shop/search-commissions.js';
export { shopBook } from './shop/shop-book.js';
// show/
export { cutPlanDrawing } from './show/drawing/cut-plan-drawing.js';
export { dividerWalk } from './show/drawing/divider-walk.js';
export { jointDxf, partsDxf } from './show/drawing/dxf.js';
export { explodedView } from './show/drawing/exploded-view.js';
export { grooveDrawing } from './show/drawing/groove-drawing.js';
export { jointDrawing } from './show/drawing/joint-drawing.js';
export { jointTemplate } from './show/drawing/joint-template.js';
export { letteringDxf, letteringSvg } from './show/drawing/lid/lettering-files.js';
export { letteringPreview } from './show/drawing/lid/lettering-preview.js';
export { letteringTemplate } from './show/drawing/lid/lettering-template.js';
export { lidDrawing } from './show/drawing/lid/lid-drawing.js';
export { lidSection } from './show/drawing/lid/lid-section.js';
export { pieceDrawing } from './show/drawing/piece-drawing.js';
export { storyStick } from './show/drawing/story-stick.js';
export { tapeDrawing } from './show/drawing/tape-drawing.js';
export { longDay, shortDay } from './show/kit/day-text.js';
export { show } from './show/kit/display.js';
export { markdown } from './show/kit/escape.js';
export { svgFile } from './show/kit/svg-file.js';
export { right, table } from './show/kit/table.js';
export { benchListPage } from './show/paper/bench-list.js';
export { benchSettings } from './show/paper/bench-settings.js';
export { quotePage } from './show/paper/quote-page.js';
export { clearancePlot } from './show/plots/clearance-plot.js';
export { closingPlot } from './show/plots/closing-plot.js';
export { curvePlot } from './show/plots/curve-plot.js';
export { hoursPlot } from './show/plots/hours-plot.js';
export { lidSensitivityPlot } from './show/plots/lid-sensitivity-plot.js';
export { millingPlot } from './show/plots/milling-plot.js';
export { dryingPlot, moistureYearPlot } from './show/plots/moisture-plots.js';
export { oddsPlot } from './show/plots/odds-plot.js';
export { plot } from './show/plots/plot.js';
export { priceTornadoPlot } from './show/plots/price-tornado-plot.js';
export { promisePlot } from './show/plots/promise-plot.js';
export { scheduleChart } from './show/plots/schedule-chart.js';
export { correctionPlot, lidSeasonsPlot, pricesPlot, yieldPlot } from './show/plots/shop-book-plots.js';
export { widthWindow } from './show/plots/width-window.js';
export { openCommission } from './show/sheet-top/open-commission.js';
export { airTable } from './show/tables/air-table.js';
export { boardTable, offcutTable, shoppingList, unseenTable } from './show/tables/board-tables.js';
export { cautions } from './show/tables/cautions.js';
export { cutTable, partTable, setUpTable } from './show/tables/cut-plan-tables.js';
export { laterStartTable, stepTable } from './show/tables/day-tables.js';
export { findingList } from './show/tables/finding-list.js';
export { groovePassTable, grooveRunTable, jointTable } from './show/tables/joint-tables.js';
export { lidPlaces } from './show/tables/lid-places.js';
export { blankTable, reachTable } from './show/tables/milling-tables.js';
export { leftOverTable, offerTable, outcomeTable } from './show/tables/money-tables.js';
export {
  bindingTable,
  lidChangeTable,
  lidMonthTable,
  otherDaysTable,
  widthMonthTable,
} from './show/tables/movement-tables.js';
export { panelTable } from './show/tables/panel-table.js';
export { partLabels } from './show/tables/part-labels.js';
export { pieceCard } from './show/tables/piece-card.js';
export { progressTable } from './show/tables/progress-table.js';
export { sizesTable } from './show/tables/sizes-table.js';
export { glueTable, sandingTable } from './show/tables/surface-tables.js';
export { woodFigures } from './show/tables/wood-figures.js';
export { diffusivityWorking } from './show/working/diffusivity-working.js';
export { movementWorking } from './show/working/movement-working.js';
export { pertWorking } from './show/working/pert-working.js';
export { settingOut } from './show/working/setting-out.js';
export { working } from './show/working/working.js';
// stock/
export { boardFeet, boardFootFormula } from './stock/boards/board-feet.js';
export { readBoards } from './stock/boards/boards.js';
export { boardsFromCsv } from './stock/boards/boards-csv.js';
export { boardsToBuy } from './stock/boards/boards-to-buy.js';
export { planCuts } from './stock/cut-plan/plan-cuts.js';
export { boardLayouts } from './stock/cutting/board-layouts.js';
export { chalkMarks } from './stock/cutting/chalk-marks.js';
export { boardsWithYard, sheetsWithYard, yardBoards, yardFindings } from './stock/cutting/from-yard.js';
export { offcutBoards } from './stock/cutting/offcuts.js';
export { planFindings } from './stock/cutting/plan-findings.js';
export { planSheets } from './stock/cutting/plan-sheets.js';
export { setUps } from './stock/cutting/set-ups.js';
export { readSheets, sheetParts } from './stock/cutting/sheet-goods.js';
export { bowFormula, reachFormula } from './stock/milling/flattening.js';
export { millingLoss } from './stock/milling/milling-loss.js';
export { milledThickness, panelBoardsFormula, panelBoardWidthFormula } from './stock/milling/panels.js';
export { roughCut } from './stock/milling/rough-cut.js';
export { trimmedBoards } from './stock/milling/trimmed-boards.js';
// surface/
export { readCoating } from './surface/finish/coating.js';
export { dryingWaits } from './surface/finish/drying-waits.js';
export { finish } from './surface/finish/finishes.js';
export { planFinishing } from './surface/finish/finishing.js';
export { gluedFaces } from './surface/finish/glued-faces.js';
export { glue } from './surface/finish/glues.js';
export { planGluing } from './surface/finish/gluing.js';
export {
  clampForceFormula,
  clampSpacingFormula,
  panelPressureFormula,
  planPanelGluing,
} from './surface/finish/panel-gluing.js';
export { planSanding, sandedFormula } from './surface/finish/sanding.js';
export { layOutHandle } from './surface/handle/handle.js';
export { chordFormula } from './surface/handle/handle-formulas.js';
export { layOutLettering } from './surface/lettering/lettering.js';
export { vDepthFormula } from './surface/lettering/v-groove.js';
export { orderOfWork } from './surface/order-of-work.js';
export { setUpFindings } from './surface/set-up.js';
// time/
export { benchSteps } from './time/bench-steps.js';
export { laterStarts } from './time/later-starts.js';
export { schedule } from './time/schedule.js';
// wood/
export { yearOfAir } from './wood/air/air.js';
export { homeAir } from './wood/air/home-air.js';
export { allOccupancies, occupancy, vapourAddedFormula, vapourAddedValues } from './wood/air/house-vapour.js';
export { readHygrometer } from './wood/air/hygrometer.js';
export { monthNames } from './wood/air/months.js';
export { heatedAirFormula, heatedAirValues, warmerByItself } from './wood/air/room-air.js';
export { shopAir } from './wood/air/shop-air.js';
export { daysToSettle } from './wood/drying/days-to-settle.js';
export { moistureThroughTime } from './wood/drying/drying.js';
export {
  boardReadingFindings,
  newerReadingFindings,
  readingFindings,
  stackAirWords,
  stackFindings,
} from './wood/drying/stack-findings.js';
export { readingOr, stackPlan, stackToday } from './wood/drying/stack-plan.js';
export { moistureByMonth, swingFollowed } from './wood/drying/swing-followed.js';
export { emcFormula, emcValues, equilibriumMoisture, humidityFor } from './wood/emc.js';
export { coefficientFormula, movement, ringAngleFormula } from './wood/movement.js';
export { climate } from './wood/place/climates.js';
export { homeWords } from './wood/place/home-words.js';
export { allSpecies, species, woodName } from './wood/species.js';
export { gravityAt12, gravityFromBasicFormula } from './wood/specific-gravity.js';
export { stiffness, stiffnessFormulas } from './wood/stiffness.js';
