import { evaluate, type Formula } from '../measure/formula.js';
import { species as speciesOf } from './species.js';

/** Specific gravity of a wood on its volume at 12 % moisture, and where it is from. */
export interface GravityAt12 {
  /** Ovendry mass over the mass of the same volume of water. */
  value: number;
  /** How it was come by where it is not printed. */
  estimated?: string;
  source: string;
  fromMemory: boolean;
}

/** Specific gravity on the volume at some moisture, from the basic one (on the green volume). */
export const gravityFromBasicFormula: Formula<'Gb' | 'M'> = {
  name: 'Specific gravity from the basic one',
  result: { tex: 'G', meaning: 'specific gravity on the volume at this moisture', unit: '' },
  expression: 'Gb / (1 - 0.265 * Gb * (1 - M / 30))',
  symbols: {
    Gb: { tex: 'G_b', meaning: 'basic specific gravity: ovendry mass on the green volume', unit: '', min: 0.1, max: 1 },
    M: { meaning: 'moisture content', unit: '%', min: 0, max: 30 },
  },
  source:
    'Wood Handbook FPL-GTR-190 (2010), eq. 4-13: shrinkage in volume taken as 26.5 % of the basic specific gravity',
};

/**
 * Specific gravity of a wood at 12 % moisture: printed, else from its basic one by the handbook's relation, else, of a
 * name that yards sell a mix under, the mean of its kinds. What is not printed is marked `estimated`.
 *
 * @param id  such as `walnut-black`, `teak`, `oak-red-commercial`
 * @returns nothing where none of these is known
 * @throws ShopError  a wood that is not known
 * @see data/species.json; {@link gravityFromBasicFormula}
 * @example gravityAt12('teak')?.value // 0.603, from the basic 0.55
 */
export function gravityAt12(id: string): GravityAt12 | undefined {
  const { specificGravity: own, kinds = [] } = speciesOf(id);
  if (own?.at12) return { value: own.at12, source: own.source, fromMemory: own.fromMemory };
  if (own?.green) {
    const value = evaluate(gravityFromBasicFormula, { Gb: own.green, M: 12 });
    const estimated = `from the basic ${own.green}, ${gravityFromBasicFormula.source}`;
    return { value, estimated, source: own.source, fromMemory: own.fromMemory };
  }
  const known = kinds.map((kind) => gravityAt12(kind)).filter((each) => each !== undefined);
  if (known.length === 0) return undefined;
  return {
    value: known.reduce((sum, { value }) => sum + value, 0) / known.length,
    estimated: `mean of ${known.length} woods sold under this name`,
    source: [...new Set(known.map(({ source }) => source))].join('; '),
    fromMemory: known.some(({ fromMemory }) => fromMemory),
  };
}

/** What is said of a figure that is an average of the species: printed, remembered or estimated. */
export function howSure(figure: { estimated?: string; fromMemory: boolean } | undefined): string {
  if (!figure) return 'not published here';
  const read = figure.fromMemory ? 'from memory, not read in print' : 'read in print';
  return figure.estimated ? `estimated: ${figure.estimated} (${read})` : read;
}
