import { z } from 'zod';
import data from '../../../data/species.json';
import { entryOf, readEntries } from '../measure/data-file.js';

/** A wood's published figures. Anything marked `fromMemory` could not be read in print and is remembered. */
export interface Species {
  /** Such as `walnut-black`. */
  id: string;
  commonName: string;
  botanicalName: string;
  group: 'hardwood' | 'softwood' | 'imported';
  /** Moisture content below which it shrinks, %. */
  fibreSaturation: number;
  /** Shrinkage from green to ovendry, % of the green dimension. */
  shrinkage?: {
    radial: number;
    tangential: number | null;
    volumetric: number | null;
    source: string;
    fromMemory: boolean;
  };
  /** Change for 1 % of moisture, as a fraction of the dimension at 10 %. */
  coefficient?: { radial: number; tangential: number; source: string; fromMemory: boolean };
  /** Ovendry mass over the mass of the same volume of water. */
  specificGravity?: { green: number | null; at12: number | null; source: string; fromMemory: boolean };
  /** Force to press a steel ball half in, at 12 % moisture, N. */
  sideHardness?: { newtons: number; source: string; fromMemory: boolean };
}

const fraction = z.number().gt(0).lt(0.01);
const percent = z.number().gt(0).lt(30);
const gravity = z.number().gt(0.05).lt(1.5).nullable();
const cited = { source: z.string().min(1), fromMemory: z.boolean() };

const speciesEntry: z.ZodType<Species> = z.strictObject({
  id: z.string().regex(/^[a-z0-9-]+$/),
  commonName: z.string().min(1),
  botanicalName: z.string().min(1),
  group: z.enum(['hardwood', 'softwood', 'imported']),
  fibreSaturation: z.number().min(20).max(35),
  shrinkage: z
    .strictObject({ radial: percent, tangential: percent.nullable(), volumetric: percent.nullable(), ...cited })
    .optional(),
  coefficient: z.strictObject({ radial: fraction, tangential: fraction, ...cited }).optional(),
  specificGravity: z.strictObject({ green: gravity, at12: gravity, ...cited }).optional(),
  sideHardness: z.strictObject({ newtons: z.number().positive(), ...cited }).optional(),
});

let byId: ReadonlyMap<string, Species> | undefined;

function speciesById(): ReadonlyMap<string, Species> {
  if (!byId) {
    const sources = (data as { sources: Record<string, string> }).sources;
    const read = readEntries('species.json', data, 'species', speciesEntry);
    for (const entry of read.values())
      for (const figure of [entry.shrinkage, entry.coefficient, entry.specificGravity, entry.sideHardness])
        if (figure) figure.source = sources[figure.source] ?? figure.source;
    byId = read;
  }
  return byId;
}

/**
 * A wood's published figures.
 *
 * @param id  such as `walnut-black`, `cherry-black`, `maple-sugar`
 * @throws ShopError  names the nearest ids
 */
export function species(id: string): Species {
  return entryOf(speciesById(), id, 'species');
}

/** All woods, in the order of the handbook's tables. */
export function allSpecies(): Species[] {
  return [...speciesById().values()];
}
