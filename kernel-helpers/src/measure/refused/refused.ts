/** A value that cannot be, as data: so that it can be said where it was typed, by the name that stands there. */
export interface Refused {
  /** The way to it from what was read, `['boards', 2, 'length']`; the first of a list is 0. */
  readonly path: readonly PropertyKey[];
  /** As it was typed. */
  readonly given: unknown;
  /** What is possible, and why. */
  readonly possible: string;
}

/** A way as one says it: `boards no. 3, length`. @internal */
export function placeText(path: readonly PropertyKey[]): string {
  return path.reduce<string>((text, key) => {
    if (typeof key === 'number') return `${text}${text && ' '}no. ${key + 1}`;
    return `${text}${text && ', '}${String(key)}`;
  }, '');
}

/** A value as it was typed, or that there was none. @internal */
export function written(value: unknown): string {
  if (value === undefined) return 'nothing given';
  const text = typeof value === 'string' ? `"${value}"` : JSON.stringify(value);
  return `${text.length > LONG ? `${text.slice(0, LONG)} ...` : text} given`;
}

/** Characters of a value that a line of the terminal has room for. */
const LONG = 160;

/**
 * What a message refuses, where it begins as all of ours do that refuse a value: `tails: 9 given; possible: ...`, or
 * `species: "oka" is not in the list; ...`.
 *
 * @internal
 */
export function refusedIn(message: string): Refused | undefined {
  const found = /^([A-Za-z]\w*): (?:(.+?) given[;,]?|("[^"]*") is) ?(.*)$/s.exec(message);
  if (!found) return undefined;
  const [, name = '', shown = found[3] ?? '', , possible = ''] = found;
  const given = /^(?:"[^"]*"|true|false|null|-?\d+(?:\.\d+)?)$/.test(shown) ? JSON.parse(shown) : shown;
  return { path: [name], given, possible };
}
