import { expect, it } from 'vitest';
import { layOutDovetails } from '../../kernel-helpers/src/joints/dovetails.js';
import { layOutFingers } from '../../kernel-helpers/src/joints/finger-joint.js';
import { compareJoints } from '../../kernel-helpers/src/joints/joint-comparison.js';
import { layOutKeyedMitre } from '../../kernel-helpers/src/joints/keyed-mitre.js';
import { layOutRabbet } from '../../kernel-helpers/src/joints/rabbet.js';

const board = { boardWidth: '5 in', stockThickness: '1/2 in' };
const joints = {
  dovetails: layOutDovetails({ ...board, tails: 3, pinWidth: '1/4 in', halfPin: '3/8 in', slope: '1:8' }),
  fingers: layOutFingers({ ...board, fingers: 10 }),
  keyedMitre: layOutKeyedMitre({ ...board, keys: 3, keyDepth: '1/2 in' }),
  rabbet: layOutRabbet(board),
};

it('one corner, 5 in wide in 1/2 in stock, worked by hand', () => {
  const [dovetail, finger, mitre, rabbet] = compareJoints(joints);
  // Six sides of tails, each 1/2 wide and 1/2 root(1 + 1/64) long.
  expect(dovetail?.longGrain).toBeCloseTo(6 * 0.25 * 1.0077822, 6);
  // Socket floors: all that is not tail at the baseline, 5 - 3 (5/4 - 1/8), by 1/2; tails 1 1/8 to 1 1/4 by 1/2, three of them.
  expect(dovetail?.endGrain).toBeCloseTo((5 - 3 * 1.125) / 2 + (3 * (1.125 + 1.25)) / 4, 9);
  expect(finger).toMatchObject({ longGrain: 9 / 4, endGrain: 2.5, counted: 9 / 4 + 2.5 / 4 }); // nine faces of 1/2 by 1/2
  expect(mitre?.longGrain).toBe(1.5);
  expect(rabbet).toMatchObject({ longGrain: 0, endGrain: 2.5 + 1.25 });
});

it('counts end grain as it is told, and refuses what is no share', () => {
  expect(compareJoints({ ...joints, endGrainShare: 0 })[3]?.counted).toBe(0);
  expect(() => compareJoints({ ...joints, endGrainShare: 25 })).toThrow(
    'endGrainShare: 25 given; possible: a number from 0 to 1',
  );
});

it('dovetails that stand proud glue no more than flush ones: the ends touch nothing', () => {
  const proud = layOutDovetails({
    ...board,
    proud: '1/8 in',
    tails: 3,
    pinWidth: '1/4 in',
    halfPin: '3/8 in',
    slope: '1:8',
  });
  expect(compareJoints({ dovetails: proud })[0]?.longGrain).toBe(compareJoints(joints)[0]?.longGrain);
});
