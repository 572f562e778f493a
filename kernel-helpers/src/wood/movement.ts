import { evaluate, type Formula } from '../measure/formula.js';
import { ShopError } from '../measure/shop-error.js';
import { type Species, soldTogether, species as speciesOf } from './species.js';

/** Change in a dimension across the grain, with the band that holds nine boards in ten. Inches. */
export interface Movement {
  /** Positive when it swells. */
  change: number;
  low: number;
  high: number;
  /** Which form of the handbook's equation was used, and the figures it took. */
  method: MovementMethod;
}

/** How a movement was worked: the form, the strain for 1 % or the shrinkage, and what stands behind it. */
export interface MovementMethod {
  form: 'coefficient' | 'shrinkage';
  /** Coefficient (fraction for 1 %) or total shrinkage (%), turned to the ring angle. */
  figure: number;
  /** Coefficients that were turned, fractions for 1 %. */
  tangential: number;
  radial: number;
  /** Whether the tabled coefficient or the tabled shrinkage was taken (where they disagree, the larger). */
  basis: 'table of coefficients' | 'table of shrinkage';
  /** Wood whose figures they are: its own, or those of what yards sell it with. */
  wood: string;
  /** What its own tabled figure for this form gives for 1 %, where a larger one was taken. */
  passedOver?: number;
  source: string;
  fromMemory: boolean;
}

/** Handbook's short form, for 6 to 14 % moisture. */
export const coefficientFormula: Formula<'D' | 'C' | 'Mi' | 'Mf'> = {
  name: 'Change across the grain',
  result: { tex: '\\Delta D', meaning: 'change across the grain', unit: 'in' },
  expression: 'D * C * (Mf - Mi)',
  symbols: {
    D: { meaning: 'dimension across the grain at the start', unit: 'in', min: 0 },
    C: { meaning: 'dimensional change coefficient at the ring angle', unit: '' },
    Mi: { tex: 'M_i', meaning: 'moisture content at the start', unit: '%', min: 6, max: 14 },
    Mf: { tex: 'M_f', meaning: 'moisture content at the end', unit: '%', min: 6, max: 14 },
  },
  source: 'Wood Handbook FPL-GTR-190 (2010), eq. 13-2, coefficients of table 13-5',
};

/** Handbook's long form, from ovendry to fibre saturation. */
export const shrinkageFormula: Formula<'D' | 'S' | 'M0' | 'Mi' | 'Mf'> = {
  name: 'Change across the grain',
  result: { tex: '\\Delta D', meaning: 'change across the grain', unit: 'in' },
  expression: 'D * (Mf - Mi) / (100 * M0 / S - M0 + Mi)',
  symbols: {
    D: { meaning: 'dimension across the grain at the start', unit: 'in', min: 0 },
    S: { meaning: 'shrinkage from green to ovendry at the ring angle', unit: '%' },
    M0: { tex: 'M_0', meaning: 'moisture content at which shrinkage starts', unit: '%' },
    Mi: { tex: 'M_i', meaning: 'moisture content at the start', unit: '%', min: 0, max: 30 },
    Mf: { tex: 'M_f', meaning: 'moisture content at the end', unit: '%', min: 0, max: 30 },
  },
  source:
    'Wood Handbook FPL-GTR-190 (2010), eq. 13-3 (the printed formula from memory; it follows from linear shrinkage from fibre saturation)',
};

/** Coefficient of a board whose growth rings stand at any angle to its face. */
export const ringAngleFormula: Formula<'Ct' | 'Cr' | 'a'> = {
  name: 'Coefficient at the ring angle',
  result: { tex: 'C', meaning: 'dimensional change coefficient at the ring angle', unit: '' },
  expression: 'Ct * cos(a * pi / 180)^2 + Cr * sin(a * pi / 180)^2',
  symbols: {
    Ct: { tex: 'C_t', meaning: 'tangential coefficient, along the rings', unit: '' },
    Cr: { tex: 'C_r', meaning: 'radial coefficient, from ring to ring', unit: '' },
    a: { tex: '\\alpha', meaning: 'angle between face and growth rings', unit: 'deg', min: 0, max: 90 },
  },
  source:
    'geometry: a strain turned between two directions at right angles; coefficients of Wood Handbook FPL-GTR-190 (2010), table 13-5',
};

/** Shrinkage from green to ovendry that goes with a coefficient. */
export const totalShrinkageFormula: Formula<'C' | 'M0'> = {
  name: 'Shrinkage from the coefficient',
  result: { tex: 'S', meaning: 'shrinkage from green to ovendry at the ring angle', unit: '%' },
  expression: '100 * M0 * C / (1 + (M0 - 10) * C)',
  symbols: {
    C: { meaning: 'dimensional change coefficient at the ring angle', unit: '', min: 0, max: 0.01 },
    M0: { tex: 'M_0', meaning: 'moisture content at which shrinkage starts', unit: '%', min: 20, max: 40 },
  },
  source: 'Wood Handbook FPL-GTR-190 (2010), notes to table 13-5, solved for the shrinkage',
};

/** Board-to-board coefficient of variation of movement. Common practice, no source: 15 to 20 %. */
export const boardVariation = 0.175;

/** Normal deviate that leaves 5 % on either side. */
const ninetyPercent = 1.6449;

/**
 * Change in a dimension across the grain as wood goes from one moisture content to another.
 *
 *   dD = D C (Mf - Mi)                              both moistures 6 to 14 %
 *   dD = D (Mf - Mi) / (100 M0/S - M0 + Mi)         otherwise, up to fibre saturation M0
 *
 * The strain is turned between tangential and radial by the ring angle: C = Ct cos² a + Cr sin² a.
 * Where the printed coefficient and the printed shrinkage of a wood disagree (most imported woods), or yards sell it in a
 * mix that is printed with another (red oak, white oak), the largest is taken.
 *
 * @param across  dimension across the grain now, in
 * @param species  id, such as `walnut-black`
 * @param ringAngle  angle between the face and the growth rings, degrees; 0 flat-sawn (tangential), 90 quarter-sawn (radial)
 * @param fromMoisture, toMoisture  % of ovendry mass
 * @returns change in in, positive when it swells; low and high hold nine boards in ten
 * @throws ShopError  unknown species, angle outside 0 to 90, moisture below 0 or above fibre saturation
 * @see Wood Handbook FPL-GTR-190, eq. 13-2 and 13-3, table 13-5; ring angle: tensor rotation; band: common practice, no source
 * @example movement({ across: 9.25, species: 'cherry-black', ringAngle: 0, fromMoisture: 8, toMoisture: 12 }).change // 0.0918
 */
export function movement(move: {
  across: number;
  species: string;
  ringAngle: number;
  fromMoisture: number;
  toMoisture: number;
}): Movement {
  const { across, ringAngle, fromMoisture, toMoisture } = move;
  const wood = speciesOf(move.species);
  if (!(ringAngle >= 0 && ringAngle <= 90))
    throw new ShopError(`ringAngle: ${ringAngle} given; 0 (flat-sawn) to 90 degrees (quarter-sawn) is possible`);
  for (const [field, moisture] of Object.entries({ fromMoisture, toMoisture }))
    if (!(moisture >= 0 && moisture <= wood.fibreSaturation))
      throw new ShopError(
        `${field}: ${moisture} % given; 0 to ${wood.fibreSaturation} % is possible (above fibre saturation ${wood.commonName.toLowerCase()} no longer moves)`,
      );
  const method = movementMethod(wood, ringAngle, fromMoisture, toMoisture);
  const ends = { D: across, Mi: fromMoisture, Mf: toMoisture };
  const change =
    method.form === 'coefficient'
      ? evaluate(coefficientFormula, { ...ends, C: method.figure })
      : evaluate(shrinkageFormula, { ...ends, S: method.figure, M0: wood.fibreSaturation });
  const doubt = ninetyPercent * boardVariation * Math.abs(change);
  return { change, low: change - doubt, high: change + doubt, method };
}

/** Coefficient of linear shrinkage from M0: {@link totalShrinkageFormula} the other way round. */
const coefficientFromShrinkage = (shrinkage: number, m0: number) => shrinkage / (100 * m0 - shrinkage * (m0 - 10));

/** Moistures that the handbook's coefficients are given for, %. */
export const coefficientRange = { least: 6, most: 14 };

const isCoefficientRange = (...moistures: number[]) =>
  moistures.every((moisture) => moisture >= coefficientRange.least && moisture <= coefficientRange.most);

/** One printed figure of a wood, turned to the ring angle. */
type Candidate = Omit<MovementMethod, 'form' | 'figure'> & { coefficient: number };

function candidatesOf(wood: Species, ringAngle: number): Candidate[] {
  const { id, coefficient, shrinkage, fibreSaturation: m0 } = wood;
  const turned = (tangential: number, radial: number) => ({
    wood: id,
    tangential,
    radial,
    coefficient: evaluate(ringAngleFormula, { Ct: tangential, Cr: radial, a: ringAngle }),
  });
  const candidates: Candidate[] = [];
  if (coefficient) {
    const { tangential, radial, ...cited } = coefficient;
    candidates.push({ ...cited, basis: 'table of coefficients', ...turned(tangential, radial) });
  }
  if (shrinkage?.tangential != null) {
    const [tangential, radial] = [shrinkage.tangential, shrinkage.radial].map((total) =>
      coefficientFromShrinkage(total, m0),
    ) as [number, number];
    const { source, fromMemory } = shrinkage;
    candidates.push({ source, fromMemory, basis: 'table of shrinkage', ...turned(tangential, radial) });
  }
  return candidates;
}

function movementMethod(wood: Species, ringAngle: number, from: number, to: number): MovementMethod {
  const form = isCoefficientRange(from, to) ? 'coefficient' : 'shrinkage';
  const ownTable = form === 'coefficient' ? 'table of coefficients' : 'table of shrinkage';
  const candidates = [wood, ...soldTogether(wood)].flatMap((other) => candidatesOf(other, ringAngle));
  const printed = candidates.find(({ basis, wood: of }) => of === wood.id && basis === ownTable) ?? candidates[0];
  if (!printed)
    throw new ShopError(
      `species: ${wood.id} has no published movement figure; take a near relation or measure your own`,
    );
  const largest = candidates.reduce((a, b) => (b.coefficient > a.coefficient ? b : a));
  // Tables that agree differ by rounding only.
  const disagree = largest.coefficient > 1.02 * printed.coefficient;
  const { coefficient, ...chosen } = disagree ? largest : printed;
  return {
    form,
    figure:
      form === 'coefficient'
        ? coefficient
        : evaluate(totalShrinkageFormula, { C: coefficient, M0: wood.fibreSaturation }),
    ...chosen,
    ...(disagree && { passedOver: printed.coefficient }),
  };
}
