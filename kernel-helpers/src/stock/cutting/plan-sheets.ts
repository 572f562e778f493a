import { ShopError } from '../../measure/shop-error.js';
import { tape } from '../../measure/verdict.js';
import type { CutPart, CutPlan, FirstCut, Offcut } from '../cut-plan/plan.js';
import { planCuts } from '../cut-plan/plan-cuts.js';
import type { TrimmedBoard } from '../milling/trimmed-boards.js';
import { sheetTolerance } from './sheet-goods.js';

/**
 * Plans plywood: each list of parts that `sheetParts` gives is planned with either first cut, and the cheapest plan is taken;
 * of equal ones that which keeps the largest offcut. A sheet is sawn as thick as it is: one thicker than the part is no use.
 *
 * @param sheets.lists  see `sheetParts`; in
 * @param sheets.sheets  see `readSheets` and `trimmedBoards`; in
 * @param sheets.kerf  of the saw, in
 * @returns the plan; its bound speaks for parts that all lie the way they do in it
 * @throws ShopError  no sheet as thick as the parts; as `planCuts`, where no list fits
 */
export function planSheets(sheets: {
  lists: readonly CutPart[][];
  sheets: readonly TrimmedBoard[];
  kerf: number | string;
}): CutPlan {
  const thickest = Math.max(...sheets.lists.flat().map(({ thickness }) => thickness));
  const boards = sheets.sheets
    .map(({ cut }) => cut)
    .filter(({ thickness }) => thickness <= thickest + 2 * sheetTolerance);
  if (boards.length === 0)
    throw new ShopError(
      `sheets: ${sheets.sheets.map(({ cut }) => `${cut.mark} ${tape(cut.thickness)} thick`).join(', ')} given; possible: ${tape(thickest + sheetTolerance)}, ${tape(sheetTolerance)} more or less (grooves and pieces around it are cut to it)`,
    );
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
