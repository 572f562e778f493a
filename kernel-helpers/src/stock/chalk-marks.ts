import type { PiecePart } from '../box/piece.js';
import { formatLength, type LengthSystem } from '../measure/length.js';
import type { Blank } from './blanks.js';

/**
 * What is chalked on parts besides their names, so that nobody has to guess at the bench: which side is the left one and where
 * its front end is, what is still sawn or planed off.
 *
 * The two sides follow the figure: with outside faces up and lower edges towards you, the side that lies left of the front in
 * the blank is the left side of the box, so that the figure runs round it. Elsewhere the first is the left one.
 *
 * @param marked.parts  of the piece, as sized; in
 * @param marked.blanks  see `blanksOf`: part names from the marked end, which lies at the left
 * @param marked.lengths  how sizes are shown
 * @returns words by the part's name in the plan; nothing for parts that need none
 */
export function chalkMarks(marked: {
  parts: readonly PiecePart[];
  blanks: readonly Pick<Blank, 'parts'>[];
  lengths?: LengthSystem;
}): Record<string, string> {
  const { parts, blanks, lengths = 'tape' } = marked;
  const show = (inches: number) => formatLength(inches, { system: lengths, denominator: 64 });
  const marks: Record<string, string> = {};
  const lowered = parts.find(({ widthBefore }) => widthBefore !== undefined);
  if (lowered)
    marks[lowered.name] = `its upper edge comes down to ${show(lowered.width)} once joint and grooves are cut`;
  if (parts.some(({ name }) => name === 'lid')) marks.lid = 'a little over: planed to width when it is fitted';
  const names = blanks.flatMap((blank) => blank.parts);
  const sides = names.filter((name) => /^side( \d+)?$/.test(name));
  const row = blanks.find((blank) => blank.parts.includes('front'))?.parts ?? [];
  const [first, second] = sides;
  if (!first || !second) return marks;
  const after = row[row.indexOf('front') + 1];
  const before = row[row.indexOf('front') - 1];
  const left = before && sides.includes(before) ? before : after === first ? second : first;
  for (const side of sides)
    marks[side] =
      side === left
        ? 'left side: seen from outside its front end is at the right'
        : 'right side: seen from outside its front end is at the left';
  return marks;
}
