import { allOperations, type Operation } from './operations.js';
import { pertMoments } from './pert.js';

/**
 * What sanding takes: means of the operations that are counted by what is sanded, set-up included, so that a sheet on the
 * surface and the hours of the piece rest on the same figures.
 *
 * @param sanded  square feet, once for each grade, as `planSanding` counts them
 * @param operations  those of a box unless told otherwise
 * @returns minutes
 */
export function sandingMinutes(
  sanded: { beforeAssembly: number; afterAssembly: number },
  operations: readonly Operation[] = allOperations(),
): { inAll: number; beforeAssembly: number } {
  const minutesOf = (unit: Operation['per'], count: number) =>
    operations
      .filter(({ per }) => per === unit && count > 0)
      .reduce((sum, { setUp, each }) => sum + pertMoments(setUp).mean + count * pertMoments(each).mean, 0);
  const beforeAssembly = minutesOf('graded square foot before assembly', sanded.beforeAssembly);
  return {
    inAll: beforeAssembly + minutesOf('graded square foot after assembly', sanded.afterAssembly),
    beforeAssembly,
  };
}
