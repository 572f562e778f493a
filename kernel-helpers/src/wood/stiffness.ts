import { evaluate, type Formula } from '../measure/formula.js';
import { species as speciesOf } from './species.js';
import { gravityAt12 } from './specific-gravity.js';

/** How stiff clear wood is along its grain in bending, and where the figure is from. */
export interface Stiffness {
  /** Modulus of elasticity, psi. */
  psi: number;
  /** How it was come by where it is not printed for the wood. */
  estimated?: string;
  source: string;
  fromMemory: boolean;
}

const fromDensity = (group: string, expression: string): Formula<'G'> => ({
  name: `Stiffness of a ${group} from its density`,
  result: { tex: 'E', meaning: 'modulus of elasticity in bending at 12 % moisture', unit: 'psi' },
  expression,
  symbols: { G: { tex: 'G', meaning: 'specific gravity at 12 % moisture', unit: '', min: 0.1, max: 1.3 } },
  source:
    'Wood Handbook FPL-GTR-190 (2010), table 5-11b (from memory; a refit of the rows of table 5-3a agrees within 2 %)',
});

/** Stiffness where none is printed; of woods that are, one in three lies more than about 15 % off these. */
export const stiffnessFormulas: Record<'hardwood' | 'softwood', Formula<'G'>> = {
  hardwood: fromDensity('hardwood', '2390000 * G^0.7'),
  softwood: fromDensity('softwood', '2970000 * G^0.84'),
};

/** Pounds a square inch in a megapascal. */
const psiInMpa = 145.0377;

/**
 * Stiffness of a wood along its grain: printed, else, of a name that yards sell a mix under, the mean of its kinds, else from
 * its density, hardwood and softwood apart; an imported wood counts as a hardwood, which gives the smaller figure. Printed
 * values are tested with some shear in them, up to a tenth on the safe side for a long thin shelf. Single boards differ from
 * their species' mean by 22 % (coefficient of variation, Wood Handbook table 5-6).
 *
 * @returns nothing where neither stiffness nor density is known
 * @throws ShopError  a wood that is not known
 * @see Wood Handbook FPL-GTR-190 (2010), tables 5-3a and 5-5a; {@link stiffnessFormulas}
 * @example stiffness('cherry-black')?.psi // 1,490,000
 */
export function stiffness(id: string): Stiffness | undefined {
  const { stiffness: own, group, kinds = [] } = speciesOf(id);
  if (own) return { psi: own.megapascals * psiInMpa, source: own.source, fromMemory: own.fromMemory };
  const known = kinds.map((kind) => speciesOf(kind).stiffness).filter((each) => each !== undefined);
  if (known.length > 0)
    return {
      psi: (psiInMpa * known.reduce((sum, { megapascals }) => sum + megapascals, 0)) / known.length,
      estimated: `mean of ${known.length} woods sold under this name`,
      source: [...new Set(known.map(({ source }) => source))].join('; '),
      fromMemory: known.some(({ fromMemory }) => fromMemory),
    };
  const gravity = gravityAt12(id);
  if (!gravity) return undefined;
  const formula = stiffnessFormulas[group === 'softwood' ? 'softwood' : 'hardwood'];
  return {
    psi: evaluate(formula, { G: gravity.value }),
    estimated: `from its density, ${formula.source}`,
    source: gravity.source,
    fromMemory: true,
  };
}
