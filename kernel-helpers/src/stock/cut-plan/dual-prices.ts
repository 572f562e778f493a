import type { Highs, Model } from 'highs';
import type { BoardGrid } from './board-grid.js';
import { BoardValues } from './board-values.js';

/** What parts are worth such that boards can give least in proportion to what all parts are worth. */
export interface FoundPrices {
  profits: Int32Array;
  values: Map<BoardGrid, BoardValues>;
  /** What the boards give at most, over what all parts are worth: below 1 the parts cannot be cut from these boards. */
  ratio: number;
  steps: number;
}

const scale = 1e7;

/**
 * Finds part values that tell most about a set of boards, by column generation: a linear programme over ways to cut each board
 * asks for the largest share of all parts that a mixture of ways could give; its shadow prices are the values; at these values
 * each board is priced exactly, which gives a bound whatever the programme's rounding, and further ways to cut.
 *
 * Ways to cut are kept for the next set of boards.
 */
export class DualPrices {
  readonly #highs: Highs;
  readonly #counts: Uint16Array;
  readonly #crosscutFirst: boolean;
  readonly #patterns = new Map<BoardGrid, Map<string, Uint16Array>>();

  constructor(highs: Highs, counts: Uint16Array, crosscutFirst: boolean) {
    this.#highs = highs;
    this.#counts = counts;
    this.#crosscutFirst = crosscutFirst;
  }

  /**
   * @param boards  layouts of the boards of the set
   * @param start  values to begin with
   * @param rounds  most rounds
   */
  find(boards: BoardGrid[], start: Int32Array, rounds: number): FoundPrices {
    const counts = this.#counts;
    const layouts = [...new Set(boards)];
    const copies = layouts.map((layout) => boards.filter((each) => each === layout).length);
    const rows = [...counts.keys()].filter((part) => (counts[part] as number) > 0);
    const model = this.#highs.createModel({
      numCols: 1,
      numRows: rows.length + layouts.length,
      colCost: [-1],
      colLower: [0],
      colUpper: [1e30],
      rowLower: [...rows.map(() => 0), ...layouts.map(() => -1e30)],
      rowUpper: [...rows.map(() => 1e30), ...copies],
      matrix: {
        format: 'csc',
        numRows: rows.length + layouts.length,
        numCols: 1,
        starts: [0, rows.length],
        indices: [...rows.keys()],
        values: rows.map((part) => -(counts[part] as number)),
      },
    });
    try {
      model.options.set({ output_flag: false });
      layouts.forEach((layout, index) => {
        for (const pattern of this.#patterns.get(layout)?.values() ?? [])
          addPattern(model, rows, rows.length + index, pattern);
      });
      const among = { model, rows, layouts, copies };
      if (!this.#crosscutFirst) return this.#rounds(among, start, rounds, 'strips');
      // Strips over whole boards are among the ways too, and priced in a fiftieth of the time: their values are a good beginning.
      const { profits, steps } = this.#rounds(among, start, rounds, 'strips', 0);
      const found = this.#rounds(among, profits, rounds, 'sections');
      return { ...found, steps: found.steps + steps };
    } finally {
      model.dispose();
    }
  }

  /** @param enough  values at which the boards give less than this share of all parts end the search */
  #rounds(
    { model, rows, layouts, copies }: { model: Model; rows: number[]; layouts: BoardGrid[]; copies: number[] },
    start: Int32Array,
    rounds: number,
    ways: 'strips' | 'sections',
    enough = 1,
  ): FoundPrices {
    const counts = this.#counts;
    let best: FoundPrices | undefined;
    let steps = 0;
    let next: ArrayLike<number> = start;
    let pure = false;
    for (let round = 0; ; round++) {
      const profits = scaled(next, counts);
      const need = profits.reduce((sum, each, part) => sum + each * (counts[part] as number), 0);
      const values = new Map<BoardGrid, BoardValues>();
      let give = 0;
      layouts.forEach((layout, index) => {
        const each = new BoardValues(layout, profits, ways === 'sections');
        values.set(layout, each);
        steps += each.work;
        give += each.best * (copies[index] as number);
      });
      const ratio = give / need;
      if (!best || ratio < best.ratio) best = { profits, values, ratio, steps };
      best.steps = steps;
      if (ratio < enough || round === rounds) return best;
      let added = 0;
      layouts.forEach((layout, index) => {
        const pattern = (values.get(layout) as BoardValues).bestPattern(counts.length);
        const kept = this.#patterns.get(layout) ?? new Map<string, Uint16Array>();
        this.#patterns.set(layout, kept);
        const key = String(pattern);
        if (kept.has(key)) return;
        kept.set(key, pattern);
        addPattern(model, rows, rows.length + index, pattern);
        added++;
      });
      if (added === 0 && pure) return best;
      model.run();
      const { rowDual, colValue } = model.getSolution();
      const share = colValue[0] as number;
      if (best.ratio - share < 0.001) return best;
      const dual = new Float64Array(counts.length);
      rows.forEach((part, row) => {
        dual[part] = Math.max(0, rowDual[row] as number) * scale;
      });
      // Halfway between the best values so far and the programme's own: fewer rounds, since shadow prices jump about.
      pure = added === 0;
      const centre = best.profits;
      next = pure ? dual : dual.map((each, part) => 0.5 * each + 0.5 * (centre[part] as number));
    }
  }
}

function addPattern(model: Model, rows: number[], board: number, pattern: Uint16Array): void {
  const indices: number[] = [];
  const values: number[] = [];
  rows.forEach((part, row) => {
    if ((pattern[part] as number) === 0) return;
    indices.push(row);
    values.push(pattern[part] as number);
  });
  model.addCol(0, 0, 1e30, { indices: [...indices, board], values: [...values, 1] });
}

/** Whole values whose sum over all parts is about ten million; each at least one, so that no part is forgotten. */
function scaled(profits: ArrayLike<number>, counts: Uint16Array): Int32Array {
  const total = counts.reduce((sum, count, part) => sum + count * (profits[part] as number), 0);
  return Int32Array.from(counts, (_, part) => Math.max(1, Math.round(((profits[part] as number) / total) * scale)));
}
