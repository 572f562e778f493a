import { create, type FactoryFunctionMap, parseDependencies } from 'mathjs';

/** The parser of mathjs alone: the whole library takes much longer to load. */
export const { parse } = create({ parseDependencies } as FactoryFunctionMap);
