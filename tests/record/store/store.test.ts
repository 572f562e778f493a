import { writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { ShopError } from '../../../kernel-helpers/src/measure/shop-error.js';
import { readRecord } from '../../../kernel-helpers/src/record/chain/record-file.js';
import { commissionIn } from '../../../kernel-helpers/src/record/commission.js';
import { noticesTo } from '../../../kernel-helpers/src/record/notices.js';
import { folderStore } from '../../../kernel-helpers/src/record/store/folder-store.js';
import { memoryStore } from '../../../kernel-helpers/src/record/store/memory-store.js';
import { stagedStore, takeOver } from '../../../kernel-helpers/src/record/store/staged-store.js';
import type { Store } from '../../../kernel-helpers/src/record/store/store.js';
import {
  brief,
  commissionFolder,
  content,
  otherBrief,
  recordBytes,
  schemas,
  sizing,
  type TestDecisions,
  versions,
} from '../setting.js';

const readings = 'day,humidity\n2026-01-02,41 %, 20 °C\n';

const stores: [string, () => Store][] = [
  [
    'a folder',
    () => {
      const folder = commissionFolder();
      writeFileSync(join(folder, 'readings.csv'), readings);
      return folderStore(folder);
    },
  ],
  ['memory', () => memoryStore({ files: { 'readings.csv': readings } })],
];

describe.each(stores)('a commission kept in %s', (_, opened) => {
  it('gives back its entries in order, each appended after those that stand', () => {
    const store = opened();
    expect(store.entries()).toEqual([]);
    const first = store.append(() => content()).entry;
    const second = store.append((entries) => content({ inputs: entries.length })).entry;
    expect(store.entries()).toEqual([first, second]);
    expect(second).toMatchObject({ seq: 2, inputs: 1, prev: first?.hash });
    expect(store.append(() => undefined)).toEqual({});
    expect(store.entries()).toHaveLength(2);
  });

  it('adds nothing when the entry cannot be made', () => {
    const store = opened();
    const failing = () => {
      throw new Error('no');
    };
    expect(() => store.append(failing)).toThrow('no');
    expect(store.entries()).toEqual([]);
  });

  it('reads its files, and names one that is not there', () => {
    expect(opened().read('readings.csv').text).toBe(readings);
    expect(() => opened().read('none.csv')).toThrow(ShopError);
    expect(() => opened().read('none.csv')).toThrow(
      /^file: "none\.csv" given; possible: the name of a file that lies in /,
    );
  });

  it('keeps a paper under its name, in place of the one before', () => {
    const store = opened();
    store.save('template.html', 'first');
    store.save('template.html', 'second');
    expect(store.read('template.html').text).toBe('second');
    expect([store.has('template.html'), store.has('none.html')]).toEqual([true, false]);
  });

  it("changes the shop's stock whole or not at all", () => {
    const { stock } = opened();
    expect(stock.read()).toBeUndefined();
    stock.change(() => ({ boards: ['A'] }));
    stock.change((before) => ({ before }));
    expect(stock.read()).toEqual({ before: { boards: ['A'] } });
    const failing = () => {
      throw new Error('no');
    };
    expect(() => stock.change(failing)).toThrow('no');
    expect(stock.read()).toEqual({ before: { boards: ['A'] } });
  });
});

it('decisions are taken by the same rules wherever they are kept: the same words, the same bytes', () => {
  const heads = stores.map(([, opened]) => {
    const job = commissionIn<TestDecisions>({
      folder: '/shop/2026-03-12-box',
      name: '2026-03-12-box',
      store: opened(),
      schemas,
      versions,
      notices: noticesTo(() => {}),
      signature: () => ({ at: '2026-03-12T19:30:00-05:00', who: 'maker' }),
      sheetOf: (what) => `${what}.ipynb`,
    });
    expect(() => job.need('brief')).toThrow('brief is not decided yet in 2026-03-12-box: run brief.ipynb first.');
    job.read('readings.csv');
    expect(job.decide('brief', brief).outcome).toBe('recorded');
    expect(job.decide('brief', brief).outcome).toBe('same');
    job.need('brief');
    job.decide('sizing', sizing);
    job.decide('brief', otherBrief(11));
    job.need('sizing');
    expect(job.notices).toEqual([
      'sizing (entry 2) rests on brief as of entry 1; brief was decided again in entry 3. Run sizing.ipynb again.',
    ]);
    return job.head();
  });
  expect(heads[0]?.seq).toBe(3);
  expect(heads[1]).toEqual(heads[0]);
});

describe('a record kept in memory', () => {
  it('can be written to a folder and read there, and the other way', () => {
    const folder = commissionFolder();
    const store = memoryStore();
    store.append(() => content());
    store.append(() => content({ what: 'sizing' }));
    writeFileSync(join(folder, 'record.jsonl'), store.record());
    expect(readRecord(folder)).toMatchObject({ faults: [], entries: store.entries() });
    expect(memoryStore({ record: recordBytes([content()]) }).entries()).toHaveLength(1);
  });

  it('goes on after a line that was never finished, and refuses one that was changed', () => {
    const whole = recordBytes([content()]);
    const cut = memoryStore({ record: Buffer.concat([whole, Buffer.from('{"seq":2,"at"')]) });
    expect(cut.append(() => content()).entry?.seq).toBe(2);
    const bare = memoryStore({ record: whole.subarray(0, -1) });
    expect(bare.append(() => content()).entry?.seq).toBe(2);
    const changed = Buffer.from(whole.toString().replace('maker', 'baker'));
    expect(() => memoryStore({ name: '2026-03-12-box', record: changed }).entries()).toThrow(
      'The record of 2026-03-12-box is damaged: line 1 was changed',
    );
  });
});

describe('a sheet that still runs', () => {
  const setUp = () => {
    const folder = commissionFolder();
    folderStore(folder).append(() => content());
    const waiting = join(commissionFolder(), '2026-03-12-blanket-box');
    return { folder, waiting, store: stagedStore(folder, waiting) };
  };

  it('sees its own entries and papers, and the commission has them once it has ended', () => {
    const { folder, waiting, store } = setUp();
    const { entry } = store.append(() => content({ what: 'sizing' }));
    store.save('template.html', 'text');
    expect(store.entries()).toHaveLength(2);
    expect(store.read('template.html').text).toBe('text');
    expect(folderStore(folder).entries()).toHaveLength(1);
    expect(folderStore(folder).has('template.html')).toBe(false);
    takeOver(folder, waiting);
    expect(folderStore(folder).entries().at(-1)).toEqual(entry);
    expect(folderStore(folder).read('template.html').text).toBe('text');
    expect(store.entries()).toHaveLength(2);
    takeOver(folder, waiting);
    expect(readRecord(folder)).toMatchObject({ faults: [], entries: { length: 2 } });
  });

  it('keeps nothing when the record was written to meanwhile, and says so', () => {
    const { folder, waiting, store } = setUp();
    store.append(() => content({ what: 'sizing' }));
    store.save('template.html', 'text');
    const { entry } = folderStore(folder).append(() => content({ what: 'lid' }));
    expect(() => takeOver(folder, waiting)).toThrow('was written to while a sheet ran');
    expect(folderStore(folder).entries().at(-1)).toEqual(entry);
    expect(folderStore(folder).has('template.html')).toBe(false);
  });
});
