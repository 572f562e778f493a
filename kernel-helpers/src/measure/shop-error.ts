import { placeText, type Refused, refusedIn, written } from './refused/refused.js';
import { typedPaths, wordsIn } from './refused/typed-name.js';

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
    this.#refused = refused ?? refusedIn(message);
  }

  /** The value that it refuses, where it is one that was typed. */
  get refused(): Refused | undefined {
    return this.#refused;
  }

  /**
   * The line as a sheet says it: by the name under which the value stands among its parameters, whatever a helper calls it. A
   * name that is none of the sheet's is written as words.
   */
  inSheet(parameters: object): string {
    const { message, refused } = this;
    const place = refused ? placeText(refused.path) : '';
    const rest = place ? message.slice(place.length + 2) : message;
    if (!refused || (place && !message.startsWith(`${place}: `))) return message;
    const typed = typedPaths(refused, parameters).map(placeText);
    // What is missing has to be written by the very name.
    if (typed.length === 0 && refused.given === undefined) return message;
    const named = typed.length > 0 ? [...new Set(typed)].join(' or ') : wordsIn(place).join(' ');
    return named ? `${named}: ${rest}` : message;
  }

  [Symbol.for('nodejs.util.inspect.custom')](): string {
    return this.message;
  }
}

/** An error that says what was refused: `boards no. 3, length: "5 lb" given; possible: ...`. @internal */
export function refusal(refused: Refused): ShopError {
  const { path, given, possible } = refused;
  const where = placeText(path);
  return new ShopError(`${where}${where && ': '}${written(given)}; ${possible}`, refused);
}

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
