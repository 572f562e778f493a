import * as z from 'zod';
import { evaluate } from '../../measure/formula.js';
import { amount, readParameters, size } from '../../measure/parameters.js';
import { ShopError } from '../../measure/shop-error.js';
import { tape } from '../../measure/verdict.js';
import type { SizedBox } from '../../piece/box/sized-box.js';
import { connectedAreas } from './connected-areas.js';
import { cuttingTimeFormula, toolpath } from './cutting-time.js';
import { cutSurface } from './facets.js';
import { inscribedCircles, largestCircle } from './inscribed-circles.js';
import type { Lettering } from './laid-out-lettering.js';
import { letteringFindings } from './lettering-findings.js';
import { type LidField, lidField, type TextRuns, textRuns } from './lid-field.js';
import { centreLines } from './medial-axis.js';
import { ornamentPaths } from './ornament.js';
import { type Contour, type Extent, extentOf, type LidPoint, outlineArea } from './outline.js';
import { placed, setText } from './set-text.js';
import type { Typeface } from './typeface.js';
import { vDepthFormula, vWidthFormula } from './v-groove.js';

/** A simple ornament out of an SVG drawing, and where its middle lies from the middle of the text. */
export interface TypedOrnament {
  /** The `d="..."` of a path. */
  path: string;
  height: string | number;
  /** From the middle of the text to the right (or to the left), and up (or down), as the text is read. */
  right?: string | number;
  left?: string | number;
  up?: string | number;
  down?: string | number;
}

/** What is typed for a lettered lid. Lengths as text or inches. */
export interface LetteringInput {
  box: SizedBox;
  /** One or more lines; '' for a lid that nothing is cut into. */
  text: string;
  face: Typeface;
  /** Height of a capital. */
  height: string | number;
  runs?: TextRuns;
  /** Middle of the text from the front end of the lid and from the left edge of its field; the field's middle without them. */
  middleFromFront?: string | number;
  middleFromLeft?: string | number;
  /** Added between letters, a part of the height. */
  spacing?: number;
  /** From baseline to baseline, a part of the height. */
  lineStep?: number;
  ornaments?: readonly TypedOrnament[];
  /** Angle of the bit's point, degrees; and its diameter. */
  bitAngle?: number;
  bitDiameter?: string | number;
  depthLimit?: string | number;
  /** Deepest at once. */
  passDepth?: string | number;
  /** Length of cut a minute. */
  feed?: string | number;
  /** Seconds to lift the bit and set it down elsewhere. */
  liftSeconds?: number;
  /** Wood left to the edge of the field. */
  margin?: string | number;
}

const offset = size({ least: 0, most: 36, why: 'from the middle of the text to the middle of the ornament' }).default(
  0,
);

const fields = z.strictObject({
  text: z
    .string({ error: "possible: some letters or figures, '' for none (what is cut into the lid)" })
    .trim()
    .max(200, 'possible: at most 200 letters'),
  height: size({ least: 1 / 8, most: 12, why: 'height of a capital' }),
  runs: textRuns.default('side to side'),
  middleFromFront: size({ least: 0, most: 40, why: 'middle of the text from the front end of the lid' }).optional(),
  middleFromLeft: size({ least: 0, most: 30, why: 'middle of the text from the left edge of the field' }).optional(),
  spacing: amount({ least: -0.2, most: 1, why: 'added between letters, a part of the height' }).default(0.04),
  lineStep: amount({ least: 1, most: 4, why: 'from baseline to baseline, a part of the height' }).default(1.6),
  ornaments: z
    .array(
      z.strictObject({
        path: z.string({ error: 'possible: the d="..." of a path in an SVG drawing' }),
        height: size({ least: 1 / 8, most: 24, why: 'height of the ornament' }),
        right: offset,
        left: offset,
        up: offset,
        down: offset,
      }),
    )
    .default([]),
  bitAngle: amount({ least: 20, most: 150, unit: 'degrees', why: "angle of the V-bit's point" }).default(90),
  bitDiameter: size({ least: 1 / 16, most: 3, why: 'largest diameter of the V-bit' }).default(0.5),
  depthLimit: size({
    least: 1 / 64,
    most: 1,
    why: 'deepest the bit may go; a wider stroke gets a flat bottom',
  }).optional(),
  passDepth: size({ least: 1 / 64, most: 1, why: 'depth of one pass' }).default(1 / 8),
  feed: size({ least: 1, most: 400, why: 'length of cut a minute' }).default(40),
  liftSeconds: amount({ least: 0, most: 60, unit: 's', why: 'to lift the bit and set it down elsewhere' }).default(3),
  margin: size({ least: 0, most: 6, why: 'wood left between the lettering and the edge of the field' }).default(0.25),
});

/** Curves are cut up so that no piece strays farther from them than this, in: far below what a bit leaves. */
const tolerance = 0.0005;

/**
 * Lays out V-cut lettering on a lid: outlines, the way of the bit with its depth, the walls it leaves, what stays of the lid, time.
 *
 *   depth = (stroke width / 2) / tan(half the bit's angle)       at 90 degrees: half the width
 *
 * The width at each place is that of the largest circle inside the stroke there. Sizes are good to about 0.001 in: the face's
 * curves are straightened to 0.0005 in, and the middle lines come from points set along the outlines.
 *
 * @param input  see {@link LetteringInput}; face: see `typeface`
 * @returns everything in inches, ready for `letteringPreview`, `letteringSection`, `letteringDxf`
 * @throws ShopError  one line: characters the face lacks; text too large, with the largest height that fits; a value
 *   that is not possible
 * @see {@link vDepthFormula}
 */
export function layOutLettering(input: LetteringInput): Lettering {
  const { box, face, ...typed } = input;
  const read = readParameters(fields, { ...typed });
  const field = lidField(box);
  const { text, height, runs, bitAngle, bitDiameter, depthLimit, feed } = read;

  if (text === '' && read.ornaments.length > 0)
    throw new ShopError('text: "" given; possible: some letters or figures (an ornament is placed from their middle)');
  if (text === '') return noLettering(field, read);
  const set = setText({ ...read, face, tolerance });
  const figures = [...set.figures, ...ornamentFigures(read.ornaments, set.figures)];
  const turnedFigures = turnedOnto(figures, field, read);
  const extent = extentOf(turnedFigures.flat(2));
  refuseTooLarge(extent, field, read);

  const slope = evaluate(vWidthFormula, { d: 1, b: bitAngle }) / 2;
  const reach = depthLimit === undefined ? Infinity : depthLimit * slope;
  const outlines = connectedAreas(turnedFigures);
  const circles = outlines.map((outline) => inscribedCircles(outline, height / 120));
  const lines = circles.flatMap((found) => centreLines(found, tolerance));
  const surfaces = circles.map((found) => cutSurface(found, tolerance, reach));
  const floorArea = surfaces.reduce((sum, each) => sum + each.floorArea, 0);

  const widest = circles.map(largestCircle).reduce((most, circle) => (circle.radius > most.radius ? circle : most));
  const full = evaluate(vDepthFormula, { w: 2 * widest.radius, b: bitAngle });
  const deepest = { ...widest, depth: Math.min(full, depthLimit ?? Infinity) };
  const path = toolpath(lines, { slope, limit: deepest.depth, pass: read.passDepth });
  const floorPasses = depthLimit === undefined ? 1 : Math.ceil(depthLimit / read.passDepth - 1e-9);
  const floorLength = (floorPasses * floorArea) / floorStep;
  const laidOut = {
    ...{ text, letters: set.letters, height, runs, field, bitAngle, bitDiameter, depthLimit, outlines, lines, extent },
    facets: surfaces.flatMap((surface) => surface.facets),
    floorEdge: surfaces.flatMap((surface) => surface.floorEdge),
    floorArea,
    area: outlineArea(outlines),
    deepest,
    remaining: field.thickness - deepest.depth,
    pathLength: path.length,
    floorLength,
    starts: path.starts,
    feed,
    minutes: evaluate(cuttingTimeFormula, {
      L: path.length + floorLength,
      F: feed,
      n: path.starts,
      s: read.liftSeconds,
    }),
  };
  return { ...laidOut, findings: letteringFindings(laidOut, read) };
}

/** A lid that nothing is cut into. */
function noLettering(field: LidField, read: Read): Lettering {
  const { text, height, runs, bitAngle, bitDiameter, depthLimit, feed } = read;
  const [x, y] = [field.width / 2, field.length / 2];
  return {
    ...{ text, letters: 0, height, runs, field, bitAngle, bitDiameter, depthLimit, feed },
    ...{ outlines: [], lines: [], facets: [], floorEdge: [], floorArea: 0, area: 0 },
    extent: { left: x, right: x, front: y, back: y },
    deepest: { x, y, radius: 0, depth: 0 },
    remaining: field.thickness,
    ...{ pathLength: 0, floorLength: 0, starts: 0, minutes: 0, findings: [] },
  };
}

/** From one pass over a flat bottom to the next, in: the point of a V-bit leaves a ridge (common practice, no source). */
const floorStep = 0.02;

type Read = z.output<typeof fields>;

/** The ornaments, in the frame of the text. */
function ornamentFigures(ornaments: Read['ornaments'], text: readonly Contour[][]): Contour[][] {
  const around = extentOf(text.flat(2));
  const middle = [(around.left + around.right) / 2, (around.front + around.back) / 2] as const;
  return ornaments.map(({ path, height, right, left, up, down }) => {
    const paths = ornamentPaths(path);
    const drawn = extentOf(paths.flatMap((each) => placed(each, 1, [0, 0], 1e-3)));
    const scale = height / (drawn.back - drawn.front);
    if (!Number.isFinite(scale))
      throw new ShopError('ornament: it has no height; possible: a path that encloses an area');
    const place: LidPoint = [
      middle[0] + right - left - (scale * (drawn.left + drawn.right)) / 2,
      middle[1] + up - down - (scale * (drawn.front + drawn.back)) / 2,
    ];
    return paths.map((each) => placed(each, scale, place, tolerance));
  });
}

/** From the frame of the text to that of the lid. */
function turnedOnto(figures: readonly Contour[][], field: LidField, read: Read): Contour[][] {
  const own = extentOf(figures.flat(2));
  const [alongMiddle, upMiddle] = [(own.left + own.right) / 2, (own.front + own.back) / 2];
  const x = read.middleFromLeft ?? field.width / 2;
  const y = read.middleFromFront ?? field.length / 2;
  return figures.map((figure) =>
    figure.map((contour) =>
      contour.map(([along, up]): LidPoint => {
        const [a, u] = [along - alongMiddle, up - upMiddle];
        return read.runs === 'side to side' ? [x + a, y + u] : [x - u, y + a];
      }),
    ),
  );
}

function refuseTooLarge({ left, right, front, back }: Extent, { width, length }: LidField, read: Read): void {
  const x = read.middleFromLeft ?? width / 2;
  const y = read.middleFromFront ?? length / 2;
  const room = (place: number, whole: number) => 2 * Math.min(place - read.margin, whole - place - read.margin);
  const [wide, long] = [room(x, width), room(y, length)];
  const share = Math.min(wide / (right - left), long / (back - front));
  if (share >= 1 - 1e-9) return;
  const largest = Math.floor(read.height * share * 64) / 64;
  const fits =
    largest >= 1 / 8 ? `a height of at most ${tape(largest)}` : 'a shorter text, or another place on the lid';
  throw new ShopError(
    `height: ${tape(read.height)} given; possible: ${fits} (the text takes ${tape(right - left)} side to side by ${tape(back - front)} front to back, and at its place there is room for ${tape(Math.max(0, wide))} by ${tape(Math.max(0, long))} with a margin of ${tape(read.margin)})`,
  );
}
