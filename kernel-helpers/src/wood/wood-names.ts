import { distance } from 'fastest-levenshtein';

/** What is called by name: an entry of the list of woods. @internal */
export interface NamedWood {
  id: string;
  /** As an index writes it: `Oak, white`. */
  commonName: string;
}

/** What yards call a wood where no list does: common practice, no source. The first one is the usual one. */
const yardNames: Record<string, readonly string[]> = {
  'soft maple': ['maple-red', 'maple-silver', 'maple-bigleaf'],
  'hard maple': ['maple-sugar', 'maple-black'],
  'rock maple': ['maple-sugar'],
  hickory: ['hickory-true', 'hickory-pecan'],
  pecan: ['hickory-pecan'],
  poplar: ['yellow-poplar'],
  'tulip poplar': ['yellow-poplar'],
  tulipwood: ['yellow-poplar'],
  cypress: ['baldcypress'],
  'aromatic cedar': ['cedar-eastern-red'],
  'red cedar': ['cedar-eastern-red', 'cedar-western-red'],
  'alaska cedar': ['cedar-yellow'],
  'genuine mahogany': ['mahogany-true'],
  'honduran mahogany': ['mahogany-true'],
  'honduras mahogany': ['mahogany-true'],
  khaya: ['mahogany-african'],
  limewood: ['basswood-american'],
  'white pine': ['pine-eastern-white', 'pine-western-white'],
  'yellow pine': ['pine-longleaf', 'pine-shortleaf', 'pine-loblolly', 'pine-slash'],
  'southern yellow pine': ['pine-longleaf', 'pine-shortleaf', 'pine-loblolly', 'pine-slash'],
  'oregon pine': ['douglas-fir-coast'],
  'bald cypress': ['baldcypress'],
  redwood: ['redwood-old-growth', 'redwood-young-growth'],
  padouk: ['padauk-african'],
  'white ash': ['ash-white'],
};

/**
 * A wood as one says it, such as "white oak": an index names it the other way round, "Oak, white".
 *
 * @internal
 */
export function asSaid({ commonName }: NamedWood): string {
  return commonName.replace(' (group)', '').split(', ').reverse().join(' ').toLowerCase();
}

/**
 * The woods that an ordinary name can mean, such as "walnut", "white oak", "soft maple": capitals, order and hyphens do not
 * matter. One, where the name is its own whole one; else all that have its words in theirs; none where no name has.
 *
 * @param typed  as it was typed
 * @param woods  to look among
 * @internal
 */
export function woodsCalled<Wood extends NamedWood>(typed: string, woods: readonly Wood[]): Wood[] {
  const said = wordsOf(typed);
  if (said.length === 0) return [];
  const byYard = yardNames[said.join(' ')];
  if (byYard)
    return woods.filter(({ id }) => byYard.includes(id)).sort((a, b) => byYard.indexOf(a.id) - byYard.indexOf(b.id));
  const whole = woods.filter((wood) => wholeNames(wood).some((name) => same(name, said)));
  // White oak is a wood of its own as well as the name of a group that holds it.
  const own = whole.find(({ commonName }) => !/\(group\)/.test(commonName)) ?? whole[0];
  if (own) return [own];
  return woods.filter((wood) => said.every((word) => wordsOf(wood.commonName).includes(word)));
}

/**
 * Names within a slip or two of one that was typed.
 *
 * @returns as one says them, the nearest first, at most six
 * @internal
 */
export function woodsSpeltLike(typed: string, woods: readonly NamedWood[]): string[] {
  const said = wordsOf(typed).join('');
  const slips = said.length > 5 ? 2 : 1;
  const names = [...woods.map(asSaid), ...Object.keys(yardNames)];
  const off = (name: string) => distance(wordsOf(name).join(''), said);
  return [...new Set(names.filter((name) => off(name) <= slips).sort((a, b) => off(a) - off(b)))].slice(0, 6);
}

/** Its names, word by word: the one without what stands in brackets, and what stands there, where that is a name. */
function wholeNames({ commonName }: NamedWood): string[][] {
  const [, outside = '', inside = ''] = /^([^(]*)(?:\(([^)]*)\))?/.exec(commonName) ?? [];
  const group = inside === 'group';
  const names = [group ? outside.replace(', commercial', '').replace(', true', '') : outside, group ? '' : inside];
  return names.map(wordsOf).filter((words) => words.length > 0);
}

function wordsOf(text: string): string[] {
  return text
    .normalize('NFKD')
    .toLowerCase()
    .split(/[^a-z]+/)
    .filter((word) => word !== '' && word !== 'group');
}

/** Whether two names are one, in whatever order: "oak, white"; or written in one word: "red cedar" and "redcedar". */
function same(name: readonly string[], said: readonly string[]): boolean {
  return [...name].sort().join(' ') === [...said].sort().join(' ') || name.join('') === said.join('');
}
