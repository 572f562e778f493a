/** What a parameter begins with: text, a number, yes or no, or an empty list. */
export type BegunValue = string | number | boolean | readonly [];

/** A named value of a cell of parameters, and where its value stands in the cell's text. */
interface Named {
  name: string;
  from: number;
  to: number;
}

const widest = 110;

/**
 * A cell of parameters with other values under some of its names; a name that it has not is passed over. What stands behind a
 * value stays, in its column where there is room, else on a line of its own above.
 *
 * @param source  the cell's text, `const parameters = { ... };`
 * @param values  by the name of the parameter
 * @internal
 */
export function withParameters(source: string, values: Readonly<Record<string, BegunValue>>): string {
  const changed = namedValues(source).filter(({ name }) => Object.hasOwn(values, name));
  // From the end, so that the places before it stay where they are.
  return changed.reverse().reduce((text, { name, from, to }) => {
    const written = literal(values[name] as BegunValue);
    const [before, after] = [text.slice(0, from), text.slice(to)];
    const comment = /^,( +)(\/\/[^\n]*)/.exec(after);
    if (!comment) return before + written + after;
    const [whole, gap = '', words = ''] = comment;
    const start = before.lastIndexOf('\n') + 1;
    const line = `${before.slice(start)}${written},`;
    const column = to + 1 + gap.length - start;
    const beside = `${line.padEnd(Math.max(column, line.length) - 1)} ${words}`;
    const rest = after.slice(whole.length);
    const indent = /^ */.exec(line)?.[0] ?? '';
    return before.slice(0, start) + (beside.length <= widest ? beside : `${indent}${words}\n${line}`) + rest;
  }, source);
}

/** The values that stand directly in the braces of `parameters`, in their order. */
function namedValues(source: string): Named[] {
  const open = /\bparameters\b[^={]*=\s*\{/.exec(source);
  if (!open) return [];
  const found: Named[] = [];
  let name: string | undefined;
  let from = 0;
  let depth = 1;
  // What may stand between brackets without counting as one: texts and comments.
  const token =
    /'(?:\\.|[^'\\])*'|"(?:\\.|[^"\\])*"|`(?:\\.|[^`\\])*`|\/\/[^\n]*|\/\*[\s\S]*?\*\/|[[\]{}(),]|[\w$]+(?=\s*:)/g;
  token.lastIndex = open.index + open[0].length;
  for (let match = token.exec(source); match && depth > 0; match = token.exec(source)) {
    const [text] = match;
    if ('[{('.includes(text)) depth += 1;
    else if (']})'.includes(text)) depth -= 1;
    if (depth > 1 || (depth === 1 && ']})'.includes(text))) continue;
    if (text === ',' || depth === 0) {
      if (name !== undefined) found.push({ name, from, to: from + source.slice(from, match.index).trimEnd().length });
      name = undefined;
    } else if (name === undefined && /^[\w$]+$/.test(text)) {
      name = text;
      const value = /^\s*:\s*/.exec(source.slice(token.lastIndex));
      from = token.lastIndex + (value?.[0].length ?? 0);
      token.lastIndex = from;
    }
  }
  return found;
}

function literal(value: BegunValue): string {
  if (typeof value !== 'string') return Array.isArray(value) ? '[]' : String(value);
  const escaped = value.replace(/\\/g, '\\\\').replace(/\r?\n/g, '\\n');
  return escaped.includes("'") && !escaped.includes('"') ? `"${escaped}"` : `'${escaped.replaceAll("'", "\\'")}'`;
}
