/** One `name: value` on a line of a cell of parameters. */
export interface TypedValue {
  /** Empty for a value in a list. */
  name: string;
  /** As it stands there, without comma and note. */
  value: string;
}

/** A line's code, without the note behind it: `//` with a blank before it, which no address has. */
export function withoutNote(line: string): string {
  return line.replace(/(^|\s)\/\/.*$/, '').trimEnd();
}

/**
 * What stands on a line of parameters, in order. Quotation marks are not taken for what they say: they may be the slip.
 *
 * @example typedValues("  planer: { leastLength: '12 in', widest: 12 in },") // leastLength: '12 in', widest: 12 in
 */
export function typedValues(line: string): TypedValue[] {
  const code = withoutNote(line).replace(/^\s*(?:const|let)\s+\w+\s*=\s*\{/, '');
  const names = [...code.matchAll(/(?<![\w'"])([A-Za-z_]\w*)\s*:(?!\/)/g)];
  return names.flatMap(({ 0: { length }, 1: name = '', index }, i) => {
    const value = code.slice(index + length, names[i + 1]?.index ?? code.length);
    const alone = value.replace(/^[\s[{]+/, (open) => (open.trim() === '[' ? '[' : '')).replace(/[\s,;{[]+$/, '');
    if (alone === '') return [];
    if (!alone.startsWith('[')) return [{ name, value: closed(alone) }];
    // A text may hold a comma.
    const listed = closed(alone.slice(1)).match(/\s*(?:'[^']*'|"[^"]*")(?=\s*(?:,|$))|[^,]+/g) ?? [];
    return listed.map((each) => ({ name: '', value: each.trim() }));
  });
}

const closed = (value: string) => value.replace(/[\s,\]}]+$/, '');

/** Where a slip stands, as all of them begin: `line 3, insideLength: `. @param line  counted from 0 */
export function lineOf(line: number, name = ''): string {
  return `line ${line + 1}${name && `, ${name}`}: `;
}
