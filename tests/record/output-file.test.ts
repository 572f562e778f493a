import { mkdtempSync, readdirSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { saveFile } from '../../kernel-helpers/src/record/output-file.js';

let folder: string;
beforeEach(() => {
  folder = mkdtempSync(join(tmpdir(), 'kept-'));
});
afterEach(() => rmSync(folder, { recursive: true }));

describe('a paper that a sheet makes', () => {
  it('is kept whole, takes the place of the one before and leaves nothing else', () => {
    saveFile(folder, 'joint-template.html', 'first');
    saveFile(folder, 'joint-template.html', 'second');
    expect(readFileSync(join(folder, 'joint-template.html'), 'utf8')).toBe('second');
    expect(readdirSync(folder)).toEqual(['joint-template.html']);
  });

  it.each(['../x.html', 'record.jsonl', '01-brief.ipynb', 'index.html', '.hidden.html', 'a/b.dxf', ''])(
    'is not called %j',
    (file) => {
      expect(() => saveFile(folder, file, 'text')).toThrow('possible: a plain name such as joint-template.html');
      expect(readdirSync(folder)).toEqual([]);
    },
  );
});
