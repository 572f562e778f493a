import { formatLength, type LengthSystem } from '../../measure/length.js';
import type { PiecePart } from '../../piece/piece.js';
import type { Blank } from '../milling/blanks.js';

/** What is chalked on a part besides its name. */
export interface ChalkMark {
  /** Empty where there is nothing to say. */
  words: string;
  /** It stands on an edge: its lower edge is marked. */
  upright: boolean;
}

/**
 * What is chalked on the parts of a box or a drawer besides their names, so that nobody has to guess at the bench: the lower edge,
 * which side is the left one and where its front end is, what is still sawn or planed off.
 *
 * The two sides follow the figure: with outside faces up and lower edges towards you, the side that lies left of the front in
 * the blank is the left side of the box, so that the figure runs round it. Elsewhere the first is the left one.
 *
 * @param marked.parts  of the piece, as sized; in
 * @param marked.blanks  see `blanksOf`: part names from the marked end, which lies at the left
 * @param marked.lengths  how sizes are shown
 * @returns by the part's name in the plan; nothing for parts that need none, and for other pieces
 */
export function chalkMarks(marked: {
  parts: readonly PiecePart[];
  blanks: readonly Pick<Blank, 'parts'>[];
  lengths?: LengthSystem;
}): Record<string, ChalkMark> {
  const { parts, blanks, lengths = 'tape' } = marked;
  const names = blanks.flatMap((blank) => blank.parts);
  const sides = names.filter((name) => /^side \d+$/.test(name));
  if (sides.length !== 2 || !names.includes('front')) return {};
  const words: Record<string, string> = {};
  const lowered = parts.find(({ widthBefore }) => widthBefore !== undefined);
  if (lowered)
    words[lowered.name] =
      `its upper edge comes down to ${formatLength(lowered.width, { system: lengths, denominator: 64 })} once joint and grooves are cut`;
  if (names.includes('lid')) words.lid = 'a little over: planed to width when it is fitted';
  const row = blanks.find((blank) => blank.parts.includes('front'))?.parts ?? [];
  const [before, after] = [row[row.indexOf('front') - 1], row[row.indexOf('front') + 1]];
  const left = sides.find((side) => side === before) ?? sides.find((side) => side !== after);
  for (const side of sides)
    words[side] =
      side === left
        ? 'left side: seen from outside its front end is at the right'
        : 'right side: seen from outside its front end is at the left';
  const upright = new Set([...sides, 'front', 'back']);
  return Object.fromEntries(
    names
      .filter((name) => words[name] || upright.has(name))
      .map((name) => [name, { words: words[name] ?? '', upright: upright.has(name) }]),
  );
}
