import { create, type FactoryFunctionMap, parseDependencies } from 'mathjs/number';

/**
 * The parser of mathjs alone, and of numbers alone: each sheet's kernel loads it, and the one for fractions, units and matrices takes
 * seven times as long (0.2 s of processor time).
 */
export const { parse } = create({ parseDependencies } as FactoryFunctionMap);
