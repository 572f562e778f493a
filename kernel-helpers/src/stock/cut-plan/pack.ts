import type { BoardValues } from './board-values.js';
import type { GridCutting, GridSection } from './grid-job.js';
import { keyOf, nextSections } from './sections.js';

/** What parts are worth, in whole numbers, and what each board gives at most at these values. */
export interface Valuation {
  profits: Int32Array;
  boards: BoardValues[];
}

/** How the search for a packing ended. */
export interface Packing {
  /** A way to cut all parts from the boards. */
  cuttings: GridCutting[] | undefined;
  /** Whether it is certain that there is none. */
  impossible: boolean;
  steps: number;
}

/** A beginning: what is cut so far. */
export interface PackNode {
  left: Uint16Array;
  loss: number;
  parent: PackNode | undefined;
  board: number;
  section: GridSection | undefined;
}

/**
 * Finds a way to cut all parts from given boards, or proves that there is none: boards one after the other, sections from the
 * marked end; a beginning is dropped when it gave up more value than the boards have over, or holds what a shorter one holds.
 *
 * @param ask.boards  numbers of the boards, in the order they are filled
 * @param ask.counts  copies of each part to cut
 * @param ask.guide  values that limit the search
 * @param ask.limits  further valuations, that tell which beginnings cannot be finished
 * @param ask.steps  work allowed
 * @param ask.crosscutFirst  sections, or strips over whole boards
 * @internal
 */
export function pack(ask: {
  boards: number[];
  counts: Uint16Array;
  guide: Valuation;
  limits: Valuation[];
  steps: number;
  crosscutFirst: boolean;
}): Packing {
  const { boards, counts, guide, limits, crosscutFirst } = ask;
  const boardsOf = ({ boards: all }: Valuation) => boards.map((board) => all[board] as BoardValues);
  const values = boardsOf(guide);
  const budget = values.reduce((sum, board) => sum + board.best, 0) - totalProfit(guide.profits, counts);
  if (budget < 0) return { cuttings: undefined, impossible: true, steps: 0 };
  const tests = limits.map((limit) => {
    const each = boardsOf(limit);
    const after = each.map((_, index) => each.slice(index + 1).reduce((sum, board) => sum + board.best, 0));
    return { profits: limit.profits, rest: each.map(({ rest }) => rest), after };
  });
  const ends = crosscutFirst ? 'all' : 'last';
  let steps = 0;
  let level: PackNode[] = [{ left: counts, loss: 0, parent: undefined, board: -1, section: undefined }];
  for (const [index, board] of values.entries()) {
    const places = board.layout.xs.length;
    const waiting: PackNode[][] = Array.from({ length: places }, () => []);
    const seen = new Set<string>();
    const done: PackNode[] = [];
    waiting[0] = level;
    for (let place = 0; place < places; place++) {
      let nodes = waiting[place] as PackNode[];
      if (nodes.length === 0) continue;
      waiting[place] = [];
      nodes = nodes.filter((node) => {
        const key = keyOf(node.left);
        if (seen.has(key)) return false;
        seen.add(key);
        return tests.every(
          ({ profits, rest, after }) =>
            totalProfit(profits, node.left) <=
            ((rest[index] as Int32Array)[place] as number) + (after[index] as number),
        );
      });
      for (const node of nodes) {
        const rest = board.rest[place] as number;
        let grown = 0;
        if (place < places - 1 && rest > 0) {
          const next = nextSections(board, place, node.left, budget - node.loss, ask.steps - steps, ends);
          steps += next.steps;
          if (!next.complete) return { cuttings: undefined, impossible: false, steps };
          for (const { section, to, left, value } of next.sections) {
            const loss = node.loss + rest - value - (board.rest[to] as number);
            const child: PackNode = { left, loss, parent: node, board: index, section };
            if (left.every((count) => count === 0))
              return { cuttings: cuttingsOf(child, boards), impossible: false, steps };
            (waiting[to] as PackNode[]).push(child);
          }
          grown = next.sections.length;
        }
        // A board is left when nothing more can be cut from it.
        if (grown === 0 && node.loss + rest <= budget) done.push({ ...node, loss: node.loss + rest });
      }
    }
    const kept = new Map<string, PackNode>();
    for (const node of done) {
      const key = keyOf(node.left);
      const other = kept.get(key);
      if (!other || other.loss > node.loss) kept.set(key, node);
    }
    level = [...kept.values()];
    if (level.length === 0) break;
  }
  return { cuttings: undefined, impossible: true, steps };
}

/** What parts are worth in all. */
export function totalProfit(profits: Int32Array, left: Uint16Array): number {
  let sum = 0;
  for (let part = 0; part < left.length; part++) sum += (profits[part] as number) * (left[part] as number);
  return sum;
}

/** The sections of each board of a finished beginning. */
export function cuttingsOf(last: PackNode, boards: number[]): GridCutting[] {
  const sections = new Map<number, GridSection[]>();
  for (let node: PackNode | undefined = last; node?.section; node = node.parent) {
    const list = sections.get(node.board) ?? [];
    list.unshift(node.section);
    sections.set(node.board, list);
  }
  return [...sections]
    .sort((a, b) => a[0] - b[0])
    .map(([index, list]) => ({ board: boards[index] as number, sections: list }));
}
