import { closest, distance } from 'fastest-levenshtein';
import * as z from 'zod';
import { formatLength, parseLength } from './length.js';
import { placeText } from './refused/refused.js';
import { refusal, ShopError } from './shop-error.js';

/**
 * Reads values that a craftsperson typed.
 *
 * @param schema  what is possible, field by field
 * @param given  what was typed
 * @returns the values, converted (lengths to inches)
 * @throws ShopError  one line: the field, the value given, what is possible, why
 * @internal
 */
export function readParameters<T>(schema: z.ZodType<T>, given: unknown): T {
  const read = schema.safeParse(given);
  if (read.success) return read.data;
  const { issues } = read.error;
  // A name that was misspelt is missing too; that it is misspelt says more.
  const issue = (issues.find(({ code }) => code === 'unrecognized_keys') ?? issues[0]) as z.core.$ZodIssue;
  if (issue.code === 'unrecognized_keys') throw unknownField([...issue.path, issue.keys[0] ?? ''], schema, given);
  throw refusal({ path: issue.path, given: valueAt(given, issue.path), possible: issue.message });
}

function unknownField(path: PropertyKey[], schema: z.ZodType, given: unknown): ShopError {
  const known = namesIn(schema, path.slice(0, -1));
  const name = String(path.at(-1));
  const near = known.length > 0 ? closest(name, known) : undefined;
  const all =
    near && distance(near, name) <= Math.max(2, name.length / 3) ? '' : ` (possible: ${known.join(', ') || 'none'})`;
  const possible = `there is no such parameter${near ? `; the nearest is ${near}` : ''}${all}`;
  return new ShopError(`${placeText(path)}: ${possible}`, { path, given: valueAt(given, path), possible });
}

/** The names that a group can hold, at the end of a way. */
function namesIn(schema: z.ZodType, path: readonly PropertyKey[]): string[] {
  let here: unknown = schema;
  for (const key of path) {
    while (here instanceof z.ZodOptional) here = here.unwrap();
    here =
      here instanceof z.ZodArray ? here.element : here instanceof z.ZodObject ? here.shape[String(key)] : undefined;
  }
  while (here instanceof z.ZodOptional) here = here.unwrap();
  return here instanceof z.ZodObject ? Object.keys(here.shape) : [];
}

/** What stands at the end of a way. @internal */
export function valueAt(given: unknown, path: PropertyKey[]): unknown {
  return path.reduce<unknown>((value, key) => (value as Record<PropertyKey, unknown> | undefined)?.[key], given);
}

/**
 * A length between two limits, typed as `9 1/2 in`, `240 mm` or a number of inches; read as inches.
 *
 * @param limits.least, limits.most  inches, both possible
 * @param limits.why  what the length is and why it has these limits
 * @internal
 */
export function size(limits: { least: number; most: number; why: string }): z.ZodType<number> {
  const { least, most, why } = limits;
  return z.any().transform((value, context) => {
    // In the system that was typed.
    const system = /m\s*$/i.test(String(value)) ? 'mm' : 'tape';
    const show = (inches: number) => formatLength(inches, { system, denominator: 64 });
    const possible = `possible: ${show(least)} to ${show(most)} (${why})`;
    try {
      const inches = typeof value === 'number' ? value : parseLength(value);
      if (inches >= least && inches <= most) return inches;
      context.addIssue(possible);
    } catch (error) {
      const writing = typeof value === 'string' ? `${(error as Error).message.replace(/^"[^"]*":? ?/, '')}; ` : '';
      context.addIssue(`${writing}${possible}`);
    }
    return z.NEVER;
  });
}

/**
 * A number between two limits.
 *
 * @param limits.unit  as shown after the number
 * @internal
 */
export function amount(limits: { least: number; most: number; unit?: string; why: string }): z.ZodType<number> {
  const { least, most, unit = '', why } = limits;
  const possible = `possible: a number from ${least} to ${most}${unit && ` ${unit}`} (${why})`;
  return z.number({ error: possible }).min(least, possible).max(most, possible);
}

/**
 * A whole number of things between two limits.
 *
 * @param limits.what  what is counted: `boards`
 * @internal
 */
export function count(limits: { least: number; most: number; what: string }): z.ZodType<number> {
  const { least, most, what } = limits;
  const possible = `possible: a whole number of ${what} from ${least} to ${most}`;
  return z.number({ error: possible }).int(possible).min(least, possible).max(most, possible);
}

/**
 * One of a few words.
 *
 * @internal
 */
export function oneOf<const T extends string>(words: readonly T[], why: string): z.ZodType<T> {
  return z.enum(words, { error: `possible: ${words.join(', ')} (${why})` }) as unknown as z.ZodType<T>;
}

/**
 * A piece of text that is not empty.
 *
 * @internal
 */
export function words(why: string): z.ZodType<string> {
  const possible = `possible: some words (${why})`;
  return z.string({ error: possible }).trim().min(1, possible).max(2000, 'possible: at most 2,000 letters');
}

/**
 * A calendar day in ISO form that exists.
 *
 * @internal
 */
export function day(why: string): z.ZodType<string> {
  return z.iso.date({ error: `possible: a day that exists, written like 2026-11-25 (${why})` });
}

/**
 * An id that a list knows, or a name that it knows an entry by, read as the entry's id.
 *
 * @param find  gives the entry; throws a ShopError that names the nearest
 * @internal
 */
export function known(find: (typed: string) => { id: string }, why: string): z.ZodType<string> {
  const found = (typed: string) => {
    try {
      return find(typed).id;
    } catch (error) {
      return error as Error;
    }
  };
  return z.string({ error: `possible: a name or an id from the list (${why})` }).transform((typed, context) => {
    const [asTyped, lower] = [typed, typed.trim().toLowerCase()].map(found);
    if (typeof asTyped === 'string') return asTyped;
    if (typeof lower === 'string') return lower;
    context.addIssue(`${asTyped?.message.replace(/^.*?; /, '')} (${why})`);
    return z.NEVER;
  });
}
