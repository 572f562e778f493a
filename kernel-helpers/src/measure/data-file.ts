import { distance } from 'fastest-levenshtein';
import * as z from 'zod';
import { valueAt } from './parameters.js';
import { placeText, written } from './refused/refused.js';
import { ShopError } from './shop-error.js';

/** The entries of a data file, read and checked when they are first asked for. @internal */
export interface DataTable<T> {
  byId(): ReadonlyMap<string, T>;
  /** In the file's order. */
  all(): T[];
  /** @throws ShopError  names the nearest ids */
  entry(id: string): T;
}

/**
 * The entries of a data file. Where the file names its sources once, as `sources`, each entry and each of its figures
 * gets the whole name of its own.
 *
 * @param file  its name under data/, for messages
 * @param data  the file's content
 * @param is.list  the list's name in the file
 * @param is.what  what an entry is, for messages: "species"
 * @param is.entry  what each entry must be
 * @returns reading throws a ShopError that names the file, the entry and the field at fault
 * @internal
 */
export function dataTable<T extends { id: string }>(
  file: string,
  data: object,
  is: { list: string; what: string; entry: z.ZodType<T> },
): DataTable<T> {
  let table: ReadonlyMap<string, T> | undefined;
  const byId = () => {
    table ??= readEntries(file, data, is.list, is.entry);
    return table;
  };
  return { byId, all: () => [...byId().values()], entry: (id) => entryOf(byId(), id, is.what) };
}

function readEntries<T extends { id: string }>(
  file: string,
  data: object,
  key: string,
  entry: z.ZodType<T>,
): ReadonlyMap<string, T> {
  const list = z.object({ [key]: z.array(z.looseObject({ id: z.string() })) }).safeParse(data);
  if (!list.success) throw new ShopError(`data/${file}: a list "${key}" of entries with an id is needed`);
  const sources = 'sources' in data ? (data.sources as Record<string, string>) : {};
  const byId = new Map<string, T>();
  for (const given of list.data[key] as { id: string }[]) {
    const read = readEntry(`data/${file}`, given, entry);
    if (byId.has(given.id)) throw new ShopError(`data/${file}, entry ${given.id}: it stands there twice`);
    for (const cited of [read, ...Object.values(read)] as { source?: string }[])
      if (cited?.source) cited.source = sources[cited.source] ?? cited.source;
    byId.set(given.id, read);
  }
  return byId;
}

/**
 * One entry, checked.
 *
 * @param where  where it stands, for messages
 * @throws ShopError  names where it stands, the entry and the field at fault
 * @internal
 */
export function readEntry<T>(where: string, given: { id?: unknown }, entry: z.ZodType<T>): T {
  const read = entry.safeParse(given);
  if (read.success) return read.data;
  const issue = read.error.issues[0] as z.core.$ZodIssue;
  const path = issue.path.length > 0 ? issue.path : ['id'];
  const [value, possible] = [valueAt(given, path), inWords(issue)];
  throw new ShopError(`${where}, entry ${given.id}, field ${placeText(path)}: ${written(value)}; ${possible}`, {
    path,
    given: value,
    possible,
  });
}

const kindWords: Record<string, string> = {
  string: 'words in quotation marks',
  number: 'a number',
  boolean: 'true or false',
  array: 'a list in square brackets',
  object: 'named values in braces',
};

function inWords(issue: z.core.$ZodIssue): string {
  // A field that says itself what is possible is left its own words.
  if (!/^(Invalid|Too|Unrecognized)/.test(issue.message)) return issue.message;
  if (issue.code === 'invalid_type') return `possible: ${kindWords[issue.expected] ?? issue.expected}`;
  if (issue.code === 'too_big')
    return `possible: ${issue.inclusive === false ? 'less than' : 'up to'} ${issue.maximum}`;
  if (issue.code === 'too_small')
    return `possible: ${issue.inclusive === false ? 'more than' : 'from'} ${issue.minimum}`;
  if (issue.code === 'invalid_value') return `possible: ${issue.values.join(', ')}`;
  if (issue.code === 'unrecognized_keys') return `there is no such field as ${issue.keys.join(', ')}`;
  return issue.message;
}

/**
 * The entry with this id.
 *
 * @param what  what the entries are, for the message: "species"
 * @throws ShopError  names the ids that are near in spelling, or share a word; else some of the list
 * @internal
 */
export function entryOf<T>(entries: ReadonlyMap<string, T>, id: string, what: string): T {
  const entry = entries.get(id);
  if (entry) return entry;
  const wanted = String(id).trim().toLowerCase();
  const words = (known: string) =>
    known
      .toLowerCase()
      .split('-')
      .filter((word) => word.length > 2);
  // One slip in a short word, two in a long one.
  const slips = wanted.length > 5 ? 2 : 1;
  const spelling = (known: string) =>
    Math.min(...[known.toLowerCase(), ...words(known)].map((word) => distance(word, wanted)));
  const ids = [...entries.keys()].sort(
    (a, b) => spelling(a) - spelling(b) || distance(a, wanted) - distance(b, wanted),
  );
  const near = ids.filter((known) => spelling(known) <= slips || words(known).some((word) => wanted.includes(word)));
  const some = [...entries.keys()].slice(0, 12);
  const rest = entries.size - some.length;
  throw new ShopError(
    near.length > 0
      ? `${what}: "${id}" is not in the list; nearest: ${near.slice(0, 6).join(', ')}`
      : `${what}: "${id}" is not in the list; none is near it; possible: ${some.join(', ')}${rest > 0 ? ` and ${rest} more` : ''}`,
  );
}
