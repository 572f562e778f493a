import type { Verdict } from '../measure/finding.js';
import { formatLength } from '../measure/length.js';

/** `ok` where the rule holds, what else it comes to where it does not. @internal */
export const judge = (holds: boolean, otherwise: Verdict): Verdict => (holds ? 'ok' : otherwise);

/** A length to the nearest 1/64 in, as findings and messages write it. @internal */
export const tape = (inches: number): string => formatLength(inches, { system: 'tape', denominator: 64 });

/** Room for rounding when two lengths are compared, in: far below anything that can be measured. @internal */
export const rounding = 1e-9;
