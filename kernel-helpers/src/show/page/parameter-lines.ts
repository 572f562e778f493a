/** One of a sheet's parameters, as it was typed. */
export interface ParameterLine {
  name: string;
  /** Without quotes and brackets; a list has one entry a line. */
  value: string;
  note: string;
}

const quoted = String.raw`'(?:[^'\\]|\\.)*'|"(?:[^"\\]|\\.)*"`;
const opening = /^\s*(?:const|let|var)\s+\w+(?:\s*:[^={]+)?\s*=\s*\{\s*$/;
const closing = /^\s*\}(?:\s*as\s+const)?\s*;?\s*$/;
const codeAndNote = new RegExp(`^((?:${quoted}|[^'"/]|/(?!/))*)(?://\\s*(.*))?$`);
const nameAndValue = new RegExp(`^\\s*(\\w+|${quoted})\\s*:\\s*(.*)$`);
const everyQuoted = new RegExp(quoted, 'g');

/**
 * The parameters of a cell written as `const parameters = {`, a line `name: value, // note` for each, and `};`.
 *
 * @returns nothing when the cell is written otherwise: it is shown as code then
 */
export function parameterLines(source: string): ParameterLine[] | undefined {
  const lines = source.trim().split('\n');
  if (!opening.test(lines.shift() ?? '') || !closing.test(lines.pop() ?? '')) return undefined;
  const parameters: ParameterLine[] = [];
  let open: ParameterLine | undefined;
  for (const line of lines) {
    const [, code, note = ''] = codeAndNote.exec(line) ?? [];
    if (code === undefined) return undefined;
    if (open) {
      open.value += `\n${code.trim()}`;
      open.note += note && ` ${note}`;
    } else if (code.trim()) {
      const [, name, value] = nameAndValue.exec(code) ?? [];
      if (name === undefined || value === undefined) return undefined;
      open = { name: unquoted(name), value: value.trim(), note };
    }
    if (open && depth(open.value) === 0) {
      open.value = open.value.replace(/,$/, '');
      // Two on a line: not how parameters are written.
      if (/[,:]/.test(withoutGroups(open.value))) return undefined;
      parameters.push({ ...open, value: bare(open.value), note: open.note.trim() });
      open = undefined;
    }
  }
  return open ? undefined : parameters;
}

function depth(code: string): number {
  const brackets: string[] = code.replace(everyQuoted, '').match(/[{}[\]()]/g) ?? [];
  return brackets.reduce((sum, bracket) => sum + ('{[('.includes(bracket) ? 1 : -1), 0);
}

function withoutGroups(code: string): string {
  let text = code.replace(everyQuoted, '');
  for (let before = ''; before !== text; ) {
    before = text;
    text = text.replace(/\{[^{}[\]()]*\}|\[[^{}[\]()]*\]|\([^{}[\]()]*\)/g, '');
  }
  return text;
}

/** A value as one would write it on paper. */
function bare(code: string): string {
  const marks = new RegExp(`${quoted}|[{}[\\]]|(\\w+):`, 'g');
  const text = code.replace(marks, (mark, name) => name ?? (/^[{}[\]]$/.test(mark) ? '' : unquoted(mark)));
  const lines = text.split('\n').map((line) => line.trim().replace(/\s*,$/, ''));
  return lines.filter(Boolean).join('\n');
}

function unquoted(code: string): string {
  return new RegExp(`^(?:${quoted})$`).test(code) ? code.slice(1, -1).replace(/\\(.)/g, '$1') : code;
}
