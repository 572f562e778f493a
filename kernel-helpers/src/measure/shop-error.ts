/** A value that cannot be, as data: so that it can be said where it was typed, by the name that stands there. */
export interface Refused {
  /** The way to it from what was read, `['boards', 2, 'length']`; the first of a list is 0. */
  readonly path: readonly PropertyKey[];
  /** As it was typed. */
  readonly given: unknown;
  /** What is possible, and why. */
  readonly possible: string;
}

/**
 * The one error of ours: a single line in shop language that names the field, what was given and what is possible.
 * The kernel prints just that line, without a stack.
 */
export class ShopError extends Error {
  override readonly name = 'ShopError';
  readonly #refused: Refused | undefined;

  /** @param refused  the value that it refuses, where it is one that was typed */
  constructor(message: string, refused?: Refused) {
    super(message);
    this.#refused = refused;
  }

  /** The value that it refuses, where it is one that was typed. */
  get refused(): Refused | undefined {
    return this.#refused;
  }

  [Symbol.for('nodejs.util.inspect.custom')](): string {
    return this.message;
  }
}

/** An error that says what was refused: `boards no. 3, length: "5 lb" given; possible: ...`. @internal */
export function refusal(refused: Refused): ShopError {
  const { path, given, possible } = refused;
  const where = placeText(path);
  return new ShopError(where ? `${where}: ${written(given)}; ${possible}` : possible, refused);
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
 * Reads a part of what was typed, so that whatever it refuses is named from the whole: the board's `length` as that of the
 * third of `boards`.
 *
 * @param path  the way from the whole to the part
 * @throws ShopError  what `read` throws, named so
 * @internal
 */
export function within<T>(path: readonly PropertyKey[], read: () => T): T {
  try {
    return read();
  } catch (error) {
    if (!(error instanceof ShopError && error.refused)) throw error;
    const whole = { ...error.refused, path: [...path, ...error.refused.path] };
    throw error.message === refusal(error.refused).message ? refusal(whole) : new ShopError(error.message, whole);
  }
}
