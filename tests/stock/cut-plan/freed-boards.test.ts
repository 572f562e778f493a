import { expect, it } from 'vitest';
import { twosToFours, withoutBoards } from '../../../kernel-helpers/src/stock/cut-plan/freed-boards.js';
import type { GridCutting } from '../../../kernel-helpers/src/stock/cut-plan/grid-job.js';

const board = (area: number) => ({ length: 10, width: 10, cost: area, area, defects: [], takes: [true, true] });
const parts = [2, 3].map((count) => ({ length: 2, width: 2, count }));
const job = { boards: [board(1), board(2), board(3)], parts, firstCut: 'rip' as const };
const cutting = (on: number, ...cut: number[]): GridCutting => {
  const places = cut.map((part, i) => ({ part, x: 2 * i, y: 0 }));
  return { board: on, sections: [{ x1: 0, x2: 10, strips: [{ y1: 0, y2: 2, places }] }] };
};

it('the parts of one board may come from it and from those not used, the rest of the plan stays', () => {
  const [first, last] = [cutting(0, 0, 1, 1), cutting(2, 0, 1)];
  const { kept, free, job: own } = withoutBoards(job, [first, last], [last]);
  expect(kept).toEqual([first]);
  expect(free).toEqual([1, 2]);
  expect(own.boards.map(({ area }) => area)).toEqual([2, 3]);
  expect(own.parts.map(({ count }) => count)).toEqual([1, 1]);
});

it('looks at few boards first: 6 twos, 4 threes and one four of four', () => {
  const sets = twosToFours(['a', 'b', 'c', 'd']);
  expect(sets.map(({ length }) => length)).toEqual([2, 2, 2, 2, 2, 2, 3, 3, 3, 3, 4]);
  expect(new Set(sets.map(String)).size).toBe(11);
});
