import { expect, it } from 'vitest';
import { money } from '../../../kernel-helpers/src/money/money.js';
import { leftOverTable, outcomeTable } from '../../../kernel-helpers/src/show/tables/money-tables.js';
import { tableRows } from '../read-html.js';

it('counts no contingency in what is left over, and less is left of a bad run of days', () => {
  const spending = {
    ...{ currency: 'USD', boards: [], otherMaterials: [{ what: 'Boards', price: 100 }] },
    ...{ hourlyRate: 30, overheadPerYear: 12000, billableHoursPerYear: 1200, contingency: 0.5 },
  };
  const rows = tableRows(leftOverTable({ spending, hours: { p50: 10, p80: 12, p95: 15 }, net: money(600, 'USD') }));
  // 100 of boards, and 40 an hour with the shop's 10: 500, 580 and 700.
  expect(rows.map((row) => row.slice(1))).toEqual([
    ['10.0', '$500.00', '$100.00'],
    ['12.0', '$580.00', '$20.00'],
    ['15.0', '$700.00', '-$100.00'],
  ]);
});

it('tells what a piece came to, what was agreed on the way and why', () => {
  const actuals = {
    ...{ finished: '2027-02-10', operations: [], untimed: [], estimated: 0, actual: 0, boardFeet: 8, yield: 0.4 },
    ...{ changes: [{ date: '2027-01-10', what: 'brass pins' }], why: { lid: 'fitted twice' }, learned: '' },
  };
  expect(tableRows(outcomeTable(actuals, { bought: 7, yield: 0.5 }))).toEqual([
    ['Boards used', '8.00 board feet; 7.00 planned'],
    ['In the piece', '40 %; 50 % planned'],
    ['Agreed on 2027-01-10', 'brass pins'],
    ['Why: lid', 'fitted twice'],
    ['Next time', 'nothing noted'],
  ]);
});
