import * as z from 'zod';
import { day, known, oneOf, readParameters, size, words } from '../measure/parameters.js';
import { ShopError } from '../measure/shop-error.js';
import { climate } from '../wood/air/air.js';
import { species } from '../wood/species.js';

/** What the client asked for: everything that is fixed before the maker decides anything. */
export interface Brief {
  client: string;
  piece: string;
  /** ISO day it is promised for. */
  promised: string;
  /** A box, inside, front to back: the way the lid slides. in */
  insideLength?: number;
  /** A box, inside, side to side. in */
  insideWidth?: number;
  /** A box, clear depth under the lid. in */
  insideDepth?: number;
  species: string;
  /** A box's corner joint. */
  joint?: Joint;
  /** How it is made personal, in words. */
  personal: string;
  /** Climate id of the place it will live at. */
  home: string;
  /** How lengths are shown. */
  units: 'tape' | 'mm' | 'both';
}

/** Through joints that this box can have. */
export type Joint = 'through dovetail' | 'finger joint';

/** The inside sizes that a hand and a bench can make. @internal */
export const insideFields = {
  insideLength: size({ least: 1, most: 36, why: 'inside, front to back, the way the lid slides' }),
  insideWidth: size({ least: 1, most: 24, why: 'inside, side to side' }),
  insideDepth: size({ least: 0.5, most: 18, why: 'clear depth under the lid' }),
  species: known(species, 'the wood, such as walnut'),
  joint: oneOf(['through dovetail', 'finger joint'], 'the corner joint'),
};

const common = {
  client: words('who it is for'),
  piece: words('what it is called'),
  promised: day('the day it is promised for'),
  species: insideFields.species,
  personal: words('how it is made personal; "plain" when it is not'),
  home: known(climate, 'the place it will live at, such as Chicago'),
  units: oneOf(['tape', 'mm', 'both'], 'how lengths are shown'),
};
const boxBrief = z.strictObject({ ...common, ...insideFields });
const pieceBrief = z.strictObject(common);
const ofBoxes = { insideLength: true, insideWidth: true, insideDepth: true, joint: true } as const;
const namedOfBoxes = (brief: object) => Object.keys(ofBoxes).filter((field) => field in brief).length;

/** A box's brief has its inside sizes and its joint, all of them; that of any other piece has none. @internal */
export const briefSchema = boxBrief
  .partial(ofBoxes)
  .loose()
  .refine((brief) => [0, Object.keys(ofBoxes).length].includes(namedOfBoxes(brief)), {
    error: `possible: all of ${Object.keys(ofBoxes).join(', ')} (a box), or none (any other piece)`,
  });

/**
 * Reads the client's brief as it was typed. A box's has inside sizes and joint; other pieces are sized in their own sheet.
 *
 * @param given  lengths as `9 1/2 in` or `240 mm`, days as `2027-02-12`
 * @param commission.begun  ISO day it was begun: nothing is promised for a day before; not known where it is empty
 * @returns the brief, lengths in inches
 * @throws ShopError  one line: the field, the value given, what is possible, why
 */
export function readBrief(
  given: { [field in keyof Brief]: string | number },
  { begun = '' }: { begun?: string } = {},
): Brief {
  const brief: Brief = namedOfBoxes(given) > 0 ? readParameters(boxBrief, given) : readParameters(pieceBrief, given);
  if (brief.promised < begun)
    throw new ShopError(
      `promised: ${brief.promised} given; possible: ${begun}, the day this commission was begun, or later`,
    );
  return brief;
}
