import * as z from 'zod';
import { amount, count, known, oneOf, readParameters, size } from '../../measure/parameters.js';
import { ShopError } from '../../measure/shop-error.js';
import { caliper, judge, rounding, tape } from '../../measure/verdict.js';
import { species as speciesOf } from '../../wood/species.js';
import { noCounts, type PiecePart, type SizedPiece } from '../piece.js';
import { longestShelf, mostSag, shelfSag, thinnestShelf } from './shelf-sag.js';

/** All that decides a bookcase carcase. Inches. */
export interface BookcaseDesign {
  species: string;
  width: number;
  height: number;
  depth: number;
  thickness: number;
  shelves: number;
  plinth: number;
  dadoDepth: number;
  backThickness: number;
  backRabbet: number;
  /** On a shelf, pounds a foot. */
  load: number;
  /** What holds a shelf's end in its dado besides glue. */
  shelfEnds: ShelfEnds;
}

/** What can hold the end of a shelf. */
export type ShelfEnds = 'pegs' | 'screws' | 'sliding dovetail' | 'glue alone';

/** The carcase of a bookcase. Inches. */
export interface Bookcase extends SizedPiece {
  design: BookcaseDesign;
  /** Clear size of each compartment. */
  compartment: { width: number; height: number; depth: number };
  /** Lower edge of each dado, up from the lower end of a side: bottom first. */
  dadoes: number[];
}

const shelfEnds: readonly ShelfEnds[] = ['pegs', 'screws', 'sliding dovetail', 'glue alone'];

const fields: z.ZodType<BookcaseDesign> = z.strictObject({
  species: known(speciesOf, 'the wood, such as oak-northern-red'),
  width: size({ least: 6, most: 96, why: 'width over the sides' }),
  height: size({ least: 6, most: 120, why: 'height' }),
  depth: size({ least: 4, most: 36, why: 'depth, the back included' }),
  thickness: size({ least: 0.375, most: 2, why: 'thickness of sides and shelves' }).default(3 / 4),
  shelves: count({ least: 0, most: 30, what: 'shelves between top and bottom' }),
  plinth: size({ least: 0, most: 24, why: 'from the floor to the underside of the bottom' }).default(2),
  dadoDepth: size({ least: 0.0625, most: 1, why: 'depth of the dadoes' }).default(1 / 4),
  backThickness: size({ least: 0.125, most: 1, why: 'plywood of the back, measured' }).default(1 / 4),
  backRabbet: size({ least: 0.125, most: 1, why: 'how far the back laps onto sides and top' }).default(3 / 8),
  load: amount({
    least: 0,
    most: 200,
    unit: 'lb',
    why: 'weight on each foot of a shelf; full of books about 25',
  }).default(25),
  shelfEnds: oneOf(shelfEnds, "what holds a shelf's end in its dado besides glue").default('pegs'),
});

/**
 * Sizes the carcase of a bookcase: two sides, bottom and fixed shelves in dadoes, the top in rabbets at the sides' upper ends, a
 * plywood back in a rabbet.
 *
 *   shelf = width - 2 thickness + 2 dado          clear height = (height - plinth - (shelves + 2) thickness) / (shelves + 1)
 *
 * Sides and shelves have their grain the same way round the carcase, so that its depth moves as one and a shelf may be held along all
 * of it; the back lies across width and height, which hardly move, and may be screwed all round. A shelf's end is end grain: in its
 * dado it does not glue.
 *
 * @param bookcase.shelves  between top and bottom, evenly spread
 * @param bookcase.load  pounds on a foot of shelf; 25 unless told otherwise (from memory: 20 to 40 when full of books)
 * @param bookcase.shelfEnds  `pegs` unless told otherwise, `screws`, `sliding dovetail` or `glue alone`
 * @returns parts, overall, compartments, dado heights, findings; in
 * @throws ShopError  one line: the field, the value given, the nearest that is possible, why
 * @see common practice, no source
 */
export function sizeBookcase(bookcase: {
  species: string;
  width: number | string;
  height: number | string;
  depth: number | string;
  shelves: number;
  thickness?: number | string;
  plinth?: number | string;
  dadoDepth?: number | string;
  backThickness?: number | string;
  backRabbet?: number | string;
  load?: number;
  shelfEnds?: string;
}): Bookcase {
  const read = readParameters(fields, { ...bookcase });
  const { width, height, depth, thickness, shelves, plinth, dadoDepth, backThickness, backRabbet } = read;
  const clearHeight = (height - plinth - (shelves + 2) * thickness) / (shelves + 1);
  if (clearHeight < 1)
    throw new ShopError(
      `shelves: ${shelves} given; possible: up to ${Math.max(0, Math.floor((height - plinth - 2 * thickness - 1) / (thickness + 1)))} with 1 in between in a carcase ${tape(height)} high`,
    );
  if (dadoDepth >= thickness - rounding)
    throw new ShopError(`dadoDepth: ${tape(dadoDepth)} given; possible: less than ${tape(thickness)}`);
  if (backRabbet >= thickness - rounding)
    throw new ShopError(`backRabbet: ${tape(backRabbet)} given; possible: less than ${tape(thickness)}`);
  const clearWidth = width - 2 * thickness;
  const shelfDepth = depth - backThickness;
  const boards = { thickness, material: 'wood' } as const;
  const across = { ...boards, grain: 'side to side' as const, length: clearWidth + 2 * dadoDepth };
  const shelf = { species: read.species, span: clearWidth, depth: shelfDepth, thickness, load: read.load };
  const sag = shelfSag(shelf);
  const most = mostSag(clearWidth);
  const backHeight = height - plinth - thickness + backRabbet;
  const ends = endsWords(read);
  const parts: PiecePart[] = [
    {
      ...boards,
      name: 'side',
      count: 2,
      length: height,
      width: depth,
      grain: 'upright',
      note: 'dadoed; rabbeted for the back',
    },
    {
      ...across,
      name: 'top',
      count: 1,
      width: depth,
      note: `in rabbets at the upper ends of the sides, ${ends.top}; rabbeted for the back`,
    },
    {
      ...across,
      name: 'bottom',
      count: 1,
      width: shelfDepth,
      note: `in its dadoes, in front of the back, ${ends.shelf}`,
    },
    {
      ...across,
      name: 'shelf',
      count: shelves,
      width: shelfDepth,
      note: `in its dadoes, in front of the back, ${ends.shelf}`,
    },
    {
      name: 'back',
      count: 1,
      length: backHeight,
      width: clearWidth + 2 * backRabbet,
      thickness: backThickness,
      material: 'plywood',
      grain: 'none',
      note: 'screwed all round; it keeps the carcase square',
    },
  ];
  const dadoes = Array.from({ length: shelves + 2 }, (_, index) => plinth + index * (thickness + clearHeight));
  return {
    kind: 'bookcase',
    design: read,
    parts: parts.filter(({ count: pieces }) => pieces > 0),
    overall: { length: depth, width, height },
    moving: { part: 'shelf', thickness },
    counts: {
      ...{ ...noCounts, corner: 2 * (shelves + 2) },
      // Dadoes in both sides; a rabbet for the back along each side and the top.
      groove: 2 * (shelves + 2) + 3,
      grooveLength: 2 * (depth + (shelves + 1) * shelfDepth) + 2 * backHeight + across.length,
    },
    summary: [{ what: 'Clear between the shelves', sizes: [clearWidth, clearHeight, shelfDepth] }],
    compartment: { width: clearWidth, height: clearHeight, depth: shelfDepth },
    dadoes,
    findings: [
      {
        rule: 'shelves do not sag',
        verdict: judge(sag.lasting <= most + rounding, 'watch'),
        figures: `${caliper(sag.firstDay)} in the middle on the first day, ${caliper(sag.lasting)} after years, under ${read.load} lb a foot and its own ${sag.ownWeight.toFixed(1)}, ${tape(clearWidth)} between the sides, ${tape(thickness)} thick`,
        reason: `over ${caliper(most)} the eye sees it (1/32 in a foot), and a shelf that stays full comes to sag by 60 % more`,
        change: `width at most ${tape(longestShelf(shelf) + 2 * thickness)}, an upright in the middle, a stiffer wood, or shelves ${tape(thinnestShelf(shelf))} thick`,
      },
      {
        rule: 'dado about a third of the side',
        verdict: dadoDepth > thickness / 2 + rounding ? 'stop' : judge(dadoDepth >= thickness / 4 - rounding, 'watch'),
        figures: `${tape(dadoDepth)} deep in ${tape(thickness)}`,
        reason: 'a shallow dado lets the shelf slip out; one deeper than half weakens the side',
        change: `dadoDepth from ${tape(thickness / 4)} to ${tape(thickness / 2)}`,
      },
      {
        rule: "shelves' ends held by more than glue",
        verdict: judge(read.shelfEnds !== 'glue alone', 'watch'),
        figures: `${2 * (shelves + 2)} ends of shelves, top and bottom: ${ends.shelf}; the top ${ends.top}`,
        reason:
          'the end of a shelf is end grain and takes no glue worth counting, so that a loaded case racks and its sides spread; the depth of sides and shelves moves together, so that an end may be held along all of it',
        change: `shelfEnds: pegs or screws, ${perEnd(depth)} through the side into each end, or a sliding dovetail (1:8 to 1:6) in place of the dado; the top, with no wood over it, is pegged or screwed`,
      },
      {
        rule: 'bookcase cannot tip over',
        verdict: judge(height <= 30 && height <= 3 * depth, 'watch'),
        figures: `${tape(height)} high, ${tape(depth)} deep`,
        reason: 'a tall or shallow case falls forward when a child climbs it or the upper shelves are loaded first',
        change: 'fasten it to the wall at its top, and say so when you hand it over',
      },
      {
        rule: 'books stand upright',
        verdict: judge(clearHeight >= 9, 'watch'),
        figures: `${tape(clearHeight)} between the shelves`,
        reason: 'most books are under 9 in high; lower shelves take paperbacks and what lies flat',
        change: `shelves at most ${Math.max(0, Math.floor((height - plinth - 2 * thickness - 9) / (thickness + 9)))}`,
      },
    ],
  };
}

/** Pegs or screws through a side into one end: two, and one more for every 6 in of depth over 12. Common practice, no source. */
function perEnd(depth: number): number {
  return Math.max(2, Math.ceil(depth / 6 - rounding));
}

/** How the ends are held, of what lies in dadoes and of the top, which has no wood over it for a dovetail to slide in. */
function endsWords({ shelfEnds: held, depth }: BookcaseDesign): { shelf: string; top: string } {
  if (held === 'glue alone') return { shelf: 'glued alone', top: 'glued alone' };
  const through = (what: string) => `${perEnd(depth)} ${what} through the side into each end`;
  if (held === 'sliding dovetail')
    return { shelf: 'its ends slid in from behind as dovetails', top: through('pegs or screws') };
  return { shelf: through(held), top: through(held) };
}
