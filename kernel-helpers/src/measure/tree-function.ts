import type { ConstantNode, FunctionNode, MathNode, OperatorNode, ParenthesisNode, SymbolNode } from 'mathjs';

/** Takes what is fixed, by name; gives a function of the rest, in order. */
export type TreeFunction = (fixed: Readonly<Record<string, number>>) => (...over: number[]) => number;

const operators = new Map([
  ['add', '+'],
  ['subtract', '-'],
  ['multiply', '*'],
  ['divide', '/'],
  ['pow', '**'],
  ['unaryMinus', '-'],
]);

const calls = (object: string, names: readonly string[]) => names.map((name) => [name, `${object}.${name}`] as const);
const ofMany = new Map(calls('Math', ['max', 'min']));

// Lengths come in halves and sixteenths: a quotient that is whole but for rounding is whole.
const wholeOr = (round: (x: number) => number) => (x: number) =>
  Math.abs(x - Math.round(x)) <= 1e-12 * Math.abs(x) ? Math.round(x) : round(x);
const whole = { ceil: wholeOr(Math.ceil), floor: wholeOr(Math.floor) };
const ofOne = new Map([
  ...calls('Math', ['atan', 'cos', 'exp', 'log', 'sin', 'sqrt', 'tan']),
  ...calls('whole', Object.keys(whole)),
]);

/**
 * A tree of operators, numbers, declared symbols and the few functions of the trade's formulas as one plain function,
 * which does the tree's operations in the tree's order. What rests on fixed symbols alone is worked out once, when they
 * are fixed; what stands in the tree twice is worked out once too.
 *
 * @param symbols  names that the tree may hold
 * @param over  those of them that stay open
 * @throws TypeError  at anything else in the tree
 * @internal
 */
export function treeFunction(tree: MathNode, symbols: ReadonlySet<string>, over: readonly string[]): TreeFunction {
  // Symbols and steps go by number, so that no text of the formula becomes part of the program.
  const fixed = [...symbols].filter((name) => !over.includes(name));
  const names = new Map([
    ...over.map((name, place) => [name, `open${place}`] as const),
    ...fixed.map((name, place) => [name, `fixed${place}`] as const),
  ]);
  const [once, each] = [new Map<string, string>(), new Map<string, string>()];
  const step = (code: string): string => {
    const [steps, kind] = /open|each/.test(code) ? [each, 'each'] : [once, 'once'];
    const name = steps.get(code) ?? `${kind}${steps.size}`;
    steps.set(code, name);
    return name;
  };

  /** A number, a symbol's name or the name of the step that works the node out. */
  const read = (node: MathNode): string => {
    const refused = () => new TypeError(`A formula cannot hold ${node.type}: ${node.toString()}`);
    switch (node.type) {
      case 'ParenthesisNode':
        return read((node as ParenthesisNode).content);
      case 'ConstantNode': {
        const { value } = node as ConstantNode;
        if (typeof value !== 'number') throw refused();
        return String(value);
      }
      case 'SymbolNode': {
        const { name } = node as SymbolNode;
        const known = names.get(name) ?? (name === 'pi' ? String(Math.PI) : undefined);
        if (!known) throw new TypeError(`A formula cannot hold ${name}: it is not among its symbols`);
        return known;
      }
      case 'OperatorNode': {
        const { fn, args } = node as OperatorNode;
        const sign = operators.get(fn);
        if (!sign) throw refused();
        const [left, right] = args.map(read);
        return step(right === undefined ? `${sign} ${left}` : `${left} ${sign} ${right}`);
      }
      case 'FunctionNode': {
        const { fn, args } = node as FunctionNode;
        const known = (args.length === 1 && ofOne.get(fn.name)) || ofMany.get(fn.name);
        if (!known) throw refused();
        return step(`${known}(${args.map(read).join(', ')})`);
      }
      default:
        throw refused();
    }
  };

  const result = read(tree);
  const lines = (steps: Map<string, string>) => [...steps].map(([code, name]) => `const ${name} = ${code};`).join('\n');
  const taken = fixed.map((name) => `${JSON.stringify(name)}: ${names.get(name)}`);
  const left = over.map((name) => names.get(name));
  const program = `return ({ ${taken} }) => {\n${lines(once)}\nreturn (${left}) => {\n${lines(each)}\nreturn ${result};\n};\n};`;
  return new Function('whole', program)(whole);
}
