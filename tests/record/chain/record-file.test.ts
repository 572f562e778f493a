import { existsSync, mkdirSync, readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { ShopError } from '../../../kernel-helpers/src/measure/shop-error.js';
import { appendEntry, readRecord } from '../../../kernel-helpers/src/record/chain/record-file.js';
import { content, must, recordBytes, testFolder } from '../setting.js';

const three = [1, 2, 3].map((inputs) => content({ inputs }));

function folderWith(bytes: Uint8Array): { folder: string; record: string } {
  const folder = testFolder();
  const record = join(folder, 'record.jsonl');
  writeFileSync(record, bytes);
  return { folder, record };
}

describe('appending to a record', () => {
  it('adds one line behind the others and leaves them as they were', () => {
    const folder = testFolder();
    const record = join(folder, 'record.jsonl');
    let before: Buffer = Buffer.alloc(0);
    for (const each of three) {
      const { entry } = appendEntry(folder, () => each);
      const after = readFileSync(record);
      expect(after.subarray(0, before.length)).toEqual(before);
      expect(entry).toEqual(readRecord(folder).entries.at(-1));
      before = after;
    }
    expect(before).toEqual(recordBytes(three));
    expect(readdirSync(folder)).toEqual(['record.jsonl']);
  });

  it('adds nothing when there is nothing to add', () => {
    const folder = testFolder();
    expect(appendEntry(folder, () => undefined)).toEqual({});
    expect(readdirSync(folder)).toEqual([]);
  });

  it('shows the new entry all that is recorded, under the lock', () => {
    const { folder } = folderWith(recordBytes(three));
    appendEntry(folder, (entries) => {
      expect(entries.map((entry) => entry.inputs)).toEqual([1, 2, 3]);
      expect(existsSync(join(folder, 'record.jsonl.lock'))).toBe(true);
      return undefined;
    });
  });

  it('leaves the record as it was when the new entry cannot be made', () => {
    const { folder, record } = folderWith(recordBytes(three));
    const fail = () =>
      appendEntry(folder, () => {
        throw new ShopError('no width');
      });
    expect(fail).toThrow('no width');
    expect(readFileSync(record)).toEqual(recordBytes(three));
    expect(readdirSync(folder)).toEqual(['record.jsonl']);
  });

  it('is refused on a damaged record, with the line and what to do, and the file stays as it is', () => {
    const bytes = Buffer.from(recordBytes(three).toString().replace('"inputs":2', '"inputs":9'));
    const { folder, record } = folderWith(bytes);
    const append = () => appendEntry(folder, () => content());
    expect(append).toThrow(ShopError);
    expect(append).toThrow(/line 2 was changed.*Put back a copy/);
    expect(readFileSync(record)).toEqual(bytes);
    expect(readdirSync(folder)).toEqual(['record.jsonl']);
  });

  it('says in plain words when the record cannot be written', () => {
    const folder = testFolder();
    mkdirSync(join(folder, 'record.jsonl'));
    expect(() => appendEntry(folder, () => content())).toThrow(ShopError);
    expect(() => appendEntry(join(folder, 'gone'), () => content())).toThrow(ShopError);
  });
});

describe('a record after a power cut', () => {
  it('goes on from its last whole line wherever the cut was, and keeps the rest in a file of its own', () => {
    const bytes = recordBytes(three);
    fc.assert(
      fc.property(fc.nat({ max: bytes.length }), (at) => {
        const cut = bytes.subarray(0, at);
        const { folder, record } = folderWith(cut);
        const { incomplete, entries } = readRecord(folder);
        const { setAside, entry } = appendEntry(folder, () => content({ inputs: 'next' }));
        const whole = three.slice(0, entries.length);
        expect(readFileSync(record)).toEqual(recordBytes([...whole, content({ inputs: 'next' })]));
        expect(entry?.seq).toBe(whole.length + 1);
        expect(setAside === undefined).toBe(incomplete === undefined);
        if (setAside) expect(readFileSync(join(folder, setAside))).toEqual(Buffer.from(must(incomplete)));
      }),
      { numRuns: 60, examples: [[bytes.length - 1], [bytes.length], [1]] },
    );
  });

  it('moves the same rest to the same file when the power failed again half-way', () => {
    const { folder, record } = folderWith(Buffer.concat([recordBytes(three), Buffer.from('{"seq":4,"at')]));
    const torn = readFileSync(record);
    const { setAside } = appendEntry(folder, () => undefined);
    writeFileSync(record, torn);
    writeFileSync(join(folder, must(setAside)), '{"seq"');
    expect(appendEntry(folder, () => undefined).setAside).toBe(setAside);
    expect(readFileSync(join(folder, must(setAside)), 'utf8')).toBe('{"seq":4,"at');
    expect(readFileSync(record)).toEqual(recordBytes(three));
  });
});
