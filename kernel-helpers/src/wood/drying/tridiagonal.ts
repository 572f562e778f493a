/** A tridiagonal system of equations, filled anew for each solution. @internal */
export class Tridiagonal {
  /** The three bands; the first of `lower` and the last of `upper` are not read. */
  readonly lower: Float64Array;
  readonly diagonal: Float64Array;
  readonly upper: Float64Array;
  /** Right-hand side; the solution takes its place. */
  readonly right: Float64Array;
  private readonly ratios: Float64Array;

  constructor(size: number) {
    const band = () => new Float64Array(size);
    this.lower = band();
    this.diagonal = band();
    this.upper = band();
    this.right = band();
    this.ratios = band();
  }

  /** Elimination without exchange of rows (Thomas), which diffusion's strong diagonal allows. The bands stay as they are. */
  solve(): void {
    const { lower, diagonal, upper, right, ratios } = this;
    const last = right.length - 1;
    let inverse = 1 / (diagonal[0] as number);
    let above = (right[0] as number) * inverse;
    right[0] = above;
    for (let row = 1; row <= last; row++) {
      const ratio = (upper[row - 1] as number) * inverse;
      const below = lower[row] as number;
      inverse = 1 / ((diagonal[row] as number) - below * ratio);
      above = ((right[row] as number) - below * above) * inverse;
      ratios[row] = ratio;
      right[row] = above;
    }
    for (let row = last - 1; row >= 0; row--)
      right[row] = (right[row] as number) - (ratios[row + 1] as number) * (right[row + 1] as number);
  }
}
