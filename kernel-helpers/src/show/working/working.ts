import { evaluate, evaluateUnchecked, type Formula, type FormulaSymbol, formulaTree } from '../../measure/formula.js';
import { type LengthSystem, shownLength } from '../../measure/length.js';
import type { DisplayItem } from '../kit/display.js';
import { wordsHtml } from '../kit/escape.js';
import { numberText } from '../kit/number-text.js';
import { symbolHtml } from './symbol-html.js';
import { numberTex, type Setting, type Tex, treeTex } from './tex.js';
import { texWidth } from './tex-width.js';

/** How a worked formula is shown. */
export interface WorkingOptions {
  /** Significant figures of the result; 4 unless told otherwise. Short numbers are shown in full. */
  digits?: number;
  /** Shows a result in inches as the bench reads it too: tape fraction, millimetres, both or caliper. */
  lengths?: LengthSystem;
  /** Finest tape mark; 1/32 unless told otherwise. */
  denominator?: 8 | 16 | 32 | 64;
}

/** Figures shown for a number put in: as few as still let a reader arrive at the result that is shown. */
const fewestFigures = 4;
/** A double is given back exactly by 17 figures. */
const allFigures = 17;
/** Characters of a line of mathematics that fit the width of a printed page. */
const lineLength = 72;

/**
 * A formula worked for these numbers: the formula, the numbers put in, the result in the bench's units; then what each
 * symbol stands for, the range the formula holds in and where it comes from.
 *
 * All of it is made from the formula object that also computes, so what is read is what ran. The numbers are shown with as
 * many figures as a reader needs to come to the shown result with a pocket calculator.
 *
 * @param formula  see {@link Formula}
 * @param values  one number per symbol, in the symbol's unit
 * @returns two things to show: the mathematics (TeX) and the list of symbols (HTML)
 * @throws ShopError  as {@link evaluate}
 * @example show(working(coefficientFormula, { D: 9.25, C: 0.00248, Mi: 8, Mf: 12 }, { lengths: 'tape' }))
 */
export function working<S extends string>(
  formula: Formula<S>,
  values: Record<S, number>,
  options: WorkingOptions = {},
): DisplayItem[] {
  const result = evaluate(formula, values);
  const shown = numberText(result, options.digits);
  const numbers = numbersToRedo(formula, values, shown);

  const inSymbols = treeTex(formulaTree(formula), symbolSetting(formula));
  const inNumbers = treeTex(formulaTree(formula), numberSetting(numbers));
  const bench = benchLength(formula.result, result, shown, options);
  const exact = Math.abs(Number(shown) - result) <= 1e-9 * Math.abs(result);
  const lines = [
    `${symbolTex(formula.result, '')} &= ${wrapTex(inSymbols)}`,
    ...(inNumbers.tex === numberTex(shown).tex ? [] : [`&= ${wrapTex(inNumbers)}`]),
    `&${exact ? '=' : '\\approx'} ${numberTex(shown).tex}${unitTex(formula.result.unit)}${bench.tex}`,
  ];
  return [
    { mime: 'text/latex', text: `$$\\begin{aligned}\n${lines.join(' \\\\\n')}\n\\end{aligned}$$` },
    { mime: 'text/html', text: symbolList(formula, numbers, bench.note) },
  ];
}

/** The numbers as they are shown: rounded only as far as the result that is shown still follows from them. */
function numbersToRedo<S extends string>(
  formula: Formula<S>,
  values: Record<S, number>,
  shown: string,
): Record<S, string> {
  const names = Object.keys(formula.symbols) as S[];
  for (let figures = fewestFigures; ; figures++) {
    const texts = Object.fromEntries(names.map((name) => [name, numberText(values[name], figures)]));
    if (figures >= allFigures || roundsTo(worked(formula, texts), shown)) return texts as Record<S, string>;
  }
}

/** Whether a number, rounded to the last figure of a shown one, is that. */
function roundsTo(value: number, shown: string): boolean {
  const figures = shown.replace(/e.*|\D/g, '').replace(/^0+/, '').length;
  return Number(value.toPrecision(Math.max(1, figures))) === Number(shown);
}

/** The result from numbers as shown. A rounded number may lie a hair outside the formula's range: not an error here. */
function worked<S extends string>(formula: Formula<S>, texts: Record<string, string>): number {
  const values = Object.fromEntries(Object.entries(texts).map(([name, text]) => [name, Number(text)]));
  return evaluateUnchecked<string>(formula, values);
}

function symbolSetting(formula: Formula): Setting {
  return {
    symbol: (name) => ({ tex: symbolTex(formula.symbols[name], name), binds: 4 }),
    times: (_, right) => (/^\d/.test(right) ? '\\times' : '\\,'),
  };
}

function numberSetting(numbers: Record<string, string>): Setting {
  return { symbol: (name) => numberTex(numbers[name] as string), times: () => '\\times' };
}

/** `M_f` as given; of a bare name one letter is itself, a longer one a word. */
function symbolTex(symbol: FormulaSymbol | undefined, name: string): string {
  return symbol?.tex ?? (name.length === 1 ? name : `\\mathit{${name.replace(/[^A-Za-z0-9]/g, '')}}`);
}

/** Breaks a long sum before its terms. */
function wrapTex({ tex, breaks }: Tex): string {
  if (!breaks || texWidth(tex) <= lineLength) return tex;
  const lines: string[] = [];
  for (const piece of breaks) {
    const line = lines.at(-1);
    if (line !== undefined && texWidth(line + piece) <= lineLength) lines[lines.length - 1] = `${line} ${piece}`;
    else lines.push(piece);
  }
  return lines.join(' \\\\\n&\\quad {}');
}

/** A unit, upright, with the space before it. */
function unitTex(unit: string): string {
  if (unit === '') return '';
  if (unit === 'deg') return '^{\\circ}';
  const upright = unit
    .replace(/[\\{}]/g, '')
    .replace(/[%#&_$]/g, '\\$&')
    .replace(/\^/g, '')
    .replace(/ /g, '\\ ')
    .replace(/°/g, '^{\\circ}');
  return unit === '%' ? `\\,${upright}` : `\\ \\mathrm{${upright}}`;
}

/** The result as the bench reads it, and how far that is from the computed one. */
function benchLength(
  symbol: FormulaSymbol,
  inches: number,
  shown: string,
  options: WorkingOptions,
): { tex: string; note: string } {
  if (symbol.unit !== 'in' || !options.lengths) return { tex: '', note: '' };
  const { text, off } = shownLength(inches, { system: options.lengths, denominator: options.denominator });
  const tex = text
    .replace(/(\d+) (\d+)\/(\d+)/g, '$1\\tfrac{$2}{$3}')
    .replace(/(?<!\{)\b(\d+)\/(\d+)/g, '\\tfrac{$1}{$2}')
    .replace(/ (in|mm)/g, '\\ \\mathrm{$1}')
    .replace(' (', '\\ (');
  const [read] = text.split(' (');
  const distance = Math.abs(off);
  const note =
    distance < 5e-7 ? '' : `${read} is ${numberText(distance, 2)} in ${off > 0 ? 'more' : 'less'} than computed.`;
  // Whole inches and caliper readings say the same again.
  const again = `${numberTex(shown).tex}${unitTex('in')}`;
  if (tex.startsWith(again)) return { tex: tex.slice(again.length), note };
  return { tex: ` ${note ? '\\approx' : '='} ${tex}`, note };
}

function symbolList(formula: Formula, numbers: Record<string, string>, note: string): string {
  const left = 'style="text-align: left"';
  const symbols = Object.entries<FormulaSymbol>(formula.symbols);
  const ranged = symbols.some(([, symbol]) => rangeText(symbol) !== '');
  const heads = ['Symbol', 'Meaning', 'Value', ...(ranged ? ['Holds\u00a0for'] : [])];
  const head = heads.map((text) => `<th scope="col" ${left}>${text}</th>`).join('');
  const rows = symbols.map(([name, symbol]) => {
    const texts = [
      symbol.meaning,
      withUnit(numbers[name] as string, symbol.unit),
      ...(ranged ? [rangeText(symbol)] : []),
    ];
    const cells = [symbolHtml(symbolTex(symbol, name)), ...texts.map(wordsHtml)];
    return `<tr>${cells.map((cell) => `<td ${left}>${cell}</td>`).join('')}</tr>`;
  });
  const result = `${symbolHtml(symbolTex(formula.result, ''))}, ${wordsHtml(formula.result.meaning)}`;
  const sentences = [note, `Source: ${formula.source}`].filter(Boolean).map(wordsHtml);
  return (
    `<div class="daybook-working"><table class="daybook-symbols"><caption style="text-align: left">${result}</caption>` +
    `<thead><tr>${head}</tr></thead><tbody>${rows.join('')}</tbody></table><p>${sentences.join('<br>')}</p></div>`
  );
}

/** The range a formula holds for; that a size is not negative goes without saying. */
function rangeText({ min, max, unit }: FormulaSymbol): string {
  if (min !== undefined && max !== undefined) return withUnit(`${min} to ${max}`, unit);
  if (max !== undefined) return `up to ${withUnit(String(max), unit)}`;
  return min ? `${withUnit(String(min), unit)} or more` : '';
}

function withUnit(number: string, unit: string): string {
  const text = number.replace(/e\+?(-?\d+)/, (_, power: string) => ` × 10${raised(power)}`);
  if (unit === 'deg') return `${text}°`;
  return unit ? `${text} ${unit}` : text;
}

const raisedSigns: Record<string, string> = {
  '-': '⁻',
  0: '⁰',
  1: '¹',
  2: '²',
  3: '³',
  4: '⁴',
  5: '⁵',
  6: '⁶',
  7: '⁷',
  8: '⁸',
  9: '⁹',
};

const raised = (power: string) => [...power].map((sign) => raisedSigns[sign]).join('');
