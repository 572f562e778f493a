import type { Highs } from 'highs';
import { type BoardGrid, boardGrid } from '../../../kernel-helpers/src/stock/cut-plan/board-grid.js';
import { BoardValues } from '../../../kernel-helpers/src/stock/cut-plan/board-values.js';
import { nextSections } from '../../../kernel-helpers/src/stock/cut-plan/sections.js';

/** A two-stage problem of print: the most value from one rectangle; as many copies as fit where the count is null. */
export interface TwoStage {
  name: string;
  firstCut: 'horizontal' | 'vertical';
  stock: { w: number; h: number };
  items: [w: number, h: number, count: number | null, value: number][];
  optimum: number;
}

/** The rectangle as a board whose first cuts are rips. */
export function asBoard({ firstCut, stock, items }: TwoStage) {
  const turned = firstCut === 'vertical';
  const [length, width] = turned ? [stock.h, stock.w] : [stock.w, stock.h];
  const parts = items.map(([w, h, count]) => {
    const [along, across] = turned ? [h, w] : [w, h];
    const most = Math.floor(length / along) * Math.floor(width / across);
    return { length: along, width: across, count: Math.min(most, count ?? most) };
  });
  const board = { length, width, cost: 1, area: length * width, defects: [], takes: parts.map(() => true) };
  return {
    layout: boardGrid({ boards: [board], parts, firstCut: 'rip' }, board),
    counts: parts.map(({ count }) => count),
    values: items.map(([, , , value]) => value),
  };
}

/** The most value found on one board ripped first, each part no more often than its count; a limit that none exceeds. */
export interface MostValue {
  value: number;
  limit: number;
  /** Whether no cutting gives more. */
  proven: boolean;
}

/** Values are multiplied by this, so that prices on parts may be fractions. */
const fine = 1000;

/**
 * One board at given part values, by the planner's own pricing and search: a price on each copy beyond the count lowers what
 * pricing gives (Lagrangian relaxation of the counts, prices by column generation); what these prices leave is searched.
 *
 * @param mostSteps  work allowed for the search
 */
export function mostValue(
  highs: Highs,
  { layout, counts, values }: { layout: BoardGrid; counts: number[]; values: number[] },
  mostSteps: number,
): MostValue {
  const whole = values.map((value) => value * fine);
  const { board, limit } = priced(highs, layout, counts, whole);
  let value = 0;
  for (let slack = fine; ; slack = value > 0 ? limit - value : slack * 2) {
    const { sections, complete } = nextSections(board, 0, Uint16Array.from(counts), slack, mostSteps, 'last');
    for (const { left } of sections)
      value = Math.max(
        value,
        sum(whole, (part) => (counts[part] as number) - (left[part] as number)),
      );
    const proven = complete && value >= limit - slack;
    if (proven || !complete) return { value: value / fine, limit: Math.floor(limit / fine), proven };
  }
}

const sum = (values: ArrayLike<number>, times: (part: number) => number) =>
  Array.from(values).reduce((total, value, part) => total + value * times(part), 0);

/** Prices on the counts, rounded to whole numbers, at which pricing gives least. */
function priced(highs: Highs, layout: BoardGrid, counts: number[], values: number[]) {
  const size = counts.length;
  const model = highs.createModel({
    numCols: 1,
    numRows: size + 1,
    colCost: [0],
    colLower: [0],
    colUpper: [1],
    rowLower: [...counts.map(() => -1e30), 1],
    rowUpper: [...counts, 1],
    matrix: { format: 'csc', numRows: size + 1, numCols: 1, starts: [0, 1], indices: [size], values: [1] },
  });
  try {
    model.options.set({ output_flag: false });
    let best: { board: BoardValues; limit: number; prices: number[] } | undefined;
    let next = counts.map(() => 0);
    for (let round = 0; ; round++) {
      const prices = next.map((price, part) => Math.min(Math.round(price), values[part] as number));
      const board = new BoardValues(
        layout,
        values.map((value, part) => value - (prices[part] as number)),
        false,
      );
      const limit = board.best + sum(prices, (part) => counts[part] as number);
      if (!best || limit < best.limit) best = { board, limit, prices };
      const pattern = board.bestPattern(size);
      const used = [...pattern.keys()].filter((part) => (pattern[part] as number) > 0);
      model.addCol(-sum(values, (part) => pattern[part] as number), 0, 1e30, {
        indices: [...used, size],
        values: [...used.map((part) => pattern[part] as number), 1],
      });
      model.run();
      const { rowDual } = model.getSolution();
      const mixture = -(model.info.get('objective_function_value') as number);
      if (best.limit - mixture < fine / 3 || round === 100) return best;
      const { prices: centre } = best;
      next = counts.map((_, part) => 0.6 * Math.abs(rowDual[part] as number) + 0.4 * (centre[part] as number));
    }
  } finally {
    model.dispose();
  }
}
