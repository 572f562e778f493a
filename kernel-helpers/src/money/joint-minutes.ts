import { allOperations, type JointLayout, jointCounts, type Operation } from './operations.js';
import { pertMoments } from './pert.js';

/**
 * What a joint takes: means of the operations that are counted by its tails, fingers, mitres, keys or rabbets, so that a
 * comparison of joints and the hours of a piece rest on the same figures.
 *
 * @param joint  the layout of one corner
 * @param operations  those of a box unless told otherwise
 * @returns minutes for one corner of four once it is set up, and for setting up
 */
export function jointMinutes(
  joint: JointLayout,
  operations: readonly Operation[] = allOperations(),
): { setUp: number; corner: number } {
  const counts: Partial<Record<Operation['per'], number>> = jointCounts(joint);
  const counted = operations.filter(({ per }) => (counts[per] ?? 0) > 0);
  return {
    setUp: counted.reduce((sum, { setUp }) => sum + pertMoments(setUp).mean, 0),
    corner: counted.reduce((sum, { per, each }) => sum + (pertMoments(each).mean * (counts[per] ?? 0)) / 4, 0),
  };
}
