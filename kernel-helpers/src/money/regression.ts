/** A straight line through points, by least squares. */
export interface LinearRegression {
  /** Change of y for one of x. */
  slope: number;
  /** y where x is 0. */
  intercept: number;
  /** Standard error of the slope. */
  error: number;
}

/**
 * The straight line that lies nearest to some points, by least squares.
 *
 * @param points  x and y
 * @returns undefined for fewer than three points, or when all have the same x: then nothing can be said of a trend
 * @see ordinary least squares, as certified for the data set Norris of NIST's Statistical Reference Datasets
 */
export function linearRegression(points: readonly { x: number; y: number }[]): LinearRegression | undefined {
  const n = points.length;
  if (n < 3) return undefined;
  const mean = (of: (point: { x: number; y: number }) => number) => points.reduce((sum, p) => sum + of(p), 0) / n;
  const [middleX, middleY] = [mean(({ x }) => x), mean(({ y }) => y)];
  // Taken from the middle, so that years such as 2026 lose no digits.
  const squares = points.reduce((sum, { x }) => sum + (x - middleX) ** 2, 0);
  if (squares === 0) return undefined;
  const slope = points.reduce((sum, { x, y }) => sum + (x - middleX) * (y - middleY), 0) / squares;
  const left = points.reduce((sum, { x, y }) => sum + (y - middleY - slope * (x - middleX)) ** 2, 0);
  return { slope, intercept: middleY - slope * middleX, error: Math.sqrt(left / (n - 2) / squares) };
}
