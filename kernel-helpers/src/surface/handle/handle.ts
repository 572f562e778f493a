import * as z from 'zod';
import { evaluate } from '../../measure/formula.js';
import { oneOf, readParameters, size } from '../../measure/parameters.js';
import { ShopError } from '../../measure/shop-error.js';
import { tape } from '../../measure/verdict.js';
import type { SizedBox } from '../../piece/box/sized-box.js';
import type { Lettering } from '../lettering/laid-out-lettering.js';
import { type LidField, lidField } from '../lettering/lid-field.js';
import type { LidPoint } from '../lettering/outline.js';
import { handleFindings } from './handle-findings.js';
import { chordFormula, wallFormula } from './handle-formulas.js';
import type { Handle, HandleKind } from './laid-out-handle.js';

/** What is typed for a handle. Lengths as text or inches. */
export interface HandleInput {
  box: SizedBox;
  /** See {@link HandleKind}. */
  kind: string;
  /** Diameter of the core-box bit. */
  bitDiameter?: string | number;
  /** Scoop and notch: depth below the lid's top. Pull: height above it. */
  depth?: string | number;
  height?: string | number;
  /** Side to side. */
  width?: string | number;
  /** Pull: front to back. Notch: how far back the bit is drawn while it rises. */
  length?: string | number;
  /** Middle of the scoop or the pull, or where the notch is deepest, from the front end of the lid. */
  middleFromFront?: string | number;
  passDepth?: string | number;
  /** Wood between the handle and lettering, or the edge of the field. */
  margin?: string | number;
  /** Thickness the lid is milled to before its handle is cut; not judged unless given. */
  milled?: string | number;
  /** What it must keep clear of. */
  lettering?: Pick<Lettering, 'extent'> & { letters?: number };
}

const place = size({ least: 0, most: 40, why: 'middle of the handle from the front end of the lid' }).optional();

const fields = z.strictObject({
  kind: oneOf(['scoop', 'raised pull', 'thumb notch'], 'what takes hold of the lid'),
  bitDiameter: size({ least: 1 / 4, most: 3, why: 'diameter of the core-box bit' }).default(1),
  depth: size({ least: 1 / 32, most: 2, why: "below the lid's top" }).default(0.25),
  height: size({ least: 1 / 8, most: 3, why: "of a pull above the lid's top" }).default(0.5),
  width: size({ least: 1 / 4, most: 24, why: 'side to side' }).optional(),
  length: size({ least: 1 / 8, most: 24, why: 'front to back' }).optional(),
  middleFromFront: place,
  passDepth: size({ least: 1 / 64, most: 1, why: 'depth of one pass' }).default(1 / 8),
  margin: size({ least: 0, most: 6, why: 'wood between the handle and lettering or edge' }).default(0.25),
  milled: size({ least: 1 / 8, most: 6, why: 'thickness the lid is milled to before its handle' }).optional(),
});

/**
 * A handle on a sliding lid: what is cut with which bit, what stays, and whether a finger finds room.
 *
 *   scoop         a core-box bit drawn from side to side: chord = 2 sqrt(d (2 R - d)), a quarter ball at each end
 *   thumb notch   the bit goes down near the front and rises as it is drawn back: a wall that the thumb pulls on, and a ramp to it
 *   raised pull   a bar left standing on the lid; the bit leaves a cove of its radius around its foot
 *
 * @param input  see {@link HandleInput}; lettering: as `layOutLettering` returns it
 * @returns inches and findings
 * @throws ShopError  a value that is not possible, or a handle that does not lie on the lid
 * @see {@link chordFormula}; sizes for fingers: common practice, no source
 */
export function layOutHandle(input: HandleInput): Handle {
  const { box, lettering, ...typed } = input;
  const read = readParameters(fields, { ...typed });
  const field = lidField(box);
  const { kind, bitDiameter, passDepth } = read;
  const R = bitDiameter / 2;
  const cut = kind === 'raised pull' ? 0 : read.depth;
  const chord = evaluate(chordFormula, { R, d: kind === 'raised pull' ? R : cut });
  const shape = shapes[kind](read, chord, field);
  const handle = {
    ...{ kind, field, bitDiameter, chord, depth: cut },
    height: kind === 'raised pull' ? read.height : 0,
    ...shape,
    wallAngle: kind === 'raised pull' ? 90 : evaluate(wallFormula, { R, d: cut }),
    remaining: field.thickness - cut,
    lidStock: field.thickness + (kind === 'raised pull' ? read.height : 0),
    passes: Math.ceil((kind === 'raised pull' ? read.height : cut) / passDepth - 1e-9),
  };
  const { left, right, front, back } = handle.extent;
  if (left < 0 || right > field.width || front < 0 || back > field.length)
    throw new ShopError(
      `width: a ${kind} of ${tape(right - left)} side to side by ${tape(back - front)} front to back given; possible: what lies on the lid, ${tape(field.width)} by ${tape(field.length)} inside its rabbets`,
    );
  return {
    ...handle,
    findings: handleFindings(handle, { ...read, lettering: lettering?.letters === 0 ? undefined : lettering?.extent }),
  };
}

type Read = z.output<typeof fields>;
type HandleShape = Pick<Handle, 'extent' | 'toolpath' | 'profile'>;

const shapes: Record<HandleKind, (read: Read, chord: number, field: LidField) => HandleShape> = {
  scoop(read, chord, field) {
    const width = read.width ?? 1.5;
    if (width < chord)
      throw new ShopError(
        `width: ${tape(width)} given; possible: at least ${tape(chord)} (what the bit cuts where it only goes down and up)`,
      );
    const middle = read.middleFromFront ?? chord / 2 + 1;
    const x = field.width / 2;
    const travel = (width - chord) / 2;
    return {
      extent: { left: x - width / 2, right: x + width / 2, front: middle - chord / 2, back: middle + chord / 2 },
      toolpath: [
        [x - travel, middle],
        [x + travel, middle],
      ],
      profile: [[0, field.thickness], ...hollow(middle, chord, read, field.thickness), [field.length, field.thickness]],
    };
  },
  'thumb notch'(read, chord, field) {
    const travel = read.length ?? 1;
    const x = field.width / 2;
    const middle = read.middleFromFront ?? chord / 2 + 0.5;
    const [R, d] = [read.bitDiameter / 2, read.depth];
    // The bit rises as it goes back, so its round bottom leaves a floor that touches each of its places a little behind its middle.
    const rise = Math.atan(d / travel);
    const end = middle + (d - R + R / Math.cos(rise)) / Math.tan(rise);
    const touches = middle + R * Math.sin(rise);
    const round = hollow(middle, chord, read, field.thickness).filter(([y]) => y < touches);
    return {
      extent: { left: x - chord / 2, right: x + chord / 2, front: middle - chord / 2, back: end },
      toolpath: [
        [x, middle],
        [x, middle + travel],
      ],
      profile: [
        [0, field.thickness],
        ...round,
        [touches, field.thickness - d + R - R * Math.cos(rise)],
        [end, field.thickness],
        [field.length, field.thickness],
      ],
    };
  },
  'raised pull'(read, _chord, field) {
    const width = read.width ?? Math.min(2, field.width / 2);
    const length = read.length ?? 0.5;
    const middle = read.middleFromFront ?? length / 2 + read.bitDiameter / 2 + 0.5;
    const x = field.width / 2;
    const foot = read.bitDiameter / 2;
    if (foot > read.height)
      throw new ShopError(
        `bitDiameter: ${tape(read.bitDiameter)} given; possible: at most ${tape(2 * read.height)} (the cove around the foot is no higher than the pull)`,
      );
    const cove = Array.from({ length: 13 }, (_, i) => (i * Math.PI) / 24).map(
      (angle): LidPoint => [foot - foot * Math.sin(angle), field.thickness + foot - foot * Math.cos(angle)],
    );
    const [front, back] = [middle - length / 2, middle + length / 2];
    const top = field.thickness + read.height;
    return {
      extent: {
        left: x - width / 2 - foot,
        right: x + width / 2 + foot,
        front: front - foot,
        back: back + foot,
      },
      toolpath: undefined,
      profile: [
        [0, field.thickness],
        ...cove.map(([out, z]): LidPoint => [front - out, z]),
        [front, top],
        [back, top],
        ...cove.toReversed().map(([out, z]): LidPoint => [back + out, z]),
        [field.length, field.thickness],
      ],
    };
  },
};

/** The round bottom of a cut, front to back. */
function hollow(middle: number, chord: number, { bitDiameter, depth }: Read, top: number): LidPoint[] {
  const R = bitDiameter / 2;
  const deep = Math.min(depth, R);
  const half = Math.asin(Math.min(1, chord / (2 * R)));
  const arc = Array.from({ length: 25 }, (_, i) => -half + (i * half) / 12).map(
    (angle): LidPoint => [middle + R * Math.sin(angle), top - depth + R - R * Math.cos(angle)],
  );
  const walls = depth > deep ? ([[middle - chord / 2, top], ...arc, [middle + chord / 2, top]] as LidPoint[]) : arc;
  return walls;
}
