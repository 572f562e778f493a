import { ShopError } from '../../measure/shop-error.js';
import { type Contour, type CurvedPath, extentOf, type LidPoint, straightened } from './outline.js';
import type { Typeface } from './typeface.js';

/** Letters in their places: closed lines of each, x along the text, y up from the lowest baseline, in. */
export interface SetText {
  figures: Contour[][];
  /** Letters and figures, spaces not counted. */
  letters: number;
}

/**
 * Sets text in a face, its lines centred on one another.
 *
 * @param text.text  one or more lines
 * @param text.height  height of a capital, in
 * @param text.spacing  added between letters, a part of the height
 * @param text.lineStep  from baseline to baseline, a part of the height
 * @param text.tolerance  most distance between a curve and the straight pieces that stand for it, in
 * @throws ShopError  characters that the face lacks, all in one message
 */
export function setText(text: {
  text: string;
  face: Typeface;
  height: number;
  spacing: number;
  lineStep: number;
  tolerance: number;
}): SetText {
  const { face, height, spacing, lineStep, tolerance } = text;
  const scale = height / face.capitalHeight;
  const lines = text.text.split('\n').map((line) => [...line.trim().normalize('NFC')]);
  const lacking = [...new Set(lines.flat().filter((character) => !/\s/.test(character) && !face.glyph(character)))];
  if (lacking.length > 0)
    throw new ShopError(
      `text: "${lacking.join('" "')}" given; possible: characters that the face has (it lacks ${lacking.length === 1 ? 'this one' : `these ${lacking.length}`}: take another face, or other characters)`,
    );
  const figures = lines.flatMap((line, row) => {
    let along = 0;
    const set = line.map((character, i) => {
      const glyph = face.glyph(character);
      const place: LidPoint = [along, -row * lineStep * height];
      const kerning = i + 1 < line.length ? face.kerning(character, line[i + 1] as string) : 0;
      along += ((glyph?.advance ?? 0) + kerning) * scale + spacing * height;
      return (glyph?.paths ?? []).map((path) => placed(path, scale, place, tolerance));
    });
    const { left, right } = extentOf(set.flat(2));
    return set.map((figure) => figure.map((contour) => contour.map(([x, y]): LidPoint => [x - (left + right) / 2, y])));
  });
  const drawn = figures.filter((figure) => figure.length > 0);
  return { figures: drawn, letters: drawn.length };
}

/** A path at a scale and a place, in straight pieces. @internal */
export function placed(path: CurvedPath, scale: number, [x, y]: LidPoint, tolerance: number): LidPoint[] {
  return straightened(path, tolerance / scale).map(([px, py]) => [x + px * scale, y + py * scale]);
}
