import type { BoardValues } from './board-values.js';
import type { GridCutting, GridSection } from './grid-job.js';
import { keyOf, likelySections, type NextSection, nextSections } from './sections.js';

/** What parts are worth, in whole numbers, and what each board gives at most at these values. */
export interface Valuation {
  worth: Int32Array;
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

interface Node {
  left: Uint16Array;
  loss: number;
  parent: Node | undefined;
  board: number;
  section: GridSection | undefined;
}

/**
 * Looks for a way to cut all parts from given boards: boards one after the other, sections from the marked end, and of the
 * states that have come equally far those that gave up least value. Where no state was left out, "none found" is a proof.
 *
 * @param ask.boards  numbers of the boards, in the order they are filled
 * @param ask.counts  copies of each part to cut
 * @param ask.guide  values that lead the search
 * @param ask.limits  further valuations, that tell which states cannot be finished
 * @param ask.width  states kept at each place
 * @param ask.steps  work allowed
 * @param ask.crosscutFirst  sections, or strips over whole boards
 * @internal
 */
export function pack(ask: {
  boards: number[];
  counts: Uint16Array;
  guide: Valuation;
  limits: Valuation[];
  width: number;
  branches: number;
  steps: number;
  /** How fast value may be given up: 1 evenly over the job, infinite at any time. */
  pace: number;
  /** Work allowed to look for what may come next at one place, unless all of it is wanted. */
  look: number;
  crosscutFirst: boolean;
}): Packing {
  const { boards, counts, guide, limits, width, branches, pace, crosscutFirst } = ask;
  const boardsOf = ({ boards: all }: Valuation) => boards.map((board) => all[board] as BoardValues);
  const values = boardsOf(guide);
  const total = (worth: Int32Array, left: Uint16Array) => {
    let sum = 0;
    for (let part = 0; part < left.length; part++) sum += (worth[part] as number) * (left[part] as number);
    return sum;
  };
  const budget = values.reduce((sum, board) => sum + board.best, 0) - total(guide.worth, counts);
  const whole = total(guide.worth, counts);
  if (budget < 0) return { cuttings: undefined, impossible: true, steps: 0 };
  const tests = limits.map((limit) => {
    const each = boardsOf(limit);
    const after = each.map((_, index) => each.slice(index + 1).reduce((sum, board) => sum + board.best, 0));
    return { worth: limit.worth, rest: each.map(({ rest }) => rest), after };
  });
  const ends = crosscutFirst ? 'all' : 'last';
  let steps = 0;
  let complete = true;
  let level: Node[] = [{ left: counts, loss: 0, parent: undefined, board: -1, section: undefined }];
  for (const [index, board] of values.entries()) {
    const places = board.layout.xs.length;
    const waiting: Node[][] = Array.from({ length: places }, () => []);
    const seen = new Set<string>();
    const done: Node[] = [];
    waiting[0] = level;
    for (let place = 0; place < places; place++) {
      let nodes = waiting[place] as Node[];
      if (nodes.length === 0) continue;
      waiting[place] = [];
      nodes = nodes.filter((node) => {
        const key = keyOf(node.left);
        if (seen.has(key)) return false;
        seen.add(key);
        return tests.every(
          ({ worth, rest, after }) =>
            total(worth, node.left) <= ((rest[index] as Int32Array)[place] as number) + (after[index] as number),
        );
      });
      if (nodes.length > width) {
        nodes.sort((a, b) => a.loss - b.loss);
        nodes.length = width;
        complete = false;
      }
      for (const node of nodes) {
        const rest = board.rest[place] as number;
        let grown = 0;
        if (place < places - 1 && rest > 0) {
          const used = whole - total(guide.worth, node.left);
          const most = (value: number) =>
            Number.isFinite(pace) ? Math.min(budget, (budget * pace * (used + value)) / whole) : budget;
          const allowed = Math.floor(most(rest)) - node.loss;
          if (allowed < budget - node.loss) complete = false;
          const all = branches === Number.POSITIVE_INFINITY;
          let sections: NextSection[];
          if (crosscutFirst && !all) {
            const likely = likelySections(board, place, node.left, branches);
            steps += likely.steps + 100;
            sections = likely.sections;
            complete = false;
          } else {
            let slack = all ? allowed : Math.min(allowed, Math.floor(budget / 512));
            let next = nextSections(board, place, node.left, slack, all ? ask.steps - steps : ask.look, ends);
            steps += next.steps;
            while (next.complete && next.sections.length < branches && slack < allowed) {
              slack = Math.min(allowed, slack * 2 + 1);
              const wider = nextSections(board, place, node.left, slack, all ? ask.steps - steps : ask.look, ends);
              steps += wider.steps;
              if (wider.complete || next.sections.length < wider.sections.length) next = wider;
              if (!wider.complete) break;
            }
            if (!next.complete || slack < allowed) complete = false;
            sections = next.sections;
          }
          if (steps > ask.steps) return { cuttings: undefined, impossible: false, steps };
          for (const { section, to, left, value } of sections) {
            const loss = node.loss + rest - value - (board.rest[to] as number);
            if (loss > most(value)) {
              complete = false;
              continue;
            }
            const child: Node = { left, loss, parent: node, board: index, section };
            if (left.every((count) => count === 0))
              return { cuttings: cuttingsOf(child, boards), impossible: false, steps };
            (waiting[to] as Node[]).push(child);
          }
          grown = sections.length;
        }
        // A board is left when nothing more can be cut from it.
        if (grown === 0 && node.loss + rest <= budget) done.push({ ...node, loss: node.loss + rest });
      }
    }
    const kept = new Map<string, Node>();
    for (const node of done) {
      const key = keyOf(node.left);
      const other = kept.get(key);
      if (!other || other.loss > node.loss) kept.set(key, node);
    }
    level = [...kept.values()];
    if (level.length > width) {
      level.sort((a, b) => a.loss - b.loss);
      level.length = width;
      complete = false;
    }
    if (level.length === 0) break;
  }
  return { cuttings: undefined, impossible: complete, steps };
}

function cuttingsOf(last: Node, boards: number[]): GridCutting[] {
  const sections = new Map<number, GridSection[]>();
  for (let node: Node | undefined = last; node?.section; node = node.parent) {
    const list = sections.get(node.board) ?? [];
    list.unshift(node.section);
    sections.set(node.board, list);
  }
  return [...sections]
    .sort((a, b) => a[0] - b[0])
    .map(([index, list]) => ({ board: boards[index] as number, sections: list }));
}
