import type * as z from 'zod';
import type { SizedBox } from '../../piece/box/sized-box.js';
import { briefSchema } from '../../piece/brief.js';
import type { PieceKind, SizedPiece } from '../../piece/piece.js';
import { days } from './days-schema.js';
import type { Decisions } from './decisions.js';
import { grooves, joint } from './joint-schemas.js';
import { actuals, answer, quote } from './money-schemas.js';
import { sizing } from './piece-schema.js';
import { stock } from './stock-schema.js';
import { surface } from './surface-schema.js';
import type { Unlike } from './unlike.js';
import { air, lid, measured } from './year-schemas.js';

/**
 * What a decision's results must look like, on the way into the record and out of it. Results are handed on as they
 * were recorded, so a schema checks and never transforms; fields that it does not name pass.
 *
 * @internal
 */
export const decisionSchemas = {
  brief: briefSchema,
  sizing,
  air,
  lid,
  joint,
  grooves,
  stock,
  surface,
  quote,
  days,
  measured,
  answer,
  actuals,
};

/** The decisions as the schemas have them. @internal */
export type SchemaResults = { [What in keyof typeof decisionSchemas]: z.infer<(typeof decisionSchemas)[What]> };

/** The decisions with the sized piece taken by its kind, as its schema does. @internal */
export type DecisionsByKind = Omit<Decisions, 'sizing'> & {
  sizing: SizedBox | (SizedPiece & { kind: Exclude<PieceKind, 'box'> });
};

/**
 * Does not compile when a decision and its schema differ anywhere; the compiler then names the fields.
 *
 * @internal
 */
export type HeldTogether<Difference extends never = Unlike<DecisionsByKind, SchemaResults, 'decisions'>> = Difference;
