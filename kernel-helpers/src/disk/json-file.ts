import { existsSync, readFileSync } from 'node:fs';
import { basename, dirname } from 'node:path';
import { type DocumentNode, parse, type ValueNode } from '@humanwhocodes/momoa';
import { ShopError } from '../measure/shop-error.js';
import { diskError } from './disk-error.js';

/** How a file that the maker writes is read. @internal */
export interface JsonFile<T> {
  /** Takes what it says, and throws a ShopError at what cannot be. */
  read: (content: unknown) => T;
  /** What such a file can be, for one that says nothing: `{ "boards": [] }`. */
  possible: string;
}

/**
 * Reads a file that the maker writes by hand.
 *
 * @returns undefined when there is no such file
 * @throws ShopError  one line: the file, the line in it, the field and the value there, what is possible
 * @internal
 */
export function readJsonFile<T>(path: string, { read, possible }: JsonFile<T>): T | undefined {
  const text = readText(path);
  if (text === undefined) return undefined;
  const content = parseJson(path, text, possible);
  try {
    return read(content);
  } catch (error) {
    if (!(error instanceof ShopError)) throw error;
    const place = placeInJson(path, text, error);
    throw new ShopError(`${place}${error.refused ? ', ' : ': '}${error.message}`, error.refused);
  }
}

/** A file's text, or undefined when there is none. @throws ShopError  when it cannot be read @internal */
export function readText(path: string): string | undefined {
  try {
    return existsSync(path) ? readFileSync(path, 'utf8') : undefined;
  } catch (error) {
    throw diskError(error, `${path} cannot be read`);
  }
}

/** What a text in a file says. @throws ShopError  one line: the file, the line, the slip, what is possible @internal */
export function parseJson(path: string, text: string, possible: string): unknown {
  try {
    return JSON.parse(text);
  } catch {
    const { line, what } = slipIn(text);
    throw new ShopError(`${nameOf(path)}, line ${line}: ${what}; possible: ${possible}`);
  }
}

/** Where a file says what was refused: `data/shop.json, line 4`; the file alone where no line does. @internal */
export function placeInJson(path: string, text: string, { refused }: ShopError): string {
  return refused ? `${nameOf(path)}, line ${lineOf(parse(text), refused.path)}` : nameOf(path);
}

/** The name of a file with the folder that it stands in, `data/shop.json`: enough to tell it from its namesakes. */
const nameOf = (path: string) => `${basename(dirname(path))}/${basename(path)}`;

/** The line of the value at the end of a way, or of the last that is there. */
function lineOf(document: DocumentNode, path: readonly PropertyKey[]): number {
  let node: ValueNode = document.body;
  let line = node.loc.start.line;
  for (const key of path) {
    const next = inside(node, key);
    if (!next) break;
    ({ node, line } = next);
  }
  return line;
}

function inside(node: ValueNode, key: PropertyKey): { node: ValueNode; line: number } | undefined {
  if (node.type === 'Array') {
    const element = node.elements[Number(key)];
    return element && { node: element.value, line: element.value.loc.start.line };
  }
  if (node.type !== 'Object') return undefined;
  // Of a name that stands there twice, the last counts.
  const member = node.members.findLast(({ name }) => (name.type === 'String' ? name.value : name.name) === key);
  return member && { node: member.value, line: member.loc.start.line };
}

/** What is wrong with a text that is none, in plain words, and in which line. */
function slipIn(text: string): { line: number; what: string } {
  let line = 1;
  let offset = text.length;
  try {
    parse(text);
  } catch (error) {
    const slip = error as Error & { line: number; offset: number };
    // Where a text ends too early it tells the last word, or the first line.
    const isLast = /^(?:"[^"]*"|[{[:,]|[\w.+-]+)$/.test(text.slice(slip.offset).trim());
    if (!isLast && !/end of input/.test(slip.message)) ({ line, offset } = slip);
  }
  const before = text.slice(0, offset).trimEnd();
  const after = text.slice(offset).trimStart();
  const shown = /^(?:"[^"\n]*"?|[^\s,\]}]+|.)/.exec(after)?.[0] ?? '';
  const lineBefore = before.split('\n').length;
  if (text.trim() === '') return { line: 1, what: 'it is empty' };
  if (after === '') return { line: lineBefore, what: 'it ends too early: a } or ] is missing, or a quotation mark' };
  if (/^[“”„‟«»'‘’`]/.test(after))
    return { line, what: `${shown} given; quotation marks here are ", straight and double` };
  if (/^[\]}]/.test(after) && before.endsWith(','))
    return { line: lineBefore, what: `the comma before ${shown} is one too many` };
  if (/^\/[/*]/.test(after)) return { line, what: `notes such as ${shown} are not possible here` };
  if (/^\/\d/.test(after)) return { line, what: `${shown} is not expected here: lengths stand in "quotation marks"` };
  if (/["\d\]}el]$/.test(before) && /^["\d[{tfn-]/.test(after))
    return { line: lineBefore, what: `a comma is missing before ${shown}, or quotation marks around a text` };
  return {
    line,
    what: `${shown} is not expected here: texts stand in "quotation marks", a name is followed by a colon`,
  };
}
