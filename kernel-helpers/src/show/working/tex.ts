import type { ConstantNode, FunctionNode, MathNode, OperatorNode, ParenthesisNode, SymbolNode } from 'mathjs';

/** A piece of typeset mathematics and how tightly it holds together. */
export interface Tex {
  tex: string;
  binds: Binding;
  /** Taller than a line: needs brackets that grow. */
  tall?: boolean;
  /** The pieces that a long line may be broken between. */
  breaks?: string[];
}

/** Sum and negative number, product and quotient, power, single symbol. */
export type Binding = 1 | 2 | 3 | 4;

/** How a tree is set: what stands for each symbol, and the sign between factors. */
export interface Setting {
  symbol: (name: string) => Tex;
  /** Between two factors: a thin space between symbols, a cross between numbers. */
  times: (left: string, right: string) => string;
}

const functionNames: Record<string, string> = {
  sin: '\\sin',
  cos: '\\cos',
  tan: '\\tan',
  atan: '\\arctan',
  log: '\\ln',
  exp: '\\exp',
  min: '\\min',
  max: '\\max',
};

/**
 * A mathjs tree as TeX that MathJax 2.7 and 3, KaTeX and Temml all set.
 * Brackets come from what binds tighter, not from how the expression was typed, so none is redundant and none is missing.
 */
export function treeTex(node: MathNode, setting: Setting): Tex {
  const set = (inner: MathNode) => treeTex(inner, setting);
  switch (node.type) {
    case 'ParenthesisNode':
      return set((node as ParenthesisNode).content);
    case 'ConstantNode':
      return numberTex(String((node as ConstantNode).value));
    case 'SymbolNode': {
      const { name } = node as SymbolNode;
      return name === 'pi' ? { tex: '\\pi', binds: 4 } : setting.symbol(name);
    }
    case 'OperatorNode':
      return operatorTex(node as OperatorNode, setting, set);
    case 'FunctionNode':
      return functionTex(node as FunctionNode, set);
    default:
      throw new TypeError(`A formula cannot hold ${node.type}: ${node.toString()}`);
  }
}

/** A number as written (`-0.25`, `1.2e-7`) in TeX. */
export function numberTex(text: string): Tex {
  const [, sign = '', digits = text, exponent] = /^(-?)(.*?)(?:e\+?(-?\d+))?$/.exec(text) ?? [];
  const tex = exponent === undefined ? digits : `${digits} \\times 10^{${exponent}}`;
  return sign ? { tex: `-${tex}`, binds: 1 } : { tex, binds: exponent === undefined ? 4 : 2 };
}

function operatorTex(node: OperatorNode, setting: Setting, set: (node: MathNode) => Tex): Tex {
  const [left, right] = node.args.map(set) as [Tex, Tex];
  const tall = left.tall || right?.tall;
  switch (node.fn as string) {
    case 'unaryMinus':
      return { tex: `-${bracketed(left, 2)}`, binds: 1, tall };
    case 'unaryPlus':
      return left;
    case 'add':
    case 'subtract': {
      const sign = node.fn === 'add' ? '+' : '-';
      const negative = right.tex.startsWith('-');
      const last = `${sign} ${bracketed(right, negative || sign === '-' ? 2 : 1)}`;
      const first = left.binds === 1 && left.breaks ? left.breaks : [left.tex];
      return { tex: `${left.tex} ${last}`, binds: 1, tall, breaks: [...first, last] };
    }
    case 'multiply': {
      const negative = left.tex.startsWith('-') && !left.breaks;
      const [a, b] = [negative ? left.tex : bracketed(left, 2), bracketed(right, 2)];
      const sign = setting.times(a, b);
      return { tex: `${a} ${sign} ${b}`, binds: negative ? 1 : 2, tall, breaks: brokenBrackets(`${a} ${sign}`, right) };
    }
    case 'divide':
      return { tex: `\\frac{${left.tex}}{${right.tex}}`, binds: 2, tall: true };
    case 'pow': {
      const [base, exponent] = node.args.map(withoutParentheses) as [MathNode, MathNode];
      const power = isDivision(exponent)
        ? exponent.args.map((part) => bracketed(set(part), 3)).join('/')
        : set(exponent).tex;
      const name = base.type === 'FunctionNode' && functionNames[(base as FunctionNode).fn.name];
      if (name && left.tex.startsWith(name))
        return { tex: left.tex.replace(name, `${name}^{${power}}`), binds: 3, tall };
      return { tex: `${bracketed(left, 4)}^{${power}}`, binds: 3, tall };
    }
    default:
      throw new TypeError(`A formula cannot hold the operator ${node.op}: ${node.toString()}`);
  }
}

/** A factor before a bracketed sum, in pieces: the brackets of a broken line cannot grow by themselves. */
function brokenBrackets(factor: string, sum: Tex): string[] | undefined {
  if (sum.binds !== 1 || !sum.breaks) return undefined;
  const [open, close] = sum.tall ? ['\\biggl(', '\\biggr)'] : ['(', ')'];
  const last = sum.breaks.length - 1;
  return sum.breaks.map((piece, i) => `${i === 0 ? `${factor} ${open}` : ''}${piece}${i === last ? close : ''}`);
}

function functionTex(node: FunctionNode, set: (node: MathNode) => Tex): Tex {
  const args = node.args.map(set);
  const { name } = node.fn;
  const first = args[0] as Tex;
  if (name === 'sqrt') return { tex: `\\sqrt{${first.tex}}`, binds: 4, tall: true };
  if (name === 'ceil') return { tex: fenced('\\lceil ', first, ' \\rceil'), binds: 4, tall: first.tall };
  if (name === 'exp' && !first.tall) return { tex: `e^{${first.tex}}`, binds: 3 };
  const tall = args.some((arg) => arg.tall);
  const inside = { tex: args.map((arg) => arg.tex).join(', '), binds: 1 as const, tall };
  return { tex: `${functionNames[name] ?? `\\operatorname{${name}}`}${fenced('(', inside, ')')}`, binds: 4, tall };
}

function bracketed(piece: Tex, atLeast: Binding): string {
  return piece.binds >= atLeast ? piece.tex : fenced('(', piece, ')');
}

function fenced(open: string, piece: Tex, close: string): string {
  return piece.tall ? `\\left${open}${piece.tex}\\right${close.trimStart()}` : `${open}${piece.tex}${close}`;
}

function withoutParentheses(node: MathNode): MathNode {
  return node.type === 'ParenthesisNode' ? withoutParentheses((node as ParenthesisNode).content) : node;
}

function isDivision(node: MathNode): node is OperatorNode {
  return node.type === 'OperatorNode' && (node as OperatorNode).fn === ('divide' as never);
}
