import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { type Planned, readActuals, readAnswer, type TypedActuals } from '../../kernel-helpers/src/money/actuals.js';
import { closingFindings } from '../../kernel-helpers/src/money/closing-findings.js';

const board = (mark: string) => ({ mark, thickness: 1, width: 6, length: 48, price: 14 });
const planned: Planned = {
  soFar: { begun: '2026-11-25', today: '2026-12-31' },
  byOperation: [
    { id: 'cut-joint', name: 'Cut the joint', mean: 4, deviation: 0.5 },
    { id: 'finish', name: 'Finish', mean: 1.5, deviation: 0.2 },
  ],
  operations: [
    { id: 'cut-joint', name: 'Cut the joint' },
    { id: 'finish', name: 'Finish' },
    { id: 'lettering', name: 'Lettering' },
  ],
  boards: [board('A'), board('B')],
  bought: 4,
  yield: 0.4,
};
const typed: TypedActuals = {
  finished: '2026-12-20',
  worked: [{ operation: 'cut-joint', date: '2026-12-01', start: '9:10', stop: '12:40' }],
  boardsUsed: ['A', 'B'],
};
const row = (over: object) => ({ ...typed, worked: [{ operation: 'cut-joint', date: '2026-12-01', ...over }] });

describe('what a commission took', () => {
  it('adds up the stretches of each operation, from a start to a stop or as hours', () => {
    const worked = [
      { operation: 'finish', date: '2026-12-02', hours: 0.5 },
      { operation: 'cut-joint', date: '2026-12-01', start: '9:10', stop: '12:40' },
      { operation: 'cut-joint', date: '2026-12-02', start: '13:00', stop: '14:30' },
    ];
    const { operations, estimated, actual } = readActuals({ ...typed, worked }, planned);
    expect(operations).toEqual([
      { id: 'cut-joint', name: 'Cut the joint', estimated: 4, deviation: 0.5, actual: 5 },
      { id: 'finish', name: 'Finish', estimated: 1.5, deviation: 0.2, actual: 0.5 },
    ]);
    expect({ estimated, actual }).toEqual({ estimated: 5.5, actual: 5.5 });
  });

  it('counts a minute', () => {
    expect(readActuals(row({ start: '9:10', stop: '9:11' }), planned).actual).toBeCloseTo(1 / 60, 12);
  });

  it('sets what was not timed apart, so that hours are only compared with hours of the same work', () => {
    const { untimed, estimated } = readActuals(typed, planned);
    expect(untimed).toEqual(['Finish']);
    expect(estimated).toBe(4);
  });

  it('keeps work that nobody had estimated, at an estimate of nothing', () => {
    const worked = [...typed.worked, { operation: 'lettering', date: '2026-12-03', hours: 2 }];
    const [, lettering] = readActuals({ ...typed, worked }, planned).operations;
    expect(lettering).toMatchObject({ id: 'lettering', estimated: 0, actual: 2 });
  });

  it('gives the yield of the boards that were really used', () => {
    expect(readActuals(typed, planned)).toMatchObject({ boardFeet: 4, yield: 0.4 });
    expect(readActuals({ ...typed, boardsUsed: ['A'] }, planned)).toMatchObject({ boardFeet: 2, yield: 0.8 });
    const more = readActuals({ ...typed, moreBoards: [board('C')] }, planned);
    expect(more.boardFeet).toBe(6);
    expect(more.yield).toBeCloseTo(1.6 / 6, 12);
  });

  it('adds up to the same hours in whatever order the rows stand', () => {
    const rows = fc.uniqueArray(
      fc.record({
        operation: fc.constantFrom('cut-joint', 'finish', 'lettering'),
        date: fc.constantFrom('2026-12-01', '2026-12-02', '2026-12-03'),
        hours: fc.integer({ min: 0, max: 96 }).map((quarters) => quarters / 4),
      }),
      { minLength: 1, maxLength: 12, selector: (each) => JSON.stringify(each) },
    );
    fc.assert(
      fc.property(rows, (worked) => {
        const total = worked.reduce((sum, { hours }) => sum + hours, 0);
        expect(readActuals({ ...typed, worked }, planned).actual).toBe(total);
        expect(readActuals({ ...typed, worked: [...worked].reverse() }, planned)).toEqual(
          readActuals({ ...typed, worked }, planned),
        );
      }),
    );
  });
});

describe('what cannot be', () => {
  it.each([
    ['negative hours', row({ hours: -1 }), /^worked no\. 1, hours: -1 given; possible: a number from 0 to 24 h/],
    ['more than a day', row({ hours: 25 }), /^worked no\. 1, hours: 25 given/],
    [
      'work before the commission',
      row({ date: '2026-11-24', hours: 1 }),
      /"2026-11-24" given; possible: from 2026-11-25/,
    ],
    ['work after the end', row({ date: '2026-12-21', hours: 1 }), /"2026-12-21" given; possible: to 2026-12-20/],
    [
      'an end before the beginning',
      { ...typed, finished: '2026-11-01' },
      /^finished: "2026-11-01" given; possible: from 2026-11-25/,
    ],
    [
      'an end still to come',
      { ...typed, finished: '2027-01-01' },
      /^finished: "2027-01-01" given; possible: to 2026-12-31, today/,
    ],
    [
      'work still to come, before an end still to come',
      { ...row({ date: '2027-01-02', hours: 1 }), finished: '2027-01-03' },
      /"2027-01-03" given; possible: to 2026-12-31, today/,
    ],
    [
      'a change still to come',
      { ...typed, finished: '2026-12-31', changes: [{ date: '2027-01-01', what: 'x' }] },
      /^changes no\. 1, date: "2027-01-01" given; possible: to 2026-12-31, today/,
    ],
    [
      'a day that does not exist',
      row({ date: '2026-02-30', hours: 1 }),
      /^worked no\. 1, date: "2026-02-30" given; possible: a day/,
    ],
    ['a stop before its start', row({ start: '14:00', stop: '9:00' }), /possible: a stop after its start/],
    [
      'a time that is none',
      row({ start: '25:00', stop: '26:00' }),
      /^worked no\. 1, start: "25:00" given; possible: a time of day/,
    ],
    ['a start without a stop', row({ start: '9:00' }), /^worked no\. 1: .*possible: either start and stop, or hours/],
    ['hours beside a start', row({ start: '9:00', hours: 1 }), /one of the two/],
    ['hours beside a stop', row({ stop: '9:00', hours: 1 }), /one of the two/],
    ['hours as well as times', row({ start: '9:00', stop: '10:00', hours: 1 }), /one of the two/],
    [
      'an operation nobody knows',
      row({ operation: 'cut-join', hours: 1 }),
      /"cut-join" given; possible: cut-joint, finish, lettering/,
    ],
    [
      'one row twice',
      { ...typed, worked: [typed.worked[0], typed.worked[0]] },
      /^worked no\. 2: .*possible: each row once/,
    ],
    ['a board nobody bought', { ...typed, boardsUsed: ['A', 'Z'] }, /^boardsUsed no\. 2: "Z" given; possible: A, B/],
    [
      'less wood than is in the piece',
      { ...typed, boardsUsed: [] },
      /^boardsUsed: 0.00 board feet given; the piece alone holds 1.60/,
    ],
    [
      'a change before the commission',
      { ...typed, changes: [{ date: '2026-01-01', what: 'x' }] },
      /^changes no\. 1, date/,
    ],
    ['a reason for no operation', { ...typed, why: { paint: 'no' } }, /^why, paint: "paint" given/],
  ])('%s is answered with what is possible', (_, given, message) => {
    expect(() => readActuals(given as TypedActuals, planned)).toThrow(message);
  });
});

describe('the answer to a quote', () => {
  it('is yes or no, on a day', () => {
    expect(readAnswer({ answer: 'declined', date: '2026-12-02', reason: 'too dear' }, planned.soFar)).toEqual({
      answer: 'declined',
      date: '2026-12-02',
      reason: 'too dear',
    });
    expect(() => readAnswer({ answer: 'perhaps', date: '2026-12-02' }, planned.soFar)).toThrow(
      /^answer: "perhaps" given; possible: accepted, declined/,
    );
    expect(() => readAnswer({ answer: 'accepted', date: '2026-11-01' }, planned.soFar)).toThrow(
      /possible: from 2026-11-25/,
    );
    expect(() => readAnswer({ answer: 'accepted', date: '2027-01-01' }, planned.soFar)).toThrow(
      /^date: "2027-01-01" given; possible: to 2026-12-31, today/,
    );
  });
});

describe('closing a commission', () => {
  const verdicts = (given: Partial<TypedActuals>) =>
    Object.fromEntries(
      closingFindings(readActuals({ ...typed, ...given }, planned)).map(({ rule, verdict }) => [rule, verdict]),
    );
  const took = (cut: number, finish: number) => [
    { operation: 'cut-joint', date: '2026-12-01', hours: cut },
    { operation: 'finish', date: '2026-12-02', hours: finish },
  ];

  it('asks for a reason where an operation lies outside its range, and for times not taken', () => {
    expect(verdicts({ worked: took(4.5, 1.4) })).toEqual({ 'hours in all': 'ok', 'reasons for the hours': 'ok' });
    const late = { 'hours in all': 'watch', 'reasons for the hours': 'watch' };
    expect(verdicts({ worked: took(6, 1.4) })).toEqual(late);
    expect(verdicts({ worked: took(6, 1.4), why: { 'cut-joint': 'first time in white oak' } })).toEqual({
      ...late,
      'reasons for the hours': 'ok',
    });
    expect(verdicts({})).toMatchObject({ 'time taken': 'watch' });
  });

  it('expects as much of the hours in all as the pace of the estimate left open', () => {
    const inAll = (pace: number) =>
      closingFindings(readActuals({ ...typed, worked: took(6, 1.4) }, planned), pace)[0]?.verdict;
    expect(inAll(0)).toBe('watch');
    // Root of (0.5^2 + 0.2^2 + 0.5^2 x 2 x 4 x 1.5) is 1.81: 1.9 hours over are within 1.28 of it.
    expect(inAll(0.5)).toBe('ok');
  });
});
