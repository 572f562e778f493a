import { describe, expect, it } from 'vitest';
import { conditionsOf } from '../../../kernel-helpers/src/wood/drying/board-in-air.js';
import { Slab, type SlabConditions } from '../../../kernel-helpers/src/wood/drying/slab.js';

/** A slab whose stages (two to a step) and iterations (two looks at the isotherm each) are counted. */
function counted(at: (time: number) => SlabConditions, slab: { half: number; start: number; tolerance?: number }) {
  let [stages, looks] = [0, 0];
  const counting = (time: number): SlabConditions => {
    stages++;
    const conditions = at(time);
    const isotherm = (potential: number) => {
      looks++;
      return conditions.isotherm(potential);
    };
    return { ...conditions, isotherm };
  };
  const { half: halfThickness, start, tolerance } = slab;
  const run = new Slab({ halfThickness, content: () => start, at: counting, tolerance });
  return (to: number) => {
    [stages, looks] = [0, 0];
    run.advance(to);
    return { steps: stages / 2, iterations: looks / 2 / stages };
  };
}

const linear = (resistance: number): SlabConditions => ({
  potential: 15,
  resistance,
  diffusivity: () => 1,
  isotherm: (content) => content,
});

describe('what the solver costs', () => {
  it('two iterations a stage where the equations are linear: one solves them, one finds them solved', () => {
    for (const resistance of [0, 1]) {
      const advance = counted(() => linear(resistance), { half: 1, start: 10 });
      for (const time of [0.001, 0.01, 0.1, 1]) expect(advance(time).iterations).toBe(2);
    }
  });

  it('three or four iterations a stage in wood through a year, whose diffusivity changes with its moisture', () => {
    for (const finishResistance of [0, 5e9]) {
      const board = { halfThickness: 0.00635, specificGravity: 0.55, finishResistance, diffusionFactor: 1 };
      const air = (day: number) => 0.5 + 0.2 * Math.sin((2 * Math.PI * day) / 365);
      const advance = counted((day) => conditionsOf(board, 20, air(day)), { half: board.halfThickness, start: 9 });
      expect(advance(365).iterations).toBeLessThan(3.5);
    }
  });

  it('one iteration a stage where all rises at one pace: what is guessed from that is right', () => {
    const advance = counted((time) => ({ ...linear(0.2), potential: 15 + time }), { half: 1, start: 15 });
    // In small steps, so that nothing is left of the start.
    for (let time = 0.25; time < 40; time += 0.25) advance(time);
    expect(advance(40.25).iterations).toBe(1);
  });

  it('ten times the steps for a thousandth of the tolerance, since what one step errs goes with its third power', () => {
    const steps = (tolerance: number) =>
      counted((time) => ({ ...linear(0.2), potential: 15 - Math.cos(2 * Math.PI * time) }), {
        ...{ half: 1, start: 14, tolerance },
      })(3).steps;
    expect(steps(1e-6) / steps(1e-3)).toBeGreaterThan(8);
    expect(steps(1e-6) / steps(1e-3)).toBeLessThan(12.5);
  });

  it('few steps for a board that has settled: each may be five times as long as the last', () => {
    const advance = counted(() => linear(0), { half: 1, start: 10 });
    advance(20);
    // Five steps come to 5 + 25 + 125 + 625 + 3125 times the last one.
    expect(advance(2000).steps).toBeLessThanOrEqual(5);
  });
});
