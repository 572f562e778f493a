import fc from 'fast-check';
import { afterEach, describe, expect, it } from 'vitest';
import { dayNumber, isoDay, weekday } from '../../kernel-helpers/src/measure/day.js';

const zone = process.env.TZ;
afterEach(() => {
  if (zone === undefined) delete process.env.TZ;
  else process.env.TZ = zone;
});

const later = (iso: string, days: number) => isoDay(dayNumber(iso) + days);

describe('a day', () => {
  it('is followed by the next over the end of a month, of a year and of February', () => {
    expect(later('2027-01-31', 1)).toBe('2027-02-01');
    expect(later('2026-12-31', 1)).toBe('2027-01-01');
    expect(later('2027-02-28', 1)).toBe('2027-03-01');
    expect(later('2028-02-28', 1)).toBe('2028-02-29');
    expect(later('2100-02-28', 1)).toBe('2100-03-01');
    expect(later('2000-02-28', 1)).toBe('2000-02-29');
  });

  it.each(['America/New_York', 'Europe/Berlin', 'Pacific/Apia', 'Australia/Lord_Howe', 'UTC'])(
    'is neither lost nor doubled where clocks change: in %s',
    (timeZone) => {
      process.env.TZ = timeZone;
      for (const day of ['2026-03-08', '2026-03-29', '2026-10-25', '2026-11-01', '2011-12-30']) {
        expect(later(day, 0)).toBe(day);
        expect(dayNumber(later(day, 1)) - dayNumber(day)).toBe(1);
      }
    },
  );

  it('comes back from its number, and numbers follow the calendar', () => {
    fc.assert(
      fc.property(fc.integer({ min: -30_000, max: 60_000 }), (number) => {
        expect(dayNumber(isoDay(number))).toBe(number);
        expect(isoDay(number) < isoDay(number + 1)).toBe(true);
        expect(weekday(number + 7)).toBe(weekday(number));
        expect(weekday(number)).toBe((new Date(`${isoDay(number)}T12:00:00Z`).getUTCDay() + 6) % 7);
      }),
    );
  });

  it.each(['2027-02-29', '2027-13-01', '2027-00-10', '27-1-1', '2027-01-01T10:00:00Z', '', 'tomorrow'])(
    '"%s" is none',
    (text) => {
      expect(() => dayNumber(text)).toThrow(`day: "${text}" given; possible: a day that exists`);
    },
  );
});
