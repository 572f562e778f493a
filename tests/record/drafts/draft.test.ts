import { existsSync, mkdirSync, readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { inspect } from 'node:util';
import { afterEach, describe, expect, it, vi } from 'vitest';
import { ShopError } from '../../../kernel-helpers/src/measure/shop-error.js';
import { readDrafts } from '../../../kernel-helpers/src/record/store/drafts-file.js';
import { takeOver } from '../../../kernel-helpers/src/record/store/staged-store.js';
import { brief, commissionFolder, must, open, otherBrief, sizing, testFolder, writeSheet } from '../setting.js';

afterEach(() => vi.unstubAllEnvs());

const tried = <T extends { inputs: object }>(decision: T): T => ({
  ...decision,
  inputs: { ...decision.inputs, decided: false },
});
const recordOf = (folder: string) => readFileSync(join(folder, 'record.jsonl'), 'utf8');
const sized = (folder: string, decision = sizing) => {
  const job = open(folder);
  job.need('brief');
  return job.decide('sizing', decision);
};
const page = '<!doctype html><html><body class="paper"><h1>Quote</h1><p>Reference [reference]</p></body></html>';

describe('a decision that is only tried', () => {
  it('says that it is a draft and how to decide it; five trials of one number leave no trace in the record', () => {
    const folder = commissionFolder();
    open(folder).decide('brief', brief);
    const before = recordOf(folder);
    for (const inside of [9, 9.5, 11, 12, 13]) {
      const { outcome, entry, draft } = open(folder).decide('brief', tried(otherBrief(inside)));
      expect(outcome).toBe('draft');
      expect(entry).toBeUndefined();
      expect(must(draft).results).toMatchObject({ inside });
    }
    expect(recordOf(folder)).toBe(before);
    expect(open(folder).drafts()).toMatchObject([{ what: 'brief', results: { inside: 13 } }]);
    expect(inspect(open(folder).decide('brief', tried(otherBrief(13))))).toBe(
      'Draft: brief is worked out and not decided. Set decided: true and run the sheet again, or npm run work -- blanket-box --decide.',
    );
    expect(readdirSync(folder)).toEqual(['drafts', 'record.jsonl']);
    expect(readdirSync(join(folder, 'drafts'))).toEqual(['drafts.json']);
  });

  it('is written once: drafted again without a change, not a byte of it moves', () => {
    const folder = commissionFolder();
    open(folder).decide('brief', tried(brief));
    const path = join(folder, 'drafts', 'drafts.json');
    writeFileSync(path, readFileSync(path, 'utf8').replace(/"at":"[^"]+"/, '"at":"2026-03-12T19:30:00-05:00"'));
    const before = readFileSync(path, 'utf8');
    open(folder).decide('brief', tried(brief));
    expect(readFileSync(path, 'utf8')).toBe(before);
  });

  it('is taken up by the sheets after it, which say so, and rest their drafts on it', () => {
    const folder = commissionFolder();
    open(folder).decide('brief', brief);
    open(folder).decide('brief', tried(otherBrief(12)));
    const job = open(folder);
    expect(job.need('brief').inside).toBe(12);
    job.need('brief');
    expect(job.notices).toEqual(['Draft: brief is worked out and not decided.']);
    expect(job.decide('sizing', tried(sizing)).draft?.needs).toEqual({ brief: { draft: expect.any(String) } });
    expect(
      open(folder)
        .drafts()
        .map(({ what }) => what),
    ).toEqual(['brief', 'sizing']);
  });

  it('is none when the record says the same: an earlier draft of it goes', () => {
    const folder = commissionFolder();
    const { entry } = open(folder).decide('brief', brief);
    open(folder).decide('brief', tried(otherBrief(12)));
    const again = open(folder).decide('brief', tried(brief));
    expect(again).toMatchObject({ outcome: 'same', entry });
    expect(again.note).toMatch(/^Same: brief is as recorded on .*, entry 1\.$/);
    expect(readdirSync(folder)).toEqual(['record.jsonl']);
  });

  it('goes when it is decided, and what said that it would be decided is not kept', () => {
    const folder = commissionFolder();
    open(folder).decide('brief', tried(brief));
    const { entry } = open(folder).decide('brief', { ...brief, inputs: { ...brief.inputs, decided: true } as never });
    expect(entry?.inputs).toEqual(brief.inputs);
    expect(open(folder).drafts()).toEqual([]);
    expect(readdirSync(folder)).toEqual(['record.jsonl']);
  });

  it('is decided after all where every decision is', () => {
    const folder = commissionFolder();
    open(folder).decide('brief', tried(otherBrief(12)));
    vi.stubEnv('COMMISSION_DECIDE', '1');
    expect(open(folder).decide('brief', tried(brief)).outcome).toBe('recorded');
    expect(sized(folder, tried(sizing)).entry?.needs).toMatchObject({ brief: { seq: 1 } });
    expect(open(folder).drafts()).toEqual([]);
  });

  it('is refused past a stop without a reason, as one that is decided is', () => {
    const folder = commissionFolder();
    const stop = { rule: 'wall', verdict: 'stop' as const, figures: '1/16 in', reason: 'it splits' };
    expect(() => open(folder).decide('brief', { ...tried(brief), findings: [stop] })).toThrow('wall');
    expect(readdirSync(folder)).toEqual([]);
  });

  it('is asked for with true or false, nothing else', () => {
    const inputs = { ...brief.inputs, decided: 'no' };
    expect(() => open(commissionFolder()).decide('brief', { ...brief, inputs })).toThrow(
      'decided: "no" given; possible: true, or false to try it first',
    );
  });

  it('is no matter of a check: it compares with the record, and each decision is made', () => {
    const folder = commissionFolder();
    open(folder).decide('brief', brief);
    open(folder).decide('brief', tried(otherBrief(12)));
    vi.stubEnv('COMMISSION_REHEARSAL', testFolder());
    const job = open(folder);
    expect(job.drafts()).toEqual([]);
    expect(job.need('brief').inside).toBe(10);
    expect(job.decide('brief', tried(brief)).note).toBe('Rehearsed: brief, entry 1.');
  });

  it('is compared with nothing by a check, where it was never decided', () => {
    const folder = commissionFolder();
    open(folder).decide('brief', brief);
    const rehearsal = testFolder();
    vi.stubEnv('COMMISSION_REHEARSAL', rehearsal);
    const job = open(folder);
    job.need('brief');
    job.save('quote.html', page);
    expect(job.decide('sizing', tried(sizing)).outcome).toBe('draft');
    expect(open(folder).need('sizing')).toEqual(sizing.results);
    expect(readDrafts(rehearsal).map(({ what }) => what)).toEqual(['sizing']);
    expect(existsSync(join(rehearsal, 'record.jsonl'))).toBe(false);
    expect(readdirSync(folder)).toEqual(['record.jsonl']);
  });

  it('is not kept in practice', () => {
    const sheets = testFolder();
    expect(open(sheets).decide('brief', tried(brief)).outcome).toBe('practice');
    expect(readdirSync(sheets)).toEqual([]);
  });
});

describe('deciding on a draft', () => {
  it('is refused by its name, and says which sheet to decide first', () => {
    const folder = commissionFolder();
    writeSheet(folder, '01-brief.ipynb', "job.decide('brief', {})");
    open(folder).decide('brief', tried(brief));
    const decide = () => sized(folder);
    expect(decide).toThrow(ShopError);
    expect(decide).toThrow(
      'sizing is not recorded: it rests on brief, which is a draft. Set decided: true in 01-brief.ipynb and run that first.',
    );
    expect(existsSync(join(folder, 'record.jsonl'))).toBe(false);
    open(folder).decide('brief', brief);
    expect(sized(folder).entry?.seq).toBe(2);
  });
});

describe('a draft that rests on what has moved', () => {
  it('says so where it is needed; a draft can be made on it, a decision cannot', () => {
    const folder = commissionFolder();
    writeSheet(folder, '02-sizing.ipynb', "job.decide('sizing', {})");
    open(folder).decide('brief', tried(brief));
    sized(folder, tried(sizing));
    open(folder).decide('brief', otherBrief(12));
    const job = open(folder);
    job.need('sizing');
    expect(job.notices).toEqual([
      'Draft: sizing is worked out and not decided.',
      'the draft of sizing rests on brief as an earlier draft has it; brief was decided in entry 1. Run 02-sizing.ipynb again.',
    ]);
    expect(job.decide('brief', tried(otherBrief(13))).outcome).toBe('draft');
    expect(() => job.decide('brief', otherBrief(13))).toThrow(
      'brief is not recorded: the draft of sizing rests on brief as an earlier draft has it; brief is drafted anew. Run 02-sizing.ipynb first.',
    );
  });

  it('does not, when what it rests on was decided as it was drafted', () => {
    const folder = commissionFolder();
    open(folder).decide('brief', tried(brief));
    sized(folder, tried(sizing));
    open(folder).decide('brief', brief);
    const job = open(folder);
    job.need('sizing');
    expect(job.notices).toEqual(['Draft: sizing is worked out and not decided.']);
  });

  it('a decision in the record is no draft, and is named where a draft goes another way', () => {
    const folder = commissionFolder();
    open(folder).decide('brief', brief);
    sized(folder);
    open(folder).decide('brief', tried(otherBrief(12)));
    const job = open(folder);
    job.need('sizing');
    expect(job.notices).toEqual([
      'sizing (entry 2) rests on brief as of entry 1; brief is drafted anew. Run the sheet that decides sizing again.',
    ]);
  });
});

describe('a paper of a draft', () => {
  const drafted = (folder: string, text = page) => {
    const job = open(folder);
    job.save('quote.html', text);
    return job.decide('brief', tried(brief));
  };

  it('lies with the drafts and says DRAFT across every page; the one that was decided stays as it was', () => {
    const folder = commissionFolder();
    const job = open(folder);
    job.save('quote.html', page);
    job.decide('brief', otherBrief(12));
    const decided = readFileSync(join(folder, 'quote.html'), 'utf8');
    drafted(folder);
    expect(readFileSync(join(folder, 'quote.html'), 'utf8')).toBe(decided);
    const paper = readFileSync(join(folder, 'drafts', 'quote.html'), 'utf8');
    expect(paper).toContain('>DRAFT</span>');
    expect(paper).toContain('position: fixed');
    expect(paper).toContain('Draft: brief is worked out and not decided.');
    expect(paper).toContain('Reference (a draft has none)');
    expect(open(folder).drafts()[0]?.papers).toEqual(['quote.html']);
  });

  it('goes with its draft', () => {
    const folder = commissionFolder();
    drafted(folder);
    expect(readdirSync(join(folder, 'drafts'))).toEqual(['drafts.json', 'quote.html']);
    open(folder).decide('brief', brief);
    expect(readdirSync(folder)).toEqual(['record.jsonl']);
  });
});

describe('a file of drafts that is damaged', () => {
  it.each([
    ['{"drafts": [', 'it was cut short or changed'],
    ['[{ "what": "brief" }]', 'it is not as the daybook wrote it'],
    ['[{ "papers": ["../record.jsonl"] }]', 'it is not as the daybook wrote it'],
  ])('%j is named, with what to do; the record stays as it was', (text, wrong) => {
    const folder = commissionFolder();
    open(folder).decide('brief', brief);
    const before = recordOf(folder);
    const path = join(folder, 'drafts', 'drafts.json');
    mkdirSync(join(folder, 'drafts'));
    writeFileSync(path, text);
    for (const use of [() => open(folder).need('brief'), () => open(folder).decide('brief', otherBrief(12))]) {
      expect(use).toThrow(ShopError);
      expect(use).toThrow(
        `${path}: ${wrong}. It holds drafts only, nothing that was decided: remove it and run the sheets again. The record is as it was.`,
      );
    }
    expect(recordOf(folder)).toBe(before);
    expect(readFileSync(path, 'utf8')).toBe(text);
  });
});

describe('a sheet that still runs', () => {
  const running = (folder: string) => {
    const waiting = join(testFolder(), 'waiting');
    vi.stubEnv('COMMISSION_WAITING', waiting);
    const job = open(folder);
    vi.unstubAllEnvs();
    return { job, waiting };
  };

  it('sees its own drafts, and leaves neither draft nor paper when it fails', () => {
    const folder = commissionFolder();
    const { job, waiting } = running(folder);
    job.save('quote.html', page);
    job.decide('brief', tried(brief));
    expect(job.drafts()).toMatchObject([{ what: 'brief' }]);
    expect(readdirSync(folder)).toEqual([]);
    takeOver(folder, waiting);
    expect(open(folder).drafts()).toEqual(job.drafts());
    expect(readFileSync(join(folder, 'drafts', 'quote.html'), 'utf8')).toContain('DRAFT');
  });

  it('leaves alone what others draft meanwhile', () => {
    const folder = commissionFolder();
    open(folder).decide('sizing', tried(sizing));
    open(folder).decide('brief', tried(brief));
    const { job, waiting } = running(folder);
    job.decide('brief', brief);
    expect(job.drafts().map(({ what }) => what)).toEqual(['sizing']);
    open(folder).decide('brief', tried(otherBrief(14)));
    takeOver(folder, waiting);
    expect(open(folder).drafts()).toMatchObject([{ what: 'sizing' }, { what: 'brief', results: { inside: 14 } }]);
    expect(open(folder).entries()).toMatchObject([{ what: 'brief' }]);
  });
});
