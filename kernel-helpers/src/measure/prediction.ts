import { formatLength, parseLength } from './length.js';
import { ShopError } from './shop-error.js';

/** A figure to be predicted before the computed one is shown. */
export interface Question {
  /** What is asked, in a few words: `the length of the rail`. */
  what: string;
  /** The apprentice's own figure as typed, `4 5/8 in`, `12.5 %`; empty as long as there is none. */
  yours: string | number;
  computed: number;
  /** `in` for a length, `%`, or the unit as the bench writes it; empty for a pure number. */
  unit: string;
  /** How near counts as a hit, in the unit; lengths may be text. */
  within: number | string;
  /** Wrong answers that are known, and for each the step to look at again. */
  mistakes?: readonly { figure: number | string; step: string }[];
}

/** How a predicted figure compares with the computed one. Figures in the question's unit. */
export interface Prediction {
  yours: number;
  computed: number;
  /** Yours less computed. */
  off: number;
  /** Of the computed figure, 0.1 for a tenth; undefined when that is zero. */
  share?: number;
  hit: boolean;
  /** The step to look at again; undefined for a hit. */
  step?: string;
  /** All of this in two or three sentences. */
  note: string;
}

const anyStep =
  'no usual slip gives that figure, so go through it line by line with a pencil, each number with its unit.';

/**
 * Compares an apprentice's own figure with the computed one.
 *
 * A hit lies within the tolerance. A miss says how far off, and which step to look at: that of the known mistake whose
 * figure comes nearest, where one lies within the tolerance of the apprentice's.
 *
 * @returns undefined as long as no figure is given
 * @throws ShopError  one line: a figure that cannot be read, and how it can be written
 * @example comparePrediction({ what: 'the sum', yours: '1 1/8', computed: 1.125, unit: 'in', within: '1/64 in' })?.hit // true
 */
export function comparePrediction(question: Question): Prediction | undefined {
  const { what, computed, unit, mistakes = [] } = question;
  if (isBlank(question.yours)) return undefined;
  const figure = (field: string, given: number | string) => readFigure(`${what}: ${field}`, given, unit);
  const yours = figure('yours', question.yours);
  const within = figure('within', question.within);
  if (!Number.isFinite(computed)) throw new ShopError(`${what}: computed is ${computed}; a number is needed`);

  const near = (other: number) => Math.abs(yours - other) <= within + 1e-9 * Math.max(1, Math.abs(other));
  const off = yours - computed;
  const share = computed === 0 ? undefined : off / Math.abs(computed);
  const hit = near(computed);
  const known = mistakes
    .map((mistake) => ({ ...mistake, wrong: figure('mistakes', mistake.figure) }))
    .filter(({ wrong }) => near(wrong))
    .sort((a, b) => Math.abs(yours - a.wrong) - Math.abs(yours - b.wrong))[0];
  const step = hit ? undefined : (known?.step ?? anyStep);
  const text = writtenLike(unit, within);
  const distance = `${text(Math.abs(off))} ${off > 0 ? 'too much' : 'too little'}`;
  const percent = share === undefined ? '' : `, ${percentText(Math.abs(share))} of it`;
  const outcome = !hit
    ? `You are ${distance}${percent}. Look again: ${step}`
    : Math.abs(off) < within / 100 + 1e-9
      ? 'A hit.'
      : `A hit: within ${text(within)}.`;
  return {
    yours,
    computed,
    off,
    share,
    hit,
    step,
    note: `${what}: you say ${text(yours)}, it is ${text(computed)}. ${outcome}`,
  };
}

/** What to say while no figure is given: it tells nothing of the computed one. @internal */
export function askFirst({ what, unit }: Pick<Question, 'what' | 'unit'>): string {
  const such: Record<string, string> = {
    in: 'a length, such as 9 1/2 in or 240 mm',
    '%': 'a percentage, such as 12.5',
    '': 'a number',
  };
  return `${what}: your own figure first. Write it between the quotes after "yours" (${such[unit] ?? `a number of ${unit}`}) and run this cell again.`;
}

/** Whether nothing was typed yet. @internal */
export const isBlank = (yours: string | number): boolean => String(yours).trim() === '';

/** A figure as it was typed, in the unit of the question. */
function readFigure(field: string, given: number | string, unit: string): number {
  if (typeof given === 'number' && Number.isFinite(given)) return given;
  if (unit === 'in') {
    try {
      return parseLength(String(given), { signed: true });
    } catch (error) {
      throw new ShopError(`${field}: ${(error as Error).message}`);
    }
  }
  const bare = String(given)
    .replaceAll('\u2212', '-')
    .replace(/^\s*[$€£¥]|(?<=\d),(?=\d{3}\b)/g, '')
    .replace(unit, '')
    .trim();
  const [, sign, whole = '0', over, under] = /^(-?)(?:(\d+|\d*\.\d+)(?: |$))?(?:(\d+)\/(\d+))?$/.exec(bare) ?? [];
  const number = Number(whole) + (over === undefined ? 0 : Number(over) / Number(under));
  if (sign === undefined || bare === '' || !Number.isFinite(number))
    throw new ShopError(`${field}: "${given}" is not a number${unit && ` of ${unit}`}; write it like 12.5 or 12 1/2`);
  return sign === '-' ? -number : number;
}

/** Two figures of a share are enough; of a large one, whole per cents. */
function percentText(share: number): string {
  return `${share < 1 ? Number((100 * share).toPrecision(2)) : Math.round(100 * share)} %`;
}

/** Figures are shown as finely as the tolerance asks. */
function writtenLike(unit: string, within: number): (figure: number) => string {
  if (unit === 'in' && within < 1 / 128) return (inches) => formatLength(inches, { system: 'caliper' });
  if (unit === 'in') return (inches) => formatLength(inches, { system: 'both', denominator: 64 });
  const decimals = within > 0 ? Math.min(6, Math.max(0, Math.ceil(-Math.log10(within) - 1e-9) + 1)) : 0;
  return (figure) => `${Number(figure.toFixed(decimals))}${unit && ` ${unit}`}`;
}
