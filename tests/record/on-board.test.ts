import { describe, expect, it } from 'vitest';
import { ShopError } from '../../kernel-helpers/src/measure/shop-error.js';
import { sizeBox } from '../../kernel-helpers/src/piece/box/size-box.js';
import { commissionIn } from '../../kernel-helpers/src/record/commission.js';
import { decisionSchemas } from '../../kernel-helpers/src/record/decisions/decision-schemas.js';
import type { Decisions } from '../../kernel-helpers/src/record/decisions/decisions.js';
import { noticesTo } from '../../kernel-helpers/src/record/notices.js';
import { decideOnBoard, type SheetTop } from '../../kernel-helpers/src/record/on-board.js';
import { memoryStore } from '../../kernel-helpers/src/record/store/memory-store.js';
import { demonstrationDecisions } from './key-figures/demonstration-decisions.js';
import { must, versions } from './setting.js';

const decided = demonstrationDecisions();
const inside = { insideLength: 9.5, insideWidth: 6.25, insideDepth: 4, species: 'walnut-black', proud: '1/8 in' };

/** A commission that is kept in memory, each sheet opened anew as a fresh kernel does, with what stands at its top. */
function shop({ furtherToo = true, practice = false } = {}) {
  const store = memoryStore();
  return function sheet(needs: (keyof Decisions)[] = []) {
    const tops: SheetTop[] = [];
    const job = commissionIn<Decisions>({
      ...{ folder: '/shop/box', name: '2026-03-12-box', store, schemas: decisionSchemas, versions },
      ...{ notices: noticesTo(() => {}), sheetOf: () => undefined },
      ...(practice ? { practice: { demonstration: undefined } } : {}),
      signature: () => ({ at: '2026-03-12T19:30:00-05:00', who: 'maker' }),
    });
    for (const need of needs) job.need(need);
    const decide = decideOnBoard(job, (top) => tops.push(top), { furtherToo });
    return { decide, top: () => must(tops.at(-1)), tops };
  };
}

const briefOf = (over: Partial<Decisions['brief']> = {}) => ({ inputs: over, results: { ...decided.brief, ...over } });
const boxOf = (length: number) => ({
  inputs: { length },
  results: sizeBox({ ...inside, insideLength: length }),
});
const lidOf = (fittedWidth: number) => ({ inputs: { fittedWidth }, results: { ...decided.lid, fittedWidth } });

const tried = <T extends { inputs: object }>(decision: T): T => ({
  ...decision,
  inputs: { ...decision.inputs, decided: false },
});

/** Brief, sizing and lid, each in a sheet of its own. */
function worked(options: Parameters<typeof shop>[0] = {}) {
  const sheet = shop(options);
  sheet().decide('brief', briefOf());
  sheet(['brief']).decide('sizing', boxOf(9.5));
  sheet(['sizing']).decide('lid', lidOf(6.657));
  return sheet;
}

describe('the top of a sheet', () => {
  it('has nothing to say before the sheet has decided', () => {
    expect(shop()().tops).toEqual([{ news: [] }]);
  });

  it('says what was decided, and in a sheet that was never run before only that', () => {
    const { decide, top } = shop()();
    decide('brief', briefOf());
    expect(top().news).toMatchObject([
      { what: 'brief', sentence: expect.stringMatching(/^9 1\/2 x 6 1\/4 x 4 in inside, black walnut/), moved: [] },
    ]);
    expect(top().news[0]).toMatchObject({ outcome: 'recorded', entry: { seq: 1 }, further: [] });
    expect(top().news[0]).not.toHaveProperty('before');
  });

  it('run again with another number, has before and now for the figures that differ, and only those', () => {
    const { decide, top } = worked()(['sizing']);
    decide('lid', lidOf(6.64));
    expect(top().news[0]).toMatchObject({
      sentence: 'plane to 6.640 in',
      before: { at: '2026-03-12T19:30:00-05:00', draft: false },
      moved: [{ name: 'Lid planed to', before: '6.657 in', now: '6.640 in' }],
    });
  });

  it('has no word on a difference that nobody reads', () => {
    const { decide, top } = worked()(['sizing']);
    decide('lid', lidOf(6.65702));
    expect(top().news[0]?.moved).toEqual([]);
  });

  it('run again with the same numbers, says that they stand', () => {
    const { decide, top } = worked()(['sizing']);
    decide('lid', lidOf(6.657));
    expect(top().news[0]).toMatchObject({ outcome: 'same', moved: [], further: [] });
  });

  it('names what rests on it, directly or not, and was not run since', () => {
    const { decide, top } = worked()(['brief']);
    decide('sizing', boxOf(10.5));
    expect(top().news[0]).toMatchObject({
      moved: [
        { name: 'Overall', before: '11 x 7 3/4 x 4 61/64 in', now: '12 x 7 3/4 x 4 61/64 in' },
        { name: 'Inside', before: '9 1/2 x 6 1/4 x 4 in', now: '10 1/2 x 6 1/4 x 4 in' },
      ],
      further: [{ what: 'lid', sentence: 'plane to 6.657 in', notRunSince: true }],
    });
    const brief = worked()();
    brief.decide('brief', briefOf({ promised: '2027-03-01' }));
    expect(brief.top().news[0]?.further.map(({ what }) => what)).toEqual(['sizing', 'lid']);
  });

  it('leaves further sheets alone where they are about to be run', () => {
    const { decide, top } = worked({ furtherToo: false })(['brief']);
    decide('sizing', boxOf(10.5));
    expect(top().news[0]?.further).toEqual([]);
  });

  it('speaks in the units of the brief', () => {
    const sheet = shop();
    sheet().decide('brief', briefOf({ units: 'mm' }));
    const { decide, top } = sheet(['brief']);
    decide('sizing', boxOf(9.5));
    expect(top().news[0]?.sentence).toBe('279.4 x 196.9 x 125.8 mm overall');
  });

  it('keeps the news of each of two decisions, the last of each', () => {
    const { decide, top } = worked()(['sizing']);
    decide('lid', lidOf(6.64));
    decide('measured', { inputs: {}, results: { measurements: [{ date: '2027-07-04', clearance: 0.04 }] } });
    decide('lid', lidOf(6.63));
    expect(top().news.map(({ sentence }) => sentence)).toEqual([
      'plane to 6.630 in',
      'measured 2027-07-04: play 0.040 in',
    ]);
  });

  it('compares a draft with what the record says, however often it is tried', () => {
    const sheet = worked();
    for (const width of [6.65, 6.64]) sheet(['sizing']).decide('lid', tried(lidOf(width)));
    const { decide, top } = sheet(['sizing']);
    decide('lid', tried(lidOf(6.63)));
    expect(top().news[0]).toMatchObject({
      ...{ outcome: 'draft', before: { draft: false } },
      moved: [{ name: 'Lid planed to', before: '6.657 in', now: '6.630 in' }],
    });
  });

  it('compares it with the draft before where nothing is recorded yet', () => {
    const sheet = shop();
    sheet().decide('lid', tried(lidOf(6.65)));
    const { decide, top } = sheet();
    decide('lid', tried(lidOf(6.64)));
    expect(top().news[0]).toMatchObject({
      before: { draft: true },
      moved: [{ name: 'Lid planed to', before: '6.650 in', now: '6.640 in' }],
    });
  });

  it('has before and now of drafts further on that were run since, and says which were not', () => {
    const sheet = worked();
    sheet(['brief']).decide('sizing', tried(boxOf(10.5)));
    sheet(['sizing']).decide('lid', tried(lidOf(6.6)));
    const again = sheet(['brief']);
    again.decide('sizing', tried(boxOf(10.5)));
    expect(again.top().news[0]?.further).toEqual([
      {
        ...{ what: 'lid', sentence: 'plane to 6.600 in', notRunSince: false },
        moved: [{ name: 'Lid planed to', before: '6.657 in', now: '6.600 in' }],
      },
    ]);
    const other = sheet(['brief']);
    other.decide('sizing', tried(boxOf(11.5)));
    expect(other.top().news[0]?.further).toEqual([
      { what: 'lid', sentence: 'plane to 6.600 in', notRunSince: true, moved: [] },
    ]);
  });

  it('has no word on a draft elsewhere that does not rest on it', () => {
    const sheet = worked();
    sheet().decide('brief', tried(briefOf({ client: 'Somebody' })));
    const { decide, top } = sheet(['sizing']);
    decide('lid', tried(lidOf(6.6)));
    expect(top().news[0]?.further).toEqual([]);
  });

  it('says in practice what it comes to, and compares with nothing', () => {
    const { decide, top } = shop({ practice: true })();
    decide('lid', lidOf(6.64));
    expect(top().news).toMatchObject([{ outcome: 'practice', sentence: 'plane to 6.640 in', moved: [], further: [] }]);
  });

  it('says why a decision was refused', () => {
    const { decide, top } = worked()(['sizing']);
    const stop = { rule: 'lid binds', verdict: 'stop' as const, figures: '0.002 in left', reason: 'It sticks.' };
    expect(() => decide('lid', { ...lidOf(6.75), findings: [stop] })).toThrow(ShopError);
    expect(top()).toMatchObject({
      news: [],
      refused: expect.stringMatching(/^lid is not recorded: lid binds: 0\.002 in/),
    });
    decide('lid', lidOf(6.64));
    expect(top().refused).toBeUndefined();
  });
});
