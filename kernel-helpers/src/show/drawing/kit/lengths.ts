import { caliperScale, formatLength, type LengthSystem } from '../../../measure/length.js';

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

/** For what stands beside a dimension line: one system, or lines and texts crowd; inches where both are asked for. */
export function oneSystem({ lengths = 'tape', ...rest }: DrawingOptions): DrawingOptions {
  return { lengths: lengths === 'both' ? 'tape' : lengths, ...rest };
}

/** A size beside a dimension line. */
export function dimensionText(options: DrawingOptions): (inches: number) => string {
  return lengthText(oneSystem(options));
}

/** A setting that adds up, such as the dividers', finer than the tape: to 0.001 in or 0.01 mm. */
export function settingText({ lengths = 'tape' }: DrawingOptions): (inches: number) => string {
  if (lengths === 'both' || lengths === 'caliper') return (inches) => formatLength(inches, { system: 'caliper' });
  const { unit, decimals, perInch } = caliperScale(lengths);
  return (inches) => `${(inches * perInch).toFixed(decimals)} ${unit}`;
}
