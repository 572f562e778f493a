import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { brief, commissionFolder, must, open, otherBrief, sizing, writeSheet } from './setting.js';

const decided = (folder: string, text: string) => {
  const job = open(folder);
  job.save('joint-template.html', text);
  return job.decide('brief', brief);
};

it('a paper that a sheet makes is kept whole, takes the place of the one before and leaves nothing else', () => {
  const folder = commissionFolder();
  decided(folder, 'first');
  decided(folder, 'second');
  expect(readFileSync(join(folder, 'joint-template.html'), 'utf8')).toBe('second');
  expect(readdirSync(folder)).toEqual(['joint-template.html', 'record.jsonl']);
});

it.each(['../x.html', 'record.jsonl', '01-brief.ipynb', 'index.html', '.hidden.html', 'a/b.dxf', ''])(
  'a paper is not called %j',
  (file) => {
    const folder = commissionFolder();
    expect(() => open(folder).save(file, 'text')).toThrow('possible: a plain name such as joint-template.html');
    expect(readdirSync(folder)).toEqual([]);
  },
);

it('a paper waits for its decision, and that of a refused one leaves the good one as it was', () => {
  const folder = commissionFolder();
  const paper = () => readFileSync(join(folder, 'joint-template.html'), 'utf8');
  const { entry } = decided(folder, 'good: [reference]');
  expect(entry?.papers).toEqual(['joint-template.html']);
  expect(paper()).toBe(`good: 1:${entry?.hash.slice(0, 12)}`);
  const job = open(folder);
  job.save('joint-template.html', 'bad');
  const stop = { rule: 'wall', verdict: 'stop' as const, figures: '1/16 in', reason: 'it splits' };
  expect(() => job.decide('brief', { ...brief, seed: 2, findings: [stop] })).toThrow('wall');
  expect(paper()).toMatch(/^good/);
  job.decide('brief', { ...brief, seed: 2, findings: [stop], overrides: { wall: 'it is glued' } });
  expect(paper()).toBe('bad');
});

describe('a paper whose decision is behind', () => {
  const page = '<!doctype html><html><body class="paper"><h1>Quote</h1></body></html>';
  const sized = (folder: string) => {
    const job = open(folder);
    job.need('brief');
    job.save('quote.html', page);
    return job.decide('sizing', sizing);
  };

  it('says so across its head until the decision is made anew', () => {
    const folder = commissionFolder();
    const paper = () => readFileSync(join(folder, 'quote.html'), 'utf8');
    open(folder).decide('brief', brief);
    sized(folder);
    expect(paper()).toBe(page);
    for (const inside of [11, 12]) open(folder).decide('brief', otherBrief(inside));
    expect(paper().match(/Behind: do not work from this paper\./g)).toHaveLength(1);
    expect(paper()).toContain('sizing (entry 2) rests on brief as of entry 1; brief was decided again in entry 4.');
    expect(paper()).toMatch(/<body class="paper">\n<aside data-behind/);
    expect(sized(folder).outcome).toBe('recorded');
    expect(paper()).toBe(page);
  });

  it('is good again once what it rests on is again as it was', () => {
    const folder = commissionFolder();
    const paper = () => readFileSync(join(folder, 'quote.html'), 'utf8');
    open(folder).decide('brief', brief);
    sized(folder);
    open(folder).decide('brief', otherBrief(11));
    expect(paper()).toContain('Behind:');
    open(folder).decide('brief', brief);
    expect(paper()).toBe(page);
  });

  it('and nothing more is decided on it', () => {
    const folder = commissionFolder();
    writeSheet(folder, '02-sizing.ipynb', "job.decide('sizing', {})");
    open(folder).decide('brief', brief);
    sized(folder);
    open(folder).decide('brief', otherBrief(11));
    const job = open(folder);
    job.need('sizing');
    const before = job.entries().length;
    expect(() => job.decide('brief', otherBrief(12))).toThrow(
      'brief is not recorded: sizing (entry 2) rests on brief as of entry 1; brief was decided again in entry 3. Run 02-sizing.ipynb first.',
    );
    expect(job.entries()).toHaveLength(before);
    expect(must(open(folder).decide('brief', otherBrief(12)).entry).seq).toBe(4);
  });
});
