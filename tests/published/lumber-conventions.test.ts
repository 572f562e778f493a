import { describe, expect, it } from 'vitest';
import { parseLength } from '../../kernel-helpers/src/measure/length.js';
import { boardFeet } from '../../kernel-helpers/src/stock/boards/board-feet.js';
import { lumberGrade } from '../../kernel-helpers/src/stock/boards/lumber-data.js';
import { lumberTally, surfacedThickness } from '../../kernel-helpers/src/stock/boards/lumber-tally.js';
import printed from './lumber-conventions.json';

/** A mixed number as it is printed. */
const figure = (text: string) => parseLength(text);

describe('board feet in print', () => {
  it.each(printed.boardFeet.rows)('%j', ({ boardFeet: feet, ...board }) => {
    expect(boardFeet(board)).toBeCloseTo(feet, 9);
  });

  it.each(printed.boardFootTable.rows)('the row of $size in a board-foot table', ({ size, boardFeet: feet }) => {
    const [thickness, width] = size as [number, number];
    const computed = printed.boardFootTable.feet.map((length) => boardFeet({ thickness, width, length: 12 * length }));
    for (const [i, value] of computed.entries()) expect(value).toBeCloseTo(figure(feet[i] as string), 9);
  });
});

describe('the tally of hardwood by surface measure', () => {
  it.each(printed.surfaceMeasure.rows)('%j', ({ width, feet, thickness, measure, boardFeet: tallied }) => {
    const { lines } = lumberTally([{ mark: 'A', thickness, width: figure(width), length: 12 * feet }]);
    expect(lines[0]).toEqual({ mark: 'A', surfaceMeasure: measure, boardFeet: tallied });
  });

  it('drops a part of a foot of length, as print does with 8 1/2 ft', () => {
    const measure = (length: number) =>
      lumberTally([{ mark: 'A', thickness: 1, width: 6, length }]).lines[0]?.surfaceMeasure;
    expect(measure(102)).toBe(measure(96));
    expect(measure(107.9)).toBe(measure(96));
    expect(measure(120)).toBe(5);
  });
});

describe('hardwood surfaced two sides in print', () => {
  it.each(printed.surfacedThickness.rows)('$rough rough is $surfaced', ({ rough, surfaced }) => {
    expect(surfacedThickness(figure(rough))).toBe(figure(surfaced));
  });

  it('is not given for a thickness that is not sold', () => {
    expect(() => surfacedThickness(1.1)).toThrow('rough: 1.1 in given; possible: 0.375');
  });
});

describe('clear-face yields of the grades in print', () => {
  it.each(printed.grades.rows)('$id: $percent %', ({ id, percent, leastBoard }) => {
    const grade = lumberGrade(id);
    expect((100 * grade.clearTwelfths) / 12).toBeCloseTo(figure(percent), 9);
    expect([grade.leastWidth, grade.leastFeet]).toEqual(leastBoard);
  });
});
