import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { dayNumber, isoDay } from '../../kernel-helpers/src/measure/day.js';
import { countWork } from '../../kernel-helpers/src/money/operations.js';
import type { ThreePoints } from '../../kernel-helpers/src/money/pert.js';
import { type BenchStep, benchSteps } from '../../kernel-helpers/src/time/bench-steps.js';
import { laterStarts } from '../../kernel-helpers/src/time/later-starts.js';
import { schedule } from '../../kernel-helpers/src/time/schedule.js';
import { box, dovetails } from '../money/a-box.js';

const sure = (number: number): ThreePoints => [number, number, number];
const step = (
  id: string,
  hours: number | ThreePoints,
  after: string[] = [],
  wait?: number | ThreePoints,
): BenchStep => ({
  id,
  name: id,
  count: '',
  minutes: (typeof hours === 'number' ? sure(hours) : hours).map((hour) => 60 * hour) as ThreePoints,
  after,
  ...(wait === undefined ? {} : { wait: { what: 'it waits', days: typeof wait === 'number' ? sure(wait) : wait } }),
});
const week = { hours: { monday: 6, tuesday: 6, wednesday: 6, thursday: 6, friday: 6 } };
// 2026-12-07 is a Monday.
const monday = { calendar: week, today: '2026-12-07', promised: '2026-12-18', simulations: 1000 };
const daysOf = (made: ReturnType<typeof schedule>) =>
  made.steps.map(({ id, start, finish }) => [id, start.slice(8), finish.slice(8)]);

describe('a schedule', () => {
  it('worked by hand: four hours of milling, ten of joints, glue on Wednesday, the lid while it cures', () => {
    const made = schedule({
      ...monday,
      steps: [
        step('mill', 4),
        step('joints', 10, ['mill']),
        step('glue', 1, ['joints'], 1),
        step('clean', 2, ['glue']),
        step('lid', 3, ['mill']),
      ],
    });
    // Mon 4 + 2, Tue 6, Wed 2; glue Wed 2 to 3, cures until Thu 11 o'clock; lid Wed 3 to 6; clean Thu from hour 3.
    expect(daysOf(made)).toEqual([
      ['mill', '07', '07'],
      ['joints', '07', '09'],
      ['glue', '09', '09'],
      ['lid', '09', '09'],
      ['clean', '10', '10'],
    ]);
    expect(made.steps[2]?.wait).toEqual({ what: 'it waits', until: '2026-12-10' });
    expect(made.finish).toBe('2026-12-10');
    expect(made.criticalPath).toEqual(['mill', 'joints', 'glue', 'clean']);
    expect(made.odds).toBe(1);
  });

  it('has the last day to begin: one day later is too late', () => {
    const steps = [step('mill', 4), step('joints', 10, ['mill'], 2), step('finish', 5, ['joints'], 7)];
    const { latestStart, finish } = schedule({ ...monday, promised: '2026-12-28', steps });
    expect(finish <= '2026-12-28').toBe(true);
    const begun = (start: string) => schedule({ ...monday, promised: '2026-12-28', steps, start }).finish;
    expect(begun(latestStart as string) <= '2026-12-28').toBe(true);
    const next = new Date(`${latestStart}T00:00:00Z`);
    next.setUTCDate(next.getUTCDate() + 1);
    expect(begun(next.toISOString().slice(0, 10)) > '2026-12-28').toBe(true);
  });

  it('begins on the next day with work when begun on a Sunday or a day off', () => {
    const made = (start: string, closed: string[] = []) =>
      schedule({ ...monday, calendar: { ...week, closed }, start, steps: [step('mill', 2)] }).steps[0]?.start;
    expect(made('2026-12-13')).toBe('2026-12-14');
    expect(made('2026-12-14', ['2026-12-14/2026-12-15'])).toBe('2026-12-16');
  });

  it.each([
    ['the end of a year', '2026-12-31', 2, '2027-01-02'],
    ['the end of February', '2027-02-27', 2, '2027-03-01'],
    ['the end of February in a leap year', '2028-02-28', 1, '2028-02-29'],
    ['clocks put forward', '2027-03-27', 2, '2027-03-29'],
    ['clocks put back', '2027-10-30', 2, '2027-11-01'],
  ])('waits over %s and loses no day', (_, start, wait, until) => {
    const everyDay = { hours: { ...week.hours, saturday: 6, sunday: 6 } };
    const made = schedule({
      calendar: everyDay,
      today: start,
      promised: '2028-12-31',
      simulations: 1000,
      steps: [step('glue', 1, [], wait), step('clean', 1, ['glue'])],
    });
    expect(made.steps[1]?.start).toBe(until);
  });

  it('odds are the share of draws in time: a wait of 1 to 5 days against its closed form', () => {
    // One hour on Monday; then 1 to 5 days, likely 3: PERT's beta with shapes 3 and 3, so half are done within 3 days.
    const days = { ...monday, simulations: 20_000, steps: [step('finish', 1, [], [1, 3, 5])] };
    const beta33 = (x: number) => 10 * x ** 3 - 15 * x ** 4 + 6 * x ** 5;
    const odds = schedule({ ...days, promised: '2026-12-10' }).odds;
    // From Monday 9 o'clock to the end of Thursday are 3 days and 15 hours.
    const exact = beta33((3 + 15 / 24 - 1) / 4);
    // Five times the standard error of 20,000 draws
    expect(Math.abs(odds - exact)).toBeLessThan(5 * Math.sqrt((exact * (1 - exact)) / 20_000));
  });

  it('is the same for the same seed; a later promise has better odds, more hours a week too', () => {
    const counts = countWork({ piece: box, joint: dovetails, boards: 2, letters: 7, coats: 3 });
    const steps = benchSteps({ counts, waits: { settle: [8, 16, 32], rest: 1, glue: 1, recoat: 0.5, cure: 7 } });
    const made = (promised: string, hours = 3) =>
      schedule({
        steps,
        today: '2026-12-01',
        promised,
        calendar: { hours: { monday: hours, tuesday: hours, thursday: hours } },
      });
    expect(made('2027-01-20')).toEqual(made('2027-01-20'));
    const odds = ['2027-01-05', '2027-01-12', '2027-01-19', '2027-01-26', '2027-02-02'].map((day) => made(day).odds);
    expect(odds).toEqual([...odds].sort((a, b) => a - b));
    expect(made('2027-01-19', 6).odds).toBeGreaterThan(made('2027-01-19').odds);
    expect(made('2027-01-20').readyBy.at(-1)?.share).toBe(1);
  });

  it('says what to do about a promise that cannot be kept', () => {
    const steps = [step('everything', 60)];
    const { findings, latestStart, odds } = schedule({ ...monday, promised: '2026-12-09', steps });
    expect(odds).toBe(0);
    expect(latestStart).toBeUndefined();
    expect(findings.map(({ verdict }) => verdict)).toEqual(['stop', 'stop', 'ok']);
    expect(findings[0]?.figures).toMatch(/^under 1 in a hundred are done by 2026-12-09/);
  });

  it.each([
    ['a Saturday', '2026-12-19', [], '2026-12-21'],
    ['a day off', '2026-12-18', ['2026-12-18/2026-12-21'], '2026-12-22'],
  ])('says that %s is no day of work, and names the next', (_, promised, closed, next) => {
    const made = schedule({ ...monday, promised, calendar: { ...week, closed }, steps: [step('mill', 2)] });
    const finding = made.findings.find(({ rule }) => rule === 'days: the promised day is a day of work');
    expect(finding).toMatchObject({ verdict: 'watch', change: expect.stringContaining(`promise ${next}`) });
  });

  it('proposes a day of work: the first by which nineteen in twenty are done', () => {
    // Done on Wednesday at its hour, and cured five days later: on a Monday that is a day off.
    const calendar = { ...week, closed: ['2026-12-14'] };
    const { findings, ready } = schedule({ ...monday, calendar, steps: [step('finish', 14, [], 5)], pace: 0 });
    expect(ready.p95).toBe('2026-12-14');
    expect(findings[0]?.change).toMatch(/^promise 2026-12-15, /);
  });

  it('is less sure of a day when all steps share their pace', () => {
    const steps = Array.from({ length: 12 }, (_, i) => step(`step ${i}`, [2, 3, 5], i > 0 ? [`step ${i - 1}`] : []));
    const at = (pace: number) => schedule({ ...monday, promised: '2026-12-31', steps, pace, simulations: 5000 });
    expect(at(0.18).ready.p95 > at(0).ready.p95).toBe(true);
    expect(at(0.18).odds).toBeLessThan(at(0).odds + 1e-9);
    expect(at(0.18).finish).toBe(at(0).finish);
  });

  it.each([
    [{ promised: '2026-12-01' }, 'promised: 2026-12-01 given, and today is 2026-12-07; possible: today or later'],
    [{ start: '2026-12-01' }, 'start: 2026-12-01 given, and today is 2026-12-07'],
    [{ promised: '2027-02-30' }, 'promised: "2027-02-30" given; possible: a day that exists'],
    [{ promised: '2040-01-01' }, 'possible: within ten years'],
    [{ calendar: { hours: {} } }, 'hours: none on any day of the week given'],
    [{ steps: [] }, 'steps: none given'],
    [{ steps: [step('a', 1, ['b']), step('b', 1, ['a'])] }, 'operations: a after b after a: they wait for each other'],
    [{ steps: [step('mill', 100_000)] }, 'mill would end more than ten years after the start'],
  ])('refuses %j in one line', (bad, message) => {
    expect(() => schedule({ ...monday, steps: [step('mill', 2)], ...bad })).toThrow(message);
  });
});

/** Six steps that rest on some before them, some with a wait, in a week with days off. */
const anyPlan = fc.record({
  steps: fc
    .array(
      fc.record({
        hours: fc.integer({ min: 1, max: 9 }),
        before: fc.array(fc.nat(5), { maxLength: 2 }),
        wait: fc.option(fc.integer({ min: 1, max: 14 }), { nil: undefined }),
      }),
      { minLength: 6, maxLength: 6 },
    )
    .map((list) =>
      list.map(({ hours, before, wait }, i) =>
        step(
          `${i}`,
          [hours / 2, hours, 2 * hours],
          [...new Set(before)].filter((one) => one < i).map(String),
          wait === undefined ? undefined : [wait / 4, wait / 2, wait],
        ),
      ),
    ),
  hours: fc.subarray(['monday', 'tuesday', 'wednesday', 'friday', 'saturday'] as const, { minLength: 1 }),
  closed: fc.subarray(['2026-12-10', '2026-12-15/2026-12-17', '2026-12-24/2027-01-02']),
});

describe('later starts', () => {
  it('never finish sooner, whatever the steps and the week: not as expected, not by any share of pieces', () => {
    fc.assert(
      fc.property(anyPlan, ({ steps, hours, closed }) => {
        const calendar = { hours: Object.fromEntries(hours.map((day) => [day, 3])), closed };
        const plan = { ...monday, calendar, steps, promised: '2027-01-20' };
        const begun = Array.from({ length: 15 }, (_, later) =>
          schedule({ ...plan, start: isoDay(dayNumber(monday.today) + later) }),
        );
        const inOrder = (days: string[]) => expect(days).toEqual([...days].sort());
        inOrder(begun.map(({ finish }) => finish));
        for (const share of ['p50', 'p80', 'p95'] as const) inOrder(begun.map(({ ready }) => ready[share]));
        const odds = begun.map((one) => one.odds);
        expect(odds).toEqual([...odds].sort((a, b) => b - a));
      }),
      { numRuns: 40 },
    );
  });

  it('are a week apart, none after the promise, and none with better odds than an earlier one', () => {
    const plan = { ...monday, promised: '2026-12-24', steps: [step('joints', [8, 20, 60])] };
    const made = laterStarts(plan);
    expect(made.map(({ start }) => start)).toEqual(['2026-12-07', '2026-12-14', '2026-12-21']);
    const odds = made.map((one) => one.odds);
    expect(odds).toEqual([...odds].sort((a, b) => b - a));
  });
});
