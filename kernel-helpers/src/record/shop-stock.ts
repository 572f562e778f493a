import * as z from 'zod';
import { ShopError } from '../measure/shop-error.js';
import {
  readOffered,
  readShopStock,
  type ShopStock,
  type StockOffered,
  stockAfter,
  stockFor,
} from '../stock/boards/shop-stock.js';
import type { Commission } from './commission.js';
import type { StockDecision } from './decisions/decisions.js';
import { latest } from './stale.js';
import type { StockStore } from './store/store.js';

/** The shop's stock as a commission uses it: the maker's own boards, and the offcuts of other commissions. */
export interface CommissionStock {
  /**
   * Boards that lie in the shop. Once `stock` is decided, what the commission saw when it was planned, so that it can be run
   * again years later. In practice and in the demonstration there are none.
   *
   * @param options.today  what lies there today, whatever it was planned with
   * @throws ShopError  a stock that cannot be read, naming the board and the field at fault
   */
  offered(options?: { today?: boolean }): StockOffered;
  /**
   * Writes into the shop's stock what the standing `stock` decision uses of it and the offcuts it gives back; done twice, it
   * counts once. While stock is a draft, in practice, in the demonstration and in a check nothing is written.
   *
   * @throws ShopError  when stock is not decided yet; a stock that cannot be read or written: it is then as it was
   */
  keepOffcuts(): void;
}

/** What the shop's stock is opened with. @internal */
export interface StockOpening {
  job: Pick<Commission<{ stock: StockDecision }>, 'name' | 'entries' | 'drafts' | 'need'>;
  store: StockStore;
  /** Why this commission neither takes from the stock nor gives to it, if so. */
  without?: string;
  /** Whether decisions are only compared: nothing is written, and what is not on record comes from the last plan. */
  rehearsal: boolean;
  say: (line: string) => void;
}

/** Opens the shop's stock for a commission. @internal */
export function commissionStock({ job, store, without, rehearsal, say }: StockOpening): CommissionStock {
  let offered: StockOffered | undefined;
  return {
    offered({ today = false } = {}) {
      if (without) return { boards: [], marks: [] };
      offered = (today ? undefined : plannedWith()) ?? inShop();
      return offered;
    },

    keepOffcuts() {
      if (rehearsal) return;
      if (without) return say(without);
      if (job.drafts().some(({ what }) => what === 'stock'))
        return say("Draft: the shop's stock stays as it is until stock is decided.");
      const { boards, offcuts } = job.need('stock');
      const notices: string[] = [];
      store.change((written) => {
        const before = stockIn(written);
        const turn = {
          offered: offered ?? stockFor(before, job.name),
          used: boards.map(({ mark }) => mark),
          offcuts: [...offcuts],
        };
        const after = stockAfter(before, job.name, turn);
        const kept = after.stock.commissions[job.name]?.offcuts.map(({ mark }) => mark).join(', ');
        notices.push(
          `In the shop's stock: ${kept ? `offcuts ${kept}` : 'no offcut from this plan'}.`,
          ...after.notices,
        );
        // The maker's own boards stay as they were typed.
        const next = { boards: [], ...(written as object | undefined), commissions: after.stock.commissions };
        // Read as it will be read next time, before anything is written: a stock that cannot be read would lock every sheet out.
        readShopStock(next);
        return next;
      });
      for (const notice of notices) say(notice);
    },
  };

  function plannedWith(): StockOffered | undefined {
    const { offered } = planned.parse(latest(job.entries(), 'stock')?.inputs ?? {});
    return offered === undefined ? undefined : readOffered(offered);
  }

  function inShop(): StockOffered {
    const stock = stockIn(store.read());
    return (rehearsal ? stock.commissions[job.name]?.offered : undefined) ?? stockFor(stock, job.name);
  }

  function stockIn(written: unknown): ShopStock {
    try {
      return readShopStock(written);
    } catch (error) {
      if (error instanceof ShopError) throw new ShopError(`${store.placeOf(error)}, ${error.message}`, error.refused);
      throw error;
    }
  }
}

/** What the shop's stock is told by the inputs of a stock decision. */
const planned = z.looseObject({ offered: z.unknown().optional() });
