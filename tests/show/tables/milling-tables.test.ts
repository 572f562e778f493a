import { expect, it } from 'vitest';
import { blankTable, reachTable } from '../../../kernel-helpers/src/show/tables/milling-tables.js';
import { readBoards } from '../../../kernel-helpers/src/stock/boards/boards.js';
import { millingLoss } from '../../../kernel-helpers/src/stock/milling/milling-loss.js';
import { roughCut } from '../../../kernel-helpers/src/stock/milling/rough-cut.js';
import { box } from '../../money/a-box.js';
import { elementsOf, tableRows } from '../read-html.js';

const cut = roughCut({ parts: box.parts });
const boards = readBoards([{ mark: 'A', thickness: '4/4', width: '10 in', length: '10 ft', price: 10, bow: '1/8 in' }]);

it('says of which stock the blanks are cut, and holds each of them', () => {
  const shown = blankTable(cut);
  expect(elementsOf(shown.text, 'caption')[0]?.textContent).toMatch(/^From 4\/4 stock\./);
  expect(tableRows(shown).map(([name]) => name)).toEqual(cut.toCut.blanks.map(({ name }) => name));
});

it('says what each blank can reach, and counts its passes', () => {
  const { milled } = millingLoss({ cut, boards });
  expect(milled.length).toBeGreaterThan(0);
  const rows = tableRows(reachTable(milled, { lengths: 'mm' }));
  for (const [i, { reach, passes }] of milled.entries()) {
    expect(Number.parseFloat(rows[i]?.[4] ?? '')).toBeCloseTo(25.4 * reach, 0);
    expect(rows[i]?.[6]).toBe(`${passes.length}`);
  }
});
