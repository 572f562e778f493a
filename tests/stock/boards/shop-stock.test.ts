import { describe, expect, it } from 'vitest';
import { readShopStock, stockAfter, stockFor } from '../../../kernel-helpers/src/stock/boards/shop-stock.js';

const board = (mark: string) => ({ mark, thickness: 1, width: 6, length: 30, price: 10 });
const marks = ({ boards }: { boards: { mark: string }[] }) => boards.map(({ mark }) => mark);

describe("the shop's stock", () => {
  const start = readShopStock({ boards: [{ ...board('S1'), length: '30 in' }, board('S2')] });
  const take = (used: string[], offcuts: string[], stock = start, name = 'first') =>
    stockAfter(stock, name, {
      offered: stockFor(stock, name),
      used,
      offcuts: offcuts.map((mark) => ({ ...board(mark), inHand: true })),
    });

  it('has what a commission gave back and lacks what it used', () => {
    const { stock } = take(['S1', 'Y'], ['S1-1']);
    expect(marks(stockFor(stock))).toEqual(['S2', 'S1-1']);
    expect(stock.commissions.first?.used, 'a board bought at the yard was never in the stock').toEqual(['S1']);
  });

  it('looks to the commission itself as it did before', () => {
    expect(stockFor(take(['S1'], ['S1-1']).stock, 'first')).toEqual(stockFor(start, 'first'));
  });

  it('counts a decision made twice once, and a changed one as it is now', () => {
    const once = take(['S1'], ['S1-1']).stock;
    expect(take(['S1'], ['S1-1'], once).stock).toEqual(once);
    expect(marks(stockFor(take(['S2'], ['S2-1'], once).stock))).toEqual(['S1', 'S2-1']);
  });

  it('says when another commission uses what is no longer there, or the same board', () => {
    const once = take(['S1'], ['S1-1']).stock;
    const second = take(['S1-1'], [], once, 'second').stock;
    expect(take([], [], second).notices).toEqual([
      'Offcut S1-1 is used by second, but this plan no longer gives it: look at both.',
    ]);
    const stale = { offered: stockFor(start, 'third'), used: ['S1'], offcuts: [] };
    expect(stockAfter(once, 'third', stale).notices).toEqual(['Board S1 is used by first too: look at both.']);
  });

  it('leaves out an offcut whose mark stands on another board, such as that of a copied commission, and says so', () => {
    const once = take([], ['S1-1', 'S1-2']).stock;
    const { stock, notices } = take([], ['S1-1', 'S2-1'], once, 'copy');
    expect(notices).toEqual(['Offcut S1-1 is left out: that mark stands on another board of the stock.']);
    expect(marks(stockFor(stock))).toEqual(['S1', 'S2', 'S1-1', 'S1-2', 'S2-1']);
  });

  it('never gives a mark away twice, even one that was used up', () => {
    const once = take(['S1'], ['S1-1']).stock;
    const second = take(['S1-1'], [], once, 'second').stock;
    expect(stockFor(second, 'third').marks).toContain('S1-1');
  });

  it.each([
    [{ boards: [{ ...board('S1'), width: 'wide' }] }, 'no. 1, width: "wide" given'],
    [{ boards: [board('S1'), board('S1')] }, 'mark: "S1" stands on two boards'],
    [{ bords: [] }, 'bords: there is no such parameter; the nearest is boards'],
    [{ boards: 'none' }, 'a list of boards is needed'],
  ])('%j is refused in one line', (data, message) => {
    expect(() => readShopStock(data)).toThrow(message);
  });
});
