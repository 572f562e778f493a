import { readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { ShopError } from '../../../kernel-helpers/src/measure/shop-error.js';
import { soundEntries } from '../../../kernel-helpers/src/record/chain/record-file.js';
import { checkCommission } from '../../../kernel-helpers/src/record/check/check.js';
import { commissionFolder as placeOf } from '../../../kernel-helpers/src/record/commission-folder.js';
import { lastDecision, withdraw } from '../../../kernel-helpers/src/record/undo/undo.js';
import { brief, commissionFolder, content, must, open, otherBrief, recordBytes, sizing, versions } from '../setting.js';

const page = '<!doctype html><html><body><h1>Quote</h1></body></html>';

/** A commission with a brief, a sizing that rests on it and has a paper, and a second thought about the sizing. */
function worked(): string {
  const folder = commissionFolder();
  open(folder).decide('brief', brief);
  sized(folder, 11.25);
  sized(folder, 12);
  return folder;
}

function sized(folder: string, width: number) {
  const job = open(folder);
  job.need('brief');
  job.save('quote.html', page);
  return job.decide('sizing', { ...sizing, results: { ...sizing.results, width } });
}

const last = (folder: string) => must(lastDecision(soundEntries(folder)));
const undo = (folder: string) => withdraw({ ...placeOf(folder), versions }, last(folder).entry);

describe('the last decision, withdrawn', () => {
  it('is deleted nowhere: an entry withdraws it, and what stood before stands again', () => {
    const folder = worked();
    const before = readFileSync(join(folder, 'record.jsonl'), 'utf8');
    const { entry, before: stands } = last(folder);
    expect([entry.seq, stands?.seq]).toEqual([3, 2]);
    expect(undo(folder)).toMatchObject({ seq: 4, what: 'sizing', withdraws: { seq: 3, hash: entry.hash } });
    expect(readFileSync(join(folder, 'record.jsonl'), 'utf8').startsWith(before)).toBe(true);
    expect(open(folder).need('sizing').width).toBe(11.25);
    expect(checkCommission(folder)).toMatchObject({ faults: [], stale: [], entries: { length: 4 } });
    expect(
      open(folder)
        .decisions()
        .slice(2)
        .map(({ changed }) => changed),
    ).toEqual(['width: 11.25, now 12; withdrawn in entry 4', 'withdraws entry 3; entry 2 stands again']);
  });

  it('goes on with the one before it, and a withdrawal itself is never withdrawn', () => {
    const folder = worked();
    const undone = [undo(folder), undo(folder), undo(folder)].map(({ withdraws }) => withdraws?.seq);
    expect(undone).toEqual([3, 2, 1]);
    expect(lastDecision(soundEntries(folder))).toBeUndefined();
    expect(open(folder).find('brief')).toBeUndefined();
    expect(open(folder).decisions().at(-1)?.changed).toBe('withdraws entry 1; nothing stands in its place');
    expect(checkCommission(folder).faults).toEqual([]);
  });

  it('can be decided again, and is new then', () => {
    const folder = worked();
    undo(folder);
    expect(sized(folder, 12)).toMatchObject({ outcome: 'recorded', entry: { seq: 5 } });
    expect(open(folder).decisions().at(-1)?.changed).toBe('width: 11.25, now 12');
  });

  it('leaves a paper that says so, until the sheet has run again', () => {
    const folder = worked();
    const paper = () => readFileSync(join(folder, 'quote.html'), 'utf8');
    undo(folder);
    expect(paper()).toContain('Behind: do not work from this paper. sizing (entry 3) was withdrawn in entry 4.');
    for (const inside of [11, 10]) open(folder).decide('brief', otherBrief(inside));
    expect(paper(), 'what stands did not make it').toContain('was withdrawn in entry 4');
    sized(folder, 11.25);
    expect(paper()).toBe(page);
  });

  it('takes the ground from what is drafted on it, which says so', () => {
    const folder = commissionFolder();
    open(folder).decide('brief', brief);
    const job = open(folder);
    job.need('brief');
    job.decide('sizing', { ...sizing, inputs: { ...sizing.inputs, decided: false } as never });
    undo(folder);
    const later = open(folder);
    later.need('sizing');
    expect(later.notices[1]).toContain(
      'the draft of sizing rests on brief as of entry 1; entry 1 was withdrawn in entry 2.',
    );
  });

  it('is refused when another decision was made since it was shown', () => {
    const folder = worked();
    const shown = last(folder).entry;
    sized(folder, 13);
    const before = readFileSync(join(folder, 'record.jsonl'));
    const late = () => withdraw({ ...placeOf(folder), versions }, shown);
    expect(late).toThrow(ShopError);
    expect(late).toThrow('Nothing is withdrawn: sizing, entry 3, is no longer the last decision.');
    expect(readFileSync(join(folder, 'record.jsonl'))).toEqual(before);
  });
});

it('a record that withdraws what it does not hold is at fault', () => {
  const folder = commissionFolder();
  const withdraws = { seq: 1, hash: 'a'.repeat(64) };
  writeFileSync(join(folder, 'record.jsonl'), recordBytes([content(), content({ withdraws })]));
  expect(checkCommission(folder).faults).toMatchObject([
    { line: 2, problem: 'line 2 withdraws brief, entry 1, which is not in this record as it was then' },
  ]);
});
