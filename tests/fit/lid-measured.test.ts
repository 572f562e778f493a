import { describe, expect, it } from 'vitest';
import { readMeasurements } from '../../kernel-helpers/src/fit/lid-measured.js';

const opening = 6.75;
const soFar = { begun: '2026-11-25', today: '2027-09-01' };

describe('a lid measured later', () => {
  it('is read from its play or from its width, oldest first', () => {
    const measured = [
      { date: '2027-07-20', width: '6.700 in', relativeHumidity: 0.58 },
      { date: '2027-01-12', clearance: '3 mm' },
    ];
    const read = readMeasurements({ measured, opening, soFar });
    expect(read.map(({ date }) => date)).toEqual(['2027-01-12', '2027-07-20']);
    expect(read[0]?.clearance).toBeCloseTo(3 / 25.4, 9);
    expect(read[1]?.clearance).toBeCloseTo(0.05, 9);
    expect(read.map(({ relativeHumidity }) => relativeHumidity)).toEqual([undefined, 0.58]);
  });

  it('has no play when it sticks', () => {
    const measured = [
      { date: '2027-07-20', clearance: 0 },
      { date: '2027-08-20', width: opening },
    ];
    expect(readMeasurements({ measured, opening, soFar }).map(({ clearance }) => clearance)).toEqual([0, 0]);
  });

  it.each([
    [{ date: '2027-02-30', clearance: 0.1 }, 'measured no. 1, date: "2027-02-30" given; possible: a day that exists'],
    [{ date: '2026-11-24', clearance: 0.1 }, 'measured: "2026-11-24" given; possible: from 2026-11-25'],
    [{ date: '2027-09-02', clearance: 0.1 }, 'measured: "2027-09-02" given; possible: to 2027-09-01, today'],
    [{ date: '2027-02-03' }, 'measured on 2027-02-03: give either clearance or width'],
    [{ date: '2027-02-03', clearance: 0.1, width: 6.7 }, 'give either clearance or width'],
    [{ date: '2027-02-03', width: 7 }, 'a width of 7 in is more than the opening of 6.75 in'],
    [
      { date: '2027-02-03', clearance: 0.1, relativeHumidity: 58 },
      'measured no. 1, relativeHumidity: 58 given; possible: a number from 0 to 1',
    ],
  ])('%j is refused in one line', (bad, message) => {
    expect(() => readMeasurements({ measured: [bad], opening, soFar })).toThrow(message);
  });
});
