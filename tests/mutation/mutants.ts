import * as ts from 'typescript';

/** One change of one place of a source file. */
export interface Mutant {
  line: number;
  from: number;
  before: string;
  after: string;
}

const swapped: Record<string, string[]> = {
  '+': ['-'],
  '-': ['+'],
  '*': ['/'],
  '/': ['*'],
  '%': ['*'],
  '**': ['*'],
  '<': ['<=', '>='],
  '<=': ['<', '>'],
  '>': ['>=', '<='],
  '>=': ['>', '<'],
  '===': ['!=='],
  '!==': ['==='],
  '&&': ['||'],
  '||': ['&&'],
  '+=': ['-='],
  '-=': ['+='],
  '*=': ['/='],
  '/=': ['*='],
};
const swappedCalls: Record<string, string> = {
  min: 'max',
  max: 'min',
  floor: 'ceil',
  ceil: 'floor',
  round: 'floor',
  sin: 'cos',
  cos: 'sin',
  some: 'every',
  every: 'some',
};
const dropped = ['filter', 'sort', 'toSorted', 'reverse', 'toReversed'];

/** Fields that are read, never computed with, and limits of what can be typed. */
const prose = /^(figures|reason|change|rule|why|meaning|tex|source|name|title|text|unit|symbols|least|most|min|max)$/;
const reader = /^(z\b|size\(|amount\(|count\(|choice\()/;
const isProse = (node: ts.Node, file: ts.SourceFile) =>
  ts.isTypeNode(node) ||
  ts.isInterfaceDeclaration(node) ||
  ts.isTypeAliasDeclaration(node) ||
  ts.isImportDeclaration(node) ||
  ts.isExportDeclaration(node) ||
  ts.isTemplateExpression(node) ||
  ts.isThrowStatement(node) ||
  (ts.isPropertyAssignment(node) && prose.test(node.name.getText(file))) ||
  (ts.isCallExpression(node) &&
    (reader.test(node.getText(file)) || /\.to(Fixed|Precision)$/.test(node.expression.getText(file))));

function alternatives(node: ts.Node, file: ts.SourceFile): string[] {
  const text = (part: ts.Node) => part.getText(file);
  const isText = (part: ts.Node) => ts.isStringLiteralLike(part) || ts.isTemplateExpression(part);
  if (ts.isBinaryExpression(node)) {
    if (isText(node.left) || isText(node.right)) if (text(node.operatorToken) === '+') return [];
    // At a limit that is taken with room for rounding, on it or beside it is one thing.
    const blurred = /^[<>]=?$/.test(text(node.operatorToken)) && /\b(rounding|1e-\d+)\b/.test(text(node));
    return (swapped[text(node.operatorToken)] ?? [])
      .slice(blurred ? 1 : 0)
      .map((sign) => `${text(node.left)} ${sign} ${text(node.right)}`);
  }
  if (ts.isPrefixUnaryExpression(node) && /^[!-]/.test(text(node))) return [text(node.operand)];
  if (ts.isConditionalExpression(node)) {
    if (isText(node.whenTrue) && isText(node.whenFalse)) return [];
    return [`${text(node.condition)} ? ${text(node.whenFalse)} : ${text(node.whenTrue)}`];
  }
  if (ts.isCallExpression(node) && ts.isPropertyAccessExpression(node.expression)) {
    const { expression, name } = node.expression;
    if (dropped.includes(name.text)) return [text(expression)];
    const other = swappedCalls[name.text];
    if (other) return [`${text(expression)}.${other}(${node.arguments.map(text).join(', ')})`];
  }
  if (ts.isNumericLiteral(node)) {
    const value = Number(node.text);
    if (ts.isElementAccessExpression(node.parent) || (value !== 0 && value < 1e-5)) return [];
    return [String(Number.isInteger(value) && value <= 12 ? value + 1 : value * 1.1)];
  }
  // What decides an if; a comparison is turned above.
  if (node.parent && ts.isIfStatement(node.parent) && node.parent.expression === node && !ts.isBinaryExpression(node))
    return [`!(${text(node)})`];
  // A published formula is an expression in a string.
  if (ts.isStringLiteral(node) && ts.isPropertyAssignment(node.parent) && text(node.parent.name) === 'expression')
    return [...node.text.matchAll(/ [-+*/] |\^/g)].map(({ 0: sign, index }) =>
      JSON.stringify(
        node.text.slice(0, index) +
          (sign === '^' ? '*' : ` ${swapped[sign.trim()]?.[0]} `) +
          node.text.slice(index + sign.length),
      ),
    );
  return [];
}

/** All mutants of a source file. */
export function mutantsOf(path: string, source: string): Mutant[] {
  const found: Mutant[] = [];
  const file = ts.createSourceFile(path, source, ts.ScriptTarget.ES2022, true);
  const visit = (node: ts.Node) => {
    if (isProse(node, file)) return;
    const from = node.getStart(file);
    const line = file.getLineAndCharacterOfPosition(from).line + 1;
    for (const after of alternatives(node, file)) found.push({ line, from, before: node.getText(file), after });
    ts.forEachChild(node, visit);
  };
  visit(file);
  return found;
}

/** The source with all its mutants in it, each chosen by its number in `mutant`; with none chosen, the source as it was. */
export function withMutants(path: string, source: string, mutants: ReadonlyMap<number, Mutant>): string {
  const file = ts.createSourceFile(path, source, ts.ScriptTarget.ES2022, true);
  const render = (node: ts.Node): string => {
    const from = node.getStart(file);
    let text = '';
    let at = from;
    ts.forEachChild(node, (child) => {
      text += source.slice(at, child.getStart(file)) + render(child);
      at = child.end;
    });
    text += source.slice(at, node.end);
    for (const [number, { from: own, before, after }] of mutants)
      if (
        own === from &&
        before.length === node.end - from &&
        !ts.isSourceFile(node) &&
        alternatives(node, file).includes(after)
      )
        text = `(mutant === ${number} ? (${after}) : (${text}))`;
    return text;
  };
  return source.slice(0, file.getStart(file)) + render(file);
}
