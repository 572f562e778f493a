import type { Finding } from '../../measure/finding.js';
import type { CutSurface, Facet } from './facets.js';
import type { InscribedCircle } from './inscribed-circles.js';
import type { LidField, TextRuns } from './lid-field.js';
import type { CentreLine } from './medial-axis.js';
import type { Extent, Outline } from './outline.js';

/** Lettering laid out on a lid. Inches; x from the left edge of the lid's field, y from its front end. */
export interface Lettering {
  text: string;
  /** None where nothing is cut: then there are no outlines, and nothing is deep. */
  letters: number;
  height: number;
  runs: TextRuns;
  field: LidField;
  bitAngle: number;
  bitDiameter: number;
  depthLimit?: number;
  outlines: Outline[];
  /** The way of the bit's point; the radius is half the width of the groove there. */
  lines: CentreLine[];
  facets: Facet[];
  /** Edge of the flat bottom, piece by piece. */
  floorEdge: CutSurface['floorEdge'];
  floorArea: number;
  extent: Extent;
  /** Area of the letters, square inches. */
  area: number;
  /** The widest place of all strokes, and how deep the bit goes there. */
  deepest: InscribedCircle & { depth: number };
  /** Wood under the deepest place. */
  remaining: number;
  pathLength: number;
  /** Way of the bit over the flat bottom, in. */
  floorLength: number;
  starts: number;
  feed: number;
  minutes: number;
  findings: Finding[];
}
