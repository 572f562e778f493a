import * as z from 'zod';
import data from '../../../data/species.json';
import { dataTable, entryOf, readEntry } from '../measure/data-file.js';
import { ShopError, within } from '../measure/shop-error.js';
import { asSaid, woodsCalled, woodsSpeltLike } from './wood-names.js';

/** A wood's published figures. Anything marked `fromMemory` could not be read in print and is remembered. */
export interface Species {
  /** Such as `walnut-black`. */
  id: string;
  commonName: string;
  botanicalName: string;
  group: 'hardwood' | 'softwood' | 'imported';
  /** Of a name that yards sell a mix under, such as red oak: the woods it may be, the usual one first. */
  kinds?: string[];
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
  /** Modulus of elasticity in bending, along the grain, at 12 % moisture unless `atMoisture` says otherwise, MPa. */
  stiffness?: { megapascals: number; atMoisture?: number; source: string; fromMemory: boolean };
}

const fraction = z.number().gt(0).lt(0.01);
const percent = z.number().gt(0).lt(30);
const gravity = z.number().gt(0.05).lt(1.5).nullable();
const cited = { source: z.string().min(1), fromMemory: z.boolean() };
const tangentialIsMore = {
  path: ['tangential'],
  message: 'must be more than radial (wood moves more along the growth rings than across them)',
};

const speciesEntry: z.ZodType<Species> = z.strictObject({
  id: z.string().regex(/^[a-z0-9-]+$/),
  commonName: z.string().min(1),
  botanicalName: z.string().min(1),
  group: z.enum(['hardwood', 'softwood', 'imported']),
  kinds: z.array(z.string()).min(1).optional(),
  fibreSaturation: z.number().min(20).max(35),
  shrinkage: z
    .strictObject({ radial: percent, tangential: percent.nullable(), volumetric: percent.nullable(), ...cited })
    .refine(({ radial, tangential }) => tangential === null || tangential > radial, tangentialIsMore)
    .optional(),
  coefficient: z
    .strictObject({ radial: fraction, tangential: fraction, ...cited })
    .refine(({ radial, tangential }) => tangential > radial, tangentialIsMore)
    .optional(),
  specificGravity: z.strictObject({ green: gravity, at12: gravity, ...cited }).optional(),
  sideHardness: z.strictObject({ newtons: z.number().positive(), ...cited }).optional(),
  stiffness: z
    .strictObject({ megapascals: z.number().min(1000).max(40000), atMoisture: percent.optional(), ...cited })
    .optional(),
});

const published = dataTable('species.json', data, { list: 'species', what: 'species', entry: speciesEntry });
const own = new Map<string, Species>();

/**
 * A wood's published figures, or the maker's own.
 *
 * @param id  such as `walnut-black`, `cherry-black`, `maple-sugar`; or an ordinary name, such as `white oak`, `walnut`
 * @throws ShopError  names the nearest, or the woods that an ordinary name can mean
 */
export function species(id: string): Species {
  return own.get(id) ?? published.byId().get(id) ?? calledByName(id);
}

function calledByName(name: string): Species {
  const all = allSpecies();
  const typed = String(name);
  const byId = all.find(({ id }) => id === typed.trim().toLowerCase());
  const [wood, ...others] = byId ? [byId] : woodsCalled(typed, all);
  if (wood && others.length === 0) return wood;
  const names = [wood, ...others].flatMap((each) => (each ? [asSaid(each)] : []));
  if (wood) throw new ShopError(`species: "${name}" is the name of several woods; which of them: ${names.join(', ')}`);
  const near = woodsSpeltLike(typed, all);
  if (near.length > 0) throw new ShopError(`species: "${name}" is not in the list; nearest: ${near.join(', ')}`);
  return entryOf(new Map(all.map((each) => [each.id, each])), name, 'species');
}

/** A wood as one says it, such as "black walnut": lists name it as an index does, "Walnut, black". @throws ShopError  as {@link species} */
export function woodName(id: string): string {
  return asSaid(species(id));
}

/**
 * The woods that a yard may hand over under this one's name, or this one under theirs: northern red oak is sold as red oak,
 * with others in it. Of a mix, the usual kind.
 */
export function soldTogether(wood: Species): Species[] {
  const mixes = allSpecies().filter(({ kinds }) => kinds?.includes(wood.id));
  return [...mixes, ...(wood.kinds ?? []).slice(0, 1).map(species)];
}

/** All woods, in the order of the handbook's tables; the maker's own come last. */
export function allSpecies(): Species[] {
  return [...published.all(), ...own.values()];
}

/**
 * Adds woods of the maker's own, for as long as the kernel runs: each with an id that no published wood has, and a source
 * for every figure (measured when and how). Added again, a wood takes the place of the one with its id.
 *
 * @param woods  as the entries of data/species.json
 * @returns the woods added
 * @throws ShopError  names the entry and the field at fault; then none is added
 * @example addSpecies([{ id: 'oak-from-the-barn', commonName: 'Oak from the barn', botanicalName: 'Quercus sp.',
 *   group: 'hardwood', fibreSaturation: 30, coefficient: { radial: 0.0019, tangential: 0.0035,
 *   source: 'own boards, winter to summer 2025', fromMemory: false } }])
 */
export function addSpecies(woods: Species[]): Species[] {
  if (!Array.isArray(woods)) throw new ShopError('woods: a list of entries is needed, as in data/species.json');
  const read = woods.map((given, index) => within([index], () => readEntry('own species', given ?? {}, speciesEntry)));
  for (const [index, { id }] of read.entries()) {
    const refuseId = (why: string) =>
      new ShopError(`own species, entry ${id}, field id: ${why}`, { path: [index, 'id'], given: id, possible: why });
    if (published.byId().has(id)) throw refuseId('a published wood has this id; give yours another');
    if (read.findIndex((other) => other.id === id) < index) throw refuseId('it stands there twice');
  }
  for (const wood of read) own.set(wood.id, wood);
  return read;
}
