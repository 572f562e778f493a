import { expect, test } from 'vitest';
import { whatMoved } from '../../../kernel-helpers/src/record/check/what-moved.js';
import type { Decisions } from '../../../kernel-helpers/src/record/decisions/decisions.js';
import { demonstrationDecisions } from '../key-figures/demonstration-decisions.js';
import { content, entriesOf } from '../setting.js';

const { lid, days } = demonstrationDecisions();
const stand = (...contents: [what: keyof Decisions, results: object][]) => ({
  entries: entriesOf(contents.map(([what, results]) => content({ what, results }))),
  drafts: [],
});
const lidOf = (fittedWidth: number) => ['lid', { ...lid, fittedWidth }] as const;
const readyOn = (finish: string) => ['days', { ...days, finish }] as const;

test('what was decided again is told in the order of the work, with the figures that read otherwise', () => {
  const before = stand([...readyOn('2027-02-01')], [...lidOf(6.657)]);
  const now = {
    ...before,
    entries: stand([...readyOn('2027-02-01')], [...lidOf(6.657)], [...readyOn('2027-02-05')], [...lidOf(6.64)]).entries,
  };
  expect(whatMoved(before, now)).toEqual([
    { what: 'lid', moved: [{ name: 'Lid planed to', before: '6.657 in', now: '6.640 in' }] },
    { what: 'days', moved: [{ name: 'Ready', before: '2027-02-01', now: '2027-02-05' }] },
  ]);
});

test('a draft is held against what stood before it', () => {
  const before = stand([...lidOf(6.657)]);
  const { at, who, inputs, findings, overrides } = content();
  const draft = { what: 'lid', needs: {}, at, who, inputs, findings, overrides, results: { ...lid, fittedWidth: 6.6 } };
  expect(whatMoved(before, { ...before, drafts: [draft] })).toEqual([
    { what: 'lid', moved: [{ name: 'Lid planed to', before: '6.657 in', now: '6.600 in' }] },
  ]);
});

test('what is decided for the first time has not moved, nor what reads as it did', () => {
  expect(whatMoved(stand(), stand([...lidOf(6.657)]))).toEqual([]);
  expect(whatMoved(stand([...lidOf(6.657)]), stand([...lidOf(6.657)], [...lidOf(6.65701)]))).toEqual([]);
});
