import type { Entry } from '../chain/entry.js';

/** What later sheets take from a decision: its results, and its reasons for going past a stop, which papers print. @internal */
export type HandedOn = Pick<Entry, 'results' | 'overrides'>;

/**
 * Two decisions with the same sign hand on the same: a change upstream that leaves it as it was asks nothing of what rests on
 * it. Numbers are the same when their first nine figures are, since two machines may round the last bits differently. It
 * tells by accident only; against intent the record has its fingerprints.
 *
 * @returns 14 letters and figures
 * @internal
 */
export function signOf(decision: HandedOn): string {
  const before = signs.get(decision);
  if (before !== undefined) return before;
  const made = signAnew(decision);
  // What cannot change any more keeps its sign: one decision is asked for it by all that rest on it.
  if (Object.isFrozen(decision)) signs.set(decision, made);
  return made;
}

const signs = new WeakMap<HandedOn, string>();

function signAnew({ results, overrides }: HandedOn): string {
  const plain = (value: unknown): unknown => {
    if (typeof value === 'number') return Math.abs(value) < 1e-12 ? 0 : Number(value.toPrecision(9));
    if (Array.isArray(value)) return value.map(plain);
    if (typeof value !== 'object' || value === null) return value;
    const fields = Object.entries(value).sort(([a], [b]) => (a < b ? -1 : 1));
    return fields.map(([name, field]) => [name, plain(field)]);
  };
  return sign(JSON.stringify([plain(results), plain(overrides)]));
}

/** A text's sign: two sums of 32 bits over its characters, each stirred by multiplication with a large odd number. */
function sign(text: string): string {
  let [one, other] = [0x9e3779b9, 0x85ebca6b];
  for (let i = 0; i < text.length; i++) {
    const character = text.charCodeAt(i);
    one = stirred(one ^ character, 0x01000193);
    other = stirred(other + character, 0x5bd1e995);
  }
  return [one, other].map((sum) => sum.toString(36).padStart(7, '0')).join('');
}

function stirred(sum: number, factor: number): number {
  const mixed = Math.imul(sum, factor);
  return (mixed ^ (mixed >>> 15)) >>> 0;
}
