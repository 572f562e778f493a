import { readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { ShopError } from '../../../kernel-helpers/src/measure/shop-error.js';
import { checkCommission } from '../../../kernel-helpers/src/record/check/check.js';
import {
  brief,
  commissionFolder,
  content,
  entriesOf,
  must,
  open,
  recordBytes,
  sizing,
  testFolder,
} from '../setting.js';

/** A commission whose sizing rests on its brief, and whose brief then changed. */
function worked(): { folder: string; record: string } {
  const folder = commissionFolder();
  const job = open(folder);
  job.decide('brief', brief);
  job.need('brief');
  job.decide('sizing', sizing);
  return { folder, record: join(folder, 'record.jsonl') };
}

describe('checking a commission', () => {
  it('finds nothing wrong with a record as it was written, and gives its head', () => {
    const { folder } = worked();
    const { faults, stale, head, name, entries, setAside, incomplete } = checkCommission(folder);
    expect({ faults, stale, setAside, incomplete }).toEqual({
      faults: [],
      stale: [],
      setAside: [],
      incomplete: undefined,
    });
    expect(name).toBe('2026-03-12-blanket-box');
    expect(head).toEqual({ seq: 2, hash: entries[1]?.hash });
    for (const known of [head, { seq: 2, hash: must(head).hash.slice(0, 12) }]) {
      expect(checkCommission(folder, { head: known }).faults).toEqual([]);
    }
    for (const hash of ['', must(head).hash.slice(0, 11), 'not a hash at all']) {
      expect(() => checkCommission(folder, { head: { seq: 2, hash } })).toThrow(ShopError);
    }
  });

  it('names the decisions that rest on one that changed, through others too', () => {
    const first = content({ what: 'brief' });
    const at = (seq: number, entries = entriesOf([first])) => ({ seq, hash: must(entries[seq - 1]).hash });
    const second = content({ what: 'sizing', needs: { brief: at(1) } });
    const third = content({ what: 'lid', needs: { sizing: at(2, entriesOf([first, second])) } });
    const folder = commissionFolder();
    const changed = content({ what: 'brief', results: { inside: 11 } });
    writeFileSync(join(folder, 'record.jsonl'), recordBytes([first, second, third, changed]));
    expect(checkCommission(folder).stale).toEqual([
      { what: 'sizing', seq: 2, because: [{ what: 'brief', had: 1, now: 4 }] },
      { what: 'lid', seq: 3, because: [{ what: 'brief', had: 1, now: 4 }] },
    ]);
  });

  it('names a changed line', () => {
    const { folder, record } = worked();
    writeFileSync(record, readFileSync(record, 'utf8').replace('"width":11.25', '"width":11.75'));
    expect(checkCommission(folder).faults).toMatchObject([{ line: 2, problem: expect.stringContaining('changed') }]);
  });

  it('names an entry that rests on something the record does not hold', () => {
    const folder = commissionFolder();
    const stranger = { seq: 1, hash: '5'.repeat(64) };
    const own = must(entriesOf([content()])[0]);
    const wrong = [
      content({ what: 'sizing', needs: { brief: stranger } }),
      content({ what: 'lid', needs: { sizing: own } }),
    ];
    writeFileSync(join(folder, 'record.jsonl'), recordBytes([content(), ...wrong]));
    expect(checkCommission(folder).faults.map(({ line, problem }) => [line, problem])).toEqual([
      [2, 'line 2 (sizing) rests on brief as of entry 1, which is not in this record as it was then'],
      [3, 'line 3 (lid) rests on sizing as of entry 1, which is not in this record as it was then'],
    ]);
  });

  it('notices an end that was cut off, or a record written anew, only by a head kept elsewhere', () => {
    const { folder, record } = worked();
    const { head } = checkCommission(folder);
    writeFileSync(record, readFileSync(record, 'utf8').replace(/[^\n]*\n$/, ''));
    expect(checkCommission(folder).faults).toEqual([]);
    expect(checkCommission(folder, { head }).faults[0]?.problem).toContain('entry 2, known from elsewhere, is missing');
    writeFileSync(record, recordBytes([content(), content({ seed: 1 })]));
    expect(checkCommission(folder).faults).toEqual([]);
    expect(checkCommission(folder, { head }).faults[0]?.problem).toContain('written anew');
  });

  it('tells of a last line that was never finished, before and after it is moved aside', () => {
    const { folder, record } = worked();
    writeFileSync(record, '{"seq":3', { flag: 'a' });
    expect(checkCommission(folder)).toMatchObject({ faults: [], incomplete: 8, setAside: [], head: { seq: 2 } });
    open(folder).decide('sizing', { ...sizing, seed: 1 });
    expect(checkCommission(folder)).toMatchObject({ faults: [], incomplete: undefined, head: { seq: 3 } });
    expect(checkCommission(folder).setAside).toHaveLength(1);
  });

  it('needs a folder with a record', () => {
    const folder = testFolder();
    for (const place of [folder, join(folder, 'gone')]) expect(() => checkCommission(place)).toThrow(ShopError);
  });
});
