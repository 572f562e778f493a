import { lineOf, withoutNote } from './typed-line.js';

interface Open {
  mark: string;
  line: number;
  indent: number;
}

const CLOSING: Record<string, string> = { '{': '}', '[': ']', '(': ')' };

/** A bracket that nothing closes, or that closes nothing: what stands in a group begins further in than the group itself. */
export function bracketSlip(lines: string[]): string | undefined {
  const open: Open[] = [];
  for (const [line, text] of lines.entries()) {
    const code = withoutNote(text).replace(/'[^']*'|"[^"]*"/g, '');
    const indent = text.search(/\S/);
    for (const mark of code.match(/[{}[\]()]/g) ?? []) {
      const last = open.at(-1);
      if (mark in CLOSING) open.push({ mark, line, indent });
      else if (!last)
        return `${lineOf(line)}a ${mark} closes nothing; take it out, or write the bracket that it closes`;
      else if (CLOSING[last.mark] !== mark || (last.line !== line && indent < last.indent)) return missing(lines, last);
      else open.pop();
    }
  }
  const last = open.at(-1);
  return last && missing(lines, last);
}

function missing(lines: string[], { mark, line }: Open): string {
  const text = withoutNote(lines[line] ?? '').trim();
  const closing = CLOSING[mark];
  const below = line === 0 ? `${closing}; below the last line` : `${closing}, below its lines`;
  const write = text.endsWith(mark) ? below : `${text.replace(/,$/, '')} ${closing},`;
  return `${lineOf(line, /^([A-Za-z]\w*)\s*:/.exec(text)?.[1])}the closing ${closing} is missing; write ${write}`;
}
