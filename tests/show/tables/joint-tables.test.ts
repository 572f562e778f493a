import { describe, expect, it } from 'vitest';
import { boxGroovePasses } from '../../../kernel-helpers/src/joints/groove-passes.js';
import { grooveRuns } from '../../../kernel-helpers/src/joints/groove-runs.js';
import { compareJoints } from '../../../kernel-helpers/src/joints/joint-comparison.js';
import { jointMinutes } from '../../../kernel-helpers/src/money/joint-minutes.js';
import { groovePassTable, grooveRunTable, jointTable } from '../../../kernel-helpers/src/show/tables/joint-tables.js';
import { box, dovetails, fingers, keyedMitre, rabbet } from '../../money/a-box.js';
import { tableRows } from '../read-html.js';

it('joints stand side by side with their own minutes', () => {
  const rows = tableRows(jointTable(compareJoints({ dovetails, fingers, keyedMitre, rabbet })));
  expect(rows).toHaveLength(4);
  const row = rows.find(([joint]) => joint === 'through dovetail');
  expect(row?.slice(3, 5)).toEqual(
    [jointMinutes(dovetails).corner, jointMinutes(dovetails).setUp].map((n) => n.toFixed(0)),
  );
});

describe('the grooves of a box', () => {
  it('end on the board that they are in', () => {
    const runs = grooveRuns({ box, joints: { layout: dovetails, firstBoards: 'front and back' } });
    const rows = tableRows(grooveRunTable(box, runs, { lengths: 'mm' }));
    expect(rows).toHaveLength(runs.length);
    for (const [, , from, to, length] of rows) {
      expect(Number.parseFloat(from ?? '')).toBeLessThan(Number.parseFloat(to ?? ''));
      expect(Number.parseFloat(to ?? '')).toBeLessThanOrEqual(Number.parseFloat(length ?? ''));
    }
  });

  it('are cut with as many settings of the fence as there are passes side by side', () => {
    const passes = boxGroovePasses({ box, cutter: '1/8 in', panel: '13/64 in' });
    for (const [i, [name, fences, depths]] of tableRows(groovePassTable(passes)).entries()) {
      expect(name).toBe(passes[i]?.name);
      expect(fences?.split(', then ')).toHaveLength(passes[i]?.passes ?? 0);
      expect(depths?.split(', ')).toHaveLength((passes[i]?.inAll ?? 0) / (passes[i]?.passes ?? 1));
    }
  });
});
