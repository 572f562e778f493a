import type { EvalFunction, MathNode } from 'mathjs';
import { math } from './math.js';
import { ShopError } from './shop-error.js';

/** One symbol of a formula: how it is set in type, what it means and its unit. */
export interface FormulaSymbol {
  /** TeX for the symbol; the name itself when left out. */
  tex?: string;
  meaning: string;
  /** Unit as the bench writes it: `in`, `%`, `°C`, `deg`, `bd ft`, `h`; empty for a pure number. */
  unit: string;
  /** Range the formula is valid in, both ends included. */
  min?: number;
  max?: number;
}

/**
 * A published or trade formula as one object. The number and the typeset working both come from `expression`,
 * so what an apprentice reads is what ran.
 */
export interface Formula<S extends string = string> {
  /** What it gives, in words: "Change in width". */
  name: string;
  /** The result's symbol. */
  result: FormulaSymbol;
  /** mathjs syntax, using the names in `symbols`. */
  expression: string;
  symbols: Record<S, FormulaSymbol>;
  /** Where it was printed, or "common practice, no source". */
  source: string;
}

const compiled = new WeakMap<object, { node: MathNode; run: EvalFunction }>();

/** The formula's expression as a mathjs tree, parsed once. @internal */
export function formulaTree(formula: Formula): MathNode {
  return compile(formula).node;
}

function compile(formula: Formula) {
  let entry = compiled.get(formula);
  if (!entry) {
    const node = math.parse(formula.expression);
    entry = { node, run: node.compile() };
    compiled.set(formula, entry);
  }
  return entry;
}

/**
 * The formula's value for these numbers.
 *
 * @param values  one number per symbol, in the symbol's unit
 * @returns the result in the result's unit
 * @throws ShopError  when a value is missing, not a number, or outside the range the formula is valid in
 */
export function evaluate<S extends string>(formula: Formula<S>, values: Record<S, number>): number {
  for (const [name, symbol] of Object.entries<FormulaSymbol>(formula.symbols)) {
    const value = values[name as S];
    const { min = -Infinity, max = Infinity } = symbol;
    if (!Number.isFinite(value) || value < min || value > max) {
      const possible = [min > -Infinity ? `from ${min}` : '', max < Infinity ? `up to ${max}` : '', 'a number'].filter(
        Boolean,
      );
      throw new ShopError(
        `${formula.name}: ${symbol.meaning} is ${value}${symbol.unit && ` ${symbol.unit}`}; possible: ${possible.slice(0, Math.max(1, possible.length - 1)).join(' ')}${symbol.unit && ` ${symbol.unit}`} (${formula.source})`,
      );
    }
  }
  return compile(formula).run.evaluate({ ...values }) as number;
}
