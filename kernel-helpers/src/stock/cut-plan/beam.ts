import type { BoardValues } from './board-values.js';
import type { GridCutting } from './grid-job.js';
import { cuttingsOf, type PackNode, totalProfit, type Valuation } from './pack.js';
import { keyOf, likelySections, type NextSection, nextSections } from './sections.js';

/**
 * Looks for a way to cut all parts from given boards, without a promise to find one: of the beginnings with equally many
 * sections it keeps those that gave up least value for what they have cut.
 *
 * @param ask.boards  numbers of the boards, in the order they are filled
 * @param ask.guide  values that lead the search
 * @param ask.width  beginnings kept
 * @param ask.branches  sections tried after each
 * @param ask.steps  work allowed
 * @internal
 */
export function beam(ask: {
  boards: number[];
  counts: Uint16Array;
  guide: Valuation;
  width: number;
  branches: number;
  steps: number;
  crosscutFirst: boolean;
}): { cuttings: GridCutting[] | undefined; steps: number } {
  const { boards, counts, guide, width, branches, crosscutFirst } = ask;
  const values = boards.map((board) => guide.boards[board] as BoardValues);
  const whole = totalProfit(guide.profits, counts);
  const budget = values.reduce((sum, board) => sum + board.best, 0) - whole;
  // What is given up is spread over the parts; boards that may be left over are no reason to give up more.
  const rate = Math.min(budget / whole, 0.2);
  let steps = 0;
  if (budget < 0) return { cuttings: undefined, steps };
  type Beginning = PackNode & { place: number; lead: number };
  let frontier: Beginning[] = [
    { left: counts, loss: 0, parent: undefined, board: 0, section: undefined, place: 0, lead: 0 },
  ];
  while (frontier.length > 0) {
    const next = new Map<string, Beginning>();
    for (const node of frontier) {
      let { board, place, loss } = node;
      let sections: NextSection[] = [];
      for (; board < boards.length; board++, place = 0) {
        const of = values[board] as BoardValues;
        const rest = of.rest[place] as number;
        if (rest > 0) {
          const found = crosscutFirst
            ? likelySections(of, place, node.left, branches, 'all')
            : stripsOver(of, node.left, budget - loss, branches);
          steps += found.steps + 50;
          sections = found.sections;
        }
        if (sections.length > 0) break;
        loss += rest;
        if (loss > budget) break;
      }
      if (steps > ask.steps) return { cuttings: undefined, steps };
      const of = values[board];
      if (!of) continue;
      for (const { section, to, left, value } of sections) {
        const lost = loss + (of.rest[place] as number) - value - (of.rest[to] as number);
        if (lost > budget) continue;
        const lead = lost - rate * (whole - totalProfit(guide.profits, left));
        const child: Beginning = { left, loss: lost, parent: node, board, section, place: to, lead };
        if (left.every((count) => count === 0)) return { cuttings: cuttingsOf(child, boards), steps };
        const key = `${board} ${keyOf(left)}`;
        const known = next.get(key);
        if (!known || known.place > to) next.set(key, child);
      }
    }
    frontier = [...next.values()].sort((a, b) => a.lead - b.lead || a.place - b.place).slice(0, width);
  }
  return { cuttings: undefined, steps };
}

/** Ways to rip the whole board, those that give up least first. */
function stripsOver(values: BoardValues, left: Uint16Array, allowed: number, branches: number) {
  let slack = Math.min(allowed, Math.floor(allowed / 512));
  let found = nextSections(values, 0, left, slack, 3000, 'last');
  let { steps } = found;
  while (found.complete && found.sections.length < branches && slack < allowed) {
    slack = Math.min(allowed, slack * 2 + 1);
    const wider = nextSections(values, 0, left, slack, 3000, 'last');
    steps += wider.steps;
    if (!wider.complete && wider.sections.length < found.sections.length) break;
    found = wider;
  }
  if (found.sections.length > 0) return { sections: found.sections, steps };
  const likely = likelySections(values, 0, left, branches, 'last');
  return { sections: likely.sections, steps: steps + likely.steps };
}
