import { formatLength, type LengthSystem } from '../../measure/length.js';

/** How sizes of a drawing are shown. */
export interface DrawingOptions {
  /** Tape fractions unless told otherwise. */
  lengths?: LengthSystem;
  /** Finest tape mark; 1/64 unless told otherwise. */
  denominator?: 8 | 16 | 32 | 64;
}

/** A length in the words that a drawing was asked for. */
export function lengthText({ lengths = 'tape', denominator = 64 }: DrawingOptions): (inches: number) => string {
  return (inches) => formatLength(inches, { system: lengths, denominator });
}
