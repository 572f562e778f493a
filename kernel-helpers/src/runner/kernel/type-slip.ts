import { closest, distance } from 'fastest-levenshtein';
import type { Complaint } from './complaint.js';
import { lineOf, type TypedValue, typedValues } from './typed-line.js';

/** A parameter, with the line of its cell that it stands in. */
type Typed = TypedValue & { line: number };

/**
 * The parameter that another cell misses, or whose kind it cannot use.
 *
 * @param cell  the one that misses it
 * @param parameters  source of the cell of parameters
 */
export function typeSlip(cell: string, complaints: readonly Complaint[], parameters: string): string | undefined {
  const typed = parameters.split('\n').flatMap((text, line) => typedValues(text).map((each) => ({ ...each, line })));
  return missing(complaints, typed) ?? wrongKind(cell, complaints, typed);
}

function missing(complaints: readonly Complaint[], typed: readonly Typed[]): string | undefined {
  const names = typed.map(({ name }) => name).filter(Boolean);
  const [, member, key] = firstMatch(
    complaints,
    /^(?:Property '(\w+)' (?:does not exist on type|is missing in type)|Type '"(\w+)"' is not assignable to type '")/,
  );
  const lacking = member ?? key;
  if (!lacking || names.length === 0 || names.includes(lacking)) return undefined;
  const near = typed.find(({ name }) => name === closest(lacking, names));
  // One slip in a short name, two in a long one: two letters that changed places are two.
  if (near && distance(near.name, lacking) <= (lacking.length < 6 ? 1 : 2))
    return `parameters, ${lineOf(near.line, near.name)}there is no such parameter; write ${lacking}:`;
  return `parameters: ${lacking} is missing among them; write it with its value, as it was`;
}

function wrongKind(cell: string, complaints: readonly Complaint[], typed: readonly Typed[]): string | undefined {
  const backwards = complaints.toReversed();
  const [, , wanted] = firstMatch(
    backwards,
    /^(?:Type|Argument of type) '([\w |]+)' is not assignable to (?:parameter of )?type '(.+?)'\.$/,
  );
  const [, property] = firstMatch(backwards, /^Types of property '(\w+)' are incompatible/);
  const start = complaints[0]?.start;
  const there = cell.split('\n')[start?.line ?? 0]?.slice(start?.character);
  const name = property ?? /^(?:parameters\.)?(\w+)/.exec(there ?? '')?.[1];
  if (!wanted || !name) return undefined;
  const [, before] = new RegExp(String.raw`\b(\w+): ${name}\b`).exec(cell) ?? [];
  const value = [name, before].map((each) => typed.find((one) => one.name === each)).find((found) => found);
  if (!value) return undefined;
  const bare = value.value.replace(/^['"]|['"]$/g, '');
  const [kind, write] = /boolean/.test(wanted)
    ? ['true or false', bare]
    : /number/.test(wanted)
      ? ['a number', bare]
      : ['words in quotation marks', `'${bare}'`];
  return `parameters, ${lineOf(value.line, value.name)}${value.value} given; possible: ${kind}; write ${value.name}: ${write}`;
}

function firstMatch(complaints: readonly Complaint[], pattern: RegExp): string[] {
  return complaints.map(({ messageText }) => pattern.exec(messageText)).find((found) => found) ?? [];
}
