import { bracketSlip } from './bracket-slip.js';
import type { Complaint } from './complaint.js';
import { typeSlip } from './type-slip.js';
import { lineOf, typedValues, withoutNote } from './typed-line.js';
import { valueSlip } from './value-slip.js';

/**
 * Says in one line of plain words what is probably wrong with a cell that the compiler refused, where, and how to write it.
 *
 * @param cell  its source
 * @param complaints  what the compiler says, in its order
 * @param parameters  source of the cell of parameters that ran before it, if one did
 * @returns undefined for what is no usual slip of someone who fills in parameters
 */
export function slipIn(cell: string, complaints: readonly Complaint[], parameters = ''): string | undefined {
  const [first] = complaints;
  if (!first) return undefined;
  // Elsewhere a name that is not known is one of a cell above.
  const isPen = /^\s*(?:const|let)\s+parameters\s*=/m.test(cell) || (first.code >= 1000 && first.code < 2000);
  const slip = isPen ? slipOfThePen(cell.split('\n'), first) : undefined;
  return slip ?? typeSlip(cell, complaints, parameters) ?? notThere(first);
}

function slipOfThePen(lines: string[], first: Complaint): string | undefined {
  const { line, character } = first.start;
  const code = withoutNote(lines[line] ?? '');
  const before = lines.slice(0, line).findLastIndex((each) => withoutNote(each).trim() !== '');
  // What is missing at the end of a line is noticed at the beginning of the next.
  const isAtStart = code.slice(0, character).trim() === '';
  const looked = isAtStart && before >= 0 ? [before, line] : [line];
  return (
    noteSlip(lines) ??
    looked.map((each) => valuesSlip(lines[each] ?? '', each)).find((slip) => slip) ??
    nameSlip(code, first) ??
    commaSlip(code, first) ??
    commaMissing(lines, first, isAtStart ? before : -1) ??
    bracketSlip(lines)
  );
}

/** Words behind a value that is whole: a note without its two strokes. */
function noteSlip(lines: string[]): string | undefined {
  const value = String.raw`(?:'[^']*'|"[^"]*"|-?\d+(?:\.\d+)?|true|false)`;
  const noted = new RegExp(String.raw`^\s*(\w+)\s*:\s*${value}\s*,\s+[#/]?\s*(\p{L}[^:'"]*)$`, 'u');
  const found = lines.map((text) => noted.exec(text));
  const line = found.findIndex((each) => each);
  return line < 0
    ? undefined
    : `${lineOf(line, found[line]?.[1])}a note begins with two strokes; write // ${found[line]?.[2]}`;
}

function valuesSlip(text: string, line: number): string | undefined {
  for (const { name, value } of typedValues(text)) {
    const slip = valueSlip(value);
    if (slip) return `${lineOf(line, name)}${slip.what}; write ${name && `${name}: `}${slip.write}`;
  }
  return undefined;
}

function nameSlip(code: string, { code: kind, start }: Complaint): string | undefined {
  const { line } = start;
  if (kind === 1117)
    return `${lineOf(line, /^\w+/.exec(code.slice(start.character))?.[0])}this name stands there twice; take one out`;
  const [, spaced = ''] = /^\s*([A-Za-z]\w*(?:[ -]+\w+)+)\s*:/.exec(code) ?? [];
  if (spaced) {
    const name = spaced.replace(/[ -]+(\w)/g, (_, letter) => letter.toUpperCase());
    return `${lineOf(line)}a name is one word, and ${spaced} is not; write ${name}:`;
  }
  const [, name = '', value = ''] = /^\s*([A-Za-z]\w*)\s*=?\s*(\S.*?),?$/.exec(code) ?? [];
  if (kind === 1312 && name) return `${lineOf(line, name)}behind a name stands a colon; write ${name}: ${value}`;
  if (kind === 18004 && name && !code.includes(':'))
    return `${lineOf(line, name)}behind a name stands a colon; write ${name}: ${value}`;
  return undefined;
}

function commaSlip(code: string, { start: { line, character } }: Complaint): string | undefined {
  if (/,\s*,/.test(code)) return `${lineOf(line)}one comma too many; write ${code.replace(/,\s*,/, ',').trim()}`;
  const [, name = '', value = ''] = /^\s*([A-Za-z]\w*)\s*:\s*(.+?)\s*;$/.exec(code) ?? [];
  if (name && code[character] === ';')
    return `${lineOf(line, name)}a comma belongs at its end, no semicolon; write ${name}: ${value},`;
  return undefined;
}

/** @param before  the line whose end may lack it; -1 for none */
function commaMissing(lines: string[], { code, messageText, start }: Complaint, before: number): string | undefined {
  if (code !== 1005 || !messageText.startsWith("','")) return undefined;
  const last = withoutNote(lines[before] ?? '');
  if (/[\w'"\]}]$/.test(last))
    return `${lineOf(before, /^\s*([A-Za-z]\w*)\s*:/.exec(last)?.[1])}a comma is missing at its end; write ${last.trim()},`;
  const text = withoutNote(lines[start.line] ?? '');
  const next = /^(?:'[^']*'|"[^"]*"|[\w.]+)/.exec(text.slice(start.character))?.[0];
  const left = /(?:'[^']*'|"[^"]*"|[\w.]+|[\]}])$/.exec(text.slice(0, start.character).trimEnd())?.[0];
  return next && left && `${lineOf(start.line)}a comma is missing before ${next}; write ${left}, ${next}`;
}

/** A name that a cell above gives, and that has not run. */
function notThere({ messageText, start }: Complaint): string | undefined {
  const [, name] =
    /^(?:Cannot find name|No value exists in scope for the shorthand property) '(\w+)'/.exec(messageText) ?? [];
  if (!name) return undefined;
  const [, meant] = /Did you mean '(\w+)'\?/.exec(messageText) ?? [];
  if (meant) return `${lineOf(start.line)}${name} is not known; write ${meant}`;
  return `${lineOf(start.line)}${name} is not known: no cell above that has run gives it. Run all cells from the top.`;
}
