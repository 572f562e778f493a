/** The cells of half a slab from its face to its middle. Cells count from 1; point 0 is the face itself. */
export interface SlabCells {
  /** Width of each cell. */
  width: Float64Array;
  /**
   * Weights of the diffusivities at a point and at the next one inward in what lets the flux through between them, each
   * over the distance: D here times `near` + D there times `far` is flux for one unit of difference.
   */
  near: Float64Array;
  far: Float64Array;
}

/**
 * Cells that widen evenly from the face inward, for content changes fastest near the face.
 *
 * @param grading  how many times as wide the innermost are as the outermost; 1 for equal cells
 * @internal
 */
export function slabCells(halfThickness: number, count: number, grading: number): SlabCells {
  const stretch = Math.log(grading);
  const depth = (index: number) =>
    halfThickness * (stretch === 0 ? index / count : Math.expm1((stretch * index) / count) / Math.expm1(stretch));
  const width = new Float64Array(count + 1);
  const near = new Float64Array(count);
  const far = new Float64Array(count);
  for (let cell = 1; cell <= count; cell++) width[cell] = depth(cell) - depth(cell - 1);
  // The diffusivity is read where the two cells meet, straight between their centres; at the face, halfway to the centre.
  near[0] = 1 / (width[1] as number);
  far[0] = 1 / (width[1] as number);
  for (let cell = 1; cell < count; cell++) {
    const [here, there] = [(width[cell] as number) / 2, (width[cell + 1] as number) / 2];
    near[cell] = there / (here + there) ** 2;
    far[cell] = here / (here + there) ** 2;
  }
  return { width, near, far };
}
