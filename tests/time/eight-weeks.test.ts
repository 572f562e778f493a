import { expect, it } from 'vitest';
import { eightWeeksOn } from '../../kernel-helpers/src/time/eight-weeks.js';

it('offers the day eight weeks on, the same day of the week', () => {
  expect(eightWeeksOn('2026-11-27')).toBe('2027-01-22'); // a Friday
});

it('offers the next day on which the shop works, where it does not on that one', () => {
  expect(eightWeeksOn('2026-11-28')).toBe('2027-01-25'); // a Saturday, so Monday
  expect(eightWeeksOn('2026-11-27', { hours: { tuesday: 3 } })).toBe('2027-01-26');
  const closed = ['2027-01-22/2027-01-31'];
  expect(eightWeeksOn('2026-11-27', { hours: { tuesday: 3, friday: 2 }, closed })).toBe('2027-02-02');
});

it('offers that day where the shop is closed for longer than a year', () => {
  expect(eightWeeksOn('2026-11-27', { hours: { friday: 1 }, closed: ['2027-01-01/2029-01-01'] })).toBe('2027-01-22');
});
