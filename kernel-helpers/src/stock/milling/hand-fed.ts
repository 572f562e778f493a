import * as z from 'zod';
import { readParameters, size } from '../../measure/parameters.js';

/** What a jointer takes: its manual comes first, in. */
export interface Jointer {
  leastLength: number;
  /** Widest face: as wide as its knives. */
  widest: number;
}

/** What may be ripped by hand against the fence of a table saw: its manual comes first, in. */
export interface TableSaw {
  leastLength: number;
  /** Between blade and fence; a narrower strip is ripped so that it falls away on the other side of the blade. */
  leastWidth: number;
}

/** As they are typed: lengths as text or inches, what is left out is a usual figure. */
export type TypedJointer = { [field in keyof Jointer]?: number | string };
export type TypedTableSaw = { [field in keyof TableSaw]?: number | string };

const jointerFields: z.ZodType<Jointer> = z.strictObject({
  leastLength: size({ least: 2, most: 48, why: "shortest piece the jointer's manual allows" }).default(12),
  widest: size({ least: 3, most: 24, why: 'widest face the jointer takes' }).default(8),
});

const tableSawFields: z.ZodType<TableSaw> = z.strictObject({
  leastLength: size({ least: 2, most: 48, why: 'shortest piece ripped by hand at the table saw' }).default(12),
  leastWidth: size({ least: 1 / 4, most: 6, why: 'narrowest piece ripped by hand between blade and fence' }).default(1),
});

/**
 * A jointer's figures. They belong to the machine: the defaults are common practice, no source.
 *
 * @throws ShopError  the field, the value given, what is possible
 * @internal
 */
export function readJointer(typed: TypedJointer = {}): Jointer {
  return readParameters(jointerFields, typed);
}

/** A table saw's, likewise. @internal */
export function readTableSaw(typed: TypedTableSaw = {}): TableSaw {
  return readParameters(tableSawFields, typed);
}
