import Fraction from 'fraction.js';
import { ShopError } from './shop-error.js';

/** How a sheet shows lengths: tape fractions, millimetres, both, or what a caliper reads, in both. */
export type LengthSystem = 'tape' | 'mm' | 'both' | 'caliper';

const vulgarFractions: Record<string, string> = {
  '½': '1/2',
  '¼': '1/4',
  '¾': '3/4',
  '⅛': '1/8',
  '⅜': '3/8',
  '⅝': '5/8',
  '⅞': '7/8',
  '⅓': '1/3',
  '⅔': '2/3',
  '⅕': '1/5',
  '⅖': '2/5',
  '⅗': '3/5',
  '⅘': '4/5',
  '⅙': '1/6',
  '⅚': '5/6',
};

// The inch is 25.4 mm by definition (international yard and pound agreement, 1959).
const inchesPerUnit: Record<string, Fraction> = {
  in: new Fraction(1),
  ft: new Fraction(12),
  mm: new Fraction(10, 254),
  cm: new Fraction(100, 254),
  m: new Fraction(10000, 254),
};

const unitNames: Record<string, keyof typeof inchesPerUnit> = {
  '"': 'in',
  in: 'in',
  inch: 'in',
  inches: 'in',
  "'": 'ft',
  ft: 'ft',
  foot: 'ft',
  feet: 'ft',
  mm: 'mm',
  cm: 'cm',
  m: 'm',
};

const number = String.raw`\d+[ -]+\d+\/\d+|\d+\/\d+|\d+\.\d+|\.\d+|\d+`;
const term = new RegExp(String.raw`^\s*(${number})\s*("|'|[a-z]+)?\.?(?![\w./])\s*[,-]?\s*`);

/**
 * A length as people write it, in inches: `9 1/2 in`, `5/8`, `5⅛"`, `1' 3 1/2"`, `1 ft 3 in`, `240 mm`, `24 cm`.
 * Exact: tape fractions have no rounding error, millimetres are the nearest double.
 *
 * @param text  what was written
 * @param options.bare  unit of a number without one; inches unless told otherwise
 * @param options.signed  whether a leading minus is allowed (an offset, not a size); refused unless told otherwise
 * @returns inches
 * @throws ShopError  names what was written and how it can be written
 * @example parseLength('9 1/2 in') // 9.5
 */
export function parseLength(text: string, options: { bare?: 'in' | 'mm'; signed?: boolean } = {}): number {
  const { bare = 'in', signed = false } = options;
  if (typeof text !== 'string') throw notALength(String(text));
  let rest = normalise(text);
  const negative = rest.startsWith('-');
  if (negative) rest = rest.slice(1);

  let total = new Fraction(0);
  let smallestUnit: Fraction | undefined;
  for (let first = true; rest !== ''; first = false) {
    const match = term.exec(rest);
    if (!match) throw notALength(text);
    const [whole, digits = '', written] = match;
    const unit = written === undefined ? bare : unitNames[written];
    if (unit === undefined) throw notALength(text, `"${written}" is not a unit of length here`);
    const perUnit = inchesPerUnit[unit] as Fraction;
    // "5 3 in" or "3 in 2 in" is a slip of the pen: a further part must be a smaller, named unit.
    if (!first && (written === undefined || !smallestUnit || !perUnit.lt(smallestUnit))) throw notALength(text);
    if (written === undefined && whole.length < rest.length) throw notALength(text);
    smallestUnit = perUnit;
    total = total.add(readNumber(digits, text).mul(perUnit));
    rest = rest.slice(whole.length);
  }
  if (smallestUnit === undefined) throw notALength(text);
  const inches = total.valueOf();
  if (!Number.isFinite(inches)) throw notALength(text);
  if (negative && inches > 0 && !signed) throw new ShopError(`"${text}": less than nothing (a size is zero or more)`);
  return negative && inches > 0 ? -inches : inches;
}

function normalise(text: string): string {
  return text
    .replace(/[½¼¾⅛⅜⅝⅞⅓⅔⅕⅖⅗⅘⅙⅚]/g, (glyph) => ` ${vulgarFractions[glyph]}`)
    .replace(/[\u2044\u2215]/g, '/')
    .replace(/[\u2032\u2019\u2018`]/g, "'")
    .replace(/[\u2033\u201d\u201c]|''/g, '"')
    .replace(/[\u2012-\u2015\u2212]/g, '-')
    .replace(/\s+/g, ' ')
    .trim()
    .toLowerCase();
}

function readNumber(digits: string, text: string): Fraction {
  const parts = digits.split(/[ -]+/);
  return parts.reduce((sum, part) => {
    if (/\/0+$/.test(part)) throw notALength(text, 'a fraction over zero');
    return sum.add(part);
  }, new Fraction(0));
}

function notALength(text: string, why = 'not a length'): ShopError {
  return new ShopError(`"${text}": ${why} (write it like 9 1/2 in, 5/8, 1 ft 3 in, 3.25 in, 240 mm or 24 cm)`);
}

/**
 * A length as it is shown: the text, the length that text stands for, and how far it is from the computed one.
 *
 * @param inches  computed length, in
 * @param options.system  `tape` (fractions), `mm` (to 0.1 mm), `both`, or `caliper` (to 0.001 in and 0.01 mm)
 * @param options.denominator  finest tape mark; 1/32 unless told otherwise
 * @returns text, shown (in), off = shown - computed (in)
 */
export function shownLength(
  inches: number,
  options: { system: LengthSystem; denominator?: 8 | 16 | 32 | 64 },
): { text: string; shown: number; off: number } {
  const { system, denominator = 32 } = options;
  if (!Number.isFinite(inches))
    throw new ShopError(`${inches} cannot be shown as a length; a finite number of inches is possible`);
  const millimetres = Math.round(inches * 254) / 10;
  const thousandths = Math.round(inches * 1000) / 1000;
  const marks = Math.round(inches * denominator);
  const choices: Record<LengthSystem, { text: string; shown: number }> = {
    tape: { text: `${tapeFraction(marks, denominator)} in`, shown: marks / denominator },
    mm: { text: `${millimetres.toFixed(1)} mm`, shown: millimetres / 25.4 },
    both: { text: `${tapeFraction(marks, denominator)} in (${millimetres.toFixed(1)} mm)`, shown: marks / denominator },
    caliper: { text: `${thousandths.toFixed(3)} in (${(inches * 25.4).toFixed(2)} mm)`, shown: thousandths },
  };
  const { text, shown } = choices[system];
  return { text, shown, off: shown - inches };
}

/**
 * A length in the words of the bench: `9 1/2 in`, `241.3 mm`, `9 1/2 in (241.3 mm)`.
 *
 * @param inches  in
 * @param options  as for {@link shownLength}
 * @example formatLength(9.5, { system: 'tape' }) // '9 1/2 in'
 */
export function formatLength(
  inches: number,
  options: { system: LengthSystem; denominator?: 8 | 16 | 32 | 64 },
): string {
  return shownLength(inches, options).text;
}

/** What a caliper shows in a commission's units: thousandths of an inch, or hundredths of a millimetre. */
export function caliperScale(units: 'tape' | 'mm' | 'both'): { unit: 'in' | 'mm'; decimals: number; perInch: number } {
  return units === 'mm' ? { unit: 'mm', decimals: 2, perInch: 25.4 } : { unit: 'in', decimals: 3, perInch: 1 };
}

function tapeFraction(marks: number, denominator: number): string {
  const sign = marks < 0 ? '-' : '';
  const whole = Math.floor(Math.abs(marks) / denominator);
  const rest = Math.abs(marks) % denominator;
  if (rest === 0) return `${sign}${whole}`;
  const { n, d } = new Fraction(rest, denominator);
  return `${sign}${whole > 0 ? `${whole} ` : ''}${n}/${d}`;
}
