import { readOffered, readShopStock, stockAfter } from '../../stock/boards/shop-stock.js';
import type { Entry } from '../chain/entry.js';
import type { StockDecision } from '../decisions/decisions.js';
import type { StockStore } from '../store/store.js';

/**
 * Brings the shop's stock to what stands after a plan of boards was withdrawn: the boards of the plan before it are used and its
 * offcuts lie there, or, where there was none, nothing of this commission.
 *
 * @param commission  its name
 * @param before  the plan that stands again
 * @throws ShopError  a stock that cannot be read or written: it is then as it was
 * @internal
 */
export function stockBefore(store: StockStore, commission: string, before: Entry | undefined): void {
  if (store.read() === undefined) return;
  store.change((written) => {
    const stock = readShopStock(written);
    const { [commission]: _, ...others } = stock.commissions;
    if (!before) return { ...(written as object), commissions: others };
    const { boards, offcuts } = before.results as StockDecision;
    const { offered } = before.inputs as { offered?: unknown };
    const turn = {
      offered: offered === undefined ? { boards: [], marks: [] } : readOffered(offered),
      used: boards.map(({ mark }) => mark),
      offcuts: [...offcuts],
    };
    return { ...(written as object), commissions: stockAfter(stock, commission, turn).stock.commissions };
  });
}
