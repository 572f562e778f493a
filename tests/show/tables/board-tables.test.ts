import { expect, it } from 'vitest';
import { offcutTable, shoppingList, unseenTable } from '../../../kernel-helpers/src/show/tables/board-tables.js';
import { readBoards } from '../../../kernel-helpers/src/stock/boards/boards.js';
import { elementsOf, tableRows } from '../read-html.js';

const [bought, lying] = readBoards([
  { mark: 'A', thickness: '4/4', width: '6 in', length: '4 ft', price: 10 },
  { mark: 'B', thickness: '4/4', width: '6 in', length: '4 ft', price: 10, inHand: true },
]);

it('what lies in the shop is not bought again', () => {
  expect(bought && lying).toBeDefined();
  const shown = shoppingList({ boards: [bought, lying].flatMap((board) => board ?? []), sheets: [] });
  // 1 by 6 by 48 in is 2 board feet, at 10 each.
  expect(tableRows(shown)).toEqual([['A', '48 in', '6 in', '2.00', '2.00', '20.00']]);
});

it('an offcut is listed by its mark with its three sizes', () => {
  expect(tableRows(offcutTable(lying ? [lying] : []))).toEqual([['B', '48 in', '6 in', '1 in']]);
});

it('one board that is enough is spoken of as one', () => {
  const byNumber = [{ boards: 1, odds: 0.954, boardFeet: 5.25, cost: 52.5 }];
  const shown = unseenTable({ boards: 1, byNumber, needed: 300, findings: [], seed: 1 });
  expect(elementsOf(shown.text, 'caption')[0]?.textContent).toBe('Nine times in ten 1 board is enough');
  expect(tableRows(shown)[0]?.slice(0, 2)).toEqual(['1', '95 %']);
});
