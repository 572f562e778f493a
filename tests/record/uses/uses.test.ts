import { beforeEach, describe, expect, it } from 'vitest';
import { type Commission, commissionIn } from '../../../kernel-helpers/src/record/commission.js';
import { noticesTo } from '../../../kernel-helpers/src/record/notices.js';
import { type MemoryStore, memoryStore } from '../../../kernel-helpers/src/record/store/memory-store.js';
import { lookAt, noted, ownDecisions, type Uses } from '../../../kernel-helpers/src/record/uses/uses.js';
import { brief, schemas, sizing, type TestDecisions, versions } from '../setting.js';

let store: MemoryStore;
let uses: Uses;
let sheet: Commission<TestDecisions>;

/** A sheet opened anew: nothing is noted of it yet. */
function openSheet(): void {
  const opened = commissionIn<TestDecisions>({
    name: '2026-03-12-blanket-box',
    folder: '/shop',
    store,
    schemas,
    versions,
    notices: noticesTo(() => {}),
    signature: () => ({ at: '2026-03-12T19:30:00-05:00', who: 'maker' }),
    sheetOf: () => undefined,
  });
  const shopStock = { offered: () => ({ boards: [], marks: [] }), keepOffcuts: () => {} };
  uses = {};
  const job = Object.assign(opened, { shopStock }) as never;
  sheet = Object.assign(
    opened,
    noted(job, store, (noted) => {
      uses = noted;
    }),
  );
}
const moved = () => Object.keys(uses).filter((thing) => lookAt(store, thing) !== uses[thing]);

beforeEach(() => {
  store = memoryStore({ files: { 'room.csv': 'day,humidity' } });
  openSheet();
});

describe('what a sheet looks at', () => {
  it('is noted as it is called for, its own decisions apart', () => {
    sheet.decide('brief', brief);
    sheet.need('brief');
    sheet.find('sizing');
    sheet.read('room.csv');
    sheet.decisions();
    sheet.reasons();
    expect(Object.keys(uses)).toEqual([
      'own brief',
      'decision brief',
      'decision sizing',
      'file room.csv',
      'record',
      'reasons',
    ]);
    expect(ownDecisions(uses)).toEqual(['brief']);
    expect(moved()).toEqual([]);
  });

  it('has moved when what an earlier decision hands on is another, and not when the same is decided once more', () => {
    sheet.decide('brief', brief);
    openSheet();
    sheet.need('brief');
    const asked = uses;
    sheet.decide('brief', { ...brief, inputs: { inside: '10 in', why: 'as asked' } });
    uses = asked;
    expect(store.entries()).toHaveLength(2);
    expect(lookAt(store, 'decision brief')).toBe(asked['decision brief']);
    sheet.decide('brief', { ...brief, results: { inside: 11, wood: 'walnut-black' } });
    expect(lookAt(store, 'decision brief')).not.toBe(asked['decision brief']);
  });

  it('has moved when a decision that was not there is, and when any entry comes for a sheet that shows the record', () => {
    sheet.decide('brief', brief);
    openSheet();
    sheet.find('sizing');
    sheet.head();
    const asked = uses;
    sheet.decide('sizing', sizing);
    uses = asked;
    expect(moved()).toEqual(expect.arrayContaining(['decision sizing', 'record']));
  });

  it('has moved when its own decision is behind, or a paper of it is not as it was kept', () => {
    sheet.decide('brief', brief);
    openSheet();
    sheet.need('brief');
    sheet.save('stick.html', '<p>11 1/4</p>');
    sheet.decide('sizing', sizing);
    const own = { 'own sizing': uses['own sizing'] as string };
    expect(lookAt(store, 'own sizing')).toBe(own['own sizing']);
    store.save('stick.html', '<p>12</p>');
    expect(lookAt(store, 'own sizing')).not.toBe(own['own sizing']);
    store.save('stick.html', '<p>11 1/4</p>');
    sheet.decide('brief', { ...brief, results: { inside: 11, wood: 'walnut-black' } });
    expect(lookAt(store, 'own sizing')).not.toBe(own['own sizing']);
  });

  it('has not moved for the reasons of a stop when a decision without any is made', () => {
    sheet.reasons();
    const asked = uses;
    sheet.decide('brief', brief);
    expect(lookAt(store, 'reasons')).toBe(asked.reasons);
    const stop = { rule: 'wall', verdict: 'stop' as const, figures: '1/16 in', reason: 'too thin' };
    sheet.decide('sizing', { ...sizing, findings: [stop], overrides: { wall: 'it is a toy' } });
    expect(lookAt(store, 'reasons')).not.toBe(asked.reasons);
  });

  it("has moved with a file, and with the shop's stock", () => {
    sheet.read('room.csv');
    const job = sheet as unknown as { shopStock: { offered(): void } };
    job.shopStock.offered();
    expect(moved()).toEqual([]);
    store.save('room.csv', 'day,humidity\n1,0.4');
    store.stock.change(() => ({ boards: [] }));
    expect(moved()).toEqual(['file room.csv', 'stock']);
  });
});
