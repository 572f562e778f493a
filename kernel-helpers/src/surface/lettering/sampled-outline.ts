import type { LidPoint, Outline } from './outline.js';

/** Points set close together along an outline. */
export interface SampledOutline {
  /** x and y by turns, as a triangulation takes them. */
  places: Float64Array;
  /** The point after and before each on its contour. */
  next: Int32Array;
  previous: Int32Array;
  /** The turn at each point, radians: above zero where the wood taken away has a corner, below where it bends round one. */
  turn: Float64Array;
}

/**
 * Sets points along an outline.
 *
 * @param outline  see {@link Outline}
 * @param spacing  most distance between two points; every corner of the outline is one of them
 */
export function sampled(outline: Outline, spacing: number): SampledOutline {
  const places: number[] = [];
  const next: number[] = [];
  const turn: number[] = [];
  for (const contour of outline) {
    const first = next.length;
    contour.forEach((from, i) => {
      const to = contour[(i + 1) % contour.length] as LidPoint;
      const before = contour[(i + contour.length - 1) % contour.length] as LidPoint;
      const pieces = Math.max(1, Math.ceil(Math.hypot(to[0] - from[0], to[1] - from[1]) / spacing));
      for (let k = 0; k < pieces; k++) {
        const part = k / pieces;
        places.push(onGrid(from[0] + part * (to[0] - from[0])), onGrid(from[1] + part * (to[1] - from[1])));
        turn.push(k === 0 ? turnAt(before, from, to) : 0);
        next.push(next.length + 1);
      }
    });
    next[next.length - 1] = first;
  }
  const previous = new Int32Array(next.length);
  next.forEach((after, i) => {
    previous[after] = i;
  });
  return { places: Float64Array.from(places), next: Int32Array.from(next), previous, turn: Float64Array.from(turn) };
}

// A triangulation loses its way among coordinates whose products are too small for a double.
const onGrid = (inches: number) => Math.round(inches * 1e12) / 1e12;

function turnAt(before: LidPoint, at: LidPoint, after: LidPoint): number {
  const [inX, inY] = [at[0] - before[0], at[1] - before[1]];
  const [outX, outY] = [after[0] - at[0], after[1] - at[1]];
  return Math.atan2(inX * outY - inY * outX, inX * outX + inY * outY);
}
