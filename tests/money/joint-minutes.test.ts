import { expect, it } from 'vitest';
import { layOutKeyedMitre } from '../../kernel-helpers/src/joints/keyed-mitre.js';
import { layOutRabbet } from '../../kernel-helpers/src/joints/rabbet.js';
import { estimateHours } from '../../kernel-helpers/src/money/hours.js';
import { jointMinutes } from '../../kernel-helpers/src/money/joint-minutes.js';
import { allOperations, countWork } from '../../kernel-helpers/src/money/operations.js';
import { box, dovetails, fingers } from './a-box.js';

const board = { boardWidth: '5 in', stockThickness: '1/2 in' };
const jointSteps = ['lay-out-joint', 'cut-joint', 'cut-fingers', 'cut-mitres', 'keys', 'cut-rabbets'];

it.each([
  ['dovetails', dovetails],
  ['fingers', fingers],
  ['a keyed mitre', layOutKeyedMitre({ ...board, keys: 3 })],
  ['a rabbet', layOutRabbet(board)],
])('%s take in a comparison what they take in the hours of a piece', (_, joint) => {
  const { setUp, corner } = jointMinutes(joint);
  const { byOperation } = estimateHours({
    counts: countWork({ piece: box, joint, boards: 2, coats: 2 }),
    simulations: 100,
  });
  const hours = byOperation.filter(({ id }) => jointSteps.includes(id)).reduce((sum, { mean }) => sum + mean, 0);
  expect(setUp + 4 * corner).toBeCloseTo(60 * hours, 9);
});

it('goes by your own times where you have them', () => {
  const slow = allOperations().map((each) =>
    each.id === 'cut-rabbets' ? { ...each, setUp: [60, 60, 60] as [number, number, number] } : each,
  );
  expect(jointMinutes(layOutRabbet(board), slow).setUp).toBe(60);
});
