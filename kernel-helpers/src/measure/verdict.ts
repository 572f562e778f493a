import type { Verdict } from './finding.js';
import { formatLength } from './length.js';

/** `ok` where the rule holds, what else it comes to where it does not. @internal */
export const judge = (holds: boolean, otherwise: Verdict): Verdict => (holds ? 'ok' : otherwise);

/** A length to the nearest 1/64 in and 0.1 mm, as findings write it: they are read in either system. @internal */
export const tape = (inches: number): string => formatLength(inches, { system: 'both', denominator: 64 });

/** A small length to 0.001 in and 0.01 mm. @internal */
export const caliper = (inches: number): string => formatLength(inches, { system: 'caliper' });

/** Room for rounding when two lengths are compared, in: far below anything that can be measured. @internal */
export const rounding = 1e-9;
