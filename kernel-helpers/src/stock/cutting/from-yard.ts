import * as z from 'zod';
import type { Finding } from '../../measure/finding.js';
import { amount, readParameters, size } from '../../measure/parameters.js';
import { ShopError } from '../../measure/shop-error.js';
import { judge, tape } from '../../measure/verdict.js';
import type { PiecePart } from '../../piece/piece.js';
import type { Board } from '../boards/boards.js';
import { quarterThicknesses } from '../boards/lumber-data.js';
import type { CutPart } from '../cut-plan/plan.js';
import { planCuts } from '../cut-plan/plan-cuts.js';
import type { RoughCut } from '../milling/rough-cut.js';
import type { MillingAllowances } from '../milling/rough-part.js';
import { readAllowances } from '../milling/rough-parts.js';
import { trimmedBoards } from '../milling/trimmed-boards.js';
import { planSheets } from './plan-sheets.js';
import { readSheets, type TypedSheet } from './sheet-goods.js';

/** Boards or sheets that can be had for the asking, all of one size: lengths as text or inches. */
export interface Yard {
  width: number | string;
  length: number | string;
  /** Of a board foot; of a sheet the whole. In whole currency units. */
  price: number;
}

const fields = z.strictObject({
  width: size({ least: 1, most: 72, why: 'what the yard has' }),
  length: size({ least: 3, most: 240, why: 'what the yard has' }),
  price: amount({ least: 0, most: 100_000, why: 'what the yard asks' }),
});

/** Most boards of a kind that are counted on before it is said that they do not do. */
const most = 40;

/**
 * What the yard has for these parts: a board of each rough thickness that they ask for, glued up or not.
 *
 * @param buy.parts  finished; plywood is left out
 * @returns straight and clear, as long as nobody has looked at them; in
 * @throws ShopError  a size or a price that is not possible
 */
export function yardBoards(buy: { yard: Yard; parts: readonly PiecePart[]; allowances?: MillingAllowances }): Board[] {
  const { width, length, price } = readParameters(fields, buy.yard);
  const { thickness, panelThickness } = readAllowances(buy.allowances);
  const needed = buy.parts
    .filter(({ material }) => material === 'wood')
    .flatMap((part) => [part.thickness + thickness, part.thickness + panelThickness + thickness]);
  const sold = quarterThicknesses.filter(({ rough }, index) => {
    const thinner = quarterThicknesses[index - 1]?.rough ?? 0;
    return needed.some((each) => each <= rough && each > thinner);
  });
  return sold.map(({ rough, quarters }) => ({ mark: `yard ${quarters}`, thickness: rough, width, length, price }));
}

/**
 * The boards to plan with: those there are where they give every part, else with as many from the yard as it takes.
 *
 * @param buy.own  in hand, or measured at the yard; in
 * @param buy.yard  see {@link yardBoards}; in
 * @param buy.ends  cut off both ends of each board
 * @throws ShopError  as `planCuts`, where the yard's do not do either
 */
export function boardsWithYard(buy: {
  own: readonly Board[];
  yard: readonly Board[];
  cut: Pick<RoughCut, 'toCut' | 'allowances' | 'kerf'>;
  ends?: number | string;
  firstCut: string;
}): Board[] {
  const { own, yard, cut, ends = 0, firstCut } = buy;
  const { toCut, allowances, kerf } = cut;
  return asManyAsItTakes(own, yard, toCut.parts, (boards) => {
    const trimmed = trimmedBoards({ boards, blanks: toCut.blanks, allowances, ends });
    planCuts({ parts: toCut.parts, boards: trimmed.map((each) => each.cut), kerf, firstCut });
  });
}

/**
 * The sheets to plan with, likewise: a sheet from the yard is as thick as the parts.
 *
 * @param buy.lists  see `sheetParts`; none where nothing is of plywood
 * @param buy.parts  finished
 * @param buy.edges  cut off all edges of each sheet
 * @throws ShopError  as `planSheets`, where the yard's do not do either
 */
export function sheetsWithYard(buy: {
  own: readonly Board[];
  yard: Yard;
  parts: readonly PiecePart[];
  lists: readonly CutPart[][];
  edges: number | string;
  kerf: number | string;
}): Board[] {
  const { own, yard, parts, lists, edges, kerf } = buy;
  if (lists.length === 0) return [...own];
  const thicknesses = parts.filter(({ material }) => material === 'plywood').map(({ thickness }) => thickness);
  const kinds = [...new Set(thicknesses)].map(
    (thickness, index): TypedSheet => ({ mark: `yard sheet ${index + 1}`, thickness, ...yard }),
  );
  return asManyAsItTakes(own, readSheets(kinds), lists[0] ?? [], (boards) =>
    planSheets({ lists, sheets: trimmedBoards({ boards, ends: edges, edges }), kerf }),
  );
}

function asManyAsItTakes(
  own: readonly Board[],
  kinds: readonly Board[],
  parts: readonly CutPart[],
  plan: (boards: readonly Board[]) => void,
): Board[] {
  const area = (list: readonly { length: number; width: number; count?: number }[]) =>
    list.reduce((sum, { length, width, count = 1 }) => sum + count * length * width, 0);
  // Fewer than their area asks for never do without one's own.
  const least = Math.max(1, Math.floor((area(parts) - area(own)) / area(kinds.slice(0, 1))));
  for (let number = 0; ; number = Math.max(least, number + 1)) {
    const bought = kinds.flatMap((kind) =>
      Array.from({ length: number }, (_, index) => ({ ...kind, mark: `${kind.mark} no. ${index + 1}` })),
    );
    const boards = [...own, ...bought];
    try {
      plan(boards);
      return boards;
    } catch (error) {
      if (!(error instanceof ShopError) || number >= most) throw error;
    }
  }
}

/**
 * Whether a plan counts on boards that nobody has looked at yet.
 *
 * @param plan.used  boards and sheets of the plan
 * @param plan.own  those that were measured
 */
export function yardFindings(plan: { used: readonly Board[]; own: readonly Board[] }): Finding[] {
  const unseen = plan.used.filter(({ mark }) => !plan.own.some((board) => board.mark === mark));
  return [
    {
      rule: 'every board measured',
      verdict: judge(unseen.length === 0, 'watch'),
      figures:
        unseen.length === 0
          ? 'the plan uses boards and sheets that were measured'
          : `${unseen.map(({ mark, width, length }) => `${mark} ${tape(width)} by ${tape(length)}`).join(', ')}: taken as straight and clear`,
      reason: 'a board from the yard has knots, checks and bends that no plan knows before it is looked at',
      change: 'go and choose them, type them in as measured, and run this again before you cut',
    },
  ];
}
