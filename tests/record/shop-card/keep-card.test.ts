import { existsSync, mkdirSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { keepShopCard } from '../../../kernel-helpers/src/record/shop-card/keep-card.js';
import { usualShop } from '../../../kernel-helpers/src/record/shop-card/shop-card.js';

let root: string;
beforeEach(() => {
  root = mkdtempSync(join(tmpdir(), 'shop-'));
  mkdirSync(join(root, 'data', 'commissions'), { recursive: true });
  mkdirSync(join(root, 'worksheets'));
});
afterEach(() => rmSync(root, { recursive: true, force: true }));

const file = () => join(root, 'data', 'shop.json');
const keepFrom = (typed: object, keep: boolean) => keepShopCard(typed, { keep, folder: join(root, 'worksheets') });

describe('the shop card, as the sheet of the shop keeps it', () => {
  it('is kept when it is decided, and only looked over until then', () => {
    const looked = keepFrom({ hourlyRate: 42 }, false);
    expect(looked.moved).toEqual([{ field: 'hourly rate', before: '38', now: '42' }]);
    expect(existsSync(file())).toBe(false);

    expect(keepFrom({ hourlyRate: 42 }, true).note).toMatch(/^Kept\./);
    expect(JSON.parse(readFileSync(file(), 'utf8'))).toEqual({ ...usualShop(), hourlyRate: 42 });
    expect(keepFrom({ hourlyRate: 42 }, true).note).toMatch(/^Same/);
  });

  it('says what a change did, and refuses what cannot be without touching the card', () => {
    keepFrom({ hourlyRate: 42 }, true);
    const before = readFileSync(file(), 'utf8');
    expect(() => keepFrom({ hourlyRate: 'much' }, true)).toThrow('hourlyRate: "much" given; possible: a number');
    expect(readFileSync(file(), 'utf8')).toBe(before);
    expect(keepFrom({ hourlyRate: 42, kerf: '3 mm' }, true).moved).toEqual([
      { field: 'kerf', before: '1/8 in', now: '3 mm' },
    ]);
  });

  it('that somebody broke by hand is named by file, line and field, and left as it is', () => {
    writeFileSync(file(), '{\n  "hourlyRate": 40,\n  "kerf": "3 in"\n}\n');
    expect(() => keepFrom({}, true)).toThrow(
      /^data\/shop\.json, line 3, kerf: "3 in" given; possible: 1\/64 in to 1\/2 in/,
    );
    expect(readFileSync(file(), 'utf8')).toContain('"3 in"');
  });
});
