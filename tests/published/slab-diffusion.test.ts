import { describe, expect, it } from 'vitest';
import { Slab, type SlabConditions } from '../../kernel-helpers/src/wood/drying/slab.js';
import values from './slab-check-values.json';
import { firstKind, firstKindCentre, periodic, thirdKind } from './slab-series.js';

const day = 86_400;
const D = 1e-10;
/** A step of 5 % of moisture, from 10 to 15 %; what is asked of the solver is a thousandth of it. */
const [from, to] = [10, 15];
const thousandth = 0.001;

const plain = (potential: number, resistance = 0): SlabConditions => ({
  potential,
  resistance,
  diffusivity: () => D,
  isotherm: (content) => content,
});

/** Metres and seconds. */
const board = (thicknessMm: number, at: (seconds: number) => SlabConditions, content = from) =>
  new Slab({ halfThickness: thicknessMm / 2000, content: () => content, at });

describe('Crank 1975, plane sheet', () => {
  it('the series here give the values computed elsewhere, to their six digits', () => {
    for (const { Fo, E, centre } of values.firstKind) {
      expect(Math.abs(firstKind(Fo) / E - 1), `Fo ${Fo}`).toBeLessThan(5e-6);
      expect(Math.abs(firstKindCentre(Fo) - centre), `Fo ${Fo}`).toBeLessThan(5e-6);
    }
    for (const { Bi, Fo, E } of values.thirdKind)
      expect(Math.abs(thirdKind(Bi, Fo) / E - 1), `Bi ${Bi}, Fo ${Fo}`).toBeLessThan(5e-6);
    for (const { thicknessMm, daysToHalf, daysTo90 } of values.daysToHalf) {
      const Fo = (days: number) => (D * days * day) / (thicknessMm / 2000) ** 2;
      expect(firstKind(Fo(daysToHalf))).toBeCloseTo(0.5, 3);
      expect(firstKind(Fo(daysTo90))).toBeCloseTo(0.9, 3);
    }
  });

  it('bare faces: five times and three thicknesses, mean and middle within a thousandth of the step', () => {
    let [worst, worstMiddle] = [0, 0];
    for (const thicknessMm of [6, 12, 25]) {
      const slab = board(thicknessMm, () => plain(to));
      for (const Fo of [0.02, 0.1, 0.3, 0.75, 1.5]) {
        slab.advance((Fo * (thicknessMm / 2000) ** 2) / D);
        worst = Math.max(worst, Math.abs((slab.mean - from) / (to - from) - firstKind(Fo)));
        worstMiddle = Math.max(worstMiddle, Math.abs((slab.middle - from) / (to - from) - firstKindCentre(Fo)));
      }
    }
    console.log(
      `slab, bare faces: largest difference ${worst.toExponential(1)} of the step in the mean, ${worstMiddle.toExponential(1)} in the middle`,
    );
    expect(worst).toBeLessThan(thousandth);
    expect(worstMiddle).toBeLessThan(thousandth);
  });

  it('faces with a resistance: four Biot numbers and five times within a thousandth of the step', () => {
    let worst = 0;
    for (const Bi of [0.1, 1, 10, 100]) {
      const a = 0.006;
      const slab = board(12, () => plain(to, a / (Bi * D)));
      for (const Fo of [0.05, 0.2, 0.5, 1, 2]) {
        slab.advance((Fo * a ** 2) / D);
        worst = Math.max(worst, Math.abs((slab.mean - from) / (to - from) - thirdKind(Bi, Fo)));
      }
    }
    console.log(`slab, covered faces: largest difference ${worst.toExponential(1)} of the step`);
    expect(worst).toBeLessThan(thousandth);
  });
});

describe('Carslaw and Jaeger 1959, periodic surface', () => {
  const year = 365.25 * day;
  const samples = 365;

  /** Swing of the slab's mean for one unit of swing outside, once it repeats: [in step, a quarter year late]. */
  function response(thicknessMm: number, resistance: number): [number, number] {
    const slab = board(thicknessMm, (seconds) => plain(Math.cos((2 * Math.PI * seconds) / year), resistance), 0);
    slab.advance(9 * year);
    let [inStep, late] = [0, 0];
    for (let n = 1; n <= samples; n++) {
      slab.advance((9 + n / samples) * year);
      inStep += (2 / samples) * slab.mean * Math.cos((2 * Math.PI * n) / samples);
      late += (2 / samples) * slab.mean * Math.sin((2 * Math.PI * n) / samples);
    }
    return [inStep, late];
  }

  it('the closed form here gives the amplitudes and lags computed elsewhere', () => {
    for (const { thicknessMm, amplitudeRatio, lagDays } of values.periodic) {
      const [inStep, late] = periodic(thicknessMm / 2000, D, year);
      expect(Math.hypot(inStep, late)).toBeCloseTo(amplitudeRatio, 4);
      expect(Math.abs((Math.atan2(late, inStep) / (2 * Math.PI)) * 365.25 - lagDays)).toBeLessThan(0.01);
    }
  });

  // A thousandth of the swing, as for the step: of the lag of a board that follows fully, 0.06 day.
  it('amplitude and lag of four thicknesses, bare and covered, within a thousandth of the swing', () => {
    let worst = 0;
    for (const { thicknessMm } of values.periodic)
      for (const Bi of [Number.POSITIVE_INFINITY, 1]) {
        const a = thicknessMm / 2000;
        const [inStep, late] = response(thicknessMm, Bi === 1 ? a / D : 0);
        const [exactInStep, exactLate] = periodic(a, D, year, Bi);
        worst = Math.max(worst, Math.hypot(inStep - exactInStep, late - exactLate));
      }
    console.log(`slab, yearly swing: largest difference ${worst.toExponential(1)} of the swing`);
    expect(worst).toBeLessThan(thousandth);
  });
});

describe('order of convergence', () => {
  const orders = (errors: number[]) =>
    errors.slice(1).map((error, index) => Math.log2((errors[index] as number) / error));

  it('is second in the cells: doubling them quarters the error', () => {
    // A half sine wave dies away as exp(-pi² Fo / 4) and keeps its form: smooth everywhere, so only the cells err.
    const error = (cells: number) => {
      const slab = new Slab({
        halfThickness: 1,
        content: (depth) => Math.sin((Math.PI * depth) / 2),
        at: () => ({ potential: 0, resistance: 0, diffusivity: () => 1, isotherm: (content) => content }),
        cells,
      });
      for (let step = 0; step < 400; step++) slab.step(0.3 / 400);
      return Math.abs(slab.mean - (2 / Math.PI) * Math.exp((-(Math.PI ** 2) * 0.3) / 4));
    };
    const found = orders([6, 12, 24, 48].map(error));
    console.log(`slab, order in space at 6, 12, 24, 48 cells: ${found.map((order) => order.toFixed(2)).join(', ')}`);
    for (const order of found) expect(Math.abs(order - 2)).toBeLessThan(0.15);
  });

  it.each([
    ['even diffusivity', () => 1],
    ['diffusivity that rises with content', (content: number) => Math.exp(content)],
  ])('is second in time with %s: halving the step quarters the error', (_, diffusivity) => {
    const mean = (steps: number) => {
      const slab = new Slab({
        halfThickness: 1,
        content: () => 0,
        at: (time) => ({
          potential: 1 - Math.cos(2 * Math.PI * time),
          resistance: 0.2,
          diffusivity,
          isotherm: (content) => content,
        }),
      });
      for (let step = 0; step < steps; step++) slab.step(1 / steps);
      return slab.mean;
    };
    const exact = mean(4096);
    const found = orders([16, 32, 64, 128].map((steps) => Math.abs(mean(steps) - exact)));
    console.log(`slab, order in time at 16, 32, 64, 128 steps: ${found.map((order) => order.toFixed(2)).join(', ')}`);
    for (const order of found) expect(Math.abs(order - 2)).toBeLessThan(0.25);
  });
});
