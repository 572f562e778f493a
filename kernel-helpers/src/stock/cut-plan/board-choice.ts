/** What a set of boards must meet: the sum of `gives` over its boards is at least `need`. All whole numbers. */
export interface Demand {
  gives: ArrayLike<number>;
  need: number;
}

/** The cheapest set of boards that meets all demands, or how far the search for it came. */
export interface Choice {
  boards: number[] | undefined;
  /** Whether it is certain that no set is cheaper, or that there is none. */
  certain: boolean;
}

/**
 * Chooses boards: least price in all, every demand met. Branch and bound in whole numbers; of boards that are alike, the first
 * are taken.
 *
 * @param prices  of the boards, whole numbers of zero or more
 * @param alike  for each board, the last one before it that is just like it; -1 where there is none
 * @param below  only sets that cost less than this are wanted
 * @param mostNodes  work allowed
 * @internal
 */
export function chooseBoards(
  prices: number[],
  demands: Demand[],
  alike: number[],
  below: number,
  mostNodes = 200_000,
): Choice {
  const count = prices.length;
  const total = demands.length;
  const price = Float64Array.from(prices);
  // For each demand, boards in the order in which they give most for their price.
  const order = demands.map(({ gives }) =>
    Int32Array.from([...prices.keys()].filter((board) => (gives[board] as number) > 0)).sort(
      (a, b) => (price[a] as number) * (gives[b] as number) - (price[b] as number) * (gives[a] as number) || a - b,
    ),
  );
  const state = new Int8Array(count).fill(-1);
  const missing = Float64Array.from(demands, ({ need }) => need);
  let best: number[] | undefined;
  let limit = below;
  let nodes = 0;
  let certain = true;

  /** The least that the missing part of a demand costs when boards may be bought in part; the board to decide next. */
  const least = (demand: number): { cost: number; board: number } => {
    let open = missing[demand] as number;
    if (open <= 0) return { cost: 0, board: -1 };
    const gives = (demands[demand] as Demand).gives;
    let cost = 0;
    for (const board of order[demand] as Int32Array) {
      if (state[board] !== -1) continue;
      const gift = gives[board] as number;
      if (gift >= open) return { cost: cost + ((price[board] as number) * open) / gift, board };
      open -= gift;
      cost += price[board] as number;
    }
    return { cost: Number.POSITIVE_INFINITY, board: -1 };
  };

  const take = (board: number, sign: 1 | -1) => {
    for (let demand = 0; demand < total; demand++)
      missing[demand] = (missing[demand] as number) - sign * ((demands[demand] as Demand).gives[board] as number);
  };

  const descend = (spent: number): void => {
    if (++nodes > mostNodes) {
      certain = false;
      return;
    }
    let bound = 0;
    let next = -1;
    for (let demand = 0; demand < total; demand++) {
      const { cost, board } = least(demand);
      if (board < 0 && cost === 0) continue;
      // Prices are whole, so anything that rounds up to the limit is no better; the hair keeps rounding errors harmless.
      if (cost === Number.POSITIVE_INFINITY || Math.ceil(spent + cost - 1e-6 * (1 + cost)) >= limit) return;
      if (cost >= bound) {
        bound = cost;
        next = board;
      }
    }
    if (next < 0) {
      if (spent < limit) {
        limit = spent;
        best = [...state.keys()].filter((board) => state[board] === 1);
      }
      return;
    }
    // Alike boards are taken in order.
    while ((alike[next] as number) >= 0 && state[alike[next] as number] === -1) next = alike[next] as number;
    const mayTake = (alike[next] as number) < 0 || state[alike[next] as number] === 1;
    if (mayTake && spent + (price[next] as number) < limit) {
      state[next] = 1;
      take(next, 1);
      descend(spent + (price[next] as number));
      take(next, -1);
    }
    state[next] = 0;
    descend(spent);
    state[next] = -1;
  };
  descend(0);
  return { boards: best, certain };
}
