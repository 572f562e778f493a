import type { Finding } from '../../measure/finding.js';
import type { LidField } from '../lettering/lid-field.js';
import type { Extent, LidPoint } from '../lettering/outline.js';

/** What takes hold of the lid. */
export type HandleKind = 'scoop' | 'raised pull' | 'thumb notch';

/** A handle on a lid. Inches; x from the left edge of the lid's field, y from its front end. */
export interface Handle {
  kind: HandleKind;
  field: LidField;
  bitDiameter: number;
  /** Scoop and notch: below the lid's top; pull: 0. */
  depth: number;
  /** Pull: above the lid's top; else 0. */
  height: number;
  /** What it takes up on the lid. */
  extent: Extent;
  /** Across a scoop or notch at the surface, front to back for a scoop and side to side for a notch: the room for a finger. */
  chord: number;
  /** Angle between its wall and the lid's top, degrees: 90 is upright. */
  wallAngle: number;
  /** Straight path of the bit's middle; nothing for a pull. */
  toolpath: readonly [LidPoint, LidPoint] | undefined;
  /** Wood under it. */
  remaining: number;
  /** Thickness the lid is milled to first. */
  lidStock: number;
  passes: number;
  /** Section from front to back through its middle: heights of the lid's top, y from the front end, z up from the lid's underside. */
  profile: LidPoint[];
  findings: Finding[];
}
