import * as z from 'zod';
import { readParameters } from '../../measure/parameters.js';
import { within } from '../../measure/shop-error.js';
import { type Board, readBoards, type TypedBoard } from './boards.js';

/** The shop's stock as a commission sees it. */
export interface StockOffered {
  /** Boards that lie in the shop for it. */
  boards: Board[];
  /** Marks that are in use or were, so that no offcut gets one of them. */
  marks: string[];
}

/** What a commission took from the shop's stock and gave back. */
export interface StockTurn {
  /** What the stock held when the commission was planned. */
  offered: StockOffered;
  /** Marks of those it used. */
  used: string[];
  /** Offcuts it gave back. */
  offcuts: Board[];
}

/** The shop's stock: the maker's own boards, and for each commission what it took and gave back. */
export interface ShopStock {
  boards: Board[];
  commissions: Record<string, StockTurn>;
}

const offered = z.strictObject({ boards: z.array(z.any()), marks: z.array(z.string()) });
const turn = z.strictObject({
  offered,
  used: z.array(z.string()),
  offcuts: z.array(z.any()),
});
const fields = z.strictObject({
  boards: z.array(z.any(), { error: 'boards: a list of boards is needed' }).default([]),
  commissions: z.record(z.string(), turn, { error: 'commissions: what each took and gave back is needed' }).default({}),
});

/**
 * The shop's stock, checked.
 *
 * @param data  `{ boards, commissions }`; boards as they are typed; nothing for an empty stock
 * @throws ShopError  a board that is not possible; a mark that stands on two boards
 */
export function readShopStock(data: unknown): ShopStock {
  const { boards, commissions } = readParameters(fields, data ?? {});
  const stock: ShopStock = {
    boards: within(['boards'], () => readAny(boards)).map((board) => ({ ...board, inHand: true })),
    commissions: Object.fromEntries(
      Object.entries(commissions).map(([name, { offered, used, offcuts }]) => [
        name,
        within(['commissions', name], () => ({
          offered: { boards: within(['offered', 'boards'], () => readAny(offered.boards)), marks: offered.marks },
          used,
          offcuts: within(['offcuts'], () => readAny(offcuts)),
        })),
      ]),
    ),
  };
  readAny([...stock.boards, ...Object.values(stock.commissions).flatMap(({ offcuts }) => offcuts)]);
  return stock;
}

/**
 * What a commission was offered, as its record keeps it.
 *
 * @throws ShopError  what is not possible
 */
export function readOffered(data: unknown): StockOffered {
  const { boards, marks } = readParameters(offered, data);
  return { boards: readAny(boards), marks };
}

function readAny(typed: unknown[]): Board[] {
  return readBoards(typed as TypedBoard[]);
}

/**
 * What lies in the shop for a commission: the maker's own boards and the offcuts of others, less what others have used. What the
 * commission itself took or gave back does not count, so that it can be planned again.
 *
 * @param commission  its name; nothing for the whole shop
 */
export function stockFor({ boards, commissions }: ShopStock, commission?: string): StockOffered {
  const others = Object.entries(commissions).filter(([name]) => name !== commission);
  const used = new Set(others.flatMap(([, turn]) => turn.used));
  const all = [...boards, ...others.flatMap(([, turn]) => turn.offcuts)];
  return { boards: all.filter(({ mark }) => !used.has(mark)), marks: all.map(({ mark }) => mark) };
}

/**
 * The stock after a commission's plan: what it took and gave back takes the place of what it had before, so that deciding twice
 * counts once. Nothing is taken off the file: a used board is named as used.
 *
 * @param turn  what the commission was offered, the boards it uses (those that are not the shop's are passed over), its offcuts
 * @returns a new stock, and notices: a board that another commission has used in the meantime, an offcut that another has used
 *   and that this plan no longer gives, an offcut whose mark stands on another board of the stock and that is left out
 */
export function stockAfter(
  stock: ShopStock,
  commission: string,
  turn: StockTurn,
): { stock: ShopStock; notices: string[] } {
  const used = turn.used.filter((mark) => turn.offered.boards.some((board) => board.mark === mark));
  const gone = (stock.commissions[commission]?.offcuts ?? [])
    .map(({ mark }) => mark)
    .filter((mark) => !turn.offcuts.some((offcut) => offcut.mark === mark));
  const notices = Object.entries(stock.commissions)
    .filter(([name]) => name !== commission)
    .flatMap(([name, other]) => [
      ...other.used
        .filter((mark) => used.includes(mark))
        .map((mark) => `Board ${mark} is used by ${name} too: look at both.`),
      ...other.used
        .filter((mark) => gone.includes(mark))
        .map((mark) => `Offcut ${mark} is used by ${name}, but this plan no longer gives it: look at both.`),
    ]);
  const standing = stockFor(stock, commission).marks;
  const [clashing, offcuts] = [true, false].map((clash) =>
    turn.offcuts.filter(({ mark }) => standing.includes(mark) === clash),
  ) as [Board[], Board[]];
  notices.push(
    ...clashing.map(({ mark }) => `Offcut ${mark} is left out: that mark stands on another board of the stock.`),
  );
  const commissions = { ...stock.commissions, [commission]: { ...turn, used, offcuts } };
  return { stock: { ...stock, commissions }, notices };
}
