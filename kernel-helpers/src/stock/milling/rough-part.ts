/** What is left on a part for milling. Lengths as text or inches. */
export interface MillingAllowances {
  /** Over length at the rough crosscut. */
  length?: number | string;
  /** Over width at the rough rip. */
  width?: number | string;
  /** Taken off both faces together between rough sawn and finished, where a board's bends were not measured. */
  thickness?: number | string;
  /** Taken off both faces together of a piece that is straight, where its board's bends were measured. */
  cleanFaces?: number | string;
  /** Left on the width of a glued-up panel, and on its thickness, until its glue has cured. */
  panelWidth?: number | string;
  panelThickness?: number | string;
  /** Taken off both edges together of each joint of a panel. */
  jointing?: number | string;
}

/** The same in inches. */
export type ReadAllowances = { [field in keyof Required<MillingAllowances>]: number };

/** A part as it is first cut out of a rough board, in. */
export interface RoughPart {
  name: string;
  count: number;
  length: number;
  width: number;
  /** Thinnest rough thickness sold that still gives the part. */
  thickness: number;
  /** As the yard calls it, in quarters of an inch: 4/4. */
  called: string;
  /**
   * What it is milled to; the width is that before it is lowered or tapered. A board of a panel is milled to what it is glued up
   * at: its edges jointed, its length and thickness still over.
   */
  finished: { length: number; width: number; thickness: number };
  /** The part that it is glued up into, where it is a board of a panel. */
  panel?: string;
  /** Narrower than the saw takes by hand: ripped off a wider blank, as the strip that falls away from the fence. */
  strip?: boolean;
}
