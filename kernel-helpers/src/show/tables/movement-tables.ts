import { bindingMonths } from '../../fit/binding-months.js';
import { type LidFit, type LidFitInput, lidFit } from '../../fit/lid-fit.js';
import type { LidChange } from '../../fit/lid-sensitivity.js';
import type { MonthOfMoisture } from '../../fit/seasonal-fit.js';
import { caliperScale, formatLength } from '../../measure/length.js';
import { caliper } from '../../measure/verdict.js';
import { monthNames } from '../../wood/air/months.js';
import { movement } from '../../wood/movement.js';
import type { DisplayItem } from '../kit/display.js';
import { table } from '../kit/table.js';

type Units = 'tape' | 'mm' | 'both';

/** Columns and figures as a caliper shows them in the commission's units. */
function byCaliper(units: Units) {
  const { unit, decimals, perInch } = caliperScale(units);
  return { column: (head: string) => ({ head, unit, decimals }), figure: (inches: number) => inches * perInch };
}

/** The lid's play in each month, and the band that holds nine boards in ten. */
export function lidMonthTable(fit: LidFit, units: Units): DisplayItem {
  const { column, figure } = byCaliper(units);
  return table({
    columns: ['Month', { head: 'Moisture', unit: '%', decimals: 1 }, ...['Play', 'Least', 'Most'].map(column)],
    rows: fit.byMonth.map(({ month, moisture, clearance, low, high }) => [
      ...[monthNames[month - 1], moisture],
      ...[clearance, low, high].map(figure),
    ]),
    caption: 'Month by month: least and most play of nine boards in ten',
  });
}

/**
 * The width to plane the lid to when the meter reads up to 1 1/2 % more or less than today.
 *
 * @param input  the lid as planned, see {@link lidFit}
 */
export function otherDaysTable(input: LidFitInput, units: Units): DisplayItem {
  const readings = [-1.5, -1, -0.5, 0, 0.5, 1, 1.5].map((over) => input.fittingMoisture + over);
  const possible = readings.filter((reading) => reading >= 3 && reading <= 20);
  return table({
    columns: [
      { head: 'Meter', unit: '%', decimals: 1 },
      ...['Plane to, by the tape', 'By the caliper', 'No narrower than', 'No wider than'],
    ],
    rows: possible.map((fittingMoisture) => {
      const { fittedWidth, window } = lidFit({ ...input, fittingMoisture });
      const tape = formatLength(fittedWidth, { system: units, denominator: 64 });
      return [fittingMoisture, tape, ...[fittedWidth, window.narrowest, window.widest].map(caliper)];
    }),
    caption: 'The width to plane to on another day; the record keeps the one above',
  });
}

/**
 * The months in which a lid planed to each of some widths has less play than it needs.
 *
 * @param lid.widths  with the name of each, in
 */
export function bindingTable(
  lid: { fit: LidFit; widths: readonly { name: string; width: number }[] },
  units: Units,
): DisplayItem {
  const { fit, widths } = lid;
  const { column, figure } = byCaliper(units);
  const named = (months: number[]) => months.map((month) => monthNames[month - 1]?.slice(0, 3)).join(', ') || 'never';
  const when = (months: number[]) => (months.length === 12 ? 'all year' : named(months));
  return table({
    columns: [column('Planed to'), '', 'Middling board binds', 'Board that moves most binds'],
    rows: widths.map(({ name, width }) => {
      const { middling, lively } = bindingMonths({ fit, width });
      return [figure(width), name, when(middling), when(lively)];
    }),
    caption: 'Months in which the lid would have less play than it needs',
  });
}

/** What each change buys, as `lidSensitivity` returns them. */
export function lidChangeTable(changes: readonly LidChange[], units: Units): DisplayItem {
  const { column, figure } = byCaliper(units);
  return table({
    columns: ['Changed', ...['Room', 'Gained', 'Plane to'].map(column), { head: 'Fits, of a hundred', decimals: 1 }],
    rows: changes.map(({ what, room, gain, fit, odds }) => [
      what,
      ...[room, gain, fit.fittedWidth].map(figure),
      100 * odds.fits,
    ]),
    caption: 'What each change buys, most first',
  });
}

/**
 * How much wider a board is in each month than on the day of fitting.
 *
 * @param board  as `movement` takes it, with its moisture in each month instead of one to come to
 */
export function widthMonthTable(
  board: { across: number; species: string; ringAngle: number; fromMoisture: number; months: MonthOfMoisture[] },
  units: Units,
): DisplayItem {
  const { months, ...today } = board;
  const { column, figure } = byCaliper(units);
  return table({
    columns: [
      'Month',
      { head: 'Moisture', unit: '%', decimals: 1 },
      ...['Wider by', 'nine in ten from', 'to'].map(column),
    ],
    rows: months.map(({ month, moisture }) => {
      const { change, low, high } = movement({ ...today, toMoisture: moisture });
      return [monthNames[month - 1], moisture, ...[change, low, high].map(figure)];
    }),
    caption: `Change of the width from today, at ${today.fromMoisture} %; the band holds nine boards in ten`,
  });
}
