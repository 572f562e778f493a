import type { MathNode, SymbolNode } from 'mathjs';
import { parse } from './math.js';
import { ShopError } from './shop-error.js';
import { type TreeFunction, treeFunction } from './tree-function.js';

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

interface ReadFormula {
  tree: MathNode;
  symbols: [name: string, FormulaSymbol][];
  run: TreeFunction;
}

const read = new WeakMap<object, ReadFormula>();

/** The expression as a mathjs tree and as a function of all its symbols, made when it is first used. */
function readFormula(formula: Formula): ReadFormula {
  let entry = read.get(formula);
  if (!entry) {
    const tree = parse(formula.expression);
    const symbols = Object.entries(formula.symbols);
    entry = { tree, symbols, run: treeFunction(tree, new Set(Object.keys(formula.symbols)), []) };
    read.set(formula, entry);
  }
  return entry;
}

/** The formula's expression as a mathjs tree. @internal */
export function formulaTree(formula: Formula): MathNode {
  return readFormula(formula).tree;
}

type SymbolsOf<F> = F extends Formula<infer S> ? S : never;

/**
 * The formula as a plain function of the symbols that stay open, once the others are fixed: for loops that run it
 * thousands of times. The same operations in the same order as {@link evaluate}, without its checks. Compiled when it is
 * first used.
 *
 * @param over  the symbols that stay open, in the order the function takes them
 * @param parts  formulas that stand for some of the symbols; a name they share with this one is the same quantity
 * @example compileFormula(emcFormula, ['h'])({ W, K, K1, K2 })(0.5)
 * @internal
 */
export function compileFormula<
  S extends string,
  Parts extends { readonly [P in S]?: Formula },
  const Over extends readonly Exclude<S | SymbolsOf<Parts[keyof Parts]>, keyof Parts>[],
>(
  formula: Formula<S>,
  over: Over,
  parts: Parts = {} as Parts,
): (
  fixed: Record<Exclude<S | SymbolsOf<Parts[keyof Parts]>, keyof Parts | Over[number]>, number>,
) => (...open: { [I in keyof Over]: number }) => number {
  type Open = (...open: { [I in keyof Over]: number }) => number;
  let made: TreeFunction | undefined;
  return (fixed) => {
    made ??= compile(formula, over, new Map(Object.entries(parts as Record<string, Formula>)));
    return made(fixed) as Open;
  };
}

function compile(formula: Formula, over: readonly string[], parts: ReadonlyMap<string, Formula>): TreeFunction {
  const whole = formulaTree(formula).transform((node) => {
    const part = node.type === 'SymbolNode' && parts.get((node as SymbolNode).name);
    return part ? formulaTree(part) : node;
  });
  const symbols = [formula, ...parts.values()].flatMap((each) => Object.keys(each.symbols));
  return treeFunction(whole, new Set(symbols), over);
}

/** The formula's value for these numbers, be they in its range or not. @internal */
export function evaluateUnchecked<S extends string>(formula: Formula<S>, values: Record<S, number>): number {
  return readFormula(formula).run(values)();
}

/**
 * The formula's value for these numbers.
 *
 * @param values  one number per symbol, in the symbol's unit
 * @returns the result in the result's unit
 * @throws ShopError  when a value is missing, not a number, or outside the range the formula is valid in
 */
export function evaluate<S extends string>(formula: Formula<S>, values: Record<S, number>): number {
  for (const [name, symbol] of readFormula(formula).symbols) {
    const value = values[name as S];
    const { min = -Infinity, max = Infinity } = symbol;
    if (!Number.isFinite(value) || value < min || value > max) {
      const possible = [min > -Infinity ? `from ${min}` : '', max < Infinity ? `up to ${max}` : '', 'a number'].filter(
        Boolean,
      );
      const unit = symbol.unit && ` ${symbol.unit}`;
      const range = possible.slice(0, Math.max(1, possible.length - 1)).join(' ');
      const why = `possible: ${range}${unit} (${formula.name}: ${formula.source})`;
      throw new ShopError(`${symbol.meaning}: ${value}${unit} given; ${why}`, {
        path: [symbol.meaning],
        given: value,
        possible: why,
      });
    }
  }
  return evaluateUnchecked(formula, values);
}
