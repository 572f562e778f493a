import { appendFileSync, cpSync, mkdirSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { checkCommission } from '../../kernel-helpers/src/record/check/check.js';
import { noteHead } from '../../kernel-helpers/src/record/known-heads.js';
import type { CommissionCard } from '../../kernel-helpers/src/shop/commission-card.js';
import { searchCommissions } from '../../kernel-helpers/src/shop/search-commissions.js';
import { shopBook } from '../../kernel-helpers/src/shop/shop-book.js';
import { must, recordBytes, testFolder } from '../record/setting.js';
import { inventShop } from './invented-shop.js';

/** An invented shop's folder of commissions. */
function shop(count: number, truth: Parameters<typeof inventShop>[1]['truth'] = {}, seed = 1) {
  const folder = join(testFolder(), 'data', 'commissions');
  mkdirSync(folder, { recursive: true });
  return { folder, truth: inventShop(folder, { count, seed, truth }) };
}
const record = (folder: string, name: string) => join(folder, name, 'record.jsonl');
const names = (folder: string) => readdirSync(folder).filter((name) => !name.startsWith('.'));

describe('the shop book', () => {
  it('finds what is true of an invented shop: the pace of each operation, how often it wins, what an hour costs', () => {
    const { folder, truth } = shop(400);
    const book = shopBook(folder);
    expect(book.commissions).toHaveLength(400);
    expect(book.problems).toEqual([]);
    for (const { operation, factor, low, high, pieces } of book.corrections) {
      expect(pieces).toBeGreaterThan(100);
      // Four times the half of an eight-in-ten band: over three in a hundred thousand lie outside by chance.
      const reach = 4 * Math.log(high / low);
      expect(Math.abs(Math.log(factor / must(truth.factors[operation])))).toBeLessThan(reach / 2);
    }
    // What is known of the pace by plain standard deviation of taken over estimated, 400 pieces against four assumed.
    const ratios = book.commissions.flatMap(({ worked }) => (worked ? [worked.actual / worked.estimated] : []));
    const mean = ratios.reduce((sum, ratio) => sum + ratio, 0) / ratios.length;
    const scatter = Math.sqrt(ratios.reduce((sum, ratio) => sum + (ratio / mean - 1) ** 2, 0) / ratios.length);
    expect(Math.abs(book.pace / scatter - 1)).toBeLessThan(0.1);
    expect(must(book.won).share).toBeGreaterThan(0.5);
    expect(must(book.won).share).toBeLessThan(0.7);
    expect(must(book.lidsInBand).share).toBeGreaterThan(0.82);
    const [usd] = book.prices;
    const middle = must(usd).asked.reduce((sum, { perHour }) => sum + perHour, 0) / must(usd).asked.length;
    expect(must(must(usd).trend).slope / middle).toBeCloseTo(truth.rise, 2);
  });

  it('corrects the estimate only as far as the pieces go: one slow piece moves it less than twenty', () => {
    const slow = { factors: { 'cut-joint': 1.6 }, wins: 1 };
    const cut = (count: number) =>
      must(shopBook(shop(count, slow).folder).corrections.find(({ operation }) => operation === 'cut-joint'));
    const [few, many] = [cut(3), cut(60)];
    // Single pieces scatter by 25 %: the mean of 60 strays from 1.6 by more than four times 25 % / root 60 only once in 10,000.
    expect(Math.abs(Math.log(many.factor / 1.6))).toBeLessThan((4 * 0.25) / Math.sqrt(60));
    expect(few.factor).toBeLessThan(many.factor);
    expect(few.high - few.low).toBeGreaterThan(many.high - many.low);
    expect(many.because).toMatch(/^your last \d+ pieces took 1\.\d\d times the estimate$/);
  });

  it('says the same from its index as from the records, and notices a record that has grown', () => {
    const { folder } = shop(30);
    const cold = shopBook(folder);
    expect(shopBook(folder)).toEqual(cold);
    rmSync(join(folder, '.shop-index.json'));
    expect(shopBook(folder)).toEqual(cold);
    const name = must(names(folder)[0]);
    rmSync(join(folder, name), { recursive: true });
    expect(shopBook(folder).commissions.map((card) => card.name)).not.toContain(name);
  });

  it('opens with an index that somebody spoilt, and where none can be kept', () => {
    const { folder } = shop(5);
    writeFileSync(join(folder, '.shop-index.json'), '{"layout": 1, "lea');
    const book = shopBook(folder);
    expect(book.commissions).toHaveLength(5);
    rmSync(join(folder, '.shop-index.json'));
    // A folder of its name: the index can be neither read nor written.
    mkdirSync(join(folder, '.shop-index.json'));
    expect(shopBook(folder)).toEqual(book);
    expect(names(folder)).toEqual(readdirSync(folder).slice(1));
  });

  it('names a broken commission and counts all others', () => {
    const { folder } = shop(6);
    const [changed, garbage, cut, unwritten] = names(folder) as [string, string, string, string];
    const text = readFileSync(record(folder, changed), 'utf8');
    writeFileSync(record(folder, changed), text.replace('Invented client 0', 'Somebody else'));
    writeFileSync(record(folder, garbage), 'not a record\n');
    noteHead(join(folder, cut));
    writeFileSync(record(folder, cut), `${readFileSync(record(folder, cut), 'utf8').split('\n')[0]}\n`);
    rmSync(record(folder, unwritten));
    const book = shopBook(folder);
    expect(book.problems).toEqual([
      { name: changed, problem: expect.stringMatching(/damaged: line 1 was changed/) },
      { name: garbage, problem: expect.stringMatching(/damaged: line 1/) },
      { name: cut, problem: expect.stringMatching(/its end was cut off, or it was written anew/) },
    ]);
    expect(book.empty).toEqual([unwritten]);
    expect(book.commissions).toHaveLength(2);
    expect(shopBook(folder)).toEqual(book);
  });

  it('counts a folder that was copied by hand, even twice, only once: the one whose record goes furthest', () => {
    const { folder } = shop(4);
    const before = shopBook(folder);
    const name = must(names(folder)[1]);
    for (const copy of [`${name}-copy`, `${name}-copy-2`])
      cpSync(join(folder, name), join(folder, copy), { recursive: true });
    const lines = readFileSync(record(folder, name), 'utf8').split('\n');
    writeFileSync(record(folder, name), `${lines.slice(0, 2).join('\n')}\n`);
    const book = shopBook(folder);
    expect(book.corrections).toEqual(before.corrections);
    expect(book.won).toEqual(before.won);
    expect(book.problems).toEqual([
      { name, problem: `it is a copy of ${name}-copy made by hand; counted once` },
      { name: `${name}-copy-2`, problem: `it is a copy of ${name}-copy made by hand; counted once` },
    ]);
  });

  it('reads two commissions of one title, and one whose last line was never finished', () => {
    const { folder } = shop(3);
    const [first, second] = names(folder) as [string, string];
    cpSync(join(folder, first), join(folder, '2030-01-01-tea-chest'), { recursive: true });
    rmSync(join(folder, first), { recursive: true });
    appendFileSync(record(folder, second), '{"seq": 99, "at"');
    expect(shopBook(folder)).toMatchObject({ problems: [], commissions: { length: 3 } });
    expect(checkCommission(join(folder, second)).incomplete).toBe(16);
  });

  it('keeps prices of different currencies apart', () => {
    const { folder } = shop(4);
    const name = must(names(folder)[2]);
    const { entries } = checkCommission(join(folder, name));
    const inEuro = JSON.parse(JSON.stringify(entries).replaceAll('"USD"', '"EUR"'));
    writeFileSync(record(folder, name), recordBytes(inEuro));
    const { prices } = shopBook(folder);
    expect(prices.map(({ currency, asked }) => [currency, asked.length])).toEqual([
      ['USD', 3],
      ['EUR', 1],
    ]);
  });

  it('is empty where there are no commissions, and says where it looked', () => {
    const folder = join(testFolder(), 'commissions');
    expect(() => shopBook(folder)).toThrow(`There is no folder ${folder}.`);
    mkdirSync(folder);
    expect(shopBook(folder)).toMatchObject({
      ...{ commissions: [], corrections: [], won: undefined, lids: [], prices: [] },
      pace: 0.18,
    });
  });
});

describe('searching commissions', () => {
  const card = (over: Partial<CommissionCard>): CommissionCard => ({
    ...{
      name: '2026-03-12-tea-chest',
      date: '2026-03-12',
      first: 'a',
      head: { seq: 1, hash: 'a' },
      lids: [],
      watches: [],
      behind: [],
    },
    ...over,
  });
  const walnut = card({
    ...{ species: 'walnut-black', joint: 'through dovetail', piece: 'Tea chest', client: 'R. Example' },
    worked: { finished: '2026-05-01', estimated: 14, actual: 22.5, operations: [] },
    quoted: { date: '2026-03-20', price: { minor: 104_700, currency: 'USD' }, hours: 14 },
  });
  const oak = card({ name: '2026-04-01-letter-box', date: '2026-04-01', species: 'oak-white', joint: 'finger joint' });
  const all = [walnut, oak];

  it.each([
    [{ wood: 'walnut', joint: 'dovetail', hoursOver: 20 }, [walnut]],
    [{ wood: 'Walnut' }, [walnut]],
    [{ hoursOver: 22.5 }, []],
    [{ hoursUnder: 30 }, [walnut]],
    [{ joint: 'finger' }, [oak]],
    [{ words: 'letter' }, [oak]],
    [{ words: 'example', priceOver: 1000, priceUnder: 1100 }, [walnut]],
    [{ from: '2026-04-01' }, [oak]],
    [{ to: '2026-03-31' }, [walnut]],
    [{}, all],
  ])('%j', (wanted, found) => {
    expect(searchCommissions(all, wanted)).toEqual(found);
  });

  it('mixes no currencies: a price is compared with prices of one', () => {
    const euro = card({ quoted: { date: '2026-03-20', price: { minor: 104_700, currency: 'EUR' }, hours: 14 } });
    expect(() => searchCommissions([walnut, euro], { priceOver: 1000 })).toThrow(
      /^currency: nothing given; possible: USD, EUR/,
    );
    expect(searchCommissions([walnut, euro], { priceOver: 1000, currency: 'EUR' })).toEqual([euro]);
  });

  it.each([
    [{ hours: 20 }, /^hours: there is no such parameter; the nearest is/],
    [{ hoursOver: -1 }, /^hoursOver: -1 given; possible: a number from 0/],
    [{ from: 'March' }, /^from: "March" given; possible: a day that exists/],
    [{ wood: '' }, /^wood: "" given; possible: some words/],
  ])('%j is answered with what is possible', (wanted, message) => {
    expect(() => searchCommissions(all, wanted as object)).toThrow(message);
  });
});
