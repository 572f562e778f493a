/** One figure to remember a decision by. */
export interface KeyFigure {
  /** What it is, as the head of a row: `Lid planed to`. */
  name: string;
  /** As it is read: `6.657 in`. Two makings of a decision that read alike are the same. */
  value: string;
  /** The same to reckon with, where it is one number: lengths in in, money in whole units of its currency, times in h or days. */
  number?: number;
}

/** What a decision comes to: one short sentence, and the figures to compare it by. */
export interface KeyFigures {
  /** For a line of progress: `11 x 7 3/4 x 5 in overall`. */
  sentence: string;
  figures: KeyFigure[];
}

/** A number with its word: `1 board`, `3 boards`. @internal */
export function counted(count: number, one: string): string {
  return `${count} ${one}${count === 1 ? '' : 's'}`;
}
