import { boardFeet } from '../../stock/boards/board-feet.js';
import type { Board } from '../../stock/boards/boards.js';
import type { BoardsToBuy } from '../../stock/boards/boards-to-buy.js';
import { lumberTally } from '../../stock/boards/lumber-tally.js';
import { type DrawingOptions, dimensionText, lengthText } from '../drawing/kit/lengths.js';
import type { DisplayItem } from '../kit/display.js';
import { right, table } from '../kit/table.js';

const bends = ({ bow = 0, cup = 0, twist = 0 }: Board) =>
  Object.entries({ bow, cup, twist }).filter(([, inches]) => inches > 0);

/** Boards to choose from, as they were measured. */
export function boardTable(boards: readonly Board[], options: DrawingOptions = {}): DisplayItem {
  const show = lengthText(options);
  // More lengths in both systems than a page is wide.
  const small = dimensionText(options);
  return table({
    columns: [
      'Board',
      right('Length'),
      right('Width'),
      right('Thickness'),
      { head: 'Board feet', decimals: 2 },
      right('Moisture'),
      'Bent',
      right('Defects'),
      'Where',
    ],
    rows: boards.map((board) => [
      board.mark,
      show(board.length),
      show(board.width),
      show(board.thickness),
      boardFeet(board),
      board.moisture === undefined ? '' : `${board.moisture} %`,
      bends(board)
        .map(([what, inches]) => `${what} ${small(inches)}`)
        .join(', '),
      `${(board.defects ?? []).length}`,
      board.inHand ? 'in the shop' : 'at the yard',
    ]),
    caption: 'Boards to choose from',
  });
}

/**
 * What has to be bought: boards by exact board feet and by the yard's tally, sheets by their whole price.
 *
 * @param used.boards, used.sheets  those that the plans use; what lies in the shop is left out
 */
export function shoppingList(
  used: { boards: readonly Board[]; sheets: readonly Board[] },
  options: DrawingOptions = {},
): DisplayItem {
  const show = lengthText(options);
  const [boards, sheets] = [used.boards, used.sheets].map((list) => list.filter(({ inHand }) => !inHand)) as [
    Board[],
    Board[],
  ];
  const tally = lumberTally(boards);
  const price = (board: Board) => boardFeet(board) * board.price;
  return table({
    columns: [
      'Buy',
      right('Length'),
      right('Width'),
      { head: 'Board feet', decimals: 2 },
      { head: 'By tally', decimals: 2 },
      { head: 'Price', decimals: 2 },
    ],
    rows: [
      ...boards.map((board, i) => [
        ...[board.mark, show(board.length), show(board.width)],
        ...[boardFeet(board), tally.lines[i]?.boardFeet, price(board)],
      ]),
      ...sheets.map((sheet) => [
        `${sheet.mark}, plywood`,
        show(sheet.length),
        show(sheet.width),
        null,
        null,
        price(sheet),
      ]),
    ],
    caption: `Shopping list: ${[...boards, ...sheets].map(({ mark }) => mark).join(', ') || 'nothing, all is in the shop'}`,
  });
}

/** How sure each number of unseen boards is to be enough, as `boardsToBuy` returns it. */
export function unseenTable({ boards: enough, byNumber }: BoardsToBuy): DisplayItem {
  return table({
    columns: ['Boards', right('Enough'), { head: 'Board feet', decimals: 1 }, { head: 'Price', decimals: 2 }],
    rows: byNumber.map(({ boards, odds, boardFeet, cost }) => [
      boards,
      `${(100 * odds).toFixed(0)} %`,
      boardFeet,
      cost,
    ]),
    caption: `Nine times in ten ${enough} ${enough === 1 ? 'board is' : 'boards are'} enough`,
  });
}

/** Offcuts that go back into the shop's stock. */
export function offcutTable(offcuts: readonly Board[], options: DrawingOptions = {}): DisplayItem {
  const show = lengthText(options);
  return table({
    columns: ['Mark', right('Length'), right('Width'), right('Thickness')],
    rows: offcuts.map(({ mark, length, width, thickness }) => [mark, ...[length, width, thickness].map(show)]),
    caption: 'Offcuts to chalk and put away',
  });
}
