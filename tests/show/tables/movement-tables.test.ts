import { describe, expect, it } from 'vitest';
import { type LidFitInput, lidFit } from '../../../kernel-helpers/src/fit/lid-fit.js';
import { lidSensitivity } from '../../../kernel-helpers/src/fit/lid-sensitivity.js';
import { equilibriumByMonth } from '../../../kernel-helpers/src/fit/seasonal-fit.js';
import { caliper } from '../../../kernel-helpers/src/measure/verdict.js';
import {
  bindingTable,
  lidChangeTable,
  lidMonthTable,
  otherDaysTable,
  widthMonthTable,
} from '../../../kernel-helpers/src/show/tables/movement-tables.js';
import { yearOfAir } from '../../../kernel-helpers/src/wood/air/air.js';
import { box } from '../../money/a-box.js';
import { tableRows } from '../read-html.js';

const air = yearOfAir({ place: 'chicago-ohare', heating: { heatTo: 20, humidifyTo: 0.3 } });
const input = { box: box.design, species: 'walnut-black', ringAngle: 20, air, fittingMoisture: 8 };
const fit = lidFit(input);
const numbers = (row: string[] | undefined, from: number) => (row ?? []).slice(from).map(Number);

describe('the lid month by month', () => {
  it('lies between least and most, and has least play in the wettest month', () => {
    const rows = tableRows(lidMonthTable(fit, 'tape'));
    expect(rows).toHaveLength(12);
    const plays = rows.map((row) => numbers(row, 2) as [number, number, number]);
    for (const [play, least, most] of plays) {
      expect(least).toBeLessThanOrEqual(play);
      expect(play).toBeLessThanOrEqual(most);
    }
    expect(plays[fit.wettest - 1]?.[0]).toBe(Math.min(...plays.map(([play]) => play)));
  });

  it('is read in millimetres where the commission is', () => {
    const [, , play] = tableRows(lidMonthTable(fit, 'mm'))[0] ?? [];
    expect(Number(play)).toBeCloseTo(25.4 * (fit.byMonth[0]?.clearance ?? 0), 1);
  });
});

describe('the lid planed on another day', () => {
  const byReading = (asked: LidFitInput) =>
    new Map(tableRows(otherDaysTable(asked, 'tape')).map((row) => [row[0], row]));

  it("has today's width at today's reading, and is planed wider of wetter wood", () => {
    const rows = byReading(input);
    expect(rows.get('8.0')?.[2]).toBe(caliper(fit.fittedWidth));
    expect(Number.parseFloat(rows.get('9.5')?.[2] ?? '')).toBeGreaterThan(fit.fittedWidth);
    expect(Number.parseFloat(rows.get('6.5')?.[2] ?? '')).toBeLessThan(fit.fittedWidth);
  });

  it('leaves out readings at which nobody planes', () => {
    expect([...byReading({ ...input, fittingMoisture: 19.5 }).keys()].at(-1)).toBe('20.0');
    expect([...byReading({ ...input, fittingMoisture: 3.5 }).keys()][0]).toBe('3.0');
  });
});

it('a lid as wide as the aim never binds, one an inch too wide does all year', () => {
  const widths = [
    { name: 'the aim', width: fit.fittedWidth },
    { name: 'far too wide', width: fit.fittedWidth + 1 },
  ];
  expect(tableRows(bindingTable({ fit, widths }, 'tape')).map((row) => row.slice(1))).toEqual([
    ['the aim', 'never', 'never'],
    ['far too wide', 'all year', 'all year'],
  ]);
});

it('each change has a row, most room first', () => {
  const rows = tableRows(lidChangeTable(lidSensitivity({ input, otherSpecies: ['cherry-black'] }), 'tape'));
  const gains = rows.slice(1).map((row) => numbers(row, 1)[1] ?? Number.NaN);
  expect(gains).toEqual([...gains].sort((a, b) => b - a));
  expect(rows.some(([what]) => what === 'quarter-sawn board')).toBe(true);
});

it('a top is as wide as today in a month of the same moisture, narrower in a drier one', () => {
  const months = equilibriumByMonth(air);
  const driest = months.reduce((a, b) => (b.moisture < a.moisture ? b : a));
  const top = { across: 24, species: 'oak-northern-red', ringAngle: 10, fromMoisture: driest.moisture, months };
  const changes = tableRows(widthMonthTable(top, 'tape')).map((row) => numbers(row, 2)[0] ?? Number.NaN);
  expect(changes[driest.month - 1]).toBe(0);
  expect(Math.min(...changes)).toBe(0);
  expect(Math.max(...changes)).toBeGreaterThan(1 / 16);
});
