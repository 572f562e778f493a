import * as z from 'zod';
import cautionData from '../../../data/cautions.json';
import type { RouterKind } from '../joints/groove-routing.js';
import { type DataTable, dataTable } from '../measure/data-file.js';
import { type Finish, finish } from './finish/finishes.js';
import type { HandleKind } from './handle/laid-out-handle.js';

/** What a commission has chosen so far, as far as cautions depend on it. */
export interface Choices {
  /** Ids of data/species.json, finishes.json and glues.json; glues where panels get another than the joints. */
  species?: string | undefined;
  finish?: string | undefined;
  glue?: string | readonly (string | undefined)[] | undefined;
  /** What grooves and rabbets are routed with. */
  router?: RouterKind | undefined;
  handle?: HandleKind | 'none' | undefined;
}

/**
 * What must have been chosen for a line to show; all of it. A finish or a glue that is not chosen yet may still be any of them, so
 * its lines show; a line on one wood shows only for that wood, and one for `any` wood only while none is chosen.
 */
export interface When {
  species?: string[];
  finish?: Finish['kind'][];
  oilyRags?: boolean;
  solvent?: boolean;
  glue?: string[];
}

/** One caution, with a source of its own where it has one. */
export interface CautionPoint {
  say: string;
  when?: When | undefined;
  source?: string | undefined;
}

/** The usual cautions for one operation. */
export interface Cautions {
  id: string;
  /** "Table saw" */
  operation: string;
  when?: When | undefined;
  points: CautionPoint[];
  /** What comes before these lines: the manual, local codes, qualified people. */
  comesFirst: string;
  source: string;
}

const words = z.string({ error: 'some words are needed' }).trim().min(1, 'some words are needed');
const ids = z.array(words).min(1);
const when: z.ZodType<When> = z.strictObject({
  species: ids.optional(),
  finish: z.array(z.enum(['oil', 'wax', 'film'])).optional(),
  oilyRags: z.boolean().optional(),
  solvent: z.boolean().optional(),
  glue: ids.optional(),
}) as z.ZodType<When>;

const point: z.ZodType<CautionPoint> = z.union([
  words.transform((say): CautionPoint => ({ say })),
  z.strictObject({ say: words, when, source: words.optional() }),
]);

const entry: z.ZodType<Cautions> = z.strictObject({
  id: words,
  operation: words,
  when: when.optional(),
  points: z.array(point).min(1, 'at least one caution is needed'),
  comesFirst: words,
  source: words,
});

/** The entries of data/cautions.json. @internal */
export function cautionTable(data: object): DataTable<Cautions> {
  return dataTable('cautions.json', data, { list: 'cautions', what: 'cautions', entry });
}

const known = cautionTable(cautionData);

/**
 * The cautions of some operations that hold for what was chosen.
 *
 * @param operations  ids of data/cautions.json
 * @returns in that order, each with the lines that hold; an operation that the choice rules out is left out
 * @throws ShopError  for an id that is not in the list; names the nearest
 */
export function cautionsFor(operations: readonly string[], choices: Choices = {}): Cautions[] {
  return operations
    .map((id) => known.entry(id))
    .filter((caution) => holds(caution.when, choices))
    .map((caution) => ({ ...caution, points: caution.points.filter((each) => holds(each.when, choices)) }));
}

function holds(asked: When = {}, { species = 'any', finish: finishId, glue }: Choices): boolean {
  const chosen = finishId === undefined ? undefined : finish(finishId);
  const glues = [glue].flat();
  return (
    (!asked.species || asked.species.includes(species)) &&
    (!asked.glue || glues.some((id) => id === undefined || asked.glue?.includes(id))) &&
    (chosen === undefined ||
      ((!asked.finish || asked.finish.includes(chosen.kind)) &&
        (asked.oilyRags ?? chosen.oilyRags) === chosen.oilyRags &&
        (asked.solvent ?? chosen.solvent) === chosen.solvent))
  );
}
