import { existsSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { afterEach, describe, expect, it } from 'vitest';
import * as z from 'zod';
import { commissionIn } from '../../kernel-helpers/src/record/commission.js';
import { commissionFolder as placeOf } from '../../kernel-helpers/src/record/commission-folder.js';
import type { StockDecision } from '../../kernel-helpers/src/record/decisions/decisions.js';
import { noticesTo } from '../../kernel-helpers/src/record/notices.js';
import { commissionStock } from '../../kernel-helpers/src/record/shop-stock.js';
import { commissionFolder, testFolder, versions } from './setting.js';

const offcut = { mark: 'A-1', thickness: 1, width: 6, length: 30, price: 10, inHand: true };
const bought = { mark: 'A', thickness: 1, width: 8, length: 96, price: 10 };
const results = { boards: [bought], offcuts: [offcut] };

/** A commission with the shop's stock beside it, as a sheet opens both. */
function open(folder: string, said: string[] = []) {
  const place = placeOf(folder);
  const notices = noticesTo((line) => said.push(line));
  const job = commissionIn<{ stock: StockDecision }>({
    ...place,
    schemas: { stock: z.looseObject({}) },
    versions,
    notices,
  });
  const shopStock = commissionStock({
    job,
    store: place.store.stock,
    without: place.withoutStock,
    rehearsal: place.rehearsal !== undefined,
    say: notices.say,
  });
  const plan = (results: object, inputs = {}) => job.decide('stock', { inputs, results: results as StockDecision });
  return { plan, ...shopStock };
}

afterEach(() => {
  delete process.env.COMMISSION_REHEARSAL;
});

describe("offcuts in the shop's stock", () => {
  it('go from one commission to the next, once, however often they are kept', () => {
    const root = testFolder();
    const first = commissionFolder(root, '2026-01-02-chest');
    const said: string[] = [];
    for (let i = 0; i < 2; i++) {
      const job = open(first, said);
      expect(job.offered().boards).toEqual([]);
      job.plan(results);
      job.keepOffcuts();
    }
    expect(said).toContain("In the shop's stock: offcuts A-1.");
    expect(open(commissionFolder(root, '2026-02-03-box')).offered().boards).toEqual([offcut]);
    expect(existsSync(join(root, 'data', 'stock.json.lock'))).toBe(false);
  });

  it('leave what the maker typed as it was typed', () => {
    const root = testFolder();
    const folder = commissionFolder(root);
    const own = { mark: 'S1', thickness: '4/4', width: '7 1/4 in', length: '3 ft', price: 9 };
    const file = join(root, 'data', 'stock.json');
    writeFileSync(file, JSON.stringify({ boards: [own] }));
    const job = open(folder);
    expect(job.offered().boards).toMatchObject([{ mark: 'S1', width: 7.25, inHand: true }]);
    job.plan({ boards: [{ ...bought, mark: 'S1' }], offcuts: [] });
    job.keepOffcuts();
    expect(JSON.parse(readFileSync(file, 'utf8'))).toMatchObject({ boards: [own] });
    expect(open(commissionFolder(root, '2026-05-05-next')).offered().boards).toEqual([]);
    expect(open(folder).offered().boards, 'the commission itself may plan again').toHaveLength(1);
  });

  it('of the demonstration, whose boards are invented, stay out of it', () => {
    const root = testFolder();
    const folder = commissionFolder(root, '2026-01-02-tea-chest');
    open(folder).plan(results);
    const said: string[] = [];
    open(folder, said).keepOffcuts();
    expect(said).toContain('The boards of the demonstration are invented: no offcut goes into your stock.');
    expect(existsSync(join(root, 'data', 'stock.json'))).toBe(false);
  });

  it('need a decision first', () => {
    expect(() => open(commissionFolder()).keepOffcuts()).toThrow('stock is not decided yet');
  });

  it('a check sees the stock as it was when the commission was planned, and writes nothing', () => {
    const root = testFolder();
    const folder = commissionFolder(root, '2026-01-02-chest');
    const job = open(folder);
    job.offered();
    job.plan(results);
    job.keepOffcuts();
    const other = commissionFolder(root, '2026-02-03-box');
    const next = open(other);
    next.offered();
    next.plan({ boards: [], offcuts: [{ ...offcut, mark: 'Z-1' }] });
    next.keepOffcuts();
    const file = readFileSync(join(root, 'data', 'stock.json'), 'utf8');
    expect(open(folder).offered().boards).toHaveLength(1);
    process.env.COMMISSION_REHEARSAL = testFolder();
    const rehearsed = open(folder);
    expect(rehearsed.offered().boards).toEqual([]);
    rehearsed.keepOffcuts();
    expect(readFileSync(join(root, 'data', 'stock.json'), 'utf8')).toBe(file);
  });

  it('stay as they were when the file cannot be read, and the message names file and field', () => {
    const root = testFolder();
    const folder = commissionFolder(root);
    const file = join(root, 'data', 'stock.json');
    for (const [text, message] of [
      ['{', 'data/stock.json, line 1: it ends too early'],
      ['{"boards": [\n{"mark": "A"}]}', 'data/stock.json, line 2, boards no. 1, thickness: nothing given'],
    ] as const) {
      writeFileSync(file, text);
      const job = open(folder);
      expect(() => job.offered()).toThrow(message);
      job.plan(results);
      expect(() => job.keepOffcuts()).toThrow(message);
      expect(readFileSync(file, 'utf8')).toBe(text);
    }
  });

  it('are nobody’s in practice', () => {
    const folder = testFolder();
    const said: string[] = [];
    const job = open(folder, said);
    expect(job.offered()).toEqual({ boards: [], marks: [] });
    job.keepOffcuts();
    expect(said).toEqual(['Practice: no offcut goes back into the stock.']);
  });
});
