import { ShopError } from '../measure/shop-error.js';
import type { CutPart, CutPlan, FirstCut, Offcut } from './cut-plan/plan.js';
import { planCuts } from './cut-plan/plan-cuts.js';
import type { TrimmedBoard } from './trimmed-boards.js';

/**
 * Plans plywood: each list of parts that `sheetParts` gives is planned with either first cut, and the cheapest plan is taken;
 * of equal ones that which keeps the largest offcut.
 *
 * @param sheets.lists  see `sheetParts`; in
 * @param sheets.sheets  see `readSheets` and `trimmedBoards`; in
 * @param sheets.kerf  of the saw, in
 * @returns the plan; its bound speaks for parts that all lie the way they do in it
 * @throws ShopError  as `planCuts`, where no list fits
 */
export function planSheets(sheets: {
  lists: readonly CutPart[][];
  sheets: readonly TrimmedBoard[];
  kerf: number | string;
}): CutPlan {
  const boards = sheets.sheets.map(({ cut }) => cut);
  const plans: CutPlan[] = [];
  let refused: ShopError | undefined;
  for (const parts of sheets.lists)
    for (const firstCut of ['rip', 'crosscut'] satisfies FirstCut[])
      try {
        plans.push(planCuts({ parts, boards, kerf: sheets.kerf, firstCut }));
      } catch (error) {
        if (!(error instanceof ShopError)) throw error;
        refused ??= error;
      }
  const [first, ...others] = plans;
  if (!first) throw refused ?? new ShopError('lists: none given; possible: what sheetParts gives');
  const best = others.reduce(
    (a, b) => (b.cost < a.cost || (b.cost === a.cost && largest(b) > largest(a)) ? b : a),
    first,
  );
  return { ...best, bounds: `${best.bounds} All parts lie the same way on the sheet as in this plan.` };
}

function largest({ boards }: CutPlan): number {
  const area = ({ length, width }: Offcut) => length * width;
  return Math.max(0, ...boards.flatMap(({ offcuts }) => offcuts.map(area)));
}
