import { readdirSync, rmSync } from 'node:fs';
import { join } from 'node:path';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { runSheets } from '../../kernel-helpers/src/runner/sheets/run-sheets.js';
import { changeParameter, copyOf, digests, workedCommission } from './setting.js';

let folder: string;
let remove: () => void;

beforeAll(() => {
  ({ folder, remove } = workedCommission());
});
afterAll(() => remove());

test.each([
  ['01-brief.ipynb', "insideLength: '9 1/2 in',", "insideLength: '9 1/2 miles',", /insideLength.*9 1\/2 miles/],
  ['01-brief.ipynb', "insideWidth: '6 1/4 in',", "insideWidth: '0 in',", /insideWidth.*0 in/],
  ['01-brief.ipynb', "insideDepth: '4 in',", "insideDepth: '-4 in',", /insideDepth.*-4 in/],
  ['01-brief.ipynb', "insideLength: '9 1/2 in',", "insideLength: '40 ft',", /insideLength.*40 ft/],
  ['01-brief.ipynb', "species: 'walnut-black'", "species: 'wallnut'", /species.*walnut-black/],
  ['01-brief.ipynb', "promised: '2027-02-12'", "promised: '2026-01-01'", /promised: 2026-01-01 given.*2026-01-02/],
  [
    '03-wood-and-air.ipynb',
    'shop: {}',
    'shop: { air: { shopTemperatureC: 66 } }',
    /^shop, air, shopTemperatureC: 66.*°F\? Then write 18\.9/,
  ],
  ['02-sizing.ipynb', "bottomGrooveDepth: '1/4 in'", "bottomGrooveDepth: '3/4 in'", /bottomGrooveDepth.*3\/4/],
  ['01-brief.ipynb', 'humidifyTo: 0.3', 'humidifyTo: 30', /^house, humidifyTo: 30/],
  ['08-lettering-and-surface.ipynb', "text: 'TEA 2027'", "text: 'Ж 2027'", /text: "Ж" given.*face/],
  ['08-lettering-and-surface.ipynb', "height: '3/4 in'", "height: '3 in'", /height: 3 in.*a height of at most/],
  ['08-lettering-and-surface.ipynb', "face: 'roman'", "face: 'gothic'", /face.*gothic.*roman, book, plain/],
  ['07-stock-and-cutting.ipynb', 'shop: {}', "shop: { kerf: '0 in' }", /^shop, kerf.*0 in/],
  ['07-stock-and-cutting.ipynb', "length: '5 ft', price: 13", "length: '5 lb', price: 13", /no\. 3, length.*5 lb/],
  [
    '07-stock-and-cutting.ipynb',
    'knot at 16 in by 3 in',
    'knot at 35 in by 3 in',
    /defects: knot reaches 37 in.*board D/,
  ],
  ['07-stock-and-cutting.ipynb', "boardsFile: ''", "boardsFile: 'none.csv'", /none\.csv/],
  ['09-hours-cost-quote.ipynb', 'shop: {}', 'shop: { margin: 20 }', /^shop, margin: 20/],
  ['09-hours-cost-quote.ipynb', 'otherBoardPrice: 9.5', 'otherBoardPrice: -1', /^otherBoardPrice: -1 given/],
  [
    '09-hours-cost-quote.ipynb',
    'shop: {}',
    "shop: { taxInside: 'no' }",
    /^shop, taxInside: "no" given; possible: true/,
  ],
  ['04-lid-through-the-year.ipynb', 'lagging: false', "lagging: 'false'", /^lagging: "false" given; possible: true or/],
  ['07-stock-and-cutting.ipynb', 'stockToday: false', 'stockToday: null', /^stockToday: null given; possible: true or/],
  ['09-hours-cost-quote.ipynb', 'shop: {}', "shop: { currency: 'bucks' }", /^shop, currency.*bucks.*ISO 4217/],
  ['10-days-and-record.ipynb', "today: '2026-12-14'", "today: '2027-03-01'", /promised: 2027-02-12 given.*2027-03-01/],
  [
    '10-days-and-record.ipynb',
    'shop: {}',
    'shop: { hours: { monday: 0, tuesday: 0, thursday: 0 } }',
    /hours: none on any day/,
  ],
  [
    '10-days-and-record.ipynb',
    'measured: []',
    "measured: [{ date: '2099-07-20', clearance: 0.04 }]",
    /^measured no\. 1, date: "2099-07-20" given; possible: to .* today/,
  ],
  ['10-days-and-record.ipynb', 'shop: {}', 'shop: { rest: -1 }', /^shop, rest: -1/],
  [
    '09-hours-cost-quote.ipynb',
    'shop: {}',
    "shop: { corrections: [{ operation: 'paint', factor: 1, because: 'x' }] }",
    /"paint" given/,
  ],
  ['11-closing.ipynb', "answer: ''", "answer: 'perhaps'", /answer: "perhaps" given; possible: accepted, declined/],
  [
    '11-closing.ipynb',
    "finished: ''",
    "finished: '2020-01-01'",
    /worked: \[\] given; possible: at least one stretch of work/,
  ],
])('%s with %s as %s gives one message and no entry', async (file, from, to, message) => {
  const other = copyOf(folder, 'bad');
  try {
    changeParameter(other, file, from, to);
    // Alone, with what it needs in the record already.
    for (const name of readdirSync(other)) if (name.endsWith('.ipynb') && name !== file) rmSync(join(other, name));
    const before = digests(other);
    const { failure } = await runSheets({ folder: other, seconds: 60 });
    expect(failure).toMatchObject({ file, status: 'error' });
    expect(failure?.message.split('\n')).toHaveLength(1);
    expect(failure?.message).toMatch(message);
    expect(failure).toMatchObject({ plain: true, line: undefined });
    expect(digests(other)).toEqual(before);
  } finally {
    rmSync(other, { recursive: true, force: true });
  }
});
