import * as z from 'zod';
import { evaluate, type Formula } from '../../measure/formula.js';
import { amount, readParameters, size } from '../../measure/parameters.js';
import { ShopError } from '../../measure/shop-error.js';
import { gravityAt12 } from '../../wood/specific-gravity.js';
import type { Groove, Part, SizedBox } from './sized-box.js';

/** Mass of wood from its volume, its specific gravity and its moisture. */
export const massFormula: Formula<'V' | 'G' | 'M'> = {
  name: 'Mass of wood',
  result: { tex: 'm', meaning: 'mass', unit: 'kg', min: 0 },
  // A cubic inch of water is 0.016387064 kg at 1000 kg a cubic metre.
  expression: '0.016387064 * V * G * (1 + M / 100)',
  symbols: {
    V: { meaning: 'volume of wood', unit: 'cu in', min: 0 },
    G: { meaning: 'specific gravity, ovendry mass on volume at 12 %', unit: '', min: 0.05, max: 1.5 },
    M: { meaning: 'moisture content', unit: '%', min: 0, max: 30 },
  },
  source: 'definition of specific gravity and moisture content; Wood Handbook FPL-GTR-190, chapter 4 (from memory)',
};

/** What a box weighs, holds and takes up. No sheet takes it yet: kept for packing and sending. */
export interface BoxFigures {
  /** Wood, plywood included, less grooves, rabbets and what the joints share. Cubic inches. */
  woodVolume: number;
  /** Kilograms, at the moisture given. */
  mass: number;
  /** Clear inside. Cubic inches, and litres. */
  insideVolume: number;
  insideLitres: number;
  /** Over everything: what a shelf must take. Inches. */
  envelope: { length: number; width: number; height: number };
  /** Packed: longest side first, and longest side plus girth, as carriers count it. Inches. */
  parcel: { length: number; width: number; height: number; lengthAndGirth: number };
  /** Where the specific gravity stands. */
  source: string;
}

const fields = z.strictObject({
  moisture: amount({ least: 0, most: 30, unit: '%', why: 'moisture it is weighed at' }).default(12),
  plywoodGravity: amount({ least: 0.2, most: 1.2, why: "plywood's ovendry mass over that of water" }).default(0.5),
  padding: size({ least: 0, most: 12, why: 'padding and carton, each side' }).default(2),
});

/**
 * Mass, inside volume and outside envelope of a box with its lid.
 *
 *   m = V G (1 + M / 100)          G from the handbook, ovendry mass on volume at 12 %
 *
 * @param figures.box  as sized
 * @param figures.moisture  %; 12 unless told otherwise
 * @param figures.plywoodGravity  1/2 unless told otherwise (common practice, no source)
 * @param figures.padding  padding and carton, each side; 2 in unless told otherwise
 * @returns mass in kg, volumes in cu in and litres, sizes in in
 * @throws ShopError  a wood without a published specific gravity at 12 %; a value that is not possible
 * @see specific gravity: data/species.json with its source
 */
export function boxFigures(figures: {
  box: SizedBox;
  moisture?: number;
  plywoodGravity?: number;
  padding?: number | string;
}): BoxFigures {
  const { box, ...typed } = figures;
  const { moisture, plywoodGravity, padding } = readParameters(fields, typed);
  const { design, overall } = box;
  const gravity = gravityAt12(design.species);
  if (!gravity)
    throw new ShopError(
      `species: ${design.species} has no published specific gravity at 12 %; possible: a near relation, or your own by addSpecies`,
    );
  const plywood =
    design.bottom === 'plywood' ? volumeOf(box.parts.filter(({ material }) => material === 'plywood')) : 0;
  const wood =
    volumeOf(box.parts.filter(({ material }) => material === 'wood')) -
    rabbets(box) -
    grooves(box) -
    cornersShared(box);
  const insideVolume = design.insideLength * design.insideWidth * design.insideDepth;
  const packed = Object.values(overall)
    .map((side) => side + 2 * padding)
    .sort((a, b) => b - a) as [number, number, number];
  return {
    woodVolume: wood + plywood,
    mass:
      evaluate(massFormula, { V: wood, G: gravity.value, M: moisture }) +
      evaluate(massFormula, { V: plywood, G: plywoodGravity, M: moisture }),
    insideVolume,
    insideLitres: insideVolume * 0.016387064,
    envelope: { ...overall },
    parcel: {
      length: packed[0],
      width: packed[1],
      height: packed[2],
      lengthAndGirth: packed[0] + 2 * (packed[1] + packed[2]),
    },
    source: gravity.estimated ? `${gravity.estimated}; ${gravity.source}` : gravity.source,
  };
}

const volumeOf = (parts: Part[]): number =>
  parts.reduce((sum, { count, length, width, thickness }) => sum + count * length * width * thickness, 0);

/** What the lid loses over its tongue: both long edges and the back end, as wide as the groove is deep. */
function rabbets({ design, parts }: SizedBox): number {
  const lid = parts.find(({ name }) => name === 'lid') as Part;
  const rabbet = design.lidGrooveDepth;
  const top = (lid.length - rabbet) * (lid.width - 2 * rabbet);
  return (lid.length * lid.width - top) * (design.lidThickness - design.tongueThickness);
}

/** What the grooves take between the inside corners; the little they take in the corners is left out. */
function grooves({ design, grooves: all }: SizedBox): number {
  const clear = ({ board }: Groove) => (board === 'side' ? design.insideLength : design.insideWidth);
  return all.reduce(
    (sum, groove) => sum + (groove.board === 'side' ? 2 : 1) * clear(groove) * groove.width * groove.depth,
    0,
  );
}

/** At each corner both boards are counted to their ends; the joint's block is there once, and about half of what stands proud. */
function cornersShared({ design, parts }: SizedBox): number {
  const height = (name: Part['name']) => (parts.find((part) => part.name === name) as Part).width;
  const { stockThickness: t, proud } = design;
  const atOneCorner = (h: number) => (t + proud) * t * h;
  return 2 * atOneCorner(height('front')) + 2 * atOneCorner(height('back'));
}
