import * as z from 'zod';
import { day, known, oneOf, readParameters, size, words } from '../measure/parameters.js';
import { ShopError } from '../measure/shop-error.js';
import { ownClimate, readOwnPlace, type TypedOwnPlace } from '../wood/air/own-place.js';
import { type Heating, heatingFields } from '../wood/air/room-air.js';
import { type Climate, climate } from '../wood/place/climates.js';
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
  /** Place it will live at: a climate's id, or a place of the maker's own. */
  home: string | Climate;
  /** What the house does to the air there. Older briefs do not say. */
  house?: Heating;
  /** Name of a table of hygrometer readings of the room, instead of place and house; empty for none. */
  readings?: string;
  /** How lengths are shown. */
  units: 'tape' | 'mm' | 'both';
}

/** Through joints that this box can have. */
export type Joint = 'through dovetail' | 'finger joint';

/** What each fact of a brief is, in the words it is asked for. @internal */
export const briefFacts = {
  client: 'who it is for',
  piece: 'what it is called',
  promised: 'the day it is promised for',
  insideLength: 'inside, front to back, the way the lid slides',
  insideWidth: 'inside, side to side',
  insideDepth: 'clear depth under the lid',
  species: 'the wood, such as walnut',
  joint: 'the corner joint',
  personal: 'how it is made personal; "plain" when it is not',
  home: 'the place it will live at, such as Chicago',
  units: 'how lengths are shown',
} as const;

/** A fact of a brief. @internal */
export type BriefFact = keyof typeof briefFacts;

/** What else the joints are called. */
const jointNames: Record<string, Joint> = {
  dovetail: 'through dovetail',
  finger: 'finger joint',
  box: 'finger joint',
};

/** Joints by the names one says them by: "dovetail", "Through dovetails", "box joint". */
function jointCalled(joint: z.ZodType<Joint>): z.ZodType<Joint> {
  const called = (typed: string) =>
    jointNames[
      typed
        .trim()
        .toLowerCase()
        .replace(/^through /, '')
        .replace(/ ?joints?$/, '')
        .replace(/s$/, '')
    ];
  return z.preprocess((typed) => (typeof typed === 'string' && called(typed)) || typed, joint);
}

/** The inside sizes that a hand and a bench can make. @internal */
export const insideFields = {
  insideLength: size({ least: 1, most: 36, why: briefFacts.insideLength }),
  insideWidth: size({ least: 1, most: 24, why: briefFacts.insideWidth }),
  insideDepth: size({ least: 0.5, most: 18, why: briefFacts.insideDepth }),
  species: known(species, briefFacts.species),
  joint: jointCalled(oneOf(['through dovetail', 'finger joint'], briefFacts.joint)),
};

const house: z.ZodType<Heating> = heatingFields;

const common = {
  client: words(briefFacts.client),
  piece: words(briefFacts.piece),
  promised: day(briefFacts.promised),
  species: insideFields.species,
  personal: words(briefFacts.personal),
  home: known(climate, briefFacts.home),
  house: house.optional(),
  readings: z.string({ error: "possible: the name of a table of hygrometer readings, '' for none" }).optional(),
  units: oneOf(['tape', 'mm', 'both'], briefFacts.units),
};
const boxBrief = z.strictObject({ ...common, ...insideFields });
const pieceBrief = z.strictObject(common);
const ofBoxes = { insideLength: true, insideWidth: true, insideDepth: true, joint: true } as const;
const namedOfBoxes = (brief: object) => Object.keys(ofBoxes).filter((field) => field in brief).length;

/** As a record holds it, which may be of another daybook. */
const recordedHouse = z.looseObject({
  heatTo: z.number().optional(),
  coolTo: z.number().optional(),
  coilDewPoint: z.number().optional(),
  livedIn: z.string().optional(),
  humidifyTo: z.number().optional(),
  dehumidifyTo: z.number().optional(),
});

/** A box's brief has its inside sizes and its joint, all of them; that of any other piece has none. @internal */
export const briefSchema = boxBrief
  .extend({ home: z.union([common.home, ownClimate]), house: recordedHouse.optional() })
  .partial(ofBoxes)
  .loose()
  .refine((brief) => [0, Object.keys(ofBoxes).length].includes(namedOfBoxes(brief)), {
    error: `possible: all of ${Object.keys(ofBoxes).join(', ')} (a box), or none (any other piece)`,
  });

/** A brief as it is typed. */
export type TypedBrief = {
  [fact in keyof Brief]: fact extends 'home' ? string : fact extends 'house' ? Heating : string | number;
} & {
  /** A place of the maker's own, by the name that home gives; '' for a place of the list. */
  ownPlace?: TypedOwnPlace | string;
};

/**
 * Reads the client's brief as it was typed. A box's has inside sizes and joint; other pieces are sized in their own sheet.
 *
 * @param given  lengths as `9 1/2 in` or `240 mm`, days as `2027-02-12`, wood and place by name or id
 * @param commission.begun  ISO day it was begun: nothing is promised for a day before; not known where it is empty
 * @returns the brief, lengths in inches
 * @throws ShopError  one line: the facts that are still open; or the field, the value given, what is possible, why
 */
export function readBrief(given: TypedBrief, { begun = '' }: { begun?: string } = {}): Brief {
  const { ownPlace = '', ...facts } = given;
  refuseOpen(facts);
  const own = ownPlace === '' ? undefined : readOwnPlace(words(briefFacts.home).parse(facts.home), ownPlace);
  // The name of a place of the maker's own is in no list.
  const home = own ? z.any().transform(() => own) : common.home;
  const asked = namedOfBoxes(facts) > 0 ? boxBrief : pieceBrief;
  const brief: Brief = readParameters(asked.extend({ home }), facts);
  if (brief.promised < begun)
    throw new ShopError(
      `promised: ${brief.promised} given; possible: ${begun}, the day this commission was begun, or later`,
    );
  return brief;
}

/**
 * Reads one fact of a brief as it was typed.
 *
 * @returns the value as the brief keeps it
 * @throws ShopError  as {@link readBrief}
 * @internal
 */
export function readFact(fact: BriefFact, typed: string): unknown {
  return Object.values(readParameters(z.object({ [fact]: boxBrief.shape[fact] as z.ZodType }), { [fact]: typed }))[0];
}

function refuseOpen(facts: object): void {
  const open = Object.entries(facts).flatMap(([fact, typed]) =>
    fact in briefFacts && typeof typed === 'string' && typed.trim() === '' ? [fact] : [],
  );
  if (open.length > 0)
    throw new ShopError(`The brief is not whole yet; still to be filled in among its parameters: ${open.join(', ')}`);
}
