import { z } from 'zod';
import { day, known, oneOf, readParameters, size, words } from '../measure/parameters.js';
import { climate } from '../wood/air.js';
import { species } from '../wood/species.js';

/** What the client asked for: everything that is fixed before the maker decides anything. */
export interface Brief {
  client: string;
  piece: string;
  /** ISO day it is promised for. */
  promised: string;
  /** Inside, front to back: the way the lid slides. in */
  insideLength: number;
  /** Inside, side to side. in */
  insideWidth: number;
  /** Clear depth under the lid. in */
  insideDepth: number;
  species: string;
  joint: Joint;
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
  species: known(species, 'the wood, such as walnut-black'),
  joint: oneOf(['through dovetail', 'finger joint'], 'the corner joint'),
};

/** @internal */
export const briefFields: z.ZodType<Brief> = z.strictObject({
  client: words('who it is for'),
  piece: words('what it is called'),
  promised: day('the day it is promised for'),
  ...insideFields,
  personal: words('how it is made personal; "plain" when it is not'),
  home: known(climate, 'the place it will live at, such as chicago-ohare'),
  units: oneOf(['tape', 'mm', 'both'], 'how lengths are shown'),
});

/**
 * Reads the client's brief as it was typed.
 *
 * @param given  lengths as `9 1/2 in` or `240 mm`, days as `2027-02-12`
 * @returns the brief, lengths in inches
 * @throws ShopError  one line: the field, the value given, what is possible, why
 */
export function readBrief(given: { [field in keyof Brief]: string | number }): Brief {
  return readParameters(briefFields, given);
}
