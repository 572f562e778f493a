import { type SlabCells, slabCells } from './slab-cells.js';
import { Tridiagonal } from './tridiagonal.js';

/** What a slab meets and is at one moment, in any consistent units of length, time and content. */
export interface SlabConditions {
  /** Potential of the surroundings, on the scale that `isotherm` reads. */
  potential: number;
  /** Of what covers the face: difference of potential for one unit of flux; 0 holds the face at the surroundings. */
  resistance: number;
  /** Length² for each unit of time, at a content. */
  diffusivity: (content: number) => number;
  /** Content at rest with a potential; rises with it. */
  isotherm: (potential: number) => number;
}

// TR-BDF2: the trapezoid rule over the first part of a step, backward differences over the whole.
const part = 2 - Math.SQRT2;
const implicit = part / 2;
const explicit = Math.SQRT2 / 4;
// Difference to the embedded third-order formula, on the three rates (Hosea and Shampine 1996).
const [errorNow, errorMiddle, errorNext] = [(4 * explicit - 1) / 3, -1 / 3, (2 * implicit) / 3];

/** Step for slopes by difference, and the change of content at which an iteration has settled. */
const nudge = 1e-6;
const settled = 1e-7;
const mostIterations = 40;

/**
 * Diffusion through a slab whose two faces meet the same surroundings: half of it, from a face to the middle.
 *
 *   du/dt = d/dx (D(u) du/dx),   flux in at the face = (potential outside - potential of the face) / resistance
 *
 * Finite volumes in flux form, cells graded toward the face: what leaves one enters the next, so the content changes by
 * what crosses the face and by nothing else. TR-BDF2 in time: second order, L-stable, each stage iterated by Newton
 * until the diffusivity is that of the content reached. Conditions are taken to be continuous in time.
 *
 * @see Hosea and Shampine 1996, Analysis and implementation of TR-BDF2, Applied Numerical Mathematics 20
 * @internal
 */
export class Slab {
  time: number;
  /** What has crossed the face since the start, inward: content times length. */
  uptake = 0;
  /** Content at the face, under what covers it. */
  face: number;
  private readonly halfThickness: number;
  private readonly at: (time: number) => SlabConditions;
  private readonly tolerance: number;
  private readonly cells: SlabCells;
  private readonly count: number;
  // Index 0 is the face (its potential), 1 and on are the cells (their content).
  private now: Float64Array;
  private next: Float64Array;
  private rate: Float64Array;
  private nextRate: Float64Array;
  private readonly middleRate: Float64Array;
  private readonly known: Float64Array;
  private readonly content: Float64Array;
  private readonly flux: Float64Array;
  private readonly conductivity: Float64Array;
  private readonly steepness: Float64Array;
  private readonly matrix: Tridiagonal;
  private inflow: number;
  private nextInflow = 0;
  private nextUptake = 0;
  private settledFace = 0;
  private proposed: number;

  /**
   * @param slab.halfThickness  from face to middle
   * @param slab.content  at the start, by depth under the face
   * @param slab.at  the conditions at a time
   * @param slab.tolerance  root mean square error of content that one step of `advance` may make
   * @param slab.grading  how many times wider the innermost cells are than the outermost
   */
  constructor(slab: {
    halfThickness: number;
    content: (depth: number) => number;
    at: (time: number) => SlabConditions;
    time?: number;
    tolerance?: number;
    cells?: number;
    grading?: number;
  }) {
    const { halfThickness, content, at, time = 0, tolerance = 1e-3, cells = 28, grading = 4 } = slab;
    this.halfThickness = halfThickness;
    this.at = at;
    this.time = time;
    this.tolerance = tolerance;
    this.count = cells;
    this.cells = slabCells(halfThickness, cells, grading);
    const band = () => new Float64Array(cells + 1);
    this.now = band();
    this.next = band();
    this.rate = band();
    this.nextRate = band();
    this.middleRate = band();
    this.known = band();
    this.content = band();
    this.flux = band();
    this.conductivity = band();
    this.steepness = band();
    this.matrix = new Tridiagonal(cells + 1);

    const { width } = this.cells;
    const conditions = at(time);
    let depth = 0;
    for (let cell = 1; cell <= cells; cell++) {
      this.now[cell] = content(depth + (width[cell] as number) / 2);
      depth += width[cell] as number;
    }
    // The face finds its potential at once, with the cells held as they are.
    this.now[0] = conditions.potential;
    this.known.set(this.now);
    this.inflow = this.settle(conditions, 0, this.now);
    this.face = this.settledFace;
    for (let cell = 1; cell <= cells; cell++)
      this.rate[cell] = ((this.flux[cell - 1] as number) - (this.flux[cell] as number)) / (width[cell] as number);
    this.proposed = ((width[1] as number) / 2) ** 2 / conditions.diffusivity(this.now[1] as number);
  }

  /** Content, mean over the thickness. */
  get mean(): number {
    let sum = 0;
    for (let cell = 1; cell <= this.count; cell++)
      sum += (this.cells.width[cell] as number) * (this.now[cell] as number);
    return sum / this.halfThickness;
  }

  /** Content in the middle: the parabola, level there, whose means over the two innermost cells are theirs. */
  get middle(): number {
    const inner = this.cells.width[this.count] as number;
    const both = inner + (this.cells.width[this.count - 1] as number);
    const innerContent = this.now[this.count] as number;
    const bend = (3 * ((this.now[this.count - 1] as number) - innerContent)) / (both * both + both * inner);
    return innerContent - (bend * inner * inner) / 3;
  }

  /** Moves on to a time in steps whose error stays within the tolerance. */
  advance(to: number): void {
    while (this.time < to) {
      const left = to - this.time;
      const length = this.proposed > 0.999 * left ? left : this.proposed;
      if (this.time + length === this.time) throw new RangeError(`no step from ${this.time} keeps the tolerance`);
      const error = this.attempt(length) / this.tolerance;
      const factor = Number.isFinite(error) ? Math.min(5, Math.max(0.2, 0.9 * error ** (-1 / 3))) : 0.2;
      if (error <= 1) {
        this.accept(length === left ? to : this.time + length);
        this.proposed = length === left ? Math.max(this.proposed, length * factor) : length * factor;
      } else this.proposed = length * factor;
    }
  }

  /** Moves on by one step of just this length. */
  step(length: number): void {
    this.attempt(length);
    this.accept(this.time + length);
  }

  private accept(time: number): void {
    this.time = time;
    [this.now, this.next] = [this.next, this.now];
    [this.rate, this.nextRate] = [this.nextRate, this.rate];
    this.inflow = this.nextInflow;
    this.uptake = this.nextUptake;
    this.face = this.settledFace;
  }

  /** Works out the step ahead without taking it; gives its estimated error, NaN where an iteration did not settle. */
  private attempt(length: number): number {
    const { now, next, rate, middleRate, nextRate, known, count } = this;
    const weight = implicit * length;
    for (let cell = 1; cell <= count; cell++) known[cell] = (now[cell] as number) + weight * (rate[cell] as number);
    for (let node = 0; node <= count; node++)
      next[node] = (now[node] as number) + part * length * (rate[node] as number);
    const middleInflow = this.settle(this.at(this.time + part * length), weight, next);
    if (Number.isNaN(middleInflow)) return Number.NaN;
    for (let cell = 1; cell <= count; cell++) {
      middleRate[cell] = ((next[cell] as number) - (known[cell] as number)) / weight;
      known[cell] = (now[cell] as number) + explicit * length * ((rate[cell] as number) + (middleRate[cell] as number));
    }
    for (let node = 0; node <= count; node++)
      next[node] = (now[node] as number) + ((next[node] as number) - (now[node] as number)) / part;
    this.nextInflow = this.settle(this.at(this.time + length), weight, next);
    if (Number.isNaN(this.nextInflow)) return Number.NaN;
    this.nextUptake = this.uptake + length * (explicit * (this.inflow + middleInflow) + implicit * this.nextInflow);

    // The face has no content of its own; its rate only serves the next step's first guess.
    nextRate[0] = ((next[0] as number) - (now[0] as number)) / length;
    const { right } = this.matrix;
    right[0] = 0;
    for (let cell = 1; cell <= count; cell++) {
      nextRate[cell] = ((next[cell] as number) - (known[cell] as number)) / weight;
      right[cell] =
        length *
        (errorNow * (rate[cell] as number) +
          errorMiddle * (middleRate[cell] as number) +
          errorNext * (nextRate[cell] as number));
    }
    // Through the last matrix, so that what the stiff cells damp does not count as error.
    this.matrix.solve();
    let squares = 0;
    for (let cell = 1; cell <= count; cell++)
      squares += (this.cells.width[cell] as number) * (right[cell] as number) ** 2;
    return Math.sqrt(squares / this.halfThickness);
  }

  /**
   * Solves `values = known + weight * rate(values)` for the cells together with the balance of flux at the face.
   *
   * @returns flux in at the face; NaN where the iteration did not settle
   */
  private settle(conditions: SlabConditions, weight: number, values: Float64Array): number {
    const { potential, resistance, diffusivity, isotherm } = conditions;
    const { content, flux, conductivity, steepness, known, count } = this;
    const { lower, diagonal, upper, right } = this.matrix;
    const { width, near, far } = this.cells;
    known[0] = potential;
    for (let iteration = 0; iteration < mostIterations; iteration++) {
      const face = values[0] as number;
      content.set(values);
      content[0] = isotherm(face);
      const faceSlope = (isotherm(face + nudge) - (content[0] as number)) / nudge;
      for (let node = 0; node <= count; node++) {
        const here = content[node] as number;
        const value = diffusivity(here);
        conductivity[node] = value;
        // The slope of the first guess serves once more; an iteration that needs a third is far off and takes its own.
        if (iteration !== 1) steepness[node] = (diffusivity(here + nudge) - value) / nudge;
        right[node] = (known[node] as number) - (values[node] as number);
        diagonal[node] = 1;
      }

      let [byFace, byFirst] = [0, 0];
      for (let node = 0; node < count; node++) {
        const here = near[node] as number;
        const there = far[node] as number;
        const drop = (content[node] as number) - (content[node + 1] as number);
        const conductance = here * (conductivity[node] as number) + there * (conductivity[node + 1] as number);
        const through = conductance * drop;
        flux[node] = through;
        let byNear = conductance + here * (steepness[node] as number) * drop;
        const byFar = there * (steepness[node + 1] as number) * drop - conductance;
        if (node === 0) {
          byNear *= faceSlope;
          [byFace, byFirst] = [byNear, byFar];
        }
        const out = node === 0 ? resistance : weight / (width[node] as number);
        right[node] = (right[node] as number) - out * through;
        diagonal[node] = (diagonal[node] as number) + out * byNear;
        upper[node] = out * byFar;
        const into = weight / (width[node + 1] as number);
        right[node + 1] = (right[node + 1] as number) + into * through;
        lower[node + 1] = -into * byNear;
        diagonal[node + 1] = (diagonal[node + 1] as number) - into * byFar;
      }
      this.matrix.solve();

      let change = Math.abs(faceSlope * (right[0] as number));
      for (let node = 0; node <= count; node++) {
        values[node] = (values[node] as number) + (right[node] as number);
        if (node > 0) change = Math.max(change, Math.abs(right[node] as number));
      }
      if (change < settled) {
        // As the last matrix has it, so that content and flux balance to rounding.
        flux[0] = (flux[0] as number) + byFace * (right[0] as number) + byFirst * (right[1] as number);
        this.settledFace = (content[0] as number) + faceSlope * (right[0] as number);
        return flux[0];
      }
      if (!Number.isFinite(change)) return Number.NaN;
    }
    return Number.NaN;
  }
}
