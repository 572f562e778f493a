import type { Highs } from 'highs';
import { beam } from './beam.js';
import { chooseBoards, type Demand } from './board-choice.js';
import { type BoardGrid, boardGrid } from './board-grid.js';
import { BoardValues } from './board-values.js';
import { DualPrices } from './dual-prices.js';
import { twosToFours, withoutBoards } from './freed-boards.js';
import type { GridBoard, GridCutting, GridJob } from './grid-job.js';
import { keepOffcut } from './keep-offcut.js';
import { pack, type Valuation } from './pack.js';
import { areaProfits, bulkProfits, likeness, pricesOf } from './profits.js';

/** How far a job on the grid is solved. */
export interface Solution {
  cuttings: GridCutting[] | undefined;
  cost: number;
  area: number;
  /** No plan costs less. */
  bound: number;
  proven: boolean;
  leastArea: boolean;
  steps: number;
}

/**
 * Solves a job on the grid, step by step: each value given out is what is known so far; the last is the result. Budgets count
 * work, so that a job has one result.
 *
 * @internal
 */
export function* solveSteps(job: GridJob, effort = 1, highs?: Highs): Generator<Solution, Solution> {
  const search = new Search(job, highs);
  yield* search.firstPlan();
  yield* search.prove(effort);
  search.keepOffcut();
  return search.known();
}

const workPerEffort = 20_000_000;
/** From so many on, plans of strips over whole boards come first, also where sections may be cut. */
const manyParts = 40;
/** For the parts of a few boards. */
const repackEffort = 0.02;

class Search {
  readonly #job: GridJob;
  readonly #crosscutFirst: boolean;
  readonly #layouts: BoardGrid[];
  readonly #counts: Uint16Array;
  readonly #area: Valuation;
  readonly #prices: number[];
  readonly #alike: number[];
  readonly #proofs: Demand[] = [];
  /** Sets of boards in which nothing was found, without a proof. */
  readonly #open: Demand[] = [];
  #bound = 0;
  #boundPrice = 0;
  #best: { cuttings: GridCutting[]; price: number; cost: number; area: number } | undefined;
  #steps = 0;
  readonly #highs: Highs | undefined;
  readonly #dualPrices: DualPrices | undefined;
  /** Only plans below this price are wanted. */
  #limit = Number.POSITIVE_INFINITY;

  constructor(job: GridJob, highs: Highs | undefined) {
    this.#job = job;
    this.#highs = highs;
    this.#crosscutFirst = job.firstCut === 'crosscut';
    const known = new Map<string, BoardGrid>();
    this.#layouts = job.boards.map((board) => {
      const key = likeness({ ...board, cost: 0 });
      const layout = known.get(key) ?? boardGrid(job, board);
      known.set(key, layout);
      return layout;
    });
    this.#counts = Uint16Array.from(job.parts, ({ count }) => count);
    this.#area = this.#value(Int32Array.from(areaProfits(job)));
    this.#prices = pricesOf(job.boards);
    const seen = new Map<string, number>();
    this.#alike = job.boards.map((board, index) => {
      const key = likeness(board);
      const before = seen.get(key) ?? -1;
      seen.set(key, index);
      return before;
    });
    this.#demand(this.#area);
    this.#dualPrices = highs && new DualPrices(highs, this.#counts, this.#crosscutFirst);
  }

  known(): Solution {
    const best = this.#best;
    const proven = best !== undefined && this.#bound >= best.cost;
    return {
      cuttings: best?.cuttings,
      cost: best?.cost ?? Number.POSITIVE_INFINITY,
      area: best?.area ?? Number.POSITIVE_INFINITY,
      bound: best ? Math.min(this.#bound, best.cost) : this.#bound,
      proven,
      leastArea: best !== undefined && this.#boundPrice >= best.price,
      steps: this.#steps,
    };
  }

  /** A plan at once: sets of boards from the cheapest up, little work for each; then whatever plan all boards give. */
  *firstPlan(): Generator<Solution> {
    const copies = this.#counts.reduce((sum, count) => sum + count, 0);
    if (this.#crosscutFirst && copies >= manyParts) this.#ripFirst(0);
    let reserve = 0;
    for (let tries = 0; !this.#best && tries < 40; tries++) {
      if (tries > 0 && tries % 4 === 0) reserve = reserve * 1.3 + 0.02;
      const roomy = this.#proofs.map(({ gives, need }) => ({ gives, need: Math.ceil(need * (1 + reserve)) }));
      const choice = chooseBoards(
        this.#prices,
        [...roomy, ...this.#open],
        this.#alike,
        Number.POSITIVE_INFINITY,
        20_000,
      );
      if (!choice.boards) {
        if (choice.certain && reserve === 0 && this.#open.length === 0) this.#bound = Number.POSITIVE_INFINITY;
        break;
      }
      if (tries === 0 && choice.certain) this.#raiseBound(choice.boards);
      if (!this.#lookBothWays(choice.boards, this.#area, 4)) this.#open.push(this.#outside(choice.boards));
    }
    this.#open.length = 0;
    if (!this.#best && Number.isFinite(this.#bound)) this.#lookOnAll();
    yield this.known();
  }

  /** Fills boards one after the other, those that give most for their price first, until the parts are cut. */
  #lookOnAll(): void {
    const { boards: values } = this.#area;
    const dear = (board: number) => (this.#prices[board] as number) / Math.max(1, (values[board] as BoardValues).best);
    const all = [...this.#prices.keys()].sort((a, b) => dear(a) - dear(b) || a - b);
    const bulky = this.#value(Int32Array.from(bulkProfits(this.#job)));
    for (const width of [4, 20]) for (const guide of [this.#area, bulky]) this.#look(all, guide, width, 6);
  }

  /** Of the plans with these boards, one that leaves a large offcut. */
  keepOffcut(): void {
    if (this.#best)
      this.#best = { ...this.#best, cuttings: keepOffcut(this.#job, this.#best.cuttings, this.#area.profits) };
  }

  /**
   * Sets of boards from the cheapest up until one holds the parts: most are shown not to hold them, some stay open. Those are
   * looked at again, harder, since the bound is the price of the first that is open.
   */
  *prove(effort: number): Generator<Solution> {
    const begun = this.#steps;
    const work = begun + effort * workPerEffort;
    const soft = begun + 0.6 * effort * workPerEffort;
    let repacked = false;
    const open: { boards: number[]; guide: Valuation }[] = [];
    let exhausted = false;
    while (this.#steps < soft) {
      if (!repacked && this.#steps > begun + 0.15 * effort * workPerEffort && this.#isFarOff()) {
        repacked = true;
        yield* this.#improve(0.4 * effort * workPerEffort);
      }
      const below = Math.min(this.#best?.price ?? Number.POSITIVE_INFINITY, this.#limit);
      const choice = chooseBoards(this.#prices, [...this.#proofs, ...this.#open], this.#alike, below);
      if (!choice.certain) break;
      if (!choice.boards) {
        exhausted = true;
        break;
      }
      if (open.length === 0) this.#raiseBound(choice.boards);
      const { fits, guide } = this.#decide(choice.boards);
      if (fits === undefined) {
        open.push({ boards: choice.boards, guide });
        this.#open.push(this.#outside(choice.boards));
      }
      yield this.known();
    }
    for (const { boards, guide } of open) {
      if (this.#best && this.#best.price <= this.#priceOf(boards)) break;
      this.#raiseBound(boards);
      // Once the cost is proven, less is spent on the area.
      if (this.#steps >= (this.known().proven ? soft : work)) return;
      if (this.#decideHard(boards, guide) === undefined) return;
      yield this.known();
    }
    if (exhausted) {
      this.#bound = this.#best?.cost ?? Number.POSITIVE_INFINITY;
      this.#boundPrice = this.#best?.price ?? Number.POSITIVE_INFINITY;
    }
  }

  /** Whether the best plan costs more than the bound by so much that a better one is worth looking for before a better bound. */
  #isFarOff(): boolean {
    const { cost, bound } = this.known();
    return Number.isFinite(cost) && cost - bound > 0.03 * cost;
  }

  /** Looks for cheaper plans near the best one; of strips over whole boards too where sections come first, since those are quick. */
  *#improve(work: number): Generator<Solution> {
    const until = this.#steps + work;
    if (this.#crosscutFirst) {
      this.#ripFirst(0.7 * work);
      yield this.known();
    }
    yield* this.#repack(until);
  }

  /** Looks for a plan of strips over whole boards, which is one of sections too, and found sooner. */
  #ripFirst(work: number): void {
    const search = new Search({ ...this.#job, firstCut: 'rip' }, this.#highs);
    for (const _ of search.firstPlan());
    for (const _ of search.#repack(search.#steps + work));
    this.#steps += search.#steps;
    if (search.#best) this.#keep(search.#best.cuttings);
  }

  /** Cuts the parts of two to four boards of the best plan anew, while that makes it cheaper and the work allowed lasts. */
  *#repack(work: number): Generator<Solution> {
    const tried = new Set<string>();
    for (let best = this.#best; best; ) {
      const before: typeof best = best;
      for (const freed of twosToFours(before.cuttings)) {
        const key = JSON.stringify(freed);
        if (tried.has(key)) continue;
        tried.add(key);
        if (this.#steps >= work) return;
        if (this.#cutAnew(before.cuttings, freed)) break;
      }
      if (this.#best === before) return;
      best = this.#best;
      yield this.known();
    }
  }

  /** Looks for cheaper boards for the parts of some boards of a plan: the same boards and those that the plan does not use. */
  #cutAnew(cuttings: GridCutting[], freed: GridCutting[]): boolean {
    const { kept, free, job } = withoutBoards(this.#job, cuttings, freed);
    const search = new Search(job, this.#highs);
    search.#limit = search.#priceOf(freed.map(({ board }) => free.indexOf(board)));
    for (const _ of search.prove(repackEffort));
    this.#steps += search.#steps;
    if (search.#best)
      this.#keep([...kept, ...search.#best.cuttings.map((each) => ({ ...each, board: free[each.board] as number }))]);
    return search.#best !== undefined;
  }

  /** Whether a set of boards holds the parts, where that is found with little work; and the part values that tell most. */
  #decide(boards: number[]): { fits: boolean | undefined; guide: Valuation } {
    let guide = this.#area;
    if (this.#dualPrices) {
      const layouts = boards.map((board) => this.#layouts[board] as BoardGrid);
      const { profits, values, ratio, steps } = this.#dualPrices.find(layouts, guide.profits, 60);
      this.#steps += steps;
      if (ratio < 1) {
        guide = this.#value(profits, values);
        this.#demand(guide);
        return { fits: false, guide };
      }
      guide = { profits, boards: this.#layouts.map((layout) => values.get(layout) as BoardValues) };
    }
    if (this.#lookBothWays(boards, this.#area, 6)) return { fits: true, guide };
    const fits = this.#pack(boards, guide, 600_000);
    if (fits !== undefined) return { fits, guide };
    return { fits: [this.#area, guide].some((each) => this.#lookBothWays(boards, each, 30)) || undefined, guide };
  }

  /** The same with much work: all beginnings that the part values leave, then a wide look. */
  #decideHard(boards: number[], guide: Valuation): boolean | undefined {
    const fits = this.#pack(boards, guide, 4_000_000);
    if (fits !== undefined) return fits;
    return [this.#area, guide].some((each) => this.#lookBothWays(boards, each, 100)) || undefined;
  }

  /** All beginnings that the part values leave, one board after the other, as far as the work allowed goes. */
  #pack(boards: number[], guide: Valuation, most: number): boolean | undefined {
    const { cuttings, impossible, steps } = pack({
      boards,
      counts: this.#counts,
      guide,
      limits: guide === this.#area ? [] : [this.#area],
      crosscutFirst: this.#crosscutFirst,
      steps: most,
    });
    this.#steps += steps;
    if (cuttings) this.#keep(cuttings);
    if (impossible) this.#proofs.push(this.#outside(boards));
    return cuttings ? true : impossible ? false : undefined;
  }

  /** Small boards first, then large ones first: which of them is better cannot be told beforehand. */
  #lookBothWays(boards: number[], guide: Valuation, width: number): boolean {
    const area = (board: number) => (this.#job.boards[board] as GridBoard).area;
    const rising = [...boards].sort((a, b) => area(a) - area(b) || a - b);
    const branches = width < 10 ? 8 : 12;
    return this.#look(rising, guide, width, branches) || this.#look(rising.reverse(), guide, width, branches);
  }

  /** Looks for a plan on a set of boards; keeps it. */
  #look(boards: number[], guide: Valuation, width: number, branches: number): boolean {
    const found = beam({
      boards,
      counts: this.#counts,
      guide,
      width,
      branches,
      steps: 2_000_000,
      crosscutFirst: this.#crosscutFirst,
    });
    this.#steps += found.steps + 100;
    if (found.cuttings) this.#keep(found.cuttings);
    return found.cuttings !== undefined;
  }

  /** Any set but this one and its parts has a board outside it; of alike boards it has the first ones. */
  #outside(boards: number[]): Demand {
    return { gives: this.#prices.map((_, board) => (boards.includes(board) ? 0 : 1)), need: 1 };
  }

  #keep(cuttings: GridCutting[]): void {
    const used = cuttings.map(({ board }) => board);
    const price = used.reduce((sum, board) => sum + (this.#prices[board] as number), 0);
    if (this.#best && this.#best.price <= price) return;
    const sum = (key: 'cost' | 'area') =>
      used.reduce((total, board) => total + (this.#job.boards[board] as GridBoard)[key], 0);
    this.#best = { cuttings, price, cost: sum('cost'), area: sum('area') };
  }

  #raiseBound(boards: number[]): void {
    this.#bound = boards.reduce((sum, board) => sum + (this.#job.boards[board] as GridBoard).cost, 0);
    this.#boundPrice = this.#priceOf(boards);
  }

  #priceOf(boards: number[]): number {
    return boards.reduce((sum, board) => sum + (this.#prices[board] as number), 0);
  }

  #value(profits: Int32Array, known = new Map<BoardGrid, BoardValues>()): Valuation {
    const boards = this.#layouts.map((layout) => {
      const found = known.get(layout);
      const values = found ?? new BoardValues(layout, profits, this.#crosscutFirst);
      if (!found) this.#steps += values.work;
      known.set(layout, values);
      return values;
    });
    return { profits, boards };
  }

  #demand({ profits, boards }: Valuation): void {
    const need = this.#counts.reduce((sum, count, part) => sum + count * (profits[part] as number), 0);
    this.#proofs.push({ gives: boards.map(({ best }) => Math.min(best, need)), need });
  }
}
