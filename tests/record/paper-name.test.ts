import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, it } from 'vitest';
import { commissionFolder, open } from './setting.js';

it('a paper that a sheet makes is kept whole, takes the place of the one before and leaves nothing else', () => {
  const folder = commissionFolder();
  open(folder).save('joint-template.html', 'first');
  open(folder).save('joint-template.html', 'second');
  expect(readFileSync(join(folder, 'joint-template.html'), 'utf8')).toBe('second');
  expect(readdirSync(folder)).toEqual(['joint-template.html']);
});

it.each(['../x.html', 'record.jsonl', '01-brief.ipynb', 'index.html', '.hidden.html', 'a/b.dxf', ''])(
  'a paper is not called %j',
  (file) => {
    const folder = commissionFolder();
    expect(() => open(folder).save(file, 'text')).toThrow('possible: a plain name such as joint-template.html');
    expect(readdirSync(folder)).toEqual([]);
  },
);
