import * as z from 'zod';
import { readParameters, size } from '../../measure/parameters.js';

/** What a thickness planer is and does, from its manual and from a test board, in. */
export interface Planer {
  /** Shortest piece that its manual lets you feed. */
  leastLength: number;
  /** Narrowest and thinnest piece that its manual lets you feed by itself; a thinner one lies on a carrier board. */
  leastWidth: number;
  leastThickness: number;
  /** Widest board it takes. */
  widest: number;
  /** Deepest pass in this wood at full width. */
  deepestPass: number;
  /** The last pass on each face. */
  lightPass: number;
  /** How long the dip at an end is, and how deep. */
  snipeLength: number;
  snipeDepth: number;
}

/** A planer as it is typed: lengths as text or inches, what is left out is a usual figure. */
export type TypedPlaner = { [field in keyof Planer]?: number | string };

const fields: z.ZodType<Planer> = z.strictObject({
  leastLength: size({ least: 2, most: 48, why: "shortest piece the planer's manual allows" }).default(12),
  leastWidth: size({ least: 0, most: 6, why: "narrowest piece the planer's manual allows" }).default(3 / 4),
  leastThickness: size({
    least: 1 / 16,
    most: 1,
    why: 'thinnest piece the planer takes without a carrier board',
  }).default(1 / 4),
  widest: size({ least: 3, most: 40, why: 'widest board the planer takes' }).default(12),
  deepestPass: size({ least: 1 / 128, most: 1 / 4, why: 'deepest pass at full width' }).default(1 / 16),
  lightPass: size({ least: 1 / 256, most: 1 / 16, why: 'last pass on each face' }).default(1 / 64),
  snipeLength: size({ least: 0, most: 12, why: 'length of the dip at an end' }).default(2.5),
  snipeDepth: size({ least: 0, most: 1 / 16, why: 'depth of the dip at an end' }).default(1 / 128),
});

/**
 * A planer's figures. They belong to the machine: the defaults are common practice, no source.
 *
 * @throws ShopError  the field, the value given, what is possible
 * @internal
 */
export function readPlaner(typed: TypedPlaner = {}): Planer {
  return readParameters(fields, typed);
}

/** One pass through the planer. */
export interface PlanerPass {
  face: 'first' | 'second';
  depth: number;
  /** Thickness after it, in. */
  left: number;
}

/**
 * Passes from one thickness to another: the faces in turn, so that the wood stays as dry on one as on the other, as deep as the
 * planer bears, the last on each face light.
 *
 * @param plane.from, plane.to  thickness before and after, in
 * @returns none where nothing is to be taken off; in
 * @see common practice, no source
 */
export function planerPasses(plane: {
  from: number;
  to: number;
  planer: Pick<Planer, 'deepestPass' | 'lightPass'>;
}): PlanerPass[] {
  const { from, to, planer } = plane;
  const all = from - to;
  if (all <= 1e-9) return [];
  const light = Math.min(planer.lightPass, all / 2);
  const heavy = all - 2 * light;
  const count = Math.ceil(heavy / planer.deepestPass - 1e-9);
  const depths = [...Array.from({ length: count }, () => heavy / count), light, light];
  let left = from;
  return depths.map((depth, index) => {
    left -= depth;
    // The last pass is always on the second face, whichever the first was.
    return { face: (depths.length - index) % 2 === 0 ? 'first' : 'second', depth, left };
  });
}
