import fc from 'fast-check';
import { expect, test } from 'vitest';
import { sheetOrder } from '../../../kernel-helpers/src/runner/sheets/order.js';

const sheet = (file: string, needs: string[], decides: string[], finds: string[] = []) => ({
  file,
  needs,
  finds,
  decides,
  looksBack: false,
});
const none = new Set<string>();
const files = (sheets: { file: string }[]) => sheets.map(({ file }) => file);

test('a sheet comes after the one that decides what it needs, whatever their names', () => {
  const lid = sheet('01-lid.ipynb', ['sizing'], ['lid']);
  const sizing = sheet('02-sizing.ipynb', ['brief'], ['sizing']);
  const brief = sheet('03-brief.ipynb', [], ['brief']);
  expect(files(sheetOrder([lid, sizing, brief], none))).toEqual(['03-brief.ipynb', '02-sizing.ipynb', '01-lid.ipynb']);
});

test('where needs leave a choice, names decide', () => {
  const sheets = [sheet('10-days-and-record.ipynb', [], []), sheet('02-b.ipynb', [], []), sheet('01-a.ipynb', [], [])];
  expect(files(sheetOrder(sheets, none))).toEqual(['01-a.ipynb', '02-b.ipynb', '10-days-and-record.ipynb']);
});

test('a need that the record holds already may be without a sheet; one that it lacks is named with its sheet', () => {
  const lid = [sheet('04-lid.ipynb', ['sizing'], ['lid'])];
  expect(files(sheetOrder(lid, new Set(['sizing'])))).toEqual(['04-lid.ipynb']);
  expect(() => sheetOrder(lid, none)).toThrow(/^04-lid\.ipynb needs sizing, which no sheet here decides/);
});

test('a sheet that revises a decision rests on the record, not on itself', () => {
  const revision = [sheet('05-revise.ipynb', ['sizing'], ['sizing'])];
  expect(files(sheetOrder(revision, new Set(['sizing'])))).toEqual(['05-revise.ipynb']);
  expect(() => sheetOrder(revision, none)).toThrow(/needs sizing/);
});

test('sheets that wait for each other are named in one sentence, and only those', () => {
  const sheets = [
    sheet('01-brief.ipynb', [], ['brief']),
    sheet('02-sizing.ipynb', ['brief', 'lid'], ['sizing']),
    sheet('04-lid.ipynb', ['sizing'], ['lid']),
    sheet('09-quote.ipynb', ['lid'], ['quote']),
  ];
  expect(() => sheetOrder(sheets, none)).toThrow(
    'the sheets wait for each other: 02-sizing.ipynb needs lid, decided in 04-lid.ipynb; 04-lid.ipynb needs sizing, decided in 02-sizing.ipynb.',
  );
});

test('any set of sheets without a circle is put in an order that holds every need', () => {
  const sheets = fc.array(fc.array(fc.nat(8), { maxLength: 3 }), { minLength: 1, maxLength: 9 }).map((needs) =>
    needs.map((each, i) =>
      sheet(
        `${String((i * 7) % 10).padStart(2, '0')}-${i}.ipynb`,
        each.filter((need) => need < i).map((need) => `d${need}`),
        [`d${i}`],
      ),
    ),
  );
  fc.assert(
    fc.property(sheets, (given) => {
      const ordered = sheetOrder(given, none);
      expect(files(ordered).sort()).toEqual(files(given).sort());
      const decided = new Set<string>();
      for (const each of ordered) {
        expect(each.needs.filter((need) => !decided.has(need))).toEqual([]);
        for (const what of each.decides) decided.add(what);
      }
    }),
  );
});

test('a sheet comes after the one that decides what it uses where there is any, and does without where there is none', () => {
  const lid = sheet('04-lid.ipynb', [], ['lid']);
  const stock = sheet('03-stock.ipynb', [], ['stock'], ['lid']);
  expect(files(sheetOrder([stock, lid], none))).toEqual(['04-lid.ipynb', '03-stock.ipynb']);
  expect(files(sheetOrder([stock], none))).toEqual(['03-stock.ipynb']);
});
