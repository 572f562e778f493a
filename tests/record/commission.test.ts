import { existsSync, mkdirSync, readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { inspect } from 'node:util';
import { afterEach, describe, expect, it, vi } from 'vitest';
import { ShopError } from '../../kernel-helpers/src/measure/shop-error.js';
import { readRecord } from '../../kernel-helpers/src/record/chain/record-file.js';
import { compareRecords } from '../../kernel-helpers/src/record/check/compare.js';
import {
  brief,
  commissionFolder,
  must,
  open,
  otherBrief,
  sizing,
  testFolder,
  versions,
  writeSheet,
} from './setting.js';

afterEach(() => vi.unstubAllEnvs());

const stop = {
  rule: 'wall under the groove',
  verdict: 'stop' as const,
  figures: '1/16 in left, 3/16 in needed.',
  reason: 'A thinner wall splits.',
  change: 'Raise the bottom.',
};

describe('a decision', () => {
  it('goes into the record with its inputs, who made it, when, and with what', () => {
    vi.stubEnv('COMMISSION_WHO', 'maker');
    const job = open(commissionFolder());
    const { outcome, entry, note } = job.decide('brief', { ...brief, seed: 7 });
    expect(outcome).toBe('recorded');
    expect(note).toBe('Recorded: brief, entry 1.');
    expect(entry).toMatchObject({ ...brief, seq: 1, what: 'brief', who: 'maker', seed: 7, needs: {}, versions });
    expect(Math.abs(Date.parse(must(entry).at) - Date.now())).toBeLessThan(60_000);
    expect(job.entries()).toEqual([entry]);
    expect(job.head()).toEqual({ seq: 1, hash: entry?.hash });
  });

  it('names the files that it was worked out from, so that a check can tell which one changed', () => {
    const folder = commissionFolder();
    writeFileSync(join(folder, 'readings.csv'), 'day,humidity');
    const job = open(folder);
    expect(job.read('readings.csv')).toBe('day,humidity');
    const { entry } = job.decide('brief', brief);
    expect(entry?.versions.data).toMatchObject({
      ...versions.data,
      'readings.csv': expect.stringMatching(/^[0-9a-f]{16}$/),
    });
    writeFileSync(join(folder, 'readings.csv'), 'day,humidity,temperature');
    const again = open(folder);
    again.read('readings.csv');
    const moved = again.decide('brief', { ...brief, results: { ...brief.results, inside: 11 } });
    expect(compareRecords([must(entry)], [must(moved.entry)])[0]?.why).toEqual([
      expect.stringMatching(/^data file readings\.csv was [0-9a-f]{16}, now [0-9a-f]{16}$/),
    ]);
    expect(() => job.read('none.csv')).toThrow(/^file: "none\.csv" given; possible: the name of a file that lies in /);
  });

  it('knows today: the day that its decision carries', () => {
    const job = open(commissionFolder());
    const before = job.today;
    const { entry } = job.decide('brief', brief);
    expect([before, job.today]).toContain(must(entry).at.slice(0, 10));
  });

  it('knows the day it was begun from its folder', () => {
    expect(open(commissionFolder()).begun).toBe('2026-03-12');
    expect(open(testFolder()).begun).toBe('');
  });

  it('is handed on as it was recorded, and nobody can change it', () => {
    const folder = commissionFolder();
    open(folder).decide('sizing', sizing);
    const handed = open(folder).need('sizing');
    expect(handed).toEqual(sizing.results);
    expect(() => handed.parts.push({ name: 'tray', length: 9 })).toThrow(TypeError);
  });

  it('adds nothing when it is made again without a change, even with other versions and another rounding', () => {
    const folder = commissionFolder();
    const first = open(folder).decide('brief', brief);
    const bytes = readFileSync(join(folder, 'record.jsonl'));
    const again = open(folder, { versions: { ...versions, node: '24.0.0' } }).decide('brief', {
      ...brief,
      results: { ...brief.results, inside: 10 + 1e-12 },
    });
    expect(again).toMatchObject({ outcome: 'same', entry: first.entry });
    expect(again.note).toMatch(/^Same: brief is as recorded on \d{4}-\d\d-\d\d, entry 1\.$/);
    expect(readFileSync(join(folder, 'record.jsonl'))).toEqual(bytes);
  });

  it.each([
    ['an input', { inputs: { inside: '10 1/8 in' } }],
    ['a result', { results: { inside: 10.125, wood: 'walnut-black' } }],
    ['a finding', { findings: [{ ...stop, verdict: 'watch' as const }] }],
    ['the seed', { seed: 2 }],
  ])('is recorded anew when %s changes, and the earlier one stays', (_, change) => {
    const job = open(commissionFolder());
    job.decide('brief', brief);
    expect(job.decide('brief', { ...brief, ...change }).entry?.seq).toBe(2);
    expect(job.decide('brief', brief).entry?.seq).toBe(3);
    expect(job.entries()[0]).toMatchObject(brief);
  });

  it.each(['10 in', '10.0 in', ' 10"', '254 mm', '25.4 cm', '10'])(
    'is the same with a length written otherwise: %j',
    (inside) => {
      const job = open(commissionFolder());
      job.decide('brief', brief);
      expect(job.decide('brief', { ...brief, inputs: { inside } }).outcome).toBe('same');
    },
  );

  it('is another where a text that only looks like a length moves a result, or is another length', () => {
    const job = open(commissionFolder());
    job.decide('brief', brief);
    expect(job.decide('brief', { ...brief, inputs: { inside: '10 1/8 in' } }).outcome).toBe('recorded');
    const named = (inside: string) => ({ inputs: { inside }, results: { inside: 10, wood: inside } });
    job.decide('brief', named('5/8'));
    expect(job.decide('brief', named('0.625')).outcome).toBe('recorded');
    expect(job.decisions().at(-1)?.changed).toBe('inside as typed: "5/8", now "0.625"; wood: "5/8", now "0.625"');
  });

  it('remembers which decisions it rests on, and is recorded anew when one of them was', () => {
    const folder = commissionFolder();
    const first = must(open(folder).decide('brief', brief).entry);
    const sheet = () => {
      const job = open(folder);
      job.need('brief');
      return job.decide('sizing', sizing);
    };
    expect(sheet().entry?.needs).toEqual({ brief: { seq: first.seq, hash: first.hash } });
    expect(sheet().outcome).toBe('same');
    open(folder).decide('brief', otherBrief(11));
    expect(sheet()).toMatchObject({ outcome: 'recorded', entry: { seq: 4, needs: { brief: { seq: 3 } } } });
  });

  it('prints as one short line when it is the last thing in a cell', () => {
    const job = open(commissionFolder());
    expect(inspect(job.decide('brief', brief))).toMatch(/^Recorded: brief, entry 1\. Reference 1:[0-9a-f]{12}\.$/);
  });
});

describe('a decision that cannot stand', () => {
  const refused = (job: ReturnType<typeof open>, decide: () => unknown, message: string) => {
    expect(decide).toThrow(ShopError);
    expect(decide).toThrow(message);
    expect(job.entries()).toEqual([]);
    expect(readdirSync(job.folder)).toEqual([]);
  };

  it('is not recorded while a rule says stop, and is with a reason, which is kept', () => {
    const job = open(commissionFolder());
    const decision = { ...brief, findings: [stop] };
    refused(job, () => job.decide('brief', decision), 'wall under the groove: 1/16 in left, 3/16 in needed; A thinner');
    const overrides = { 'wall under the groove': 'the bottom is glued in all round' };
    expect(job.decide('brief', { ...decision, overrides }).entry?.overrides).toEqual(overrides);
  });

  it('is not recorded past a stop that is unsafe or impossible, whatever the reason, and no message offers one', () => {
    const job = open(commissionFolder());
    for (const [absolute, words] of [
      ['unsafe', 'Somebody could be hurt: no reason goes past this.'],
      ['impossible', 'It cannot be made like this: no reason goes past it.'],
    ] as const) {
      const findings = [
        { ...stop, rule: 'thumb' },
        { ...stop, absolute },
      ];
      const overrides = { thumb: 'why not', 'wall under the groove': 'I have done it before' };
      refused(job, () => job.decide('brief', { ...brief, findings, overrides }), words);
      expect(() => job.decide('brief', { ...brief, findings })).not.toThrow('your reason');
    }
    const fine = [{ ...stop, verdict: 'ok' as const, absolute: 'unsafe' as const }];
    expect(job.decide('brief', { ...brief, findings: fine }).outcome).toBe('recorded');
  });

  it('tells its reasons, for the list on the wall', () => {
    const job = open(commissionFolder());
    const overrides = { 'wall under the groove': 'the bottom is glued in all round' };
    job.decide('brief', { ...brief, findings: [stop], overrides });
    expect(job.reasons()).toEqual([{ rule: 'wall under the groove', reason: overrides['wall under the groove'] }]);
    job.decide('brief', brief);
    expect(job.reasons()).toEqual([]);
  });

  it('is not recorded with an override that gives no reason or names no rule of this sheet', () => {
    const job = open(commissionFolder());
    const over = (overrides: Record<string, string>) => () =>
      job.decide('brief', { ...brief, findings: [stop], overrides });
    refused(job, over({ 'wall under the groove': ' ' }), 'gives no reason');
    refused(job, over({ 'wall above the groove': 'why not' }), "the rules here: 'wall under the groove'");
    refused(job, over({ toString: 'why not' }), "no rule 'toString'");
  });

  it('is not recorded with a value that the record cannot keep, or of the wrong form', () => {
    const job = open(commissionFolder());
    const results = (over: object) => () =>
      job.decide('brief', { inputs: {}, results: { ...brief.results, ...over } as typeof brief.results });
    refused(job, results({ inside: Number.NaN }), 'brief: results.inside is NaN');
    refused(job, results({ inside: '10 in' }), 'brief is not recorded: results.inside');
    refused(job, results({ wood: undefined }), 'results.wood');
    refused(job, () => job.decide('lid' as 'brief', brief), "no decision 'lid'; there are brief, sizing");
    refused(job, () => job.decide('toString' as 'brief', brief), "no decision 'toString'");
  });
});

describe('an earlier decision that a sheet uses where there is one', () => {
  it('is nothing while it was not decided, and then what was decided, which the next decision rests on', () => {
    const folder = commissionFolder();
    const job = open(folder);
    expect(job.find('brief')).toBeUndefined();
    job.decide('brief', brief);
    const later = open(folder);
    expect(later.find('brief')).toEqual(brief.results);
    expect(later.decide('sizing', sizing).entry?.needs).toMatchObject({ brief: { seq: 1 } });
  });
});

describe('an earlier decision that a sheet needs', () => {
  it('is missing until its sheet has run: the message names that sheet', () => {
    const folder = commissionFolder();
    writeSheet(folder, '02-sizing.ipynb', "job.need('brief')", "job.decide('sizing', { inputs, results })");
    const need = () => open(folder).need('sizing');
    expect(need).toThrow(ShopError);
    expect(need).toThrow('sizing is not decided yet in 2026-03-12-blanket-box: run 02-sizing.ipynb first');
  });

  it('says by name when it rests on one that has changed since, once, and which sheet to run', () => {
    const folder = commissionFolder();
    writeSheet(folder, '02-sizing.ipynb', "job.decide('sizing', {})");
    const job = open(folder);
    job.decide('brief', brief);
    job.need('brief');
    job.decide('sizing', sizing);
    job.decide('brief', otherBrief(11));
    const later = open(folder);
    later.need('sizing');
    later.need('sizing');
    expect(later.notices).toEqual([
      'sizing (entry 2) rests on brief as of entry 1; brief was decided again in entry 3. Run 02-sizing.ipynb again.',
    ]);
  });

  it('has not changed for those after it, when it hands on what it did before', () => {
    const folder = commissionFolder();
    const sheet = () => {
      const job = open(folder);
      job.need('brief');
      return job.decide('sizing', sizing);
    };
    open(folder).decide('brief', brief);
    const first = must(sheet().entry);
    open(folder).decide('brief', { ...brief, inputs: { inside: '10 in', notes: 'asked again' } as never });
    const job = open(folder);
    job.need('sizing');
    expect(job.notices).toEqual([]);
    expect(sheet()).toMatchObject({ outcome: 'same', entry: first });
    open(folder).decide('brief', otherBrief(11));
    expect(sheet()).toMatchObject({ outcome: 'recorded', entry: { needs: { brief: { seq: 4 } } } });
  });

  it('has changed with a reason for going past a stop, which papers after it print', () => {
    const folder = commissionFolder();
    const because = (reason: string) => ({ ...brief, findings: [stop], overrides: { [stop.rule]: reason } });
    open(folder).decide('brief', because('it is glued'));
    const job = open(folder);
    job.need('brief');
    job.decide('sizing', sizing);
    open(folder).decide('brief', because('the client wants it'));
    const later = open(folder);
    later.need('sizing');
    expect(later.notices[0]).toContain('sizing (entry 2) rests on brief as of entry 1; brief was decided again');
  });

  it('is refused when the record is damaged or holds results of another form', () => {
    const folder = commissionFolder();
    const record = join(folder, 'record.jsonl');
    open(folder).decide('brief', brief);
    const sound = readFileSync(record, 'utf8');
    writeFileSync(record, sound.replace('"inside":10', '"inside":11'));
    for (const use of [() => open(folder).need('brief'), () => open(folder).decide('brief', brief)]) {
      expect(use).toThrow(ShopError);
      expect(use).toThrow('line 1 was changed');
    }
    writeFileSync(record, sound);
    expect(() => open(folder).need('sizing' as 'brief')).toThrow('not decided yet');
  });

  it('comes from the folder given; a folder that is not there is named', () => {
    expect(() => open(join(testFolder(), 'nowhere'))).toThrow(ShopError);
  });
});

describe('a record cut short by a power failure', () => {
  it('goes on with the next decision, which says where the unfinished line is kept', () => {
    const folder = commissionFolder();
    open(folder).decide('brief', brief);
    writeFileSync(join(folder, 'record.jsonl'), '{"seq":2,"at":"2026', { flag: 'a' });
    const job = open(folder);
    expect(job.need('brief')).toEqual(brief.results);
    expect(job.decide('sizing', sizing).entry?.seq).toBe(2);
    const kept = readdirSync(folder).find((name) => name.startsWith('record-incomplete-'));
    expect(job.notices[0]).toContain(`kept in ${kept}`);
    expect(readRecord(folder).faults).toEqual([]);
  });
});

describe('practice', () => {
  it('computes and refuses like a commission, takes earlier decisions from the demonstration, and keeps nothing', () => {
    const root = testFolder();
    const demonstration = commissionFolder(root, '2025-11-03-tea-chest');
    open(commissionFolder(root, '2026-02-01-tea-chest')).decide('brief', { ...brief, seed: 9 });
    open(demonstration).decide('brief', { ...brief, results: { inside: 6, wood: 'cherry-black' } });
    const before = readFileSync(join(demonstration, 'record.jsonl'));
    const sheets = join(root, 'worksheets', 'commission');
    mkdirSync(sheets, { recursive: true });

    const job = open(sheets);
    expect(job.practice).toBe(true);
    expect(job.need('brief').inside).toBe(6);
    job.need('brief');
    expect(job.decide('sizing', sizing)).toEqual({
      outcome: 'practice',
      note: 'Practice: sizing is worked out but not kept.',
    });
    expect(() => job.decide('sizing', { ...sizing, findings: [stop] })).toThrow('wall under the groove');
    expect(job.notices).toEqual([
      'Practice: nothing is kept, and earlier decisions are those of the demonstration commission 2025-11-03-tea-chest.',
    ]);
    expect(job.decisions()).toHaveLength(1);
    expect(readdirSync(sheets)).toEqual([]);
    expect(readFileSync(join(demonstration, 'record.jsonl'))).toEqual(before);
  });

  it('says how to get the demonstration back when it is gone', () => {
    const job = open(testFolder());
    expect(job.entries()).toEqual([]);
    expect(() => job.need('brief')).toThrow('put back data/commissions/2026-11-25-tea-chest');
  });
});

describe('a rehearsal', () => {
  it('keeps its decisions in its own folder, needs them before those of the record, and leaves the record alone', () => {
    const folder = commissionFolder();
    const real = open(folder);
    real.decide('brief', brief);
    real.decide('sizing', sizing);
    const before = readFileSync(join(folder, 'record.jsonl'));

    const rehearsal = testFolder();
    vi.stubEnv('COMMISSION_REHEARSAL', rehearsal);
    const job = open(folder);
    expect(job.need('sizing')).toEqual(sizing.results);
    const changed = { ...brief, results: { inside: 12, wood: 'oak-white' } };
    expect(job.decide('brief', changed)).toMatchObject({ outcome: 'recorded', note: 'Rehearsed: brief, entry 1.' });
    expect(open(folder).need('brief').inside).toBe(12);
    expect(readFileSync(join(folder, 'record.jsonl'))).toEqual(before);
    expect(readdirSync(folder)).toEqual(['record.jsonl']);
    expect(readRecord(rehearsal).entries).toMatchObject([{ what: 'brief', seq: 1 }]);
    expect(job.entries()).toHaveLength(2);
  });

  it('needs its folder to be there, and does not make a practice sheet keep anything', () => {
    const folder = commissionFolder();
    vi.stubEnv('COMMISSION_REHEARSAL', join(folder, 'gone'));
    expect(() => open(folder)).toThrow(ShopError);
    const rehearsal = testFolder();
    vi.stubEnv('COMMISSION_REHEARSAL', rehearsal);
    expect(open(testFolder()).decide('brief', brief).outcome).toBe('practice');
    expect(existsSync(join(rehearsal, 'record.jsonl'))).toBe(false);
  });
});

describe('the table of decisions', () => {
  it('says for each who decided what on which day and what that changed', () => {
    vi.stubEnv('COMMISSION_WHO', 'apprentice');
    const job = open(commissionFolder());
    const first = must(job.decide('brief', brief).entry);
    job.need('brief');
    job.decide('sizing', sizing);
    job.decide('brief', { ...brief, inputs: { inside: '12 in' }, results: { inside: 12, wood: 'walnut-black' } });
    job.need('brief');
    job.decide('sizing', { ...sizing, results: { width: 13, parts: [{ name: 'top', length: 14 }] } });
    expect(job.decisions().map((row) => row.changed)).toEqual([
      'first decision',
      'first decision',
      'inside as typed: "10 in", now "12 in"; inside: 10, now 12',
      'width: 11.25, now 13; parts no. 1, name: "lid", now "top"; parts no. 1, length: 12, now 14; 1 more',
    ]);
    const { seq, at, hash } = first;
    expect(job.decisions()[0]).toMatchObject({
      ...{ seq, date: at.slice(0, 10), who: 'apprentice', what: 'brief', hash: hash.slice(0, 12) },
    });
  });
});
