import { describe, expect, it } from 'vitest';
import { lidFit } from '../../../kernel-helpers/src/fit/lid-fit.js';
import { boxGroovePasses } from '../../../kernel-helpers/src/joints/groove-passes.js';
import { grooveRouting } from '../../../kernel-helpers/src/joints/groove-routing.js';
import { grooveRuns } from '../../../kernel-helpers/src/joints/groove-runs.js';
import { decisionSchemas } from '../../../kernel-helpers/src/record/decisions/decision-schemas.js';
import {
  daysDecision,
  grooveDecision,
  lidDecision,
  stockDecision,
} from '../../../kernel-helpers/src/record/results/decided.js';
import { readBoards } from '../../../kernel-helpers/src/stock/boards/boards.js';
import { boardLayouts } from '../../../kernel-helpers/src/stock/cutting/board-layouts.js';
import { millingLoss } from '../../../kernel-helpers/src/stock/milling/milling-loss.js';
import { roughCut } from '../../../kernel-helpers/src/stock/milling/rough-cut.js';
import { trimmedBoards } from '../../../kernel-helpers/src/stock/milling/trimmed-boards.js';
import { yearOfAir } from '../../../kernel-helpers/src/wood/air/air.js';
import { box, dovetails } from '../../money/a-box.js';
import { boxDays } from '../../show/a-schedule.js';
import { handMade, kerf, planOf } from '../../stock/hand-made-plan.js';

const air = yearOfAir({ place: 'chicago-ohare', heating: { heatTo: 20, humidifyTo: 0.3 } });
const fit = lidFit({ box: box.design, species: 'walnut-black', ringAngle: 20, air, fittingMoisture: 8 });
const runs = grooveRuns({ box, joints: { layout: dovetails, firstBoards: 'front and back' } });
const routing = grooveRouting({ runs, parts: box.parts, router: { machine: 'router table' } });
const passes = boxGroovePasses({ box, cutter: '1/8 in', panel: '13/64 in' });

const cut = roughCut({ parts: box.parts });
const used = readBoards([{ mark: 'A', thickness: '4/4', width: '10 in', length: '10 ft', price: 10 }]);
const trimmed = trimmedBoards({ boards: used });
const plan = planOf(...trimmed.map((board) => handMade(board.cut)));
const layouts = boardLayouts({ plan, boards: trimmed, kerf });
const milling = millingLoss({ cut, boards: used });

describe('what a sheet hands to the record', () => {
  const decided = {
    lid: lidDecision(fit),
    grooves: grooveDecision({ runs, routing, passes }),
    stock: stockDecision({ cut, plan, milling, layouts, sheetLayouts: [], offcuts: [] }),
    days: daysDecision(boxDays('2027-03-12')),
  };

  it.each(Object.entries(decided))(
    '%s: is as its schema says, and leaves the findings to their own place',
    (what, results) => {
      expect(decisionSchemas[what as keyof typeof decided].safeParse(results).error).toBeUndefined();
      expect(JSON.stringify(results)).not.toContain('"findings"');
    },
  );

  it('keeps of the boards those that are used, and of a groove what the bench list needs', () => {
    expect(decided.stock.boards).toEqual(used);
    expect(Object.keys(decided.grooves.passes[0] ?? {})).toEqual(['name', 'cutter', 'fences', 'depths']);
  });
});
