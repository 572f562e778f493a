import type { Refused } from './refused.js';

/** A value among a sheet's parameters, and the way to it. */
interface Leaf {
  path: PropertyKey[];
  value: unknown;
}

/**
 * The ways in a sheet's parameters to a value that a helper refused under a name of its own: `handle` for what the helper was
 * given as `kind`. Where one of that name holds the value, it is meant; else whatever holds it, and of several the one whose
 * name is likest.
 *
 * @returns none when the value was not typed in this sheet; more than one when none is likelier than another
 * @internal
 */
export function typedPaths({ path, given }: Refused, parameters: object): PropertyKey[][] {
  const all = leaves(parameters);
  const field = nameOf(path);
  const holding = given === undefined ? [] : all.filter(({ value }) => isSame(value, given));
  const candidates = holding.length > 0 ? holding : all.filter((leaf) => nameOf(leaf.path) === field);
  const score = (leaf: Leaf) => likeness(leaf.path, path);
  const best = Math.max(...candidates.map(score));
  return candidates.filter((leaf) => score(leaf) === best).map((leaf) => leaf.path);
}

function leaves(value: object, path: PropertyKey[] = []): Leaf[] {
  return Object.entries(value).flatMap(([key, each]) => {
    const here = [...path, Array.isArray(value) ? Number(key) : key];
    return [{ path: here, value: each }, ...(typeof each === 'object' && each ? leaves(each, here) : [])];
  });
}

/** The last name on a way: places in lists have none. */
const nameOf = (path: readonly PropertyKey[]) => path.findLast((key) => typeof key === 'string') as string | undefined;

/** How like two ways are: the same name at the end counts most, then the same names before it, then words that they share. */
function likeness(one: readonly PropertyKey[], other: readonly PropertyKey[]): number {
  const same = nameOf(one) === nameOf(other) ? 100 : 0;
  const shared = other.filter((key) => one.includes(key)).length;
  const words = wordsIn(nameOf(one));
  return same + 10 * shared + wordsIn(nameOf(other)).filter((word) => words.includes(word)).length;
}

/** `coreBoxDiameter` is core, box, diameter. @internal */
export function wordsIn(name = ''): string[] {
  return name.split(/(?=[A-Z])|_/).map((word) => word.toLowerCase());
}

/** Whether a value is the one that was refused, which may be written otherwise by then: `3.25 in` for `3 1/4`. */
function isSame(value: unknown, given: unknown): boolean {
  if (value === given) return true;
  if (typeof value === 'object' || typeof given === 'object') return JSON.stringify(value) === JSON.stringify(given);
  const [typed, refused] = [String(value).trim(), String(given).trim()];
  if (typed === '' || refused === '' || typeof value === 'boolean') return false;
  return typed.toLowerCase() === refused.toLowerCase() || plain(typed) === plain(refused);
}

/** Without what a helper adds to a figure or takes from it: its unit and the marks around it. */
const plain = (text: string) =>
  text
    .toLowerCase()
    .replace(/\s*(?:in|"|%|°c|°f|h|lb)$/, '')
    .replace(/^"|"$/g, '');
