import { expect, it } from 'vitest';
import { estimateHours } from '../../kernel-helpers/src/money/hours.js';
import { countWork } from '../../kernel-helpers/src/money/operations.js';
import { sandingMinutes } from '../../kernel-helpers/src/money/sanding-minutes.js';
import { planSanding } from '../../kernel-helpers/src/surface/finish/sanding.js';
import { box, dovetails } from './a-box.js';

const kept = ['P80', 'P100', 'P120', 'P150', 'P180', 'P220', 'P240', 'P320'];

it.each([
  ['P120', 'P220'],
  ['P80', 'P320'],
  ['P150', 'P180'],
])('from %s to %s, the surface and the hours have one figure', (from, to) => {
  const { sanded } = planSanding({ box, kept, from, to });
  const counts = countWork({ piece: box, joint: dovetails, boards: 2, coats: 2, sanded });
  const hours = (id: string) => estimateHours({ counts }).byOperation.find((each) => each.id === id)?.mean ?? 0;
  const minutes = sandingMinutes(sanded);
  expect(minutes.beforeAssembly).toBeCloseTo(60 * hours('sanding'), 9);
  expect(minutes.inAll).toBeCloseTo(60 * (hours('sanding') + hours('sanding-outside')), 9);
});

it('worked by hand: 9 square feet before and 14 after assembly, all grades added', () => {
  // Set-up (5 + 20 + 10)/6 each time; a square foot a grade (1.5 + 9 + 3.75)/6.
  const { beforeAssembly, inAll } = sandingMinutes({ beforeAssembly: 9, afterAssembly: 14 });
  expect(beforeAssembly).toBeCloseTo(35 / 6 + 9 * 2.375, 9);
  expect(inAll).toBeCloseTo(2 * (35 / 6) + 23 * 2.375, 9);
  expect(sandingMinutes({ beforeAssembly: 0, afterAssembly: 0 })).toEqual({ inAll: 0, beforeAssembly: 0 });
});
