import { writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { keepUses, keptUses } from '../../../kernel-helpers/src/record/uses/kept-uses.js';
import { testFolder } from '../setting.js';

describe('what the runner hears of it', () => {
  it('is what the sheet in that kernel noted last; nothing for one that opened no commission', () => {
    const folder = join(testFolder(), 'used');
    expect(keptUses(folder, process.pid)).toEqual({});
    keepUses(folder, { 'decision brief': 'a' });
    keepUses(folder, { 'decision brief': 'a', record: 'b' });
    expect(keptUses(folder, process.pid)).toEqual({ 'decision brief': 'a', record: 'b' });
  });

  it('is not known when it was cut short', () => {
    const folder = testFolder();
    writeFileSync(join(folder, '77.json'), '{"decision br');
    expect(keptUses(folder, 77)).toBeUndefined();
  });
});
