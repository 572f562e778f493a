import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { dayOfHour, hourAt, hoursOn, waitOver, workingDays } from '../../kernel-helpers/src/time/calendar.js';

const hours = { monday: 6, tuesday: 6, wednesday: 6, thursday: 6, friday: 4 };
const closed = ['2026-12-24/2027-01-02', '2027-01-06'];

describe('the working calendar', () => {
  it('has the hours of the day of the week, and none on days off', () => {
    expect(['2026-12-21', '2026-12-18', '2026-12-20'].map((day) => hoursOn({ hours, closed }, day))).toEqual([6, 4, 0]);
    expect(
      ['2026-12-23', '2026-12-24', '2027-01-02', '2027-01-04', '2027-01-06'].map((day) =>
        hoursOn({ hours, closed }, day),
      ),
    ).toEqual([6, 0, 0, 6, 0]);
  });

  it('counts the hours of February in a leap year', () => {
    const hoursIn = (days: number, first: string) => workingDays({ hours }, first, days).before.at(-1);
    // 2028-02-29 is a Tuesday: February 2028 has 4 of each day and one Tuesday more.
    expect(hoursIn(29, '2028-02-01')).toBe(4 * 28 + 6);
    expect(hoursIn(28, '2027-02-01')).toBe(4 * 28);
  });

  it('finds the day on which an hour of work falls, and puts its end on the day it ends', () => {
    const days = workingDays({ hours }, '2026-12-17', 10);
    // Thursday 6 h, Friday 4 h, then Monday.
    expect(dayOfHour(days, 6, true)).toBe(0);
    expect(dayOfHour(days, 6, false)).toBe(1);
    expect(dayOfHour(days, 10, true)).toBe(1);
    expect(dayOfHour(days, 10, false)).toBe(4);
  });

  it('lets a wait run on the clock of the wall: over night, over Sunday', () => {
    const days = workingDays({ hours }, '2026-12-17', 10);
    // Glue on Friday at noon, the end of its work: a day later is Saturday, so work goes on on Monday morning.
    expect(hourAt(days, waitOver(days, 10, 1))).toBe(10);
    // Glue on Thursday after 2 hours, at 10: four hours later it is 14, the shop closes.
    expect(hourAt(days, waitOver(days, 2, 4 / 24))).toBe(6);
    // Two hours later it is noon.
    expect(hourAt(days, waitOver(days, 2, 2 / 24))).toBeCloseTo(4, 9);
    expect(hourAt(days, 11)).toBe(Infinity);
  });

  it('no wait is over before it began, and a longer one not before a shorter', () => {
    const days = workingDays({ hours, closed }, '2026-12-17', 60);
    const hour = fc.double({ min: 0, max: 60, noNaN: true });
    const wait = fc.double({ min: 0, max: 20, noNaN: true });
    fc.assert(
      fc.property(hour, wait, wait, (from, one, two) => {
        const over = (days_: number) => hourAt(days, waitOver(days, from, days_));
        expect(over(Math.min(one, two))).toBeGreaterThanOrEqual(from - 1e-9);
        expect(over(Math.max(one, two))).toBeGreaterThanOrEqual(over(Math.min(one, two)));
      }),
    );
  });

  it.each([
    [{ hours: {} }, 'hours: none on any day of the week given; possible: at least one day'],
    [{ hours: { monday: 0, friday: 0 } }, 'hours: none on any day of the week given'],
    [{ hours: { monday: -2 } }, 'hours, monday: -2 given; possible: a number from 0 to 16 h'],
    [{ hours: { monday: 25 } }, 'hours, monday: 25 given'],
    [{ hours, closed: ['2027-02-30'] }, 'closed: "2027-02-30" given; possible: a day such as'],
    [{ hours, closed: ['2027-01-05/2027-01-02'] }, 'closed: "2027-01-05/2027-01-02" given'],
    [{ hours, closed: ['2027-01-01/2027-01-02/2027-01-03'] }, 'closed: '],
    [{ hours, opens: 30 }, 'opens: 30 given'],
  ])('refuses %j in one line', (calendar, message) => {
    expect(() => workingDays(calendar, '2027-01-01', 10)).toThrow(message);
  });
});
