import { evaluate, type Formula } from '../../measure/formula.js';
import { ShopError } from '../../measure/shop-error.js';
import { lumber } from './lumber-data.js';

/** A hardwood board's face in square feet, to the whole foot: what yards tally by. */
export const surfaceMeasureFormula: Formula<'W' | 'L'> = {
  name: 'Surface measure',
  result: { tex: 'M', meaning: 'surface measure', unit: 'sq ft' },
  expression: 'floor(W * L / 12 + 1 / 2)',
  symbols: {
    W: { meaning: 'width', unit: 'in', min: 0 },
    L: { meaning: 'length in whole feet, a part of a foot dropped', unit: 'ft', min: 0 },
  },
  source:
    "American Hardwood Export Council, guide to the NHLA grading rules, 'Measurement': width in inches x length in feet / 12 to the nearest whole number, lengths rounded down to the whole foot",
};

/** A line of a yard's tally. */
export interface TallyLine {
  mark: string;
  /** sq ft */
  surfaceMeasure: number;
  /** Surface measure times rough thickness, bd ft. */
  boardFeet: number;
}

/**
 * Boards as a hardwood yard tallies them: by surface measure, so that what is charged differs a little from the exact board feet.
 *
 * @param boards  rough; in; under an inch counts as an inch
 * @returns a line a board, and the sum in bd ft
 */
export function lumberTally(boards: readonly { mark: string; thickness: number; width: number; length: number }[]): {
  lines: TallyLine[];
  boardFeet: number;
} {
  const lines = boards.map(({ mark, thickness, width, length }) => {
    // A hair of rounding must not cost a foot: 8 ft given in millimetres.
    const feet = Math.floor(length / 12 + 1e-6);
    const surfaceMeasure = evaluate(surfaceMeasureFormula, { W: width, L: feet });
    return { mark, surfaceMeasure, boardFeet: surfaceMeasure * Math.max(1, thickness) };
  });
  return { lines, boardFeet: lines.reduce((sum, line) => sum + line.boardFeet, 0) };
}

/**
 * Thickness that a grader counts on for kiln-dried hardwood surfaced on two sides; a yard often sells it thicker. In no sheet
 * yet: boards bought surfaced, and stock of unequal thickness, will ask for it.
 *
 * @param rough  rough thickness, in: 1 for 4/4
 * @returns in
 * @throws ShopError  a thickness that is not sold
 * @see data/lumber.json
 */
export function surfacedThickness(rough: number): number {
  const row = lumber.thicknesses.find((each) => Math.abs(each.rough - rough) < 1e-9);
  if (row) return row.surfacedTwoSides;
  throw new ShopError(
    `rough: ${rough} in given; possible: ${lumber.thicknesses.map((each) => each.rough).join(', ')} (thicknesses that are sold)`,
  );
}
